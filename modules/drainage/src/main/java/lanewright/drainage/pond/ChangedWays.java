package lanewright.drainage.pond;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntUnaryOperator;
import lanewright.measure.Progress;

/**
 * A surface that differs from the ground only near its changing piece: the ways of that piece as
 * they are now, and of the land around it only those that decide something.
 */
final class ChangedWays implements Ways {

    private final Surroundings around;
    private final Graph ground;
    private final Mesh mesh;
    private final double[] pipeHeights;
    private final int[] starts;
    private final int[] ends;
    private final boolean[] outlets;
    private final int[] madeOrder;

    /**
     * Takes the changed piece of a surface.
     *
     * @param around the land around it
     * @param mesh the surface; its first vertices are those of the ground
     * @param touched its triangles with a corner that may have changed or is new
     * @param links pipes, whose ends on the ground lie where it may change
     */
    ChangedWays(
            Surroundings around,
            Mesh mesh,
            int[] touched,
            List<PipeLink> links,
            Progress progress) {
        this.around = around;
        this.mesh = mesh;
        ground = around.ground();
        int vertices = mesh.vertexCount();
        int size = vertices + 2 * links.size();
        outlets = Arrays.copyOf(ground.outlets(), size);
        for (int place : around.nearOrder()) {
            outlets[place] = false;
        }
        pipeHeights = new double[2 * links.size()];
        for (int p = 0; p < links.size(); p++) {
            pipeHeights[2 * p] = links.get(p).inletHeight();
            pipeHeights[2 * p + 1] = links.get(p).outletHeight();
        }
        var ways = new Graph.Lists(size);
        for (int pass = 0; pass < 2; pass++) {
            progress.check();
            for (int t : touched) {
                for (int k = 0; k < 3; k++) {
                    int a = mesh.corner(t, (k + 1) % 3);
                    int b = mesh.corner(t, (k + 2) % 3);
                    boolean rim = mesh.neighbour(t, k) < 0;
                    if (isNear(a) || isNear(b)) {
                        ways.one(a, b); // the other way comes from the triangle across the edge
                        if (rim) {
                            ways.one(b, a);
                        }
                    }
                    outlets[a] |= rim;
                    outlets[b] |= rim;
                }
            }
            Graph.join(links, vertices, ways, outlets);
            ways.endPass();
        }
        starts = ways.starts();
        ends = ways.ends();
        madeOrder = madeOrder(size);
    }

    private int[] madeOrder(int size) {
        int first = ground.size();
        double[] heights = new double[size - first];
        for (int i = 0; i < heights.length; i++) {
            heights[i] = height(first + i);
        }
        int[] made = HeightOrder.of(heights);
        for (int i = 0; i < made.length; i++) {
            made[i] += first;
        }
        return made;
    }

    /** The triangles that have a corner which may have changed or is new. */
    static int[] touched(Mesh mesh, IntUnaryOperator unchanged, boolean[] nearTriangles) {
        int[] touched = new int[1024];
        int count = 0;
        for (int t = 0; t < mesh.triangleCount(); t++) {
            int was = unchanged.applyAsInt(t);
            if (was < 0 || nearTriangles[was]) {
                if (count == touched.length) {
                    touched = Arrays.copyOf(touched, 2 * count);
                }
                touched[count++] = t;
            }
        }
        return Arrays.copyOf(touched, count);
    }

    private boolean isNear(int place) {
        return place >= ground.size() || around.isNear(place);
    }

    @Override
    public int size() {
        return outlets.length;
    }

    @Override
    public double height(int place) {
        int vertices = mesh.vertexCount();
        return place < vertices ? mesh.z(place) : pipeHeights[place - vertices];
    }

    @Override
    public int degree(int place) {
        return changed(place) + (isNear(place) ? 0 : ground.degree(place));
    }

    private int changed(int place) {
        return starts[place + 1] - starts[place];
    }

    @Override
    public int next(int place, int i) {
        int changed = changed(place);
        if (i < changed) {
            return ends[starts[place] + i];
        }
        int other = ground.next(place, i - changed);
        boolean leads = !around.isNear(other) && isBefore(other, place);
        return leads ? around.bottomOf(other) : place;
    }

    /** Whether each place of the rim is an outlet; not a copy. */
    boolean[] outlets() {
        return outlets;
    }

    /** The places that decide something, from the lowest to the highest. */
    int[] order(boolean[] open, Progress progress) {
        int[] far = around.decided(open, progress);
        return merged(merged(far, around.nearOrder()), madeOrder);
    }

    private int[] merged(int[] a, int[] b) {
        int[] merged = new int[a.length + b.length];
        int i = 0;
        int j = 0;
        for (int at = 0; at < merged.length; at++) {
            boolean first = j == b.length || (i < a.length && isBefore(a[i], b[j]));
            merged[at] = first ? a[i++] : b[j++];
        }
        return merged;
    }

    /** Tells of every far place in which low spot it lies, from that of the bottom below it. */
    void spread(Flood flood) {
        for (int place = 0; place < ground.size(); place++) {
            if (around.isNear(place)) {
                continue;
            }
            int bottom = around.bottomOf(place);
            int spot = flood.spotOf(bottom);
            if (bottom != place) {
                boolean wet = spot != Flood.NONE && isBefore(place, flood.pools().get(spot).sill());
                flood.put(place, wet ? spot : Flood.NONE);
            }
        }
    }
}
