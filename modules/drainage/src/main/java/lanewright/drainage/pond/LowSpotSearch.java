package lanewright.drainage.pond;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import lanewright.measure.Progress;

/**
 * A surface made ready for raising water on it: once with the rim of the survey open, once with
 * only its true exits. Cost: some 70 bytes a vertex while it lives.
 */
public final class LowSpotSearch {

    private final Mesh mesh;
    private final Graph graph;
    private final int[] order;
    private final List<PlacedPipe> placed;
    private final int[] through;
    private final Progress progress;

    /**
     * Places where water leaves a survey.
     *
     * @param at the places, each that of a vertex on its rim, in the order of the vertices
     */
    public record Exits(List<Exit> at) {
        /** Copies the list. */
        public Exits {
            at = List.copyOf(at);
        }
    }

    /**
     * A place where water leaves a survey.
     *
     * @param x local easting, m
     * @param y local northing, m
     */
    public record Exit(double x, double y) {}

    /**
     * Makes {@code mesh} ready.
     *
     * @param pipes pipes that are there already
     */
    public LowSpotSearch(Mesh mesh, List<GivenPipe> pipes) {
        this(mesh, pipes.stream().map(pipe -> PlacedPipe.on(mesh, pipe)).toList(), Progress.NONE);
    }

    /**
     * Makes {@code mesh} ready.
     *
     * @param placed pipes that are there already, with their ends on this surface
     * @param progress asked whether to go on, here and by the searches
     */
    public LowSpotSearch(Mesh mesh, List<PlacedPipe> placed, Progress progress) {
        this.mesh = mesh;
        this.placed = List.copyOf(placed);
        this.progress = progress;
        through = new int[placed.size()];
        List<PipeLink> links = new ArrayList<>();
        for (int p = 0; p < placed.size(); p++) {
            PipeLink link = placed.get(p).link();
            if (link != null) {
                through[links.size()] = p;
                links.add(link);
            }
        }
        graph = Graph.of(mesh, links, progress);
        order = HeightOrder.of(graph.heights(), progress);
    }

    /** All low spots, with water leaving wherever it reaches the rim. */
    public LowSpots all(LowSpots.Threshold threshold) {
        return found(graph.outlets(), threshold);
    }

    /** The exits of this surface, taken as the ground as it is. */
    public Exits exits() {
        boolean[] exits = RimExits.of(graph, order, progress);
        List<Exit> at = new ArrayList<>();
        for (int v = 0; v < mesh.vertexCount(); v++) {
            if (exits[v]) {
                at.add(new Exit(mesh.x(v), mesh.y(v)));
            }
        }
        return new Exits(at);
    }

    /**
     * All low spots, with water leaving only at {@code exits} and by pipes that lead off the
     * surface; the rest of the rim is a wall. Their levels hold for ground that rises beyond the
     * rim; their areas and volumes end at it. An exit that is no place of this surface opens the
     * nearest place on its rim.
     */
    public LowSpots within(Exits exits, LowSpots.Threshold threshold) {
        boolean[] outlets = new boolean[graph.size()];
        Set<Exit> missing = new LinkedHashSet<>(exits.at());
        for (int place = 0; place < outlets.length; place++) {
            if (graph.isOutlet(place)) {
                outlets[place] =
                        place >= mesh.vertexCount()
                                || missing.remove(new Exit(mesh.x(place), mesh.y(place)));
            }
        }
        for (Exit exit : missing) {
            int nearest = nearestOnRim(exit);
            if (nearest >= 0) {
                outlets[nearest] = true;
            }
        }
        return found(outlets, threshold);
    }

    private int nearestOnRim(Exit exit) {
        int nearest = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int v = 0; v < mesh.vertexCount(); v++) {
            double distance = Math.hypot(mesh.x(v) - exit.x(), mesh.y(v) - exit.y());
            if (graph.isOutlet(v) && distance < least) {
                nearest = v;
                least = distance;
            }
        }
        return nearest;
    }

    private LowSpots found(boolean[] outlets, LowSpots.Threshold threshold) {
        Flood flood = Flood.of(graph, order, outlets, LowSpots.LEAST_DEPTH, progress);
        return new Measuring(mesh, graph, flood, placed, through, threshold).found(progress);
    }
}
