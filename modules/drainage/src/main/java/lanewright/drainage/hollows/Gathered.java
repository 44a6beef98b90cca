package lanewright.drainage.hollows;

/**
 * Where the water of each root's land goes on, and how many cells it has gathered by then.
 *
 * @param targets the next cell by root, or {@link Tile#LEAVES}
 * @param land cells whose water passes each root, those of its own land included
 * @param rim how many of those lie at the survey's edge
 */
@SuppressWarnings("ArrayRecordComponent") // shared within the package, never compared
record Gathered(int[] targets, int[] land, int[] rim) {

    static Gathered of(Layout layout, Tile[] tiles, Roots roots, Nest nest) {
        int count = roots.count();
        int[] targets = new int[count];
        int[] next = new int[count];
        int[] land = new int[count];
        int[] rim = new int[count];
        int[] waiting = new int[count];
        for (int tile = 0; tile < tiles.length; tile++) {
            Tile here = tiles[tile];
            int base = roots.first(tile);
            for (int root = 0; root < here.rootCount(); root++) {
                int at = base + root;
                land[at] = here.land()[root];
                rim[at] = here.rim()[root];
                int target = here.targets()[root];
                if (target == Tile.PIT) {
                    target = nest.exit(roots.leaf(at));
                }
                targets[at] = target;
                next[at] = target < 0 ? Tile.LEAVES : roots.of(target);
                if (next[at] >= 0) {
                    waiting[next[at]]++;
                }
            }
        }
        for (int root = 0; root < count; root++) {
            int at = root;
            while (waiting[at] == 0) {
                waiting[at] = -1; // done
                int to = next[at];
                if (to < 0) {
                    break;
                }
                land[to] += land[at];
                rim[to] += rim[at];
                waiting[to]--;
                at = to;
            }
        }
        return new Gathered(targets, land, rim);
    }
}
