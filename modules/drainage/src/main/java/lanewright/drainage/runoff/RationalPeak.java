package lanewright.drainage.runoff;

/**
 * The flow at its height by the {@linkplain Rational rational method}.
 *
 * @param discharge m³/s
 * @param runoff depth that runs off, m: the flow for as long as water takes to gather, over the
 *     basin
 * @param intensity of the rain, m/s
 * @param coefficient part of the rain that runs off
 */
public record RationalPeak(double discharge, double runoff, double intensity, double coefficient)
        implements Peak {

    /**
     * The flow at its height from a table of rain. Rain is taken to last as long as water takes to
     * gather, but never less than {@link Concentration#LEAST} nor the shortest that the table
     * tells, and never longer than the longest under a day.
     *
     * @param rain the table
     * @param years one of its return periods
     * @param coefficient part of the rain that runs off, 0 to 1
     * @param area of the basin, m², over zero
     * @param time of concentration, s, over zero
     * @throws IllegalArgumentException if a figure is out of range
     */
    public static RationalPeak of(
            DesignRain rain, double years, double coefficient, double area, double time) {
        double least = Math.max(rain.shortest(), Concentration.notUnderLeast(time));
        double lasts = Math.min(rain.longestBurst(), least);
        double intensity = rain.intensity(lasts, years);
        double discharge = Rational.peak(coefficient, intensity, area);
        return new RationalPeak(
                discharge, Rational.volume(discharge, lasts) / area, intensity, coefficient);
    }
}
