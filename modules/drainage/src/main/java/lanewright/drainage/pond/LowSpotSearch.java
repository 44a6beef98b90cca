package lanewright.drainage.pond;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import lanewright.measure.Progress;

/**
 * A surface made ready for raising water on it: once with the rim of the survey open, once with
 * only its true exits. Its searches may run at the same time.
 */
public abstract sealed class LowSpotSearch permits WholeSearch, ChangedSearch {

    private final Mesh mesh;
    private final List<PlacedPipe> placed;
    private final List<PipeLink> links = new ArrayList<>();
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

    LowSpotSearch(Mesh mesh, List<PlacedPipe> placed, Progress progress) {
        this.mesh = mesh;
        this.placed = List.copyOf(placed);
        this.progress = progress;
        through = new int[placed.size()];
        for (int p = 0; p < placed.size(); p++) {
            PipeLink link = placed.get(p).link();
            if (link != null) {
                through[links.size()] = p;
                links.add(link);
            }
        }
    }

    /**
     * Whether each place lies on the rim, or is the mouth of a pipe off the surface; not a copy.
     */
    abstract boolean[] rim();

    /** Raises the water, which leaves where {@code open} says. */
    abstract Flood flood(boolean[] open);

    /** Triangles that may have a corner under water; all that have one are among them. */
    abstract BitSet mayBeWet(Flood flood);

    /** The pipes that let water through, in the order of their places after the vertices. */
    List<PipeLink> links() {
        return links;
    }

    /** Asked whether to go on. */
    Progress progress() {
        return progress;
    }

    /** All low spots, with water leaving wherever it reaches the rim. */
    public LowSpots all(LowSpots.Threshold threshold) {
        return found(rim(), threshold);
    }

    /**
     * All low spots, with water leaving only at {@code exits} and by pipes that lead off the
     * surface; the rest of the rim is a wall. Their levels hold for ground that rises beyond the
     * rim; their areas and volumes end at it. An exit that is no place of this surface opens the
     * nearest place on its rim.
     */
    public LowSpots within(Exits exits, LowSpots.Threshold threshold) {
        boolean[] rim = rim();
        boolean[] open = new boolean[rim.length];
        Set<Exit> missing = new LinkedHashSet<>(exits.at());
        for (int place = 0; place < open.length; place++) {
            if (rim[place]) {
                open[place] =
                        place >= mesh.vertexCount()
                                || missing.remove(new Exit(mesh.x(place), mesh.y(place)));
            }
        }
        for (Exit exit : missing) {
            int nearest = nearestOnRim(exit);
            if (nearest >= 0) {
                open[nearest] = true;
            }
        }
        return found(open, threshold);
    }

    private int nearestOnRim(Exit exit) {
        int nearest = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int v = 0; v < mesh.vertexCount(); v++) {
            if (!rim()[v]) {
                continue;
            }
            double distance = Math.hypot(mesh.x(v) - exit.x(), mesh.y(v) - exit.y());
            if (distance < least) {
                nearest = v;
                least = distance;
            }
        }
        return nearest;
    }

    private LowSpots found(boolean[] open, LowSpots.Threshold threshold) {
        Flood flood = flood(open);
        return new Measuring(mesh, rim(), flood, placed, through, threshold)
                .found(mayBeWet(flood), progress);
    }
}
