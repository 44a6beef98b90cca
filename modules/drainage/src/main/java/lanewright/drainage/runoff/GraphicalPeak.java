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
 */
public record GraphicalPeak(
        double discharge, double runoff, double unit, double ratio, boolean held) {

    private static final double SQUARE_MILE = Math.pow(5280 * Imperial.FOOT, 2);
    private static final double UNIT = Imperial.CUBIC_FOOT / (SQUARE_MILE * Imperial.INCH);

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
     * @param time of concentration, s; one shorter than {@link #SHORTEST} is taken as that
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
                unit * area * runoff * pondFactor(ponds), runoff, unit, ratio, ratio != asked);
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
     * What ponds and swamps spread through the basin leave of the peak (TR-55, table 4-2, from
     * memory): straight between 0, 0.2, 1, 3 and 5 % of its area.
     *
     * @param part 0 to 0.05
     */
    public static double pondFactor(double part) {
        double[] parts = {0, 0.002, 0.01, 0.03, 0.05};
        double[] factors = {1, 0.97, 0.87, 0.75, 0.72};
        if (!(part >= 0 && part <= 0.05)) {
            throw new IllegalArgumentException(
                    "ponds take a part of 0 to 0.05 of a basin, was "
                            + part
                            + "; with more of them water must be followed through each");
        }
        int i = 1;
        while (part > parts[i]) {
            i++;
        }
        double share = (part - parts[i - 1]) / (parts[i] - parts[i - 1]);
        return factors[i - 1] + share * (factors[i] - factors[i - 1]);
    }
}
