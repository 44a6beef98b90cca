package lanewright.drainage.runoff;

import java.util.List;
import lanewright.drainage.channel.Check;
import lanewright.drainage.channel.Imperial;

/**
 * How much of a rain runs off, by curve number: {@code Q = (P - Ia)² / (P - Ia + S)}, nothing while
 * {@code P} is at most {@code Ia = 0.2 S}, and {@code S = 1000 / CN - 10} in (SCS, TR-55, 1986,
 * chapter 2).
 */
public final class CurveNumber {

    private CurveNumber() {}

    /**
     * Land of one curve number.
     *
     * @param number over 0, at most 100
     * @param area m², zero or more
     */
    public record Part(double number, double area) {
        /**
         * @throws IllegalArgumentException if a figure is out of range
         */
        public Part {
            checked(number);
            Check.notNegative("area of a cover, m²,", area);
        }
    }

    /**
     * The most that the ground can hold back once it rains for long, S, m.
     *
     * @throws IllegalArgumentException if the number is not over 0 and at most 100
     */
    public static double retention(double number) {
        return (1000 / checked(number) - 10) * Imperial.INCH;
    }

    /** What falls before anything runs off, Ia, m. */
    public static double initial(double number) {
        return 0.2 * retention(number);
    }

    /**
     * Depth that runs off, m.
     *
     * @param rain depth that falls, m, zero or more
     */
    public static double runoff(double number, double rain) {
        double held = retention(number);
        double left = Check.notNegative("rain, m,", rain) - 0.2 * held;
        return left <= 0 ? 0 : left * left / (left + held);
    }

    /**
     * Depth that runs off land of several covers, m: the mean of what runs off each, for that of
     * their mean number is less.
     */
    public static double runoff(List<Part> parts, double rain) {
        double area = parts.stream().mapToDouble(Part::area).sum();
        Check.positive("area of all covers together, m²,", area);
        return parts.stream().mapToDouble(part -> runoff(part.number, rain) * part.area).sum()
                / area;
    }

    /** The number that holds when the ground is dry: {@code 4.2 CN / (10 - 0.058 CN)}. */
    public static double dry(double number) {
        return 4.2 * checked(number) / (10 - 0.058 * number);
    }

    /** The number that holds when the ground is soaked: {@code 23 CN / (10 + 0.13 CN)}. */
    public static double wet(double number) {
        return 23 * checked(number) / (10 + 0.13 * number);
    }

    private static double checked(double number) {
        if (!(number > 0 && number <= 100)) {
            throw new IllegalArgumentException(
                    "a curve number is over 0 and at most 100, was "
                            + number
                            + "; take one from the table of land covers");
        }
        return number;
    }
}
