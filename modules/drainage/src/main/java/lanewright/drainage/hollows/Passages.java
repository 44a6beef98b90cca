package lanewright.drainage.hollows;

import java.util.ArrayList;
import java.util.List;

/**
 * All passages of a terrain. One that falls takes what comes to a cell from which nothing near is
 * lower; every one is a saddle between its ends.
 */
final class Passages {

    private final Terrain terrain;
    private final Layout layout;
    private final List<Passage> all;

    /**
     * The passages.
     *
     * @throws IllegalArgumentException if an end lies where there is no land
     */
    Passages(Terrain terrain, List<Passage> all) {
        this.terrain = terrain;
        this.layout = terrain.layout();
        this.all = List.copyOf(all);
        for (Passage passage : all) {
            if (isNoLand(passage.from())
                    || (passage.to() != Hollow.OUTSIDE && isNoLand(passage.to()))) {
                throw new IllegalArgumentException(passage + " ends where there is no land");
            }
        }
    }

    private boolean isNoLand(int cell) {
        return cell < 0 || cell >= terrain.cells() || Double.isNaN(terrain.height(cell));
    }

    List<Passage> all() {
        return all;
    }

    /** Whether water that comes to the upper end runs through, however little. */
    boolean falls(Passage passage) {
        double z = terrain.height(passage.from());
        return z >= passage.height()
                && (passage.to() == Hollow.OUTSIDE || terrain.height(passage.to()) < z);
    }

    private double low(Passage passage) {
        return passage.to() == Hollow.OUTSIDE
                ? Double.POSITIVE_INFINITY
                : Math.min(terrain.height(passage.from()), terrain.height(passage.to()));
    }

    /** Height of the saddle that a passage is, m. */
    private double saddle(Passage passage) {
        double z = Math.max(terrain.height(passage.from()), passage.height());
        return passage.to() == Hollow.OUTSIDE ? z : Math.max(z, terrain.height(passage.to()));
    }

    /** The way from a cell, {@link Ways#THROUGH} where it would stay and a passage leads on. */
    int way(int cell, int way) {
        int over = way & Ways.MASK;
        return (over == Ways.PIT || over == Ways.FLAT) && through(cell) != Tile.PIT
                ? Ways.THROUGH | (way & Ways.RIM)
                : way;
    }

    /** The ways of a tile, from what the ground alone gives. */
    void lead(int tile, byte[] ways) {
        for (Passage passage : all) {
            if (layout.tile(passage.from()) == tile) {
                int local = layout.local(passage.from());
                ways[local] = (byte) way(passage.from(), ways[local]);
            }
        }
    }

    /** Where the first passage leads that falls from a cell, or {@link Tile#PIT}. */
    int through(int cell) {
        for (Passage passage : all) {
            if (passage.from() == cell && falls(passage)) {
                return passage.to();
            }
        }
        return Tile.PIT;
    }

    /** The saddles. */
    Edges edges(Tile[] tiles) {
        var edges = new Edges();
        for (Passage passage : all) {
            int a = passage.from();
            int b = passage.to();
            if (b != Hollow.OUTSIDE && b < a) {
                a = passage.to();
                b = passage.from();
            }
            int tile = layout.tile(a);
            int otherTile = b == Hollow.OUTSIDE ? Edges.OUTSIDE : layout.tile(b);
            edges.add(
                    saddle(passage),
                    low(passage),
                    a,
                    b,
                    tile,
                    tiles[tile].roots()[layout.local(a)],
                    otherTile,
                    otherTile == Edges.OUTSIDE ? 0 : tiles[otherTile].roots()[layout.local(b)]);
        }
        return edges.chosen(edges.sorted(), edges.size());
    }

    /** Cells from which passages lead otherwise than they did. */
    List<Box> changedFrom(Passages known) {
        List<Box> boxes = new ArrayList<>();
        for (Passage passage : all) {
            if (!known.all.contains(passage) || known.falls(passage) != falls(passage)) {
                boxes.add(box(passage));
            }
        }
        for (Passage passage : known.all) {
            if (!all.contains(passage)) {
                boxes.add(box(passage));
            }
        }
        return boxes;
    }

    private Box box(Passage passage) {
        return new Box(passage.from() % layout.columns(), passage.from() / layout.columns(), 1, 1);
    }

    /** Cells at the other ends of passages from or to a cell that let water stand as high. */
    List<Integer> beyond(int cell, double level) {
        if (all.isEmpty()) {
            return List.of();
        }
        List<Integer> others = new ArrayList<>();
        for (Passage passage : all) {
            if (passage.height() < level && passage.to() != Hollow.OUTSIDE) {
                if (passage.from() == cell) {
                    others.add(passage.to());
                } else if (passage.to() == cell) {
                    others.add(passage.from());
                }
            }
        }
        return others;
    }
}
