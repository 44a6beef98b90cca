package lanewright.drainage.culvert;

import java.util.List;
import lanewright.drainage.channel.Check;
import lanewright.drainage.channel.Critical;
import lanewright.drainage.channel.Imperial;
import lanewright.drainage.channel.Rising;

/**
 * Water over the lane as over a broad weir, {@code Q = Cd L h^1.5} (FHWA HDS-5, 2001, chapter III).
 *
 * <p>The crest is a line of straight pieces. Published practice cuts a sag into short level pieces
 * and adds them up; here each piece is taken as ever more and ever shorter level ones, which has
 * the closed form {@code 2/5 Cd L (h2^2.5 − h1^2.5) / (h2 − h1)}. Holds while water below the lane
 * does not stand over its crest.
 *
 * @param offsets along the crest, m, rising
 * @param heights of the crest above the inlet invert, m, one for each offset
 * @param coefficient Cd, m^0.5/s
 */
public record Overtopping(List<Double> offsets, List<Double> heights, double coefficient) {

    /** Largest published Cd is 3.1 in feet; one over this was most likely given in feet. */
    private static final double MOST = 3.3 * Imperial.WEIR;

    /**
     * @throws IllegalArgumentException if there are less than two places, they do not rise, or the
     *     coefficient is out of range
     */
    public Overtopping {
        offsets = List.copyOf(offsets);
        heights = List.copyOf(heights);
        if (offsets.size() < 2 || offsets.size() != heights.size()) {
            throw new IllegalArgumentException(
                    "a crest needs two places or more and a height for each, had "
                            + offsets.size()
                            + " and "
                            + heights.size()
                            + "; give both lists alike");
        }
        for (int i = 0; i < offsets.size(); i++) {
            if (!Double.isFinite(offsets.get(i)) || !Double.isFinite(heights.get(i))) {
                throw new IllegalArgumentException(
                        "place " + (i + 1) + " of the crest is no number; measure it");
            }
            if (i > 0 && !(offsets.get(i) > offsets.get(i - 1))) {
                throw new IllegalArgumentException(
                        "places of a crest must rise, place "
                                + (i + 1)
                                + " does not; put them in order along the lane");
            }
        }
        if (!(coefficient > 0) || coefficient > MOST) {
            throw new IllegalArgumentException(
                    "weir coefficient must be over zero and at most "
                            + MOST
                            + " in metres, was "
                            + coefficient
                            + "; multiply one in feet by 0.552");
        }
    }

    /**
     * A level crest.
     *
     * @param length along the lane, m
     * @param height above the inlet invert, m
     * @param coefficient Cd, m^0.5/s
     */
    public static Overtopping flat(double length, double height, double coefficient) {
        Check.positive("length of a crest, m,", length);
        return new Overtopping(List.of(0.0, length), List.of(height, height), coefficient);
    }

    /**
     * Cd of a gravel road about 40 ft (12 m) wide, m^0.5/s: 2.70 in feet with half a foot of water
     * over it, 2.92 with a foot and a half, straight between, held beyond (FHWA HDS-5, 2001,
     * chapter III, example 4).
     *
     * @param head water over the crest, m
     */
    public static double gravel(double head) {
        Check.notNegative("water over the crest, m,", head);
        double feet = Math.max(0.5, Math.min(1.5, head / Imperial.FOOT));
        return (2.70 + (2.92 - 2.70) * (feet - 0.5)) * Imperial.WEIR;
    }

    /** Lowest height of the crest above the inlet invert, m. */
    public double lowest() {
        return heights.stream().mapToDouble(height -> height).min().orElseThrow();
    }

    /** Where the crest is lowest, m along it; the middle of a level stretch. */
    public double lowestAt() {
        double lowest = lowest();
        int first = heights.indexOf(lowest);
        int last = first;
        while (last + 1 < heights.size() && heights.get(last + 1) <= lowest) {
            last++;
        }
        return (offsets.get(first) + offsets.get(last)) / 2;
    }

    /**
     * Discharge over the crest, m³/s.
     *
     * @param level of the still water before it, m above the inlet invert
     */
    public double discharge(double level) {
        double sum = 0;
        for (int i = 1; i < offsets.size(); i++) {
            sum +=
                    piece(
                            offsets.get(i) - offsets.get(i - 1),
                            level - heights.get(i - 1),
                            level - heights.get(i));
        }
        return coefficient * sum;
    }

    /** {@code ∫ h^1.5} along a piece whose water goes from {@code from} to {@code to}. */
    private static double piece(double length, double from, double to) {
        double low = Math.min(from, to);
        double high = Math.max(from, to);
        if (high <= 0) {
            return 0;
        }
        double wetLow = Math.max(0, low);
        double wetLength = low < 0 ? length * high / (high - low) : length;
        double difference = high - wetLow;
        if (difference < 1e-4 * high) {
            // The closed form loses digits here, and the mean is off by less than 1e-9 of it.
            return wetLength * Math.pow((high + wetLow) / 2, 1.5);
        }
        return 0.4 * wetLength * (Math.pow(high, 2.5) - Math.pow(wetLow, 2.5)) / difference;
    }

    /**
     * Level at which {@code discharge} goes over the crest, m above the inlet invert.
     *
     * @param discharge m³/s, zero or more
     */
    public double level(double discharge) {
        Check.notNegative("discharge, m³/s,", discharge);
        double lowest = lowest();
        return lowest
                + Rising.where(
                        head -> discharge(lowest + head), discharge, Double.POSITIVE_INFINITY);
    }

    /**
     * Speed on the crest where it is lowest, m/s: water crosses a broad crest at critical depth,
     * two thirds of the head.
     *
     * @param level of the still water before it, m above the inlet invert
     */
    public double speed(double level) {
        return Math.sqrt(Critical.GRAVITY * Math.max(0, level - lowest()) * 2 / 3);
    }
}
