package lanewright.planner.proposal;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.line.Profile;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

/** Says why a grade lies as it does. */
final class GradeReasons {

    private final GradeLimits limits;
    private final Profile profile;

    GradeReasons(GradeLimits limits, Profile profile) {
        this.limits = limits;
        this.profile = profile;
    }

    List<Saying> list() {
        List<Saying> reasons = new ArrayList<>();
        reasons.add(ends());
        reasons.add(steepest());
        if (limits.flattest() > 0) {
            reasons.add(
                    Saying.of(
                            "Nowhere flatter than {} but at the turning points of curves, so that"
                                    + " water runs.",
                            Quantity.grade(limits.flattest())));
        }
        for (GradeLimits.Fixed fixed : limits.through()) {
            reasons.add(
                    Saying.of(
                            "Passes through {} at {}, as the plan asks.",
                            Quantity.height(fixed.height()),
                            Quantity.station(fixed.station())));
        }
        return reasons;
    }

    private Saying ends() {
        return Double.isNaN(limits.end())
                ? Saying.of(
                        "Begins at {} at the road; the far end, at {}, was free and follows the"
                                + " land.",
                        Quantity.height(limits.start()),
                        Quantity.height(profile.height(profile.to())))
                : Saying.of(
                        "Begins at {} at the road and ends at {}.",
                        Quantity.height(limits.start()),
                        Quantity.height(limits.end()));
    }

    private Saying steepest() {
        Steepest steepest = Steepest.of(profile);
        return Saying.of(
                "Steepest at {}, with {}; {} is allowed.",
                Quantity.station(steepest.station()),
                Quantity.grade(steepest.grade()),
                Quantity.grade(limits.steepest()));
    }
}
