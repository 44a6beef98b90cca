package lanewright.drainage.runoff;

import java.util.List;
import lanewright.drainage.channel.Check;
import lanewright.drainage.channel.Imperial;
import lanewright.measure.Row;
import lanewright.measure.Tables;

/**
 * The flow at its height after a rain of 24 hours, by the graphical method (SCS, TR-55, 1986,
 * chapter 4 and appendix F): {@code qp = qu A Q Fp}, with {@code log qu = C0 + C1 log tc + C2 (log
 * tc)²}.
 *
 * @param discharge m³/s
 * @param runoff depth that runs off, m
 * @param unit qu, m³/s from a square metre for each metre that runs off
 * @param ratio Ia over P as it was used
 * @param held whether the ratio lay outside of the published ones and was held at the nearest
 * @param quick whether water gathers sooner than the method was made for, and its shortest time was
 *     taken
 */
public record GraphicalPeak(
        double discharge, double runoff, double unit, double ratio, boolean held, boolean quick)
        implements Peak {

    private static final double SQUARE_MILE = Math.pow(5280 * Imperial.FOOT, 2);

    /**
     * What one cubic foot a second from a square mile for an inch is in the unit of {@link #unit}.
     */
    public static final double UNIT = Imperial.CUBIC_FOOT / (SQUARE_MILE * Imperial.INCH);

    /** Times that the method was made for, s: 0.1 h to 10 h. */
    public static final double SHORTEST = 360;

    private static final double LONGEST = 36_000;

    /** How rain falls over a day, by region: which type holds where is on a map of TR-55. */
    public enum Storm {
        /** Mild, Pacific. */
        IA("IA"),
        /** Pacific with wet winters. */
        I("I"),
        /** Most of the inland, with short hard rain: the sharpest. */
        II("II"),
        /** Coasts with tropical storms. */
        III("III");

        private final String words;

        Storm(String words) {
            this.words = words;
        }

        /** As it is called. */
        public String words() {
            return words;
        }
    }

    private record Curve(double ratio, double c0, double c1, double c2) {
        double unit(double hours) {
            double log = Math.log10(hours);
            return Math.pow(10, c0 + c1 * log + c2 * log * log) * UNIT;
        }
    }

    /**
     * The flow at its height.
     *
     * @param rain of 24 hours, m, over zero
     * @param number curve number of the basin
     * @param area m², over zero
     * @param time of concentration, s, at most 10 h; one shorter than {@link #SHORTEST} is taken as
     *     that, which {@link #quick} tells
     * @param ponds part of the basin that is pond or swamp, 0 to 0.05
     * @throws IllegalArgumentException if a figure is out of range
     */
    public static GraphicalPeak of(
            Storm storm, double rain, double number, double area, double time, double ponds) {
        Check.positive("rain of 24 hours, m,", rain);
        Check.positive("area of a basin, m²,", area);
        Check.positive("time of concentration, s,", time);
        if (time > LONGEST) {
            throw new IllegalArgumentException(
                    "the graphical method holds to 10 hours of concentration, was "
                            + time / 3600
                            + " h; part the basin or ask a hydrologist");
        }
        double runoff = CurveNumber.runoff(number, rain);
        double asked = CurveNumber.initial(number) / rain;
        List<Curve> curves = curves(storm);
        double low = curves.get(0).ratio;
        double high = curves.get(curves.size() - 1).ratio;
        double ratio = Math.max(low, Math.min(high, asked));
        double unit = unit(curves, ratio, Math.max(SHORTEST, time) / 3600);
        return new GraphicalPeak(
                discharge(unit, area, runoff, pondFactor(ponds)),
                runoff,
                unit,
                ratio,
                ratio != asked,
                time < SHORTEST);
    }

    /**
     * The flow at its height from figures that are known, m³/s: {@code qp = qu A Q Fp}.
     *
     * @param unit qu, m³/s from a square metre for each metre that runs off; {@link #UNIT} turns
     *     one of a chart
     * @param area m², over zero
     * @param runoff depth that runs off, m, zero or more
     * @param factor what ponds leave of it, over 0 and at most 1
     */
    public static double discharge(double unit, double area, double runoff, double factor) {
        if (!(factor > 0 && factor <= 1)) {
            throw new IllegalArgumentException(
                    "ponds leave a part over 0 and at most 1 of a peak, was "
                            + factor
                            + "; take 1 where there are none");
        }
        return Check.positive("unit peak,", unit)
                * Check.positive("area of a basin, m²,", area)
                * Check.notNegative("runoff, m,", runoff)
                * factor;
    }

    private static double unit(List<Curve> curves, double ratio, double hours) {
        for (int i = 1; i < curves.size(); i++) {
            Curve a = curves.get(i - 1);
            Curve b = curves.get(i);
            if (ratio <= b.ratio) {
                double part = (ratio - a.ratio) / (b.ratio - a.ratio);
                return a.unit(hours) + part * (b.unit(hours) - a.unit(hours));
            }
        }
        return curves.get(curves.size() - 1).unit(hours);
    }

    private static List<Curve> curves(Storm storm) {
        return Tables.read("graphical-peak").rows().stream()
                .filter(row -> row.text("storm").equals(storm.words))
                .map(GraphicalPeak::curve)
                .toList();
    }

    private static Curve curve(Row row) {
        return new Curve(
                row.number("ia_over_p"), row.number("c0"), row.number("c1"), row.number("c2"));
    }

    /**
     * What ponds and swamps spread through the basin leave of the peak (TR-55, table 4-2): straight
     * between the rows of the table {@code pond-factors}.
     *
     * @param part 0 to 0.05
     */
    public static double pondFactor(double part) {
        if (!(part >= 0 && part <= 0.05)) {
            throw new IllegalArgumentException(
                    "ponds take a part of 0 to 0.05 of a basin, was "
                            + part
                            + "; with more of them water must be followed through each");
        }
        List<Row> rows = Tables.read("pond-factors").rows();
        int i = 1;
        while (i < rows.size() - 1 && 100 * part > rows.get(i).number("ponds_pct")) {
            i++;
        }
        double from = rows.get(i - 1).number("ponds_pct");
        double share = (100 * part - from) / (rows.get(i).number("ponds_pct") - from);
        double before = rows.get(i - 1).number("factor");
        return before + share * (rows.get(i).number("factor") - before);
    }
}
