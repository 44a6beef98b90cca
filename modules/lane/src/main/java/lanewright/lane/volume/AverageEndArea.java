package lanewright.lane.volume;

/** Volumes between two sections of known areas. */
public final class AverageEndArea {

    private AverageEndArea() {}

    /**
     * Volume by the average of two areas, {@code V = L (A1 + A2) / 2}: the common rule of the
     * trade, in every surveying text.
     *
     * <p>Exact where area changes along a straight line. Where a section runs out to a point it
     * gives half as much again as the truth: a pyramid fills a third of its box, and this says a
     * half.
     *
     * @param a1 area of the first section, m², zero or more
     * @param a2 area of the second section, m², zero or more
     * @param length distance between them along the alignment, m, zero or more
     * @return volume, m³
     * @throws IllegalArgumentException if an argument is negative or not finite
     */
    public static double volume(double a1, double a2, double length) {
        check(a1, a2, length);
        return length * (a1 + a2) / 2;
    }

    /**
     * The same with each area carried along its own centroid's path, {@code V = L [A1 (1 − e1 κ) +
     * A2 (1 − e2 κ)] / 2}. A centroid e to the right of a line that turns right with curvature κ
     * moves on a circle smaller by the factor 1 − e κ (Pappus).
     *
     * <p>Exact for an unchanging section on an arc.
     *
     * @param a1 area of the first section, m², zero or more
     * @param e1 offset of its centroid, m, positive right
     * @param a2 area of the second section, m², zero or more
     * @param e2 offset of its centroid, m, positive right
     * @param curvature κ of the line between them, 1/m, positive to the right
     * @param length distance between them along the alignment, m, zero or more
     * @return volume, m³
     * @throws IllegalArgumentException if an area or the length is negative, or a number is not
     *     finite
     */
    public static double alongCurve(
            double a1, double e1, double a2, double e2, double curvature, double length) {
        check(a1, a2, length);
        if (!Double.isFinite(e1) || !Double.isFinite(e2) || !Double.isFinite(curvature)) {
            throw new IllegalArgumentException(
                    "centroids and curvature must be finite, were "
                            + e1
                            + ", "
                            + e2
                            + ", "
                            + curvature);
        }
        return length * (a1 * (1 - e1 * curvature) + a2 * (1 - e2 * curvature)) / 2;
    }

    /**
     * Volume where a section runs out to a point, {@code V = L A / 3}: a pyramid, Euclid XII.7.
     *
     * <p>Exact where all dimensions shrink together. Where a wedge runs out to an edge, the average
     * of end areas is the truth instead.
     *
     * @param area area of the section, m², zero or more
     * @param length distance to where it has run out, m, zero or more
     * @return volume, m³
     * @throws IllegalArgumentException if an argument is negative or not finite
     */
    public static double pyramid(double area, double length) {
        check(area, 0, length);
        return length * area / 3;
    }

    private static void check(double a1, double a2, double length) {
        if (!(a1 >= 0 && a2 >= 0 && length >= 0)
                || Double.isInfinite(a1)
                || Double.isInfinite(a2)
                || Double.isInfinite(length)) {
            throw new IllegalArgumentException(
                    "areas and length must be 0 or more, were " + a1 + ", " + a2 + ", " + length);
        }
    }
}
