package lanewright.drainage.along;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.line.Place;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

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
        /** Into standing water, which is told of by itself. */
        POND("into water that stands there"),
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

    /** So far outside the foot of a slope water is looked for, m. */
    private static final double OUT = 0.1;

    private Sags() {}

    /**
     * The ways out at the low points of the profile.
     *
     * @param stations of the low points, m, each within the sections
     * @param standing where water stands
     */
    public static List<Sag> of(
            List<Double> stations,
            List<Section> sections,
            List<CrossSlopes.CrossSlope> slopes,
            List<DitchReach> ditches,
            LaneLine line,
            Ditches.Standing standing) {
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
                            wayOut(section, Side.LEFT, slope.left(), ditches, line, standing),
                            wayOut(section, Side.RIGHT, slope.right(), ditches, line, standing)));
        }
        return sags;
    }

    private static WayOut wayOut(
            Section section,
            Side side,
            double fall,
            List<DitchReach> ditches,
            LaneLine line,
            Ditches.Standing standing) {
        if (fall < -LEVEL) {
            return WayOut.NOT_NEEDED;
        }
        SideResult result = side.of(section);
        for (DitchReach ditch : ditches) {
            DitchReach.Outlet outlet =
                    ditch.side() == side ? ditch.outletFrom(section.station()) : null;
            if (outlet != null) {
                return ditch.standsIn(outlet, standing)
                        ? WayOut.POND
                        : outlet.kind() == DitchReach.Kind.DEAD_END
                                        || outlet.kind() == DitchReach.Kind.CROSSING
                                ? WayOut.NONE
                                : WayOut.DITCH;
            }
        }
        Corner ground = result.catchPoint();
        if (ground != null && stands(section.station(), ground, side, line, standing)) {
            return WayOut.POND;
        }
        return ground != null && ground.height() < result.edge().height()
                ? WayOut.SLOPE
                : WayOut.NONE;
    }

    /** Whether water stands just outside a corner. */
    private static boolean stands(
            double station, Corner corner, Side side, LaneLine line, Ditches.Standing standing) {
        double out = side == Side.LEFT ? -OUT : OUT;
        var place = new Place(station, corner.offset() + out);
        return standing.at(line.x(place), line.y(place));
    }

    /** Those without a way out. */
    public static List<WetStretch> wet(List<Sag> sags) {
        List<WetStretch> wet = new ArrayList<>();
        for (Sag sag : sags) {
            if (sag.drains()) {
                continue;
            }
            boolean both = sag.left() == WayOut.NONE && sag.right() == WayOut.NONE;
            Side side = both ? null : sag.left() == WayOut.NONE ? Side.LEFT : Side.RIGHT;
            wet.add(
                    new WetStretch(
                            WetStretch.Kind.SAG,
                            side,
                            sag.station(),
                            sag.station(),
                            null,
                            null,
                            Saying.of(
                                    "The lane is lowest at {}, and water has no way out on "
                                            + (side == null ? "either side" : "the " + side.word())
                                            + " there.",
                                    Quantity.station(sag.station())),
                            null,
                            null));
        }
        return wet;
    }
}
