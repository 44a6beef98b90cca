package lanewright.drainage.along;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A ditch that runs without a break beside the lane.
 *
 * @param side the side it lies on
 * @param points its bottom at each section, in station order
 * @param outlets where its water goes: its low points, in station order
 */
public record DitchReach(Side side, List<Point> points, List<Outlet> outlets) {

    /** Bottoms closer in height than this lie level, m. Rounding of heights, nothing else. */
    private static final double LEVEL = 1e-6;

    /** Grades are compared to this, so that a plan's own 0.5 % is not "under" by rounding. */
    private static final double SAME_GRADE = 1e-9;

    /** The flat top of a turning point is no longer than this, m. Our choice. */
    private static final double CREST = 10;

    /** Sections this close are two sides of a change, and no way lies between them, m. */
    private static final double NO_WAY = 0.001;

    /** A little way, m: less than any ditch is long. */
    private static final double NEAR = 0.1;

    /**
     * The bottom at a section.
     *
     * @param station m
     * @param x local easting, m
     * @param y local northing, m
     * @param height of the bottom, m
     * @param belowStone how far the bottom lies below the lowest point of the stone on this side,
     *     m, negative if above
     */
    public record Point(double station, double x, double y, double height, double belowStone) {}

    /**
     * The way from one section's bottom to the next.
     *
     * @param from station where it begins, m
     * @param to station where it ends, m
     * @param length own length in plan, m, over zero
     * @param grade rise over run, positive uphill up-station
     */
    public record Leg(double from, double to, double length, double grade) {}

    /**
     * A low point of the ditch.
     *
     * @param station m
     * @param x local easting, m
     * @param y local northing, m
     * @param height of the bottom, m
     * @param kind what becomes of the water
     */
    public record Outlet(double station, double x, double y, double height, Kind kind) {}

    /** What becomes of a ditch's water at its low point. */
    public enum Kind {
        /** It runs out over ground that falls away. */
        DAYLIGHT("runs out over lower ground"),
        /** An existing pipe takes it. */
        PIPE("goes into an existing pipe"),
        /** A pipe that is to be laid takes it. */
        PIPE_TO_LAY("goes into a pipe that is to be laid"),
        /** It arrives where the lane leaves the road. */
        ROAD("arrives at the public road"),
        /** It arrives at the far end of the lane. */
        FAR_END("arrives at the far end"),
        /**
         * It stands where the lane dams a hollow, and a pipe under the lane would let it through.
         */
        CROSSING("stands until it is let through under the lane"),
        /** It has nowhere to go. */
        DEAD_END("has nowhere to go");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** What becomes of it, to follow "the water". */
        public String words() {
            return words;
        }
    }

    /** Copies the lists. */
    public DitchReach {
        points = List.copyOf(points);
        outlets = List.copyOf(outlets);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a ditch needs at least one section");
        }
    }

    /** Station where it begins, m. */
    public double from() {
        return points.get(0).station();
    }

    /** Station where it ends, m. */
    public double to() {
        return points.get(points.size() - 1).station();
    }

    /**
     * Whether a low point of the ditch lies in standing water: asked a little way up the ditch from
     * it, for at an end the water's edge runs through the low point itself.
     */
    public boolean standsIn(Outlet outlet, Ditches.Standing standing) {
        for (int i = 0; i < points.size(); i++) {
            Point at = points.get(i);
            if (at.station() != outlet.station()) {
                continue;
            }
            for (int other = Math.max(0, i - 1);
                    other <= Math.min(points.size() - 1, i + 1);
                    other++) {
                Point beside = points.get(other);
                double length = Math.hypot(beside.x() - at.x(), beside.y() - at.y());
                double share = length > NEAR ? NEAR / length : 0;
                if (standing.at(
                        at.x() + share * (beside.x() - at.x()),
                        at.y() + share * (beside.y() - at.y()))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** First and last station whose water comes to a low point of the ditch, m. */
    public double[] sheds(Outlet outlet) {
        double first = outlet.station();
        double last = outlet.station();
        for (Point point : points) {
            if (outlet.equals(outletFrom(point.station()))) {
                first = Math.min(first, point.station());
                last = Math.max(last, point.station());
            }
        }
        return new double[] {first, last};
    }

    /** The ways between its sections; two bottoms at one place have none between them. */
    public List<Leg> legs() {
        List<Leg> legs = new ArrayList<>();
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            double length = Math.hypot(b.x() - a.x(), b.y() - a.y());
            if (length > NO_WAY) {
                legs.add(
                        new Leg(
                                a.station(),
                                b.station(),
                                length,
                                (b.height() - a.height()) / length));
            }
        }
        return legs;
    }

    /**
     * Ways that follow each other and fall less than a grade, each where water would stand. The
     * short flat top of a turning point is left out, from which the ditch falls away both ways: no
     * water comes to it but its own.
     *
     * @param least least grade of a ditch, rise over run
     */
    public List<List<Leg>> flat(double least) {
        List<Leg> legs = legs();
        List<List<Leg>> flat = new ArrayList<>();
        for (Run run :
                Run.of(legs.size(), i -> Math.abs(legs.get(i).grade()) < least - SAME_GRADE)) {
            if (!isCrest(legs, run)) {
                flat.add(List.copyOf(legs.subList(run.first(), run.last() + 1)));
            }
        }
        return flat;
    }

    private static boolean isCrest(List<Leg> legs, Run run) {
        boolean over =
                run.first() > 0
                        && run.last() + 1 < legs.size()
                        && legs.get(run.first() - 1).grade() > 0
                        && legs.get(run.last() + 1).grade() < 0;
        double length = 0;
        for (int i = run.first(); i <= run.last(); i++) {
            length += legs.get(i).length();
            over &=
                    i == run.first()
                            || !(legs.get(i - 1).grade() < -SAME_GRADE
                                    && legs.get(i).grade() > SAME_GRADE);
        }
        return over && length <= CREST;
    }

    /** Where water goes that enters the ditch at a station, or null if the ditch is not there. */
    public @Nullable Outlet outletFrom(double station) {
        if (station < from() || station > to()) {
            return null;
        }
        int at = 0;
        while (at + 1 < points.size() && points.get(at + 1).station() <= station) {
            at++;
        }
        if (at + 1 < points.size() && height(at + 1) < height(at)) {
            at++;
        }
        int low = downhill(at);
        Outlet nearest = null;
        for (Outlet outlet : outlets) {
            double distance = Math.abs(outlet.station() - points.get(low).station());
            if (nearest == null
                    || distance < Math.abs(nearest.station() - points.get(low).station())) {
                nearest = outlet;
            }
        }
        return nearest;
    }

    private int downhill(int from) {
        int up = from;
        while (up + 1 < points.size() && height(up + 1) <= height(up) + LEVEL) {
            up++;
        }
        int down = from;
        while (down > 0 && height(down - 1) <= height(down) + LEVEL) {
            down--;
        }
        return height(up) <= height(down) ? up : down;
    }

    private double height(int i) {
        return points.get(i).height();
    }

    /** Numbers of the points from which the bottom rises, or ends, both ways: first and last. */
    static List<Run> lows(List<Point> points) {
        List<Run> lows = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= points.size(); i++) {
            boolean level =
                    i < points.size()
                            && Math.abs(points.get(i).height() - points.get(i - 1).height())
                                    <= LEVEL;
            if (level) {
                continue;
            }
            boolean risesBefore =
                    first == 0 || points.get(first - 1).height() > points.get(first).height();
            boolean risesAfter =
                    i == points.size() || points.get(i).height() > points.get(i - 1).height();
            if (risesBefore && risesAfter) {
                lows.add(new Run(first, i - 1));
            }
            first = i;
        }
        return lows;
    }
}
