package lanewright.planner.run;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.line.Profile;
import lanewright.lane.line.VerticalPoint;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.planner.document.GradePart;
import lanewright.planner.proposal.Steepest;
import org.jspecify.annotations.Nullable;

/**
 * Holds the grade points of a plan against the plan's own limits. A grade that the program lays
 * tells by itself where limits and fixed heights collide; points that stand in the plan are kept as
 * they are, and said to break a limit.
 */
final class OwnGrade {

    /** The finding of a grade that is steeper than the plan allows. */
    static final String STEEP = "grade-over-steepest";

    /** The finding of a grade that is flatter than the plan wants. */
    static final String FLAT = "grade-under-flattest";

    /**
     * A limit is broken by more than this, rise over run: written heights are rounded, and a tenth
     * of a percent is the finest that is told of a limit such as 10 %. Our choice.
     */
    private static final double STEEP_ROUNDING = 0.0005;

    /** A piece is too flat if it lacks more height than this, m: written heights are rounded. */
    private static final double FLAT_ROUNDING = 0.005;

    private OwnGrade() {}

    /** What of a plan's own grade breaks the plan's limits; empty if nothing does. */
    static List<Finding> findings(GradePart limits, Profile profile) {
        List<Finding> found = new ArrayList<>();
        Steepest steepest = Steepest.of(profile);
        double most = Math.abs(steepest.grade());
        if (most > limits.steepest() + STEEP_ROUNDING) {
            found.add(steep(limits, steepest));
        }
        Flat flat = Flat.of(profile, limits.flattest());
        if (flat != null) {
            found.add(flat(limits, flat));
        }
        return found;
    }

    private static Finding steep(GradePart limits, Steepest steepest) {
        Quantity most = Quantity.grade(Math.abs(steepest.grade()));
        Quantity allowed = Quantity.grade(limits.steepest());
        return new Finding(
                STEEP,
                Level.LOOK,
                Topic.GRADE,
                Where.station(steepest.station()),
                Saying.of(
                        "The grade in the plan takes {} at {}, {} allowed.",
                        most,
                        Quantity.station(steepest.station()),
                        allowed),
                most,
                allowed,
                "your plan",
                Saying.of(
                        "Have a new grade laid, which keeps within {} where the heights that it"
                                + " must meet let it (take the grade points out of the plan), move"
                                + " the points, or allow {} if loaded trucks can climb it.",
                        allowed,
                        most));
    }

    private static Finding flat(GradePart limits, Flat flat) {
        Quantity wanted = Quantity.grade(limits.flattest());
        return new Finding(
                FLAT,
                Level.LOOK,
                Topic.GRADE,
                Where.stretch(flat.from(), flat.to()),
                Saying.of(
                        "The grade in the plan is only {} from {} to {}, at least {} wanted so"
                                + " that water runs.",
                        Quantity.grade(flat.grade()),
                        Quantity.station(flat.from()),
                        Quantity.station(flat.to()),
                        wanted),
                Quantity.grade(flat.grade()),
                wanted,
                "your plan",
                Saying.of(
                        "Have a new grade laid (take the grade points out of the plan), move the"
                                + " points, or want less than {} where the lane sheds its water"
                                + " sideways.",
                        wanted));
    }

    /**
     * The flattest straight piece between the curves, which alone must keep the limit: every curve
     * over a crest or through a sag is level at its turning point.
     *
     * @param from m
     * @param to m
     * @param grade rise over run, without sign
     */
    private record Flat(double from, double to, double grade) {

        private static @Nullable Flat of(Profile profile, double wanted) {
            Flat worst = null;
            List<VerticalPoint> points = profile.points();
            for (int i = 0; i + 1 < points.size(); i++) {
                VerticalPoint a = points.get(i);
                VerticalPoint b = points.get(i + 1);
                double from = a.station() + (i == 0 ? 0 : a.curve() / 2);
                double to = b.station() - (i + 2 == points.size() ? 0 : b.curve() / 2);
                double grade = Math.abs((b.height() - a.height()) / (b.station() - a.station()));
                if (to > from
                        && (wanted - grade) * (b.station() - a.station()) > FLAT_ROUNDING
                        && (worst == null || grade < worst.grade)) {
                    worst = new Flat(from, to, grade);
                }
            }
            return worst;
        }
    }
}
