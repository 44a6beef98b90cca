package lanewright.drainage.runoff;

import lanewright.drainage.channel.Check;
import lanewright.drainage.channel.Imperial;

/** How long water takes from the farthest place of a basin to its mouth, s. */
public final class Concentration {

    /** No basin is taken as quicker in the rational method, s: 5 min, as many manuals have it. */
    public static final double LEAST = 300;

    /** Water runs as a sheet no farther than this, m: 100 ft (NRCS, NEH 630, chapter 15, 2010). */
    public static final double LONGEST_SHEET = 100 * Imperial.FOOT;

    private static final double MINUTE = 60;
    private static final double HOUR = 3600;
    private static final double MILE = 5280 * Imperial.FOOT;
    private static final double ACRE = 43_560 * Imperial.SQUARE_FOOT;

    private Concentration() {}

    /** What water runs over, for {@link #kirpich}. */
    public enum Surface {
        /** A natural channel or bare soil. */
        BARE(1),
        /** Grass, overland or in a grassed channel. */
        GRASS(2),
        /** Concrete or asphalt. */
        PAVED(0.4),
        /** A concrete channel. */
        CONCRETE_CHANNEL(0.2);

        private final double times;

        Surface(double times) {
            this.times = times;
        }
    }

    /**
     * {@code 0.0078 L^0.77 S^-0.385} min and ft (Kirpich, 1940; TxDOT, Hydraulic Design Manual,
     * 2016, chapter 4), times a factor for the surface.
     *
     * @param length of the way, m, over zero
     * @param slope mean, rise over run, over zero
     */
    public static double kirpich(double length, double slope, Surface surface) {
        return MINUTE
                * 0.0078
                * Math.pow(feet(length), 0.77)
                * Math.pow(Check.falling(slope), -0.385)
                * surface.times;
    }

    /**
     * {@code 0.828 (L N)^0.467 S^-0.235} min and ft (Kerby, 1959, from memory), for overland flow.
     *
     * @param retardance N, 0.02 for smooth to 0.80 for dense grass
     */
    public static double kerby(double length, double retardance, double slope) {
        if (!(retardance > 0 && retardance <= 1)) {
            throw new IllegalArgumentException(
                    "Kerby's N must be over zero and at most 1, was "
                            + retardance
                            + "; take 0.4 for pasture");
        }
        return MINUTE
                * 0.828
                * Math.pow(feet(length) * retardance, 0.467)
                * Math.pow(Check.falling(slope), -0.235);
    }

    /**
     * {@code 1.8 (1.1 - C) √L / S^(1/3)} min, ft and percent (FAA, airport drainage).
     *
     * @param coefficient of the rational method, 0 to 1
     * @param slope rise over run, turned into percent here
     */
    public static double faa(double length, double coefficient, double slope) {
        if (!(coefficient >= 0 && coefficient <= 1)) {
            throw new IllegalArgumentException(
                    "a runoff coefficient is a part from 0 to 1, was "
                            + coefficient
                            + "; give one");
        }
        return MINUTE
                * 1.8
                * (1.1 - coefficient)
                * Math.sqrt(feet(length))
                / Math.cbrt(100 * Check.falling(slope));
    }

    /**
     * Lag over 0.6, where {@code Lag = L^0.8 (S + 1)^0.7 / (1900 √Y)} h, ft, in and percent (NRCS,
     * NEH 630, chapter 15).
     *
     * @param number curve number of the basin
     * @param slope mean of the land, rise over run
     */
    public static double lag(double length, double number, double slope) {
        double retention = CurveNumber.retention(number) / Imperial.INCH;
        return HOUR
                * Math.pow(feet(length), 0.8)
                * Math.pow(retention + 1, 0.7)
                / (1900 * Math.sqrt(100 * Check.falling(slope)))
                / 0.6;
    }

    /**
     * Flow as a sheet, {@code 0.007 (n L)^0.8 / (P2^0.5 s^0.4)} h, ft and in (TR-55, 1986, chapter
     * 3).
     *
     * @param n roughness for sheet flow, such as 0.24 for dense grass
     * @param length m, at most {@link #LONGEST_SHEET}
     * @param rain of two years in 24 hours, m
     * @param slope rise over run
     */
    public static double sheet(double n, double length, double rain, double slope) {
        Check.roughness(n);
        if (length > LONGEST_SHEET * (1 + 1e-9)) {
            throw new IllegalArgumentException(
                    "water runs as a sheet for at most "
                            + LONGEST_SHEET
                            + " m, was "
                            + length
                            + "; take the rest as shallow flow");
        }
        return HOUR
                * 0.007
                * Math.pow(n * feet(length), 0.8)
                / (Math.sqrt(Check.positive("rain, m,", rain) / Imperial.INCH)
                        * Math.pow(Check.falling(slope), 0.4));
    }

    /**
     * Speed of shallow gathered flow, m/s: {@code 16.1345 √s} ft/s, paved {@code 20.3282 √s}
     * (TR-55, 1986, figure 3-1).
     */
    public static double shallowSpeed(double slope, boolean paved) {
        return (paved ? 20.3282 : 16.1345) * Math.sqrt(Check.falling(slope)) * Imperial.FOOT;
    }

    /**
     * Speed in a channel that runs full to its banks, m/s, by Manning's formula (the third part of
     * TR-55, 1986, chapter 3).
     *
     * @param radius area of the flow over its wetted edge, m, over zero
     * @param n Manning's roughness
     * @param slope of the channel, rise over run
     */
    public static double channelSpeed(double radius, double n, double slope) {
        return Math.pow(Check.positive("hydraulic radius, m,", radius), 2.0 / 3)
                * Math.sqrt(Check.falling(slope))
                / Check.roughness(n);
    }

    /** Time for a way at a speed, s. */
    public static double travel(double length, double speed) {
        return Check.positive("length, m,", length) / Check.positive("speed, m/s,", speed);
    }

    /**
     * A rough time to hold others against, s: the root of the area in square miles, as hours
     * (TxDOT, Hydraulic Design Manual, 2016, chapter 4, section 11).
     *
     * @param area of the basin, m², over zero
     */
    public static double ofArea(double area) {
        return HOUR * Math.sqrt(Check.positive("area of a basin, m²,", area)) / MILE;
    }

    /**
     * The largest basin, m², for which {@link #LEAST} may be taken without working a time out: 460
     * acres times its slope (North Carolina erosion-control design course, 12.2020).
     *
     * @param slope fall of the longest way over its length
     */
    public static double largestOfLeast(double slope) {
        return 460 * ACRE * Check.falling(slope);
    }

    /**
     * A time as the rational method takes it, s: never under {@link #LEAST}.
     *
     * @param time s, over zero
     */
    public static double notUnderLeast(double time) {
        return Math.max(LEAST, Check.positive("time of concentration, s,", time));
    }

    private static double feet(double length) {
        return Check.positive("length of the way of water, m,", length) / Imperial.FOOT;
    }
}
