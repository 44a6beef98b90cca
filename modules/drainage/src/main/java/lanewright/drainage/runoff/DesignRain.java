package lanewright.drainage.runoff;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Rain of a place, by duration and return period, as published tables of precipitation frequency
 * have it. Between two durations it is read along a straight line of logarithms; beyond the first
 * and the last nothing is made up, and a return period must be one of the table's.
 *
 * @param durations s, rising
 * @param periods return periods, years, rising
 * @param depths m, for each duration one for each period
 */
public record DesignRain(List<Double> durations, List<Double> periods, List<List<Double>> depths) {

    private static final double DAY = 86_400;

    /**
     * @throws IllegalArgumentException if the table is not whole, a depth is not over zero, a
     *     longer rain is less deep or harder than a shorter one, or a rarer one less deep
     */
    public DesignRain {
        durations = List.copyOf(durations);
        periods = List.copyOf(periods);
        depths = depths.stream().map(List::copyOf).toList();
        rising("lengths of rain", durations);
        rising("return periods", periods);
        if (depths.size() != durations.size()) {
            throw new IllegalArgumentException(
                    "there are "
                            + durations.size()
                            + " durations and "
                            + depths.size()
                            + " rows of rain; give one row for each");
        }
        for (int i = 0; i < depths.size(); i++) {
            List<Double> row = depths.get(i);
            if (row.size() != periods.size()) {
                throw new IllegalArgumentException(
                        "row "
                                + (i + 1)
                                + " has "
                                + row.size()
                                + " figures for "
                                + periods.size()
                                + " return periods; fill it");
            }
            for (int k = 0; k < row.size(); k++) {
                check(depths, durations, i, k);
            }
        }
    }

    private static void check(List<List<Double>> depths, List<Double> durations, int i, int k) {
        double depth = depths.get(i).get(k);
        String where = "row " + (i + 1) + ", column " + (k + 1);
        if (!(depth > 0) || !Double.isFinite(depth)) {
            throw new IllegalArgumentException(
                    "rain must be over zero, and is not in " + where + "; look it up again");
        }
        if (k > 0 && depth < depths.get(i).get(k - 1)) {
            throw new IllegalArgumentException(
                    "a rarer rain is less deep than a more frequent one in "
                            + where
                            + "; the columns may be in the wrong order");
        }
        if (i == 0) {
            return;
        }
        double before = depths.get(i - 1).get(k);
        if (depth < before) {
            throw new IllegalArgumentException(
                    "a longer rain is less deep than a shorter one in "
                            + where
                            + "; these may be intensities, not depths");
        }
        if (depth / durations.get(i) > before / durations.get(i - 1) * (1 + 1e-9)) {
            throw new IllegalArgumentException(
                    "a longer rain is harder than a shorter one in "
                            + where
                            + "; look it up again");
        }
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private static void rising(String what, List<Double> values) {
        if (values.isEmpty()) {
            throw new IllegalArgumentException("there are no " + what + "; give one or more");
        }
        double last = 0;
        for (double value : values) {
            if (!(value > last) || !Double.isFinite(value)) {
                throw new IllegalArgumentException(
                        what
                                + " must be over zero and rise, and number "
                                + (values.indexOf(value) + 1)
                                + " does not; put them in order");
            }
            last = value;
        }
    }

    /**
     * One depth of 24 hours, as the curve number method wants it. No {@link #intensity} comes of
     * it: rain falls hardest in bursts, and a day's depth spread evenly is far too little.
     *
     * @param depth m, over zero
     * @param years return period, over zero
     */
    public static DesignRain ofDayDepth(double depth, double years) {
        return new DesignRain(List.of(DAY), List.of(years), List.of(List.of(depth)));
    }

    /** A table of intensities, m/s, turned into depths. */
    public static DesignRain ofIntensities(
            List<Double> durations, List<Double> periods, List<List<Double>> intensities) {
        List<List<Double>> depths = new ArrayList<>();
        for (int i = 0; i < intensities.size(); i++) {
            double lasts = i < durations.size() ? durations.get(i) : 1;
            depths.add(intensities.get(i).stream().map(each -> each * lasts).toList());
        }
        return new DesignRain(durations, periods, depths);
    }

    /**
     * Depth of a rain, m.
     *
     * @param duration s, within the table
     * @param years a return period of the table
     * @throws IllegalArgumentException if the table does not tell it
     */
    public double depth(double duration, double years) {
        int column = periods.indexOf(years);
        if (column < 0) {
            throw new IllegalArgumentException(
                    "the rain table has no return period of "
                            + plain(years)
                            + " years; it has "
                            + periods.stream()
                                    .map(DesignRain::plain)
                                    .collect(Collectors.joining(" and ")));
        }
        int last = durations.size() - 1;
        if (!(duration >= durations.get(0) && duration <= durations.get(last))) {
            throw new IllegalArgumentException(
                    "the rain table tells rain of "
                            + durations.get(0) / 60
                            + " to "
                            + durations.get(last) / 60
                            + " min, asked for "
                            + duration / 60
                            + "; add a row for it");
        }
        int i = 0;
        while (durations.get(i) < duration) {
            i++;
        }
        double here = depths.get(i).get(column);
        if (durations.get(i) == duration) {
            return here;
        }
        double before = depths.get(i - 1).get(column);
        double part =
                Math.log(duration / durations.get(i - 1))
                        / Math.log(durations.get(i) / durations.get(i - 1));
        return before * Math.pow(here / before, part);
    }

    /** The depth of 24 hours, m; refused where the table has no row that far. */
    public double dayDepth(double years) {
        return depth(DAY, years);
    }

    /**
     * Mean intensity of a rain over its duration, m/s; arguments as for {@link #depth}.
     *
     * @throws IllegalArgumentException also for a day and more, which is no burst
     */
    public double intensity(double duration, double years) {
        if (duration >= DAY || shortest() >= DAY) {
            throw new IllegalArgumentException(
                    "a depth of 24 hours or more gives no intensity, for rain falls hardest in"
                            + " bursts; give rows of 5 minutes to 2 hours, or take the curve number"
                            + " method");
        }
        return depth(duration, years) / duration;
    }

    /** The shortest rain that the table tells, s. */
    public double shortest() {
        return durations.get(0);
    }

    /**
     * The longest rain under a day that the table tells, s.
     *
     * @throws IllegalArgumentException if it tells none
     */
    public double longestBurst() {
        double longest = Double.NaN;
        for (double duration : durations) {
            longest = duration < DAY ? duration : longest;
        }
        if (Double.isNaN(longest)) {
            throw new IllegalArgumentException(
                    "the rain table tells rain of a day and longer only, which gives no"
                            + " intensity; give rows of 5 minutes to 2 hours");
        }
        return longest;
    }
}
