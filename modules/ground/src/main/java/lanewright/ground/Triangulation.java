package lanewright.ground;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import lanewright.measure.Progress;
import org.jspecify.annotations.Nullable;
import org.tinfour.common.IConstraint;
import org.tinfour.common.IQuadEdge;
import org.tinfour.common.LinearConstraint;
import org.tinfour.common.Vertex;
import org.tinfour.semivirtual.SemiVirtualIncrementalTin;
import org.tinfour.utils.HilbertSort;

/**
 * Constrained Delaunay triangles of distinct points, by the Tinfour library, taken over at once
 * into flat arrays. Vertices come out in an order that keeps neighbours near in memory.
 */
final class Triangulation {

    final double[] x;
    final double[] y;
    final double[] z;

    /** New number of each point that came in. */
    final int[] renumbered;

    int[] corner = new int[0];
    int[] neighbour = new int[0];

    private Triangulation(double[] x, double[] y, double[] z, int[] renumbered) {
        this.x = x;
        this.y = y;
        this.z = z;
        this.renumbered = renumbered;
    }

    /**
     * Triangles of the given points.
     *
     * @param segments pairs of point numbers that must be sides of triangles, not crossing
     * @return null if all points lie on one line
     */
    static @Nullable Triangulation of(
            double[] x, double[] y, double[] z, int[] segments, Progress progress) {
        int n = x.length;
        List<Vertex> vertices = new ArrayList<>(n);
        for (int i = 0; i < n; i++) {
            vertices.add(new Vertex(x[i], y[i], 0, i));
        }
        new HilbertSort().sort(vertices);
        int[] order = new int[n];
        Triangulation made = new Triangulation(new double[n], new double[n], new double[n], order);
        for (int i = 0; i < n; i++) {
            int was = vertices.get(i).getIndex();
            order[was] = i;
            made.x[i] = x[was];
            made.y[i] = y[was];
            made.z[i] = z[was];
            vertices.get(i).setIndex(i);
        }
        progress.check();
        var tin = new SemiVirtualIncrementalTin(spacing(x, y));
        tin.preAllocateEdges(3 * n);
        if (!tin.add(vertices, null)) {
            return null;
        }
        progress.check();
        constrain(tin, vertices, order, segments);
        made.take(tin);
        tin.dispose();
        return made;
    }

    private static double spacing(double[] x, double[] y) {
        double minX = Arrays.stream(x).min().orElse(0);
        double maxX = Arrays.stream(x).max().orElse(1);
        double minY = Arrays.stream(y).min().orElse(0);
        double maxY = Arrays.stream(y).max().orElse(1);
        double area = Math.max((maxX - minX) * (maxY - minY), 1e-6);
        // The library takes points closer than this over 100,000 for one: keep that under ours.
        return Math.min(Math.sqrt(area / Math.max(1, x.length)), 10);
    }

    private static void constrain(
            SemiVirtualIncrementalTin tin, List<Vertex> vertices, int[] order, int[] segments) {
        if (segments.length == 0) {
            return;
        }
        List<IConstraint> constraints = new ArrayList<>();
        for (int i = 0; i < segments.length; i += 2) {
            constraints.add(
                    new LinearConstraint(
                            vertices.get(order[segments[i]]),
                            vertices.get(order[segments[i + 1]])));
        }
        tin.addConstraints(constraints, false);
    }

    private void take(SemiVirtualIncrementalTin tin) {
        int[] triangleAt = new int[tin.getMaximumEdgeAllocationIndex() + 2];
        Arrays.fill(triangleAt, Mesh.NONE);
        int[] corners = new int[6 * x.length];
        int count = 0;
        for (IQuadEdge edge : tin.edges()) {
            IQuadEdge side = edge;
            for (int turn = 0; turn < 2; turn++, side = edge.getDual()) {
                if (triangleAt[side.getIndex()] != Mesh.NONE) {
                    continue;
                }
                IQuadEdge second = side.getForward();
                IQuadEdge third = second.getForward();
                Vertex a = side.getA();
                Vertex b = second.getA();
                Vertex c = third.getA();
                if (a == null || b == null || c == null) {
                    continue;
                }
                corners[3 * count] = a.getIndex();
                corners[3 * count + 1] = b.getIndex();
                corners[3 * count + 2] = c.getIndex();
                triangleAt[side.getIndex()] = 3 * count + 2;
                triangleAt[second.getIndex()] = 3 * count;
                triangleAt[third.getIndex()] = 3 * count + 1;
                count++;
            }
        }
        corner = Arrays.copyOf(corners, 3 * count);
        neighbour = new int[3 * count];
        for (int i = 0; i < triangleAt.length; i++) {
            if (triangleAt[i] != Mesh.NONE) {
                int across = triangleAt[i ^ 1];
                neighbour[triangleAt[i]] = across == Mesh.NONE ? Mesh.NONE : across / 3;
            }
        }
    }

    /** The sides that are breaklines: bit {@code 3 t + k}. */
    BitSet breaks(int[] segments) {
        BitSet breaks = new BitSet();
        if (segments.length == 0) {
            return breaks;
        }
        long[] wanted = new long[segments.length / 2];
        for (int i = 0; i < wanted.length; i++) {
            wanted[i] = key(renumbered[segments[2 * i]], renumbered[segments[2 * i + 1]]);
        }
        Arrays.sort(wanted);
        for (int s = 0; s < corner.length; s++) {
            int t = s / 3;
            int k = s % 3;
            long key = key(corner[3 * t + Mesh.next(k)], corner[3 * t + Mesh.last(k)]);
            if (Arrays.binarySearch(wanted, key) >= 0) {
                breaks.set(s);
            }
        }
        return breaks;
    }

    private static long key(int a, int b) {
        return ((long) Math.min(a, b) << 32) | Math.max(a, b);
    }
}
