package lanewright.drainage.pond;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import lanewright.measure.Progress;

/** Raises the water over every place of a surface. Cost: some 70 bytes a vertex while it lives. */
public final class WholeSearch extends LowSpotSearch {

    private final Mesh mesh;
    private final Graph graph;
    private final int[] order;

    /**
     * Makes {@code mesh} ready.
     *
     * @param pipes pipes that are there already
     */
    public WholeSearch(Mesh mesh, List<GivenPipe> pipes) {
        this(mesh, pipes.stream().map(pipe -> PlacedPipe.on(mesh, pipe)).toList(), Progress.NONE);
    }

    /**
     * Makes {@code mesh} ready.
     *
     * @param placed pipes that are there already, with their ends on this surface
     * @param progress asked whether to go on, here and by the searches
     */
    public WholeSearch(Mesh mesh, List<PlacedPipe> placed, Progress progress) {
        super(mesh, placed, progress);
        this.mesh = mesh;
        graph = Graph.of(mesh, links(), progress);
        order = HeightOrder.of(graph.heights(), progress);
    }

    /** The exits of this surface, taken as the ground as it is. */
    public Exits exits() {
        boolean[] exits = RimExits.of(graph, order, progress());
        List<Exit> at = new ArrayList<>();
        for (int v = 0; v < mesh.vertexCount(); v++) {
            if (exits[v]) {
                at.add(new Exit(mesh.x(v), mesh.y(v)));
            }
        }
        return new Exits(at);
    }

    @Override
    boolean[] rim() {
        return graph.outlets();
    }

    @Override
    Flood flood(boolean[] open) {
        return Flood.of(graph, order, open, LowSpots.LEAST_DEPTH, progress());
    }

    @Override
    BitSet mayBeWet(Flood flood) {
        var all = new BitSet(mesh.triangleCount());
        all.set(0, mesh.triangleCount());
        return all;
    }
}
