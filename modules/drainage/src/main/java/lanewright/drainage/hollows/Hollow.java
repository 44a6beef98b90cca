package lanewright.drainage.hollows;

import java.util.List;
import org.apache.commons.math3.special.Erf;

/**
 * A hollow: land that water fills until it joins a neighbour or runs out.
 *
 * @param number among all hollows of a terrain, in the order of spill heights
 * @param bottom its deepest cell; of equally deep ones a pit of the lowest number
 * @param bottomHeight m
 * @param spillHeight height at which it joins another hollow or spills, m
 * @param sill its own cell from which water goes over; of equal ones that of the lowest number
 * @param into the hollow without parts that water runs into from there, or {@link #OUTSIDE} if it
 *     leaves the survey on that way without meeting another
 * @param beyond the first cell on the other side, or {@link #OUTSIDE} at the survey's edge
 * @param cells how many cells stand under water when it is full
 * @param area of those, m²
 * @param volume when it is full, m³
 * @param catchment area of the land that runs to it without first filling another hollow beside it,
 *     its own included, m²
 * @param parent the hollow that it becomes a part of when it is full and its neighbour is too, or
 *     {@link #OUTSIDE} if it spills to lower land for good
 * @param parts hollows that joined to make it, by number
 * @param apart distance from the middle of its deepest cell to that of the higher cell at its
 *     spill, m
 */
public record Hollow(
        int number,
        int bottom,
        double bottomHeight,
        double spillHeight,
        int sill,
        int into,
        int beyond,
        int cells,
        double area,
        double volume,
        double catchment,
        int parent,
        List<Integer> parts,
        double apart) {

    /** No hollow, no cell: out of the survey. */
    public static final int OUTSIDE = -1;

    /** Copies the list. */
    public Hollow {
        parts = List.copyOf(parts);
    }

    /** Greatest depth of water when it is full, m. */
    public double depth() {
        return spillHeight - bottomHeight;
    }

    /** Whether it spills to lower land for good, so that it is no part of another. */
    public boolean isOutermost() {
        return parent == OUTSIDE;
    }

    /**
     * How likely it is that water would stand here at all, if heights are known with an error and
     * those of bottom and spill err independently.
     *
     * @param error standard deviation of one height, m, zero or more
     * @return 0 to 1
     */
    public double holds(double error) {
        return holds(error, 0);
    }

    /**
     * How likely it is that water would stand here at all, if heights are known with an error.
     *
     * <p>With depth {@code d} between two heights that err normally with standard deviation {@code
     * s} each and correlation {@code r}, the true depth is normal about {@code d} with variance
     * {@code 2 s² (1 - r)}; so {@code P(depth > 0) = Φ(d / (s √(2 (1 - r))))}. Correlation falls
     * with distance as {@code r = exp(-distance / length)}, the exponential model of geostatistics.
     * Derived.
     *
     * <p>What it does not know: that water might find another spill or another bottom, so that it
     * can be taken for this one pair of heights only; and that among many cells some look like a
     * hollow by chance, for which reason no hollow that was found gets less than a half.
     *
     * @param error standard deviation of one height, m, zero or more
     * @param length distance over which errors of neighbours lose their likeness, m; zero if they
     *     have none
     * @return 0 to 1
     * @throws IllegalArgumentException if an argument is negative or not finite
     */
    public double holds(double error, double length) {
        return holds(depth(), apart, error, length);
    }

    /**
     * The same for any two heights, a bottom and a spill.
     *
     * @param depth how much higher the spill is measured than the bottom, m
     * @param apart distance between them, m
     * @param error standard deviation of one height, m, zero or more
     * @param length distance over which errors of neighbours lose their likeness, m; zero if they
     *     have none
     * @return 0 to 1
     * @throws IllegalArgumentException if {@code error} or {@code length} is negative or not finite
     */
    public static double holds(double depth, double apart, double error, double length) {
        if (!(error >= 0) || !(length >= 0) || Double.isInfinite(error + length)) {
            throw new IllegalArgumentException(
                    "an error and its reach must be zero or more, were "
                            + error
                            + " and "
                            + length);
        }
        double likeness = length > 0 ? Math.exp(-apart / length) : 0;
        double spread = error * Math.sqrt(2 * (1 - likeness));
        if (!(spread > 0)) {
            return depth > 0 ? 1 : 0;
        }
        // Φ(x) = erfc(-x / √2) / 2
        return Erf.erfc(-depth / (spread * Math.sqrt(2))) / 2;
    }
}
