package lanewright.drainage.pond;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Traces the edge of the water across the triangles of one low spot. Corners exactly at the level
 * count as dry, so each triangle that is partly wet is crossed by one line from edge to edge, and
 * the lines close into rings: no low spot reaches the rim, whose corners are open.
 */
final class Outline {

    private final Mesh mesh;
    private final double level;
    private final Map<Long, Long> crossings = new LinkedHashMap<>();

    Outline(Mesh mesh, double level) {
        this.mesh = mesh;
        this.level = level;
    }

    /** Adds what triangle {@code t} of the low spot shows of the edge. */
    void add(int t) {
        int wet = 0;
        int odd = 0;
        for (int k = 0; k < 3; k++) {
            wet += isWet(mesh.corner(t, k)) ? 1 : 0;
        }
        if (wet == 0 || wet == 3) {
            return;
        }
        for (int k = 0; k < 3; k++) {
            if (isWet(mesh.corner(t, k)) == (wet == 1)) {
                odd = k; // the one corner that differs
            }
        }
        int corner = mesh.corner(t, odd);
        long first = edge(corner, mesh.corner(t, (odd + 1) % 3));
        long second = edge(corner, mesh.corner(t, (odd + 2) % 3));
        // The water on the left.
        if (wet == 1) {
            crossings.put(first, second);
        } else {
            crossings.put(second, first);
        }
    }

    /** The rings, in the order in which they were first met. */
    List<Trace> rings() {
        List<Trace> rings = new ArrayList<>();
        while (!crossings.isEmpty()) {
            List<double[]> points = new ArrayList<>();
            long start = crossings.keySet().iterator().next();
            Long at = start;
            do {
                double[] point = crossing(at);
                double[] last = points.isEmpty() ? point : points.get(points.size() - 1);
                if (points.isEmpty() || point[0] != last[0] || point[1] != last[1]) {
                    points.add(point);
                }
                at = crossings.remove(at);
            } while (at != null && at != start);
            int n = points.size();
            if (n > 1
                    && points.get(0)[0] == points.get(n - 1)[0]
                    && points.get(0)[1] == points.get(n - 1)[1]) {
                points.remove(--n);
            }
            if (n > 2) {
                rings.add(
                        new Trace(
                                points.stream().mapToDouble(p -> p[0]).toArray(),
                                points.stream().mapToDouble(p -> p[1]).toArray(),
                                true));
            }
        }
        return rings;
    }

    private boolean isWet(int vertex) {
        return mesh.z(vertex) < level;
    }

    private static long edge(int a, int b) {
        return ((long) Math.min(a, b) << Integer.SIZE) | Math.max(a, b);
    }

    private double[] crossing(long edge) {
        int a = (int) (edge >>> Integer.SIZE);
        int b = (int) edge;
        double t = (level - mesh.z(a)) / (mesh.z(b) - mesh.z(a));
        return new double[] {
            mesh.x(a) + t * (mesh.x(b) - mesh.x(a)), mesh.y(a) + t * (mesh.y(b) - mesh.y(a))
        };
    }
}
