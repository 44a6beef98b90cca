package lanewright.planner.work;

import java.util.List;

/**
 * A thing on the land that can hurt, or that must not be hurt.
 *
 * @param kind what it is
 * @param name what the owner calls it
 * @param points a line for wires and buried lines, an outline for places, or one point
 * @param level height of a wire over the ground, or depth of the top of a buried line under it, m;
 *     NaN if not known or if the kind has none
 * @param around radius about a single point, m, zero for a line or an outline
 * @param away distance to keep from it, m, zero or more
 */
public record Hazard(
        Kind kind, String name, List<Spot> points, double level, double around, double away) {

    /** A place in local metres: x east, y north. */
    public record Spot(double x, double y) {}

    /** What a hazard is. */
    public enum Kind {
        /** An overhead wire. */
        WIRE("overhead wire"),
        /** A buried line that a utility owns and the public service marks. */
        BURIED_PUBLIC("buried public line"),
        /** A buried line of the owner's own, which nobody else marks. */
        BURIED_PRIVATE("buried private line"),
        /** A buried line of unknown owner. */
        BURIED("buried line"),
        /** A well. */
        WELL("well"),
        /** A septic tank. */
        TANK("tank"),
        /** A septic drain field. */
        DRAIN_FIELD("drain field"),
        /** A tree to keep, with its roots. */
        TREE("tree to keep"),
        /** Wet land that may be protected. */
        WETLAND("wetland"),
        /** Another place to keep off. */
        OTHER("place to keep off");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }

        /** True for a line in the ground. */
        public boolean isBuried() {
            return this == BURIED || this == BURIED_PUBLIC || this == BURIED_PRIVATE;
        }
    }

    /** Copies the list and checks that there is at least one point. */
    public Hazard {
        points = List.copyOf(points);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("a hazard needs a place");
        }
        if (!(away >= 0) || !(around >= 0)) {
            throw new IllegalArgumentException("distances are zero or more");
        }
    }
}
