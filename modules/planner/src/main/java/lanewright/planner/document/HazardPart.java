package lanewright.planner.document;

import java.util.List;

/**
 * Things that can hurt or must be left alone.
 *
 * @param wires overhead wires
 * @param buried buried pipes and cables
 * @param keepOff places to keep off
 */
public record HazardPart(List<Wire> wires, List<Buried> buried, List<KeepOff> keepOff) {
    /** None known. */
    public static final HazardPart NONE = new HazardPart(List.of(), List.of(), List.of());

    /** Copies the lists. */
    public HazardPart {
        wires = List.copyOf(wires);
        buried = List.copyOf(buried);
        keepOff = List.copyOf(keepOff);
    }

    /**
     * An overhead wire.
     *
     * @param name how the owner calls it
     * @param points where it runs, at least two
     * @param clearance height of its lowest point above the ground, m; NaN if not known
     */
    public record Wire(String name, List<Spot> points, double clearance) {
        /** Copies the list and checks the ranges. */
        public Wire {
            points = line(points);
            if (clearance <= 0 || clearance > 200) {
                throw new IllegalArgumentException("a wire hangs over 0 and at most 200 m high");
            }
        }
    }

    /**
     * A buried pipe or cable.
     *
     * @param name how the owner calls it
     * @param points where it runs, at least two
     * @param depth of its top below the ground, m; NaN if not known
     * @param owner whose it is
     */
    public record Buried(String name, List<Spot> points, double depth, Owner owner) {
        /** Copies the list and checks the ranges. */
        public Buried {
            points = line(points);
            if (depth < 0 || depth > 20) {
                throw new IllegalArgumentException("a buried line lies 0 to 20 m deep");
            }
        }
    }

    /** Whose a buried line is. */
    public enum Owner {
        /** A utility's: the public service marks it when asked. */
        PUBLIC,
        /** The owner's own: nobody marks it but the owner. */
        PRIVATE,
        /** Nobody knows. */
        NOT_KNOWN
    }

    /**
     * A place to keep off.
     *
     * @param name how the owner calls it
     * @param kind what it is
     * @param outline its corners, at least three; or its middle alone
     * @param radius how far it reaches around its middle, m; zero for an outline
     * @param away how far to stay away from it, m
     */
    public record KeepOff(
            String name, KeepOffKind kind, List<Spot> outline, double radius, double away) {
        /** Copies the list and checks the ranges. */
        public KeepOff {
            outline = List.copyOf(outline);
            boolean circle = outline.size() == 1 && radius > 0 && radius <= 500;
            boolean ring = outline.size() >= 3 && radius == 0;
            if (!circle && !ring) {
                throw new IllegalArgumentException(
                        "give three corners or more, or one point with a radius over 0");
            }
            if (!(away >= 0 && away <= 500)) {
                throw new IllegalArgumentException("stay 0 to 500 m away");
            }
        }
    }

    /** What a place to keep off is. */
    public enum KeepOffKind {
        /** A well. */
        WELL,
        /** A septic tank. */
        TANK,
        /** A septic drain field. */
        DRAIN_FIELD,
        /** A tree to keep, with its roots. */
        TREE,
        /** Wet land that may be protected. */
        WETLAND,
        /** Anything else. */
        OTHER
    }

    private static List<Spot> line(List<Spot> points) {
        if (points.size() < 2) {
            throw new IllegalArgumentException("a line needs two points or more");
        }
        return List.copyOf(points);
    }
}
