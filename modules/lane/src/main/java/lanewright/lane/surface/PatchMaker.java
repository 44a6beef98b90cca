package lanewright.lane.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import lanewright.ground.Patch;

/**
 * Makes the finished surface between two rays into a patch that can be laid into the ground: one
 * height at every place, no two vertices at one place. Where the surface steps straight up or down
 * it leans a little instead.
 */
final class PatchMaker {

    /** What would be vertical leans over by this much, m. */
    static final double LEAN = 0.001;

    /** Edges of strips nearer than this are one, m. */
    private static final double SAME = 1e-4;

    private final List<double[]> vertices = new ArrayList<>();
    private int[] corners = new int[3 * 256];
    private SurfacePart[] parts = new SurfacePart[256];
    private int count;
    private final BitSet lines = new BitSet();

    /** A patch, and what each of its triangles is part of. */
    record Made(Patch patch, List<SurfacePart> parts) {}

    /** One side of a ray as vertices going outward, each at an edge of a strip. */
    private static final class Chain {
        private final int[] vertex;
        private final int[] edge;
        private final double[] out;
        private int size;

        Chain(int room) {
            vertex = new int[room];
            edge = new int[room];
            out = new double[room];
        }

        int last() {
            return vertex[size - 1];
        }
    }

    /** A ray's two sides, sharing the vertex on the alignment. */
    private record Across(Ray ray, Chain left, Chain right) {
        Chain side(boolean toRight) {
            return toRight ? right : left;
        }
    }

    /**
     * Makes the patch of some rays.
     *
     * @param rays at least two in station order, with ground under both ends of each
     */
    Made make(List<Ray> rays) {
        List<Across> all = new ArrayList<>();
        int last = rays.size() - 1;
        all.add(across(rays.get(0), 0));
        for (int i = 0; i <= last; i++) {
            all.add(across(rays.get(i), i == 0 ? LEAN : i == last ? -LEAN : 0));
        }
        all.add(across(rays.get(last), 0));
        List<Integer> right = new ArrayList<>();
        List<Integer> left = new ArrayList<>();
        for (int i = 0; i + 1 < all.size(); i++) {
            zip(all.get(i), all.get(i + 1), true, right);
            zip(all.get(i), all.get(i + 1), false, left);
        }
        double[] x = vertices.stream().mapToDouble(v -> v[0]).toArray();
        double[] y = vertices.stream().mapToDouble(v -> v[1]).toArray();
        double[] z = vertices.stream().mapToDouble(v -> v[2]).toArray();
        Patch patch =
                new Patch(x, y, z, Arrays.copyOf(corners, 3 * count), rim(all, right, left), lines);
        return new Made(patch, List.of(Arrays.copyOf(parts, count)));
    }

    private static int[] rim(List<Across> all, List<Integer> right, List<Integer> left) {
        List<Integer> rim = new ArrayList<>();
        Across first = all.get(0);
        Across last = all.get(all.size() - 1);
        for (int i = first.left.size - 1; i > 0; i--) {
            rim.add(first.left.vertex[i]);
        }
        for (int i = 0; i < first.right.size; i++) {
            rim.add(first.right.vertex[i]);
        }
        rim.addAll(right);
        for (int i = last.right.size - 2; i > 0; i--) {
            rim.add(last.right.vertex[i]);
        }
        for (int i = 0; i < last.left.size; i++) {
            rim.add(last.left.vertex[i]);
        }
        for (int i = left.size() - 2; i >= 0; i--) {
            rim.add(left.get(i));
        }
        return rim.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Vertices of a ray, moved along the lane. */
    private Across across(Ray ray, double moved) {
        double scale = Math.sqrt(ray.dx() * ray.dx() + ray.dy() * ray.dy());
        double mx = -ray.dy() / scale * moved;
        double my = ray.dx() / scale * moved;
        int middle = vertex(ray.x() + mx, ray.y() + my, ray.right().finished(0, false));
        return new Across(ray, side(ray, false, middle, mx, my), side(ray, true, middle, mx, my));
    }

    private Chain side(Ray ray, boolean right, int middle, double mx, double my) {
        Flank flank = ray.flank(right);
        Chain chain = new Chain(2 * flank.strips() + 3);
        chain.vertex[chain.size++] = middle;
        for (int strip = 0; strip < flank.strips(); strip++) {
            add(
                    chain,
                    ray,
                    right,
                    2 * strip,
                    flank.out(strip),
                    flank.finished(strip, false),
                    mx,
                    my);
            add(
                    chain,
                    ray,
                    right,
                    2 * strip + 1,
                    flank.out(strip + 1),
                    flank.finished(strip, true),
                    mx,
                    my);
        }
        endAt(chain, ray, right, mx, my);
        return chain;
    }

    private void add(
            Chain chain,
            Ray ray,
            boolean right,
            int edge,
            double at,
            double z,
            double mx,
            double my) {
        int last = chain.size - 1;
        double out = at;
        if (at - chain.out[last] < SAME) {
            if (Math.abs(z - vertices.get(chain.vertex[last])[2]) < SAME) {
                return;
            }
            out = chain.out[last] + LEAN;
        }
        chain.out[chain.size] = out;
        chain.edge[chain.size] = edge;
        chain.vertex[chain.size++] = vertex(ray.x(right, out) + mx, ray.y(right, out) + my, z);
    }

    /**
     * The last vertex lies at the catch point, whatever lay within a hair of it before; or, where
     * the ground is not met, at the foot of a step down or up to it just beyond the hinge.
     */
    private void endAt(Chain chain, Ray ray, boolean right, double mx, double my) {
        Flank flank = ray.flank(right);
        double out = rimOut(flank);
        while (chain.size > 1 && chain.out[chain.size - 1] > out - SAME) {
            chain.size--;
        }
        chain.out[chain.size] = out;
        chain.edge[chain.size] = 2 * flank.strips() - 1 + (flank.isClosed() ? 0 : 1);
        chain.vertex[chain.size++] =
                vertex(ray.x(right, out) + mx, ray.y(right, out) + my, flank.catchHeight());
    }

    /** How far out the rim of the patch lies on a flank, m. */
    static double rimOut(Flank flank) {
        return flank.catchOut() + (flank.isClosed() ? 0 : LEAN);
    }

    private static SurfacePart part(Ray ray, boolean right, int edge) {
        Flank flank = ray.flank(right);
        return flank.part(Math.min(edge / 2, flank.strips() - 1));
    }

    private int vertex(double x, double y, double z) {
        vertices.add(new double[] {x, y, z});
        return vertices.size() - 1;
    }

    /** Fills the land between one side of two rays, and goes on along the rim to the second. */
    private void zip(Across a, Across b, boolean right, List<Integer> rim) {
        Chain ca = a.side(right);
        Chain cb = b.side(right);
        boolean same = a.ray.leadsTo(b.ray, right);
        rim.add(b.side(right).last());
        int i = 0;
        int j = 0;
        while (i + 1 < ca.size || j + 1 < cb.size) {
            int turn = i + 1 == ca.size ? 1 : j + 1 == cb.size ? -1 : compare(ca, i, cb, j, same);
            SurfacePart part =
                    turn <= 0
                            ? part(a.ray, right, ca.edge[i + 1])
                            : part(b.ray, right, cb.edge[j + 1]);
            if (turn == 0) {
                quad(ca, i, cb, j, right, part);
                i++;
                j++;
            } else if (turn < 0) {
                triangle(ca.vertex[i], ca.vertex[i + 1], cb.vertex[j], right, part);
                i++;
            } else {
                triangle(ca.vertex[i], cb.vertex[j + 1], cb.vertex[j], right, part);
                j++;
            }
            boolean string = same && ca.edge[i] == cb.edge[j];
            if (string || i == 0) {
                mark(ca.vertex[i], cb.vertex[j]);
            }
        }
    }

    private static int compare(Chain ca, int i, Chain cb, int j, boolean same) {
        return same
                ? Integer.compare(ca.edge[i + 1], cb.edge[j + 1])
                : ca.out[i + 1] <= cb.out[j + 1] ? -1 : 1;
    }

    private void quad(Chain ca, int i, Chain cb, int j, boolean right, SurfacePart part) {
        int aIn = ca.vertex[i];
        int aOut = ca.vertex[i + 1];
        int bIn = cb.vertex[j];
        int bOut = cb.vertex[j + 1];
        double outward = vertices.get(aIn)[2] + vertices.get(bOut)[2];
        double inward = vertices.get(aOut)[2] + vertices.get(bIn)[2];
        if (outward <= inward) {
            triangle(aIn, aOut, bOut, right, part);
            triangle(aIn, bOut, bIn, right, part);
        } else {
            triangle(aIn, aOut, bIn, right, part);
            triangle(aOut, bOut, bIn, right, part);
        }
    }

    /** Adds a triangle that runs counter-clockwise on the right side. */
    private void triangle(int a, int b, int c, boolean right, SurfacePart part) {
        if (count == parts.length) {
            corners = Arrays.copyOf(corners, 2 * corners.length);
            parts = Arrays.copyOf(parts, 2 * parts.length);
        }
        corners[3 * count] = a;
        corners[3 * count + 1] = right ? b : c;
        corners[3 * count + 2] = right ? c : b;
        parts[count++] = part;
    }

    /** Marks the side between two vertices of one of the last triangles as a line. */
    private void mark(int p, int q) {
        for (int t = Math.max(0, count - 2); t < count; t++) {
            for (int k = 0; k < 3; k++) {
                int a = corners[3 * t + (k + 1) % 3];
                int b = corners[3 * t + (k + 2) % 3];
                if ((a == p && b == q) || (a == q && b == p)) {
                    lines.set(3 * t + k);
                }
            }
        }
    }
}
