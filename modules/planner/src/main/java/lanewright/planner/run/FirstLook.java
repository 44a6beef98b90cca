package lanewright.planner.run;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.WetPlace;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

/**
 * What to look at first, worst first: a lane that stands as a dam, what else must be settled before
 * building, then what calls for a look. Wet places are told in short here; their finding tells all.
 */
public final class FirstLook {

    private FirstLook() {}

    /** All findings of an outcome that are more than notes, worst first. */
    public static List<Finding> of(Outcome outcome) {
        List<Finding> first = new ArrayList<>();
        for (Finding finding : outcome.findings()) {
            if (finding.level() == Level.NOTE) {
                continue;
            }
            WetPlace at = null;
            for (WetPlace place : outcome.water().places()) {
                at = place.finding().equals(finding) ? place : at;
            }
            first.add(at == null ? finding : inShort(at));
        }
        return first;
    }

    private static Finding inShort(WetPlace place) {
        Finding full = place.finding();
        List<Quantity> quantities = new ArrayList<>();
        var pattern = new StringBuilder(place.name()).append(", ").append(place.kind().words());
        if (Double.isNaN(place.station())) {
            pattern.append(" past an end of the lane");
        } else if (place.to() - place.from() < 1) {
            pattern.append(" at {}");
            quantities.add(Quantity.station(place.station()));
        } else {
            pattern.append(" from {} to {}");
            quantities.add(Quantity.station(place.from()));
            quantities.add(Quantity.station(place.to()));
        }
        var side = place.side();
        pattern.append(side == null ? "" : ", " + side.word());
        if (place.pool() != null) {
            pattern.append(": {} deep");
            quantities.add(Quantity.depth(place.depth()));
            if (place.runsOverLane()) {
                pattern.append(", then it runs over the lane");
            }
        }
        pattern.append('.');
        if (place.isDam()) {
            pattern.append(" The lane would stand as a dam, and lane fill is not built to be one.");
        }
        Saying brief = place.brief();
        return new Finding(
                full.code(),
                full.level(),
                full.topic(),
                full.where(),
                new Saying(pattern.toString(), quantities),
                full.measured(),
                full.limit(),
                full.source(),
                new Saying(
                        (place.isDam() ? "Do not build it so; what to do: " : "What to do: ")
                                + brief.pattern()
                                + ". More on the water sheet.",
                        brief.quantities()));
    }
}
