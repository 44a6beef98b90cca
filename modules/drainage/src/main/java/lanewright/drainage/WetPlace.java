package lanewright.drainage;

import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.Side;
import lanewright.measure.Finding;
import lanewright.measure.Saying;
import org.jspecify.annotations.Nullable;

/**
 * A place where water stands, arrives or cannot get away once the lane is built. Each place is told
 * once, whatever number of checks found something there.
 *
 * @param number counted from one in station order; those off the lane's ends come last
 * @param kind what sort of place it is
 * @param side the side of the lane, or null for both or across
 * @param station of the place itself, m: the deepest point of standing water, else where it begins;
 *     NaN off the lane's ends
 * @param from station where it begins, m; NaN off the lane's ends
 * @param to station where it ends, m; the same for a single place
 * @param x local easting of the place itself, m
 * @param y local northing of the place itself, m
 * @param depth greatest depth of standing water, or of the road's own ditch below its lower bank,
 *     m; NaN if none was measured
 * @param pool the water that stands there, or null if none was measured
 * @param drained land whose water comes to it, m²; NaN if that was not worked out
 * @param isLeast whether more land may drain to it from beyond the survey
 * @param pipe the pipe that was looked at first, as it would lie under the lane as drawn; null
 *     where none would help or none is asked for
 * @param fit whether that pipe fits, and why not; empty without one
 * @param finding what is found there and what to do, in full
 * @param cure the one thing to do, which every sheet says
 */
public record WetPlace(
        int number,
        Kind kind,
        @Nullable Side side,
        double station,
        double from,
        double to,
        double x,
        double y,
        double depth,
        @Nullable Pool pool,
        double drained,
        boolean isLeast,
        @Nullable CulvertLine pipe,
        Saying fit,
        Finding finding,
        Cure cure) {

    /** What sort of place it is. */
    public enum Kind {
        /** Standing water that the lane holds back. */
        DAMMED("pool that the lane dams"),
        /** Standing water on the travelled way. */
        ON_LANE("water standing on the lane"),
        /** A ditch whose low point has no way out. */
        DITCH("ditch that cannot run out"),
        /** A ditch that is level, or nearly so. */
        LEVEL_DITCH("level ditch"),
        /** An edge of the lane lower than the ground beside it. */
        EDGE("lane edge below the ground"),
        /** A low point of the lane that water cannot leave. */
        LOW_POINT("low point of the lane"),
        /** Water of the land that comes to the lane in one way. */
        WATERCOURSE("watercourse meets the lane"),
        /** The ditch of the public road, across the beginning of the lane. */
        ROAD_DITCH("the road's own ditch"),
        /** A hollow that was there and that the work reaches into. */
        HOLLOW("hollow of the land");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /** The name by which all sheets call it, such as {@code W1}. */
    public String name() {
        return "W" + number;
    }

    /** What to do, in one sentence that follows "what to do:" and has no full stop. */
    public Saying brief() {
        return cure.says();
    }

    /** Area of standing water, m²; NaN if none was measured. */
    public double area() {
        return pool == null ? Double.NaN : pool.spot().area();
    }

    /** Volume of standing water, m³; NaN if none was measured. */
    public double volume() {
        return pool == null ? Double.NaN : pool.spot().volume();
    }

    /** Whether a pipe of the plan takes the water that comes here. */
    public boolean isServed() {
        return cure.kind() == Cure.Kind.PIPED && !isDam();
    }

    /** Whether the lane holds the water back as a dam would, so that it must not be built so. */
    public boolean isDam() {
        return finding.level() == Finding.Level.STOP;
    }

    /** Whether water that stands here runs over the lane once it is full. */
    public boolean runsOverLane() {
        return pool != null && pool.spill().way() == Pool.SpillWay.LANE;
    }

    /** Whether standing water of this place lies beside the lane at a station, on a side. */
    public boolean stands(double at, Side on) {
        Pool.Beside beside = pool == null ? null : pool.beside();
        return beside != null
                && at >= beside.from() - NEAR
                && at <= beside.to() + NEAR
                && (on == Side.LEFT ? beside.leftmost() < 0 : beside.rightmost() > 0);
    }

    /** The water's edge ends between two sections; so near, a section's own place is in it, m. */
    private static final double NEAR = 1;
}
