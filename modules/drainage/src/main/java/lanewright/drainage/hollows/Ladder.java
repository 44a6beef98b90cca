package lanewright.drainage.hollows;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * All saddles of a land from the lowest up. Lists of edges are numbered: twice the tile's number
 * for those within it, one more for its seams.
 */
final class Ladder {

    private final Edges[] lists;
    private double[] heights;
    private long[] refs;
    private int size;

    private Ladder(Edges[] lists, int room) {
        this.lists = lists;
        heights = new double[room];
        refs = new long[room];
    }

    /**
     * Puts the lists in order.
     *
     * @param known the order before some lists became others, or null
     */
    static Ladder of(Edges[] lists, @Nullable Ladder known) {
        int fresh = 0;
        for (int list = 0; list < lists.length; list++) {
            fresh += known == null || known.lists[list] != lists[list] ? lists[list].size() : 0;
        }
        var ladder = new Ladder(lists, fresh);
        int[] ends = new int[lists.length + 1];
        int runs = 0;
        for (int list = 0; list < lists.length; list++) {
            if (known == null || known.lists[list] != lists[list]) {
                Edges edges = lists[list];
                for (int edge = 0; edge < edges.size(); edge++) {
                    ladder.add(edges.height(edge), ((long) list << 32) | edge);
                }
                ends[++runs] = ladder.size;
            }
        }
        ladder.merge(ends, runs);
        return known == null ? ladder : ladder.with(known);
    }

    int size() {
        return size;
    }

    double height(int at) {
        return heights[at];
    }

    Edges list(int at) {
        return lists[(int) (refs[at] >>> 32)];
    }

    int edge(int at) {
        return (int) refs[at];
    }

    private void add(double height, long ref) {
        heights[size] = height;
        refs[size++] = ref;
    }

    /** Merges runs two by two. */
    private void merge(int[] ends, int count) {
        double[] spareHeights = new double[size];
        long[] spareRefs = new long[size];
        int runs = count;
        while (runs > 1) {
            int made = 0;
            for (int run = 0; run < runs; run += 2) {
                int left = ends[run];
                int middle = ends[run + 1];
                int right = middle;
                int end = run + 2 <= runs ? ends[run + 2] : middle;
                for (int i = left; i < end || i < middle; i++) {
                    boolean fromRight =
                            left == middle || (right < end && isBefore(this, right, this, left));
                    int from = fromRight ? right++ : left++;
                    spareHeights[i] = heights[from];
                    spareRefs[i] = refs[from];
                }
                ends[++made] = end;
            }
            double[] h = heights;
            heights = spareHeights;
            spareHeights = h;
            long[] r = refs;
            refs = spareRefs;
            spareRefs = r;
            runs = made;
        }
    }

    /** Together with what is left of an order known before. */
    private Ladder with(Ladder known) {
        var all = new Ladder(lists, size + known.size);
        int next = 0;
        for (int i = 0; i < known.size; i++) {
            int list = (int) (known.refs[i] >>> 32);
            if (known.lists[list] != lists[list]) {
                continue;
            }
            while (next < size && isBefore(this, next, known, i)) {
                all.add(heights[next], refs[next]);
                next++;
            }
            all.add(known.heights[i], known.refs[i]);
        }
        while (next < size) {
            all.add(heights[next], refs[next]);
            next++;
        }
        all.heights = Arrays.copyOf(all.heights, all.size);
        all.refs = Arrays.copyOf(all.refs, all.size);
        return all;
    }

    private static boolean isBefore(Ladder a, int i, Ladder b, int j) {
        double z = a.heights[i];
        double z2 = b.heights[j];
        if (z != z2) {
            return z < z2;
        }
        return a.list(i).isBefore(a.edge(i), b.list(j), b.edge(j));
    }
}
