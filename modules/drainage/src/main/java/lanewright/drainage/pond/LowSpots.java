package lanewright.drainage.pond;

import java.util.List;
import lanewright.measure.Progress;

/**
 * All low spots of a surface of triangles, found and measured on the triangles themselves.
 *
 * <p>The low points of a surface that is flat on each triangle are corners, and so are the points
 * over which its pools spill. So a search over corners and edges finds every pool with its exact
 * level, whatever way its lines run, and a ditch that falls steadily shows none. Area and volume
 * come by cutting each triangle at the level: exact but for rounding.
 *
 * @param listed low spots that are deep and wide enough to list, in the order of their level
 * @param small how many more there are that are too shallow or too small to list
 * @param smallVolume what those hold together, m³
 * @param pipes the pipes, in the order given, and whether they let water through
 */
public record LowSpots(
        List<LowSpot> listed, int small, double smallVolume, List<PlacedPipe> pipes) {

    /**
     * Pools that are no deeper than this are rounding of heights and not counted at all, m. Our
     * choice: no staff or rover reads a height to a millimetre.
     */
    static final double LEAST_DEPTH = 0.001;

    /**
     * What makes a low spot worth a line in a table.
     *
     * @param depth least depth, m
     * @param area least area, m²
     */
    public record Threshold(double depth, double area) {
        /**
         * 50 mm and 2 m². Our choice: what a boot notices, and the width of a lane's wheel tracks.
         */
        public static final Threshold USUAL = new Threshold(0.05, 2);
    }

    /** Copies the list. */
    public LowSpots {
        listed = List.copyOf(listed);
        pipes = List.copyOf(pipes);
    }

    /**
     * Finds the low spots of {@code mesh}.
     *
     * @param pipes pipes that are there already
     * @throws java.util.concurrent.CancellationException if cancelled
     */
    public static LowSpots of(
            Mesh mesh, List<GivenPipe> pipes, Threshold threshold, Progress progress) {
        progress.report(0, "looking for low spots");
        var search = new WholeSearch(mesh, pipes);
        progress.check();
        progress.report(0.5, "looking for low spots");
        return search.all(threshold);
    }
}
