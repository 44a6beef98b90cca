package lanewright.drainage.runoff;

import java.util.List;
import lanewright.drainage.channel.Check;

/**
 * The rational method: the greatest flow of a small basin is its area times the intensity of a rain
 * that lasts as long as water takes to gather, times the part that runs off (Kuichling 1889; meant
 * for basins under some 200 acres, 0.8 km²).
 */
public final class Rational {

    /** Larger basins want another method, m²: 200 acres, common practice. */
    public static final double LARGEST = 200 * 4046.8564224;

    private Rational() {}

    /**
     * Land of one cover.
     *
     * @param coefficient part of the rain that runs off, 0 to 1
     * @param area m², zero or more
     */
    public record Part(double coefficient, double area) {
        /**
         * @throws IllegalArgumentException if a figure is out of range
         */
        public Part {
            Rational.part(coefficient);
            Check.notNegative("area of a cover, m²,", area);
        }
    }

    /**
     * The flow at its height, m³/s.
     *
     * @param coefficient part of the rain that runs off, 0 to 1
     * @param intensity of rain that lasts the time of concentration, m/s, over zero
     * @param area of the basin, m², over zero
     * @throws IllegalArgumentException if a figure is out of range
     */
    public static double peak(double coefficient, double intensity, double area) {
        return part(coefficient)
                * intensity(intensity)
                * Check.positive("area of a basin, m²,", area);
    }

    /**
     * Water that a storm brings in all, m³, by a hydrograph that rises for the time of
     * concentration and falls for as long: its height times that time.
     *
     * @param peak m³/s, zero or more
     * @param time of concentration, s, over zero
     */
    public static double volume(double peak, double time) {
        return Check.notNegative("flow at its height, m³/s,", peak)
                * Check.positive("time of concentration, s,", time);
    }

    /** One coefficient for several covers, by their areas. */
    public static double coefficient(List<Part> parts) {
        double area = parts.stream().mapToDouble(Part::area).sum();
        Check.positive("area of all covers together, m²,", area);
        return parts.stream().mapToDouble(part -> part.coefficient * part.area).sum() / area;
    }

    /**
     * A coefficient for a rare storm, when the ground is soaked: 1.1 times at 25 years, 1.2 at 50
     * and 1.25 at 100, never over 1 (ASCE and urban drainage manuals, from memory).
     *
     * @param years return period
     */
    public static double rare(double coefficient, double years) {
        Check.positive("return period, years,", years);
        double times = years < 25 ? 1 : years < 50 ? 1.1 : years < 100 ? 1.2 : 1.25;
        return Math.min(1, part(coefficient) * times);
    }

    private static double part(double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException(
                    "a runoff coefficient is a part from 0 to 1, was "
                            + value
                            + "; take one from the table of land covers");
        }
        return value;
    }

    /** Rain of over half a metre an hour has never lasted: a depth was given. */
    private static double intensity(double value) {
        Check.positive("intensity of rain, m/s,", value);
        if (value > 0.6 / 3600) {
            throw new IllegalArgumentException(
                    "rain of "
                            + value * 3600 * 1000
                            + " mm/h is no intensity; divide the depth by its duration");
        }
        return value;
    }
}
