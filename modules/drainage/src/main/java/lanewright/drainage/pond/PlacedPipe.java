package lanewright.drainage.pond;

import org.jspecify.annotations.Nullable;

/**
 * A pipe and how its ends meet a surface.
 *
 * <p>Water enters once it stands as high as both the pipe's invert and the surface at its inlet. A
 * mouth that lies deeper under the surface than the pipe is wide is covered, and lets nothing
 * through.
 *
 * @param pipe the pipe
 * @param state whether it lets water through
 * @param link its ends on the surface; null unless it is open
 */
public record PlacedPipe(GivenPipe pipe, State state, @Nullable PipeLink link) {

    /** Whether a pipe lets water through. */
    public enum State {
        /** Water passes. */
        OPEN,
        /** The inlet lies outside the surface, so no water of ours reaches it. */
        INLET_OUTSIDE,
        /** The surface covers the inlet. */
        INLET_COVERED,
        /** The surface covers the outlet. */
        OUTLET_COVERED
    }

    /** Finds the ends of {@code pipe} on {@code mesh}. An outlet outside it is open. */
    public static PlacedPipe on(Mesh mesh, GivenPipe pipe) {
        int inlet = triangleAt(mesh, pipe.inletX(), pipe.inletY());
        if (inlet < 0) {
            return new PlacedPipe(pipe, State.INLET_OUTSIDE, null);
        }
        double inletHeight = heightIn(mesh, inlet, pipe.inletX(), pipe.inletY());
        if (inletHeight > pipe.inletInvert() + pipe.diameter()) {
            return new PlacedPipe(pipe, State.INLET_COVERED, null);
        }
        double in = Math.max(pipe.inletInvert(), inletHeight);
        int outlet = triangleAt(mesh, pipe.outletX(), pipe.outletY());
        if (outlet < 0) {
            return new PlacedPipe(
                    pipe,
                    State.OPEN,
                    new PipeLink(lowest(mesh, inlet), in, -1, pipe.outletInvert()));
        }
        double outletHeight = heightIn(mesh, outlet, pipe.outletX(), pipe.outletY());
        if (outletHeight > pipe.outletInvert() + pipe.diameter()) {
            return new PlacedPipe(pipe, State.OUTLET_COVERED, null);
        }
        return new PlacedPipe(
                pipe,
                State.OPEN,
                new PipeLink(
                        lowest(mesh, inlet),
                        in,
                        lowest(mesh, outlet),
                        Math.max(pipe.outletInvert(), outletHeight)));
    }

    /**
     * The first triangle that holds the place, edges included, or -1. One look at each triangle.
     */
    private static int triangleAt(Mesh mesh, double x, double y) {
        for (int t = 0; t < mesh.triangleCount(); t++) {
            double a = side(mesh, t, 0, x, y);
            double b = side(mesh, t, 1, x, y);
            double c = side(mesh, t, 2, x, y);
            if (a >= 0 && b >= 0 && c >= 0 && a + b + c > 0) { // an upright one holds no place
                return t;
            }
        }
        return -1;
    }

    /** Twice the area that the place spans with the edge opposite corner {@code k}. */
    private static double side(Mesh mesh, int t, int k, double x, double y) {
        int a = mesh.corner(t, (k + 1) % 3);
        int b = mesh.corner(t, (k + 2) % 3);
        return (mesh.x(b) - mesh.x(a)) * (y - mesh.y(a))
                - (x - mesh.x(a)) * (mesh.y(b) - mesh.y(a));
    }

    private static double heightIn(Mesh mesh, int t, double x, double y) {
        double a = side(mesh, t, 0, x, y);
        double b = side(mesh, t, 1, x, y);
        double c = side(mesh, t, 2, x, y);
        return (a * mesh.z(mesh.corner(t, 0))
                        + b * mesh.z(mesh.corner(t, 1))
                        + c * mesh.z(mesh.corner(t, 2)))
                / (a + b + c);
    }

    private static int lowest(Mesh mesh, int t) {
        int lowest = mesh.corner(t, 0);
        for (int k = 1; k < 3; k++) {
            int v = mesh.corner(t, k);
            if (mesh.z(v) < mesh.z(lowest)) {
                lowest = v;
            }
        }
        return lowest;
    }
}
