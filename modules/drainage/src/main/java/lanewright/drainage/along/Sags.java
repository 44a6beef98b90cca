package lanewright.drainage.along;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;

/**
 * Low points of the profile, and the way out that water has at each. On a crown both sides need
 * one; on a shed, the side that it falls to.
 */
public final class Sags {

    /** A side that rises this little from the alignment takes water all the same, rise over run. */
    private static final double LEVEL = 1e-9;

    /**
     * A low point of the profile.
     *
     * @param station m
     * @param left the way out on the left
     * @param right the way out on the right
     */
    public record Sag(double station, WayOut left, WayOut right) {
        /** Whether all water that comes here gets away. */
        public boolean drains() {
            return left != WayOut.NONE && right != WayOut.NONE;
        }
    }

    /** How water leaves a side at a sag. */
    public enum WayOut {
        /** No water comes to this side. */
        NOT_NEEDED("no water comes to this side"),
        /** Down the slope to lower ground. */
        SLOPE("down the slope to lower ground"),
        /** By a ditch that leads on. */
        DITCH("by a ditch that leads on"),
        /** Nothing leads it away. */
        NONE("none");

        private final String words;

        WayOut(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    private Sags() {}

    /**
     * The ways out at the low points of the profile.
     *
     * @param stations of the low points, m, each within the sections
     */
    public static List<Sag> of(
            List<Double> stations,
            List<Section> sections,
            List<CrossSlopes.CrossSlope> slopes,
            List<DitchReach> ditches) {
        List<Sag> sags = new ArrayList<>();
        for (double station : stations) {
            int nearest = 0;
            for (int i = 1; i < sections.size(); i++) {
                if (Math.abs(sections.get(i).station() - station)
                        < Math.abs(sections.get(nearest).station() - station)) {
                    nearest = i;
                }
            }
            Section section = sections.get(nearest);
            CrossSlopes.CrossSlope slope = slopes.get(nearest);
            sags.add(
                    new Sag(
                            station,
                            wayOut(section, Side.LEFT, slope.left(), ditches),
                            wayOut(section, Side.RIGHT, slope.right(), ditches)));
        }
        return sags;
    }

    private static WayOut wayOut(
            Section section, Side side, double fall, List<DitchReach> ditches) {
        if (fall < -LEVEL) {
            return WayOut.NOT_NEEDED;
        }
        SideResult result = side.of(section);
        for (DitchReach ditch : ditches) {
            DitchReach.Outlet outlet =
                    ditch.side() == side ? ditch.outletFrom(section.station()) : null;
            if (outlet != null) {
                return outlet.kind() == DitchReach.Kind.DEAD_END
                                || outlet.kind() == DitchReach.Kind.CROSSING
                        ? WayOut.NONE
                        : WayOut.DITCH;
            }
        }
        Corner ground = result.catchPoint();
        return ground != null && ground.height() < result.edge().height()
                ? WayOut.SLOPE
                : WayOut.NONE;
    }

    /** Those without a way out. */
    public static List<Finding> check(List<Sag> sags) {
        List<Finding> findings = new ArrayList<>();
        for (Sag sag : sags) {
            if (sag.drains()) {
                continue;
            }
            String sides =
                    sag.left() == WayOut.NONE && sag.right() == WayOut.NONE
                            ? "either side"
                            : sag.left() == WayOut.NONE ? "the left" : "the right";
            findings.add(
                    Finding.of(
                            "sag-without-way-out",
                            Level.LOOK,
                            Topic.WATER,
                            Where.station(sag.station()),
                            Saying.of(
                                    "The lane is lowest at {}, and water has no way out on "
                                            + sides
                                            + " there.",
                                    Quantity.station(sag.station())),
                            Saying.plain(
                                    "Lead it away by a ditch that falls to lower ground, or move"
                                            + " the low point of the grade.")));
        }
        return findings;
    }
}
