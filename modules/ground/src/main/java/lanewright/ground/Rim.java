package lanewright.ground;

import java.util.ArrayDeque;
import java.util.Arrays;
import lanewright.survey.Boundary;
import org.jspecify.annotations.Nullable;

/** Leaves out triangles that are not ground: outside the boundary, or slivers along the rim. */
final class Rim {

    /** Sides looked at to find the middle length: enough to be steady, few enough to be quick. */
    private static final int SAMPLE = 20_000;

    private Rim() {}

    /** Leaves them out and returns how many there were. */
    static int trim(Facets facets, @Nullable Boundary boundary, GroundOptions options) {
        return boundary == null ? slivers(facets, options) : outside(facets, boundary);
    }

    private static int outside(Facets facets, Boundary boundary) {
        int left = 0;
        for (int t = 0; t < facets.triangles(); t++) {
            double x = 0;
            double y = 0;
            for (int k = 0; k < 3; k++) {
                x += facets.x(facets.corner(t, k)) / 3;
                y += facets.y(facets.corner(t, k)) / 3;
            }
            if (!boundary.contains(x, y)) {
                facets.leaveOut(t);
                left++;
            }
        }
        return left;
    }

    private static int slivers(Facets facets, GroundOptions options) {
        double longest = options.longest() * middle(facets);
        double bluntest = StrictMath.cos(StrictMath.toRadians(options.bluntest()));
        var rim = new ArrayDeque<Integer>();
        for (int t = 0; t < facets.triangles(); t++) {
            for (int k = 0; k < 3; k++) {
                if (facets.neighbour(t, k) == Mesh.NONE) {
                    rim.add(3 * t + k);
                }
            }
        }
        int left = 0;
        while (!rim.isEmpty()) {
            int side = rim.remove();
            int t = side / 3;
            int k = side % 3;
            if (facets.isVoid(t)
                    || facets.isBreak(side)
                    || isSound(facets, t, k, longest, bluntest)) {
                continue;
            }
            facets.leaveOut(t);
            left++;
            for (int other = 0; other < 3; other++) {
                int next = facets.neighbour(t, other);
                if (next != Mesh.NONE && !facets.isVoid(next)) {
                    rim.add(3 * next + sideTo(facets, next, t));
                }
            }
        }
        return left;
    }

    private static boolean isSound(Facets facets, int t, int k, double longest, double bluntest) {
        int a = facets.corner(t, Mesh.next(k));
        int b = facets.corner(t, Mesh.last(k));
        int c = facets.corner(t, k);
        if (facets.distance(a, b) > longest) {
            return false;
        }
        double ax = facets.x(a) - facets.x(c);
        double ay = facets.y(a) - facets.y(c);
        double bx = facets.x(b) - facets.x(c);
        double by = facets.y(b) - facets.y(c);
        double cosine = (ax * bx + ay * by) / Math.sqrt((ax * ax + ay * ay) * (bx * bx + by * by));
        return cosine > bluntest;
    }

    private static int sideTo(Facets facets, int t, int other) {
        return facets.neighbour(t, 0) == other ? 0 : facets.neighbour(t, 1) == other ? 1 : 2;
    }

    private static double middle(Facets facets) {
        int sides = 3 * facets.triangles();
        int step = Math.max(1, sides / SAMPLE);
        double[] lengths = new double[(sides + step - 1) / step];
        for (int i = 0; i < lengths.length; i++) {
            int side = i * step;
            int t = side / 3;
            int k = side % 3;
            lengths[i] =
                    facets.distance(facets.corner(t, Mesh.next(k)), facets.corner(t, Mesh.last(k)));
        }
        Arrays.sort(lengths);
        return lengths.length == 0 ? 0 : lengths[lengths.length / 2];
    }
}
