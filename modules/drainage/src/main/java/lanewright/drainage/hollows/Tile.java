package lanewright.drainage.hollows;

/**
 * What a tile knows by itself: every cell runs down to a root, which is a pit, or the last cell of
 * the tile on a way that goes on in another tile, through a passage, or leaves the survey.
 *
 * @param ways {@link Ways} by cell
 * @param roots number of the root that each cell runs to, where there is land
 * @param rootCells the roots' own cells, by their numbers in the tile
 * @param targets the cell to which each root runs on, of another tile or beyond a passage, {@link
 *     #LEAVES} or {@link #PIT}
 * @param land cells that run to each root
 * @param rim how many of those lie at the survey's edge
 * @param top the highest of them, m
 * @param own cells of this tile whose water passes each cell, itself included
 * @param edges the saddles that count: those by which a spanning tree of least height joins the
 *     roots and the outside within the tile; no other can be in that of the whole land
 */
@SuppressWarnings("ArrayRecordComponent") // shared within the package, never compared
record Tile(
        byte[] ways,
        char[] roots,
        char[] rootCells,
        int[] targets,
        int[] land,
        int[] rim,
        double[] top,
        int[] own,
        Edges edges) {

    /** In place of a target: out of the survey. */
    static final int LEAVES = -1;

    /** In place of a target: water stays until it spills. */
    static final int PIT = -2;

    int rootCount() {
        return rootCells.length;
    }
}
