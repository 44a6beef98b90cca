package lanewright.drainage.hollows;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Ways over level ground: where a flat has a lower edge, away from its higher and toward its lower
 * edge at once (Barnes, Lehman and Mulla, An efficient assignment of drainage direction over flat
 * surfaces in raster digital elevation models, Computers and Geosciences 62, 2014, which makes
 * Garbrecht and Martz, 1997, quicker); where it has none, the shortest way to its cell of the
 * lowest number, which is then a pit. Of equally good ways the first, counting from east by north.
 */
final class Flats {

    private final Terrain terrain;
    private final Layout layout;
    private final Passages passages;
    private final byte[][] ways;
    private final boolean[] own;
    private final BitSet seen = new BitSet();
    private final BitSet replaced = new BitSet();
    private final CellNumbers places = new CellNumbers();
    private int[] cells = new int[64];
    private int[] away = new int[64];
    private int[] toward = new int[64];
    private byte[] raw = new byte[64];
    private int[] queue = new int[64];
    private int count;

    private Flats(Terrain terrain, Passages passages, byte[][] ways, boolean[] own) {
        this.terrain = terrain;
        this.passages = passages;
        this.layout = terrain.layout();
        this.ways = ways;
        this.own = own;
    }

    /**
     * Gives every flat cell of some tiles its way, and every other cell of the same flats.
     *
     * @param ways ways by tile; those of {@code own} tiles are written to, others are replaced
     *     where they change
     * @param own tiles to look at; those whose ways were replaced are added
     * @param near cells that changed and those beside: where a flat may have changed though none of
     *     its cells in {@code own} says so
     */
    static void resolve(
            Terrain terrain, Passages passages, byte[][] ways, boolean[] own, List<Box> near) {
        var flats = new Flats(terrain, passages, ways, own.clone());
        for (int tile = 0; tile < ways.length; tile++) {
            if (own[tile]) {
                flats.tile(tile);
            }
        }
        near.forEach(flats::box);
        flats.replaced.stream().forEach(tile -> own[tile] = true);
    }

    private void tile(int tile) {
        byte[] here = ways[tile];
        for (int local = 0; local < here.length; local++) {
            if ((here[local] & Ways.MASK) == Ways.FLAT) {
                flat(layout.cell(tile, local));
            }
        }
    }

    private void box(Box box) {
        for (int row = box.row(); row < box.row() + box.rows(); row++) {
            for (int column = box.column(); column < box.column() + box.columns(); column++) {
                int cell = row * layout.columns() + column;
                double z = terrain.height(cell);
                for (int d = 0; d < 8; d++) {
                    int other = layout.neighbour(cell, d);
                    if (other >= 0 && terrain.height(other) == z) {
                        flat(cell);
                        break;
                    }
                }
            }
        }
    }

    /** All cells of one height that hang together with this one. */
    private void flat(int first) {
        if (seen.get(first)) {
            return;
        }
        double z = terrain.height(first);
        places.clear();
        count = 0;
        add(first);
        boolean still = false;
        boolean leaves = false;
        for (int i = 0; i < count; i++) {
            for (int d = 0; d < 8; d++) {
                int other = layout.neighbour(cells[i], d);
                if (other >= 0 && terrain.height(other) == z && !seen.get(other)) {
                    add(other);
                }
            }
            raw[i] = (byte) raw(cells[i]);
            boolean flat = (raw[i] & Ways.MASK) == Ways.FLAT;
            still |= flat;
            leaves |= !flat;
        }
        if (still && leaves) {
            drain(z);
        } else if (still) {
            sink();
        }
    }

    private void add(int cell) {
        if (count == cells.length) {
            cells = Arrays.copyOf(cells, 2 * count);
            away = Arrays.copyOf(away, 2 * count);
            toward = Arrays.copyOf(toward, 2 * count);
            raw = Arrays.copyOf(raw, 2 * count);
            queue = Arrays.copyOf(queue, 2 * count);
        }
        seen.set(cell);
        places.put(cell, count);
        cells[count] = cell;
        away[count] = 0;
        toward[count] = 0;
        count++;
    }

    /** The way that the cell has before flats are looked at. */
    private int raw(int cell) {
        int tile = layout.tile(cell);
        return own[tile]
                ? ways[tile][layout.local(cell)]
                : passages.way(cell, Ways.way(terrain, cell));
    }

    private boolean isFlat(int i) {
        return (raw[i] & Ways.MASK) == Ways.FLAT;
    }

    private int beside(int i, int d) {
        int other = layout.neighbour(cells[i], d);
        return other < 0 ? -1 : places.get(other);
    }

    private boolean higherBeside(int i, double z) {
        for (int d = 0; d < 8; d++) {
            int other = layout.neighbour(cells[i], d);
            if (other >= 0 && terrain.height(other) > z) {
                return true;
            }
        }
        return false;
    }

    private void drain(double z) {
        int waiting = 0;
        for (int i = 0; i < count; i++) {
            if (isFlat(i) && higherBeside(i, z)) {
                away[i] = 1;
                queue[waiting++] = i;
            }
        }
        spread(waiting, away);
        int farthest = 0;
        for (int i = 0; i < count; i++) {
            farthest = Math.max(farthest, away[i]);
        }
        waiting = 0;
        for (int i = 0; i < count; i++) {
            if (!isFlat(i)) {
                for (int d = 0; d < 8; d++) {
                    int other = beside(i, d);
                    if (other >= 0 && isFlat(other)) {
                        toward[i] = 1;
                        queue[waiting++] = i;
                        break;
                    }
                }
            }
        }
        spread(waiting, toward);
        for (int i = 0; i < count; i++) {
            int raised = isFlat(i) && away[i] > 0 ? farthest - away[i] : 0;
            queue[i] = raised + 2 * toward[i];
        }
        choose(-1);
    }

    /** A flat from which nothing leads down. */
    private void sink() {
        int pit = 0;
        for (int i = 1; i < count; i++) {
            if (cells[i] < cells[pit]) {
                pit = i;
            }
        }
        toward[pit] = 1;
        queue[0] = pit;
        spread(1, toward);
        System.arraycopy(toward, 0, queue, 0, count);
        choose(pit);
    }

    /** Counts outward from the cells that wait, over flat cells. */
    private void spread(int waiting, int[] steps) {
        int end = waiting;
        for (int at = 0; at < end; at++) {
            int i = queue[at];
            for (int d = 0; d < 8; d++) {
                int other = beside(i, d);
                if (other >= 0 && steps[other] == 0 && isFlat(other)) {
                    steps[other] = steps[i] + 1;
                    queue[end++] = other;
                }
            }
        }
    }

    /** Every flat cell goes to its lowest neighbour by what now stands in {@code queue}. */
    private void choose(int pit) {
        for (int i = 0; i < count; i++) {
            if (!isFlat(i)) {
                continue;
            }
            int way = Ways.PIT;
            if (i != pit) {
                int least = Integer.MAX_VALUE;
                for (int d = 0; d < 8; d++) {
                    int other = beside(i, d);
                    if (other >= 0 && queue[other] < least) {
                        least = queue[other];
                        way = d;
                    }
                }
            }
            set(cells[i], way | (raw[i] & Ways.RIM));
        }
    }

    private void set(int cell, int way) {
        int tile = layout.tile(cell);
        int local = layout.local(cell);
        if (own[tile]) {
            ways[tile][local] = (byte) way;
        } else if (ways[tile][local] != (byte) way) {
            if (!replaced.get(tile)) {
                replaced.set(tile);
                ways[tile] = ways[tile].clone();
            }
            ways[tile][local] = (byte) way;
        }
    }

    /** Place of each cell in the flat at hand. */
    private static final class CellNumbers {
        private int[] keys = new int[256];
        private int[] values = new int[256];
        private int size;

        void clear() {
            if (keys.length > 1024) {
                keys = new int[256]; // one wide flat shall not make all small ones after it slow
                values = new int[256];
            } else if (size > 0) {
                Arrays.fill(keys, 0);
            }
            size = 0;
        }

        void put(int cell, int value) {
            if (2 * ++size > keys.length) {
                grow();
            }
            int at = at(cell);
            keys[at] = cell + 1;
            values[at] = value;
        }

        int get(int cell) {
            int at = at(cell);
            return keys[at] == 0 ? -1 : values[at];
        }

        private int at(int cell) {
            int mask = keys.length - 1;
            int mixed = cell * 0x9E3779B9;
            int at = (mixed ^ (mixed >>> 15)) & mask;
            while (keys[at] != 0 && keys[at] != cell + 1) {
                at = (at + 1) & mask;
            }
            return at;
        }

        private void grow() {
            int[] oldKeys = keys;
            int[] oldValues = values;
            keys = new int[2 * oldKeys.length];
            values = new int[keys.length];
            for (int i = 0; i < oldKeys.length; i++) {
                if (oldKeys[i] != 0) {
                    int at = at(oldKeys[i] - 1);
                    keys[at] = oldKeys[i];
                    values[at] = oldValues[i];
                }
            }
        }
    }
}
