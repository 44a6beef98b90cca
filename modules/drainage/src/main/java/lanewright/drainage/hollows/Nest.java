package lanewright.drainage.hollows;

import java.util.Arrays;

/**
 * How pools join and spill, by Kruskal's spanning tree of the leaves over their lowest saddles, the
 * outside being open from the start: two pools that meet before either is open become the parts of
 * one; a pool that meets open water spills there for good. So the levels are those of the paths to
 * the outside whose highest cell is lowest, which is what any flood by priority finds.
 *
 * <p>Pools come in the order of their levels, parts before wholes. Where more than two meet at one
 * level, the joins between are kept, for water takes them one by one; they are {@link #isThin thin}
 * and no hollows of their own.
 */
final class Nest {

    static final int NONE = -1;

    private final Roots roots;
    private final Terrain terrain;

    // By leaf.
    private final int[] joined;
    private final int[] pools;
    private final int[] exits;
    private final int[] exitsFrom;
    private final double[] tops;

    // By leaf that stands for those joined with it: the one whose pit is the lowest.
    private final double[] depths;
    private final int[] left;
    private final int[] right;
    private final double[] formed;

    // By pool.
    private final double[] levels;
    private final int[] bottoms;
    private final int[] sills;
    private final int[] beyond;
    private final int[] lefts;
    private final int[] rights;
    private final int[] parents;
    private final int[] leafOf;
    private final boolean[] thin;
    private int[] jumps = new int[0];
    private int count;

    // The spanning tree.
    private final int[] treeLeaf;
    private final int[] treeOther;
    private final int[] treeCell;
    private final int[] treeBeyond;
    private int branches;

    private Nest(Terrain terrain, Roots roots) {
        this.terrain = terrain;
        this.roots = roots;
        int n = roots.leafCount();
        joined = new int[n];
        pools = new int[n];
        exits = new int[n];
        exitsFrom = new int[n];
        tops = new double[n];
        depths = new double[n];
        left = new int[n];
        right = new int[n];
        formed = new double[n];
        int most = 2 * n;
        levels = new double[most];
        bottoms = new int[most];
        sills = new int[most];
        beyond = new int[most];
        lefts = new int[most];
        rights = new int[most];
        parents = new int[most];
        leafOf = new int[most];
        thin = new boolean[most];
        treeLeaf = new int[n];
        treeOther = new int[n];
        treeCell = new int[n];
        treeBeyond = new int[n];
    }

    static Nest of(Terrain terrain, Roots roots, Ladder ladder) {
        var nest = new Nest(terrain, roots);
        nest.join(ladder);
        nest.lead();
        nest.top();
        nest.jump();
        return nest;
    }

    /** How many pools, thin ones included. */
    int count() {
        return count;
    }

    /** Height at which a pool joins another or spills, m. */
    double level(int pool) {
        return levels[pool];
    }

    /** Its deepest cell. */
    int bottom(int pool) {
        return bottoms[pool];
    }

    /** Its last cell on the way to where it spills. */
    int sill(int pool) {
        return sills[pool];
    }

    /** The first cell on the other side, or {@link Edges#OUTSIDE}. */
    int beyond(int pool) {
        return beyond[pool];
    }

    /** First part, or {@link #NONE}. */
    int left(int pool) {
        return lefts[pool];
    }

    /** Second part, or {@link #NONE}. */
    int right(int pool) {
        return rights[pool];
    }

    /** What it becomes a part of, or {@link #NONE}. */
    int parent(int pool) {
        return parents[pool];
    }

    /** Its leaf if it has no parts, or {@link #NONE}. */
    int leafOf(int pool) {
        return leafOf[pool];
    }

    boolean isThin(int pool) {
        return thin[pool];
    }

    /** The pool of a leaf alone, or {@link #NONE} for the open one. */
    int pool(int leaf) {
        return pools[leaf];
    }

    /** The cell beyond, to which water goes from a full leaf on its way out. */
    int exit(int leaf) {
        return exits[leaf];
    }

    /** The leaf's own cell beside that. */
    int exitFrom(int leaf) {
        return exitsFrom[leaf];
    }

    /** Height of water over a leaf's pit once all is full, m. */
    double top(int leaf) {
        return tops[leaf];
    }

    /**
     * The first of a pool and the pools that it becomes a part of which stands over a height.
     *
     * @param height m; lower than the top of the pool's leaves
     */
    int over(int pool, double height) {
        int at = pool;
        while (!(height < levels[at])) {
            at = height < levels[jumps[at]] ? parents[at] : jumps[at];
        }
        return at;
    }

    private void join(Ladder ladder) {
        Arrays.fill(pools, NONE);
        Arrays.fill(left, NONE);
        Arrays.fill(right, NONE);
        Arrays.fill(formed, Double.NEGATIVE_INFINITY);
        for (int leaf = 0; leaf < joined.length; leaf++) {
            joined[leaf] = leaf;
            depths[leaf] = leaf == Roots.OPEN ? Double.NaN : terrain.height(roots.pit(leaf));
        }
        for (int i = 0; i < ladder.size() && branches + 1 < joined.length; i++) {
            Edges list = ladder.list(i);
            int edge = ladder.edge(i);
            int here = roots.leaf(roots.number(list.tile(edge), list.root(edge)));
            int otherTile = list.otherTile(edge);
            int there =
                    otherTile == Edges.OUTSIDE
                            ? Roots.OPEN
                            : roots.leaf(roots.number(otherTile, list.otherRoot(edge)));
            int a = find(here);
            int b = find(there);
            if (a == b) {
                continue;
            }
            branch(here, there, list.cell(edge), list.other(edge));
            meet(a, b, ladder.height(i), list.cell(edge), list.other(edge));
        }
        Arrays.fill(parents, 0, count, NONE);
        for (int pool = 0; pool < count; pool++) {
            if (lefts[pool] != NONE) {
                parents[lefts[pool]] = pool;
                parents[rights[pool]] = pool;
            }
        }
    }

    private void branch(int here, int there, int cell, int other) {
        treeLeaf[branches] = here;
        treeOther[branches] = there;
        treeCell[branches] = cell;
        treeBeyond[branches++] = other;
    }

    private void meet(int a, int b, double level, int cell, int other) {
        if (a == Roots.OPEN || b == Roots.OPEN) {
            if (a == Roots.OPEN) {
                close(b, level, other, cell);
                joined[b] = a;
            } else {
                close(a, level, cell, other);
                joined[a] = b;
            }
            return;
        }
        boolean first = isLower(a, b);
        int one;
        int two;
        if (first) {
            one = close(a, level, cell, other);
            two = close(b, level, other, cell);
        } else {
            two = close(b, level, other, cell);
            one = close(a, level, cell, other);
        }
        int whole = first ? a : b;
        joined[first ? b : a] = whole;
        left[whole] = first ? one : two;
        right[whole] = first ? two : one;
        formed[whole] = level;
    }

    private boolean isLower(int a, int b) {
        if (depths[a] != depths[b]) {
            return depths[a] < depths[b];
        }
        return roots.pit(a) < roots.pit(b);
    }

    private int close(int whole, double level, int sill, int other) {
        int pool = count++;
        levels[pool] = level;
        bottoms[pool] = roots.pit(whole);
        sills[pool] = sill;
        beyond[pool] = other;
        lefts[pool] = left[whole];
        rights[pool] = right[whole];
        thin[pool] = formed[whole] == level;
        leafOf[pool] = NONE;
        if (left[whole] == NONE) {
            leafOf[pool] = whole;
            pools[whole] = pool;
        }
        return pool;
    }

    private int find(int leaf) {
        int at = leaf;
        while (joined[at] != at) {
            joined[at] = joined[joined[at]];
            at = joined[at];
        }
        return at;
    }

    /** Follows the tree from the outside in, so that every leaf knows its way out. */
    private void lead() {
        int n = joined.length;
        int[] start = new int[n + 1];
        for (int i = 0; i < branches; i++) {
            start[treeLeaf[i] + 1]++;
            start[treeOther[i] + 1]++;
        }
        for (int leaf = 0; leaf < n; leaf++) {
            start[leaf + 1] += start[leaf];
        }
        int[] at = Arrays.copyOf(start, n);
        int[] branch = new int[2 * branches];
        for (int i = 0; i < branches; i++) {
            branch[at[treeLeaf[i]]++] = i;
            branch[at[treeOther[i]]++] = i;
        }
        int[] queue = new int[n];
        int end = 1;
        Arrays.fill(exits, NONE);
        boolean[] led = new boolean[n];
        led[Roots.OPEN] = true;
        for (int i = 0; i < end; i++) {
            int leaf = queue[i];
            for (int k = start[leaf]; k < start[leaf + 1]; k++) {
                int b = branch[k];
                boolean forward = treeLeaf[b] == leaf;
                int other = forward ? treeOther[b] : treeLeaf[b];
                if (!led[other]) {
                    led[other] = true;
                    exits[other] = forward ? treeCell[b] : treeBeyond[b];
                    exitsFrom[other] = forward ? treeBeyond[b] : treeCell[b];
                    queue[end++] = other;
                }
            }
        }
    }

    /**
     * Shortens the way up: from every pool a jump, of such lengths that any height is found in as
     * many steps as the number of pools over each other has binary digits (Myers, An applicative
     * random-access stack, 1983).
     */
    private void jump() {
        jumps = new int[count];
        int[] over = new int[count]; // how many stand over each
        for (int pool = count - 1; pool >= 0; pool--) {
            int parent = parents[pool];
            if (parent == NONE) {
                jumps[pool] = pool;
                continue;
            }
            over[pool] = over[parent] + 1;
            int jump = jumps[parent];
            boolean even = over[parent] - over[jump] == over[jump] - over[jumps[jump]];
            jumps[pool] = even ? jumps[jump] : parent;
        }
    }

    private void top() {
        double[] highest = new double[count];
        for (int pool = count - 1; pool >= 0; pool--) {
            highest[pool] = parents[pool] == NONE ? levels[pool] : highest[parents[pool]];
        }
        tops[Roots.OPEN] = Double.NEGATIVE_INFINITY;
        for (int leaf = 1; leaf < tops.length; leaf++) {
            tops[leaf] = highest[pools[leaf]];
        }
    }
}
