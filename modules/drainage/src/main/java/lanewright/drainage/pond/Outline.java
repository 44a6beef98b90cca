package lanewright.drainage.pond;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Traces the edge of the water across the triangles of one low spot. Corners exactly at the level
 * count as dry, so each triangle that is partly wet is crossed by one line from edge to edge. Where
 * the water reaches the rim, its edge runs along the rim. Together the lines close into rings.
 */
final class Outline {

    private final Mesh mesh;
    private final double level;

    /**
     * Pieces of the edge with the water on the left, by where they begin. A place is an edge of the
     * surface that the water's edge crosses, or, with both ends alike, a wet corner on the rim;
     * only there, where two parts of the surface touch in one corner, can two pieces begin.
     */
    private final Map<Long, Deque<Long>> pieces = new LinkedHashMap<>();

    Outline(Mesh mesh, double level) {
        this.mesh = mesh;
        this.level = level;
    }

    /** Adds what triangle {@code t} of the low spot shows of the edge. */
    void add(int t) {
        int wet = 0;
        for (int k = 0; k < 3; k++) {
            wet += isWet(mesh.corner(t, k)) ? 1 : 0;
        }
        if (wet == 0) {
            return;
        }
        if (wet < 3) {
            cross(t, wet == 1);
        }
        for (int k = 0; k < 3; k++) {
            if (mesh.neighbour(t, k) < 0) {
                rim(mesh.corner(t, (k + 1) % 3), mesh.corner(t, (k + 2) % 3));
            }
        }
    }

    /** The water's edge across a triangle with one wet corner, or one dry one. */
    private void cross(int t, boolean oneWet) {
        int odd = 0;
        for (int k = 0; k < 3; k++) {
            if (isWet(mesh.corner(t, k)) == oneWet) {
                odd = k; // the one corner that differs
            }
        }
        int corner = mesh.corner(t, odd);
        long first = place(corner, mesh.corner(t, (odd + 1) % 3));
        long second = place(corner, mesh.corner(t, (odd + 2) % 3));
        if (oneWet) {
            piece(first, second);
        } else {
            piece(second, first);
        }
    }

    /** The wet part of an edge of the rim, which runs from {@code a} to {@code b}. */
    private void rim(int a, int b) {
        if (isWet(a) || isWet(b)) {
            long crossing = place(a, b);
            piece(isWet(a) ? place(a, a) : crossing, isWet(b) ? place(b, b) : crossing);
        }
    }

    private void piece(long from, long to) {
        pieces.computeIfAbsent(from, key -> new ArrayDeque<>(1)).add(to);
    }

    /** The rings, in the order in which they were first met. */
    List<Trace> rings() {
        List<Trace> rings = new ArrayList<>();
        while (!pieces.isEmpty()) {
            List<double[]> points = new ArrayList<>();
            long start = pieces.keySet().iterator().next();
            Long at = start;
            do {
                double[] point = point(at);
                double[] last = points.isEmpty() ? point : points.get(points.size() - 1);
                if (points.isEmpty() || point[0] != last[0] || point[1] != last[1]) {
                    points.add(point);
                }
                at = follow(at);
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

    private @Nullable Long follow(Long at) {
        Deque<Long> ways = pieces.get(at);
        if (ways == null) {
            return null;
        }
        Long next = ways.poll();
        if (ways.isEmpty()) {
            pieces.remove(at);
        }
        return next;
    }

    private boolean isWet(int vertex) {
        return mesh.z(vertex) < level;
    }

    private static long place(int a, int b) {
        return ((long) Math.min(a, b) << Integer.SIZE) | Math.max(a, b);
    }

    private double[] point(long place) {
        int a = (int) (place >>> Integer.SIZE);
        int b = (int) place;
        if (a == b) {
            return new double[] {mesh.x(a), mesh.y(a)};
        }
        double t = (level - mesh.z(a)) / (mesh.z(b) - mesh.z(a));
        return new double[] {
            mesh.x(a) + t * (mesh.x(b) - mesh.x(a)), mesh.y(a) + t * (mesh.y(b) - mesh.y(a))
        };
    }
}
