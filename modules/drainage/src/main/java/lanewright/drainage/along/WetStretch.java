package lanewright.drainage.along;

import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of the lane that stays wet, whether or not standing water was measured there.
 *
 * @param kind what is wrong there
 * @param side the side of the lane, or null for both
 * @param from station where it begins, m
 * @param to station where it ends, m; the same for a single place
 * @param ditch the ditch that it is about, or null without one
 * @param outlet where that ditch's water goes, or null without one
 * @param says what was found
 * @param measured the measured value, or null if there is none
 * @param limit what it was held against, or null if there is nothing
 */
public record WetStretch(
        Kind kind,
        @Nullable Side side,
        double from,
        double to,
        @Nullable DitchReach ditch,
        DitchReach.@Nullable Outlet outlet,
        Saying says,
        @Nullable Quantity measured,
        @Nullable Limit limit) {

    /** What is wrong with it. */
    public enum Kind {
        /** A ditch whose low point has no way out. */
        DEAD_END("ditch-dead-end"),
        /** A ditch that is level, or nearly so. */
        LEVEL("ditch-too-flat"),
        /** An edge of the lane lower than the ground beside it, with no ditch that works. */
        EDGE("edge-below-ground"),
        /** The same on both sides. */
        TROUGH("lane-is-a-trough"),
        /** A low point of the lane without a way out. */
        SAG("sag-without-way-out");

        private final String code;

        Kind(String code) {
            this.code = code;
        }

        /** The code of its finding. */
        public String code() {
            return code;
        }
    }
}
