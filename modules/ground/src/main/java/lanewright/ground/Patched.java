package lanewright.ground;

import java.util.List;

/**
 * A ground with patches laid in. One conforming triangulation: patches and the ground around them
 * share the vertices along the rims, no two vertices lie at one place, and outside the patches the
 * surface is what it was.
 */
public final class Patched {

    private final Ground ground;
    private final int[] origin;
    private final int[] untouched;
    private final List<Refusal> refused;

    Patched(Ground ground, int[] origin, int[] untouched, List<Refusal> refused) {
        this.ground = ground;
        this.origin = origin;
        this.untouched = untouched;
        this.refused = List.copyOf(refused);
    }

    /**
     * A patch that could not be laid.
     *
     * @param patch its number in their order
     * @param x local easting of the place where it failed, m
     * @param y local northing of that place, m
     */
    public record Refusal(int patch, double x, double y) {}

    /** The ground with the patches in it. */
    public Ground ground() {
        return ground;
    }

    /**
     * Which triangle of the patches, counted through all of them in their order, triangle {@code t}
     * is or was cut from; -1 for old ground.
     */
    public int origin(int t) {
        return origin[t];
    }

    /**
     * The triangle of the old ground that triangle {@code t} is, corner for corner and line for
     * line; -1 if it was cut or is new. Never decreasing from one untouched triangle to the next.
     */
    public int untouched(int t) {
        return untouched[t];
    }

    /**
     * The patches that could not be laid because their rims cross themselves or one another, or
     * leave the land that was surveyed; the ground is as it was there.
     */
    public List<Refusal> refused() {
        return refused;
    }
}
