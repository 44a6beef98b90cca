package lanewright.drainage.pond;

import java.util.List;

/**
 * A place that water cannot leave until it has filled up to its spill point. Measured full.
 *
 * @param x local easting of its deepest point, m
 * @param y local northing of its deepest point, m
 * @param bottom height of its deepest point, m
 * @param level height at which it spills, m
 * @param spillX local easting of the spill point, m
 * @param spillY local northing of the spill point, m
 * @param atRim whether it spills at, or reaches over, the rim of the survey or of a hole in it:
 *     what lies beyond is not known, so the pool is at least this large
 * @param spillPipe number of the pipe that it drains through, from zero, or -1
 * @param area area of the water, m²
 * @param volume volume of the water, m³
 * @param parts deepest points of the hollows that join before it is full; empty if it is one hollow
 * @param outline edge of the water: counter-clockwise around it, clockwise around islands
 */
public record LowSpot(
        double x,
        double y,
        double bottom,
        double level,
        double spillX,
        double spillY,
        boolean atRim,
        int spillPipe,
        double area,
        double volume,
        List<Hollow> parts,
        List<Trace> outline) {

    /**
     * A hollow within a larger one.
     *
     * @param x local easting of its deepest point, m
     * @param y local northing of its deepest point, m
     * @param bottom height of its deepest point, m
     * @param level height at which it joins the hollow next to it, m
     */
    public record Hollow(double x, double y, double bottom, double level) {}

    /** Copies the lists. */
    public LowSpot {
        parts = List.copyOf(parts);
        outline = List.copyOf(outline);
    }

    /** Greatest depth of the water, m. */
    public double depth() {
        return level - bottom;
    }

    /** Whether a place on the map is under water once the low spot is full. */
    public boolean covers(double px, double py) {
        int crossings = 0;
        for (Trace ring : outline) {
            crossings += ring.crossings(px, py);
        }
        return crossings % 2 == 1;
    }
}
