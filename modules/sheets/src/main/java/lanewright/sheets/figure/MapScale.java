package lanewright.sheets.figure;

import lanewright.measure.UnitSystem;
import lanewright.measure.Words;

/**
 * A scale that a rule can be laid on.
 *
 * @param points pt on paper for one metre on the ground
 * @param one how many metres on the ground one on paper stands for
 * @param words how it is said
 * @param bar length of the scale bar, m
 * @param barWords what stands at its end
 */
public record MapScale(double points, double one, String words, double bar, String barWords) {

    private static final double FOOT = 0.3048;
    private static final double POINTS_PER_INCH = 72;
    private static final double INCH = 0.0254;
    private static final double POINTS_PER_METRE = 72 / INCH;

    /** Scales on engineers' rules, feet to the inch: common practice. */
    private static final int[] FEET_TO_INCH = {
        10, 20, 30, 40, 50, 60, 80, 100, 150, 200, 300, 400, 500, 600, 1000, 2000, 5000
    };

    /** Scales on metric rules, one to so many: common practice, ISO 5455 among them. */
    private static final int[] ONE_TO = {
        100, 200, 250, 400, 500, 750, 1000, 1250, 1500, 2000, 2500, 5000, 10_000, 20_000, 50_000
    };

    /**
     * The largest scale at which so much ground fits on so much paper.
     *
     * @param ground m
     * @param paper pt
     */
    public static MapScale fitting(UnitSystem units, double ground, double paper) {
        if (units == UnitSystem.US) {
            int feet = FEET_TO_INCH[FEET_TO_INCH.length - 1];
            for (int i = FEET_TO_INCH.length - 1; i >= 0; i--) {
                if (ground * POINTS_PER_INCH / FEET_TO_INCH[i] / FOOT <= paper) {
                    feet = FEET_TO_INCH[i];
                }
            }
            double points = POINTS_PER_INCH / feet / FOOT;
            return new MapScale(
                    points,
                    feet * FOOT / INCH,
                    "1 in = " + Words.fixed(feet, 0) + " ft",
                    2 * feet * FOOT,
                    Words.fixed(2.0 * feet, 0) + " ft");
        }
        int one = ONE_TO[ONE_TO.length - 1];
        for (int i = ONE_TO.length - 1; i >= 0; i--) {
            if (ground * POINTS_PER_METRE / ONE_TO[i] <= paper) {
                one = ONE_TO[i];
            }
        }
        double bar = one / 20.0;
        return new MapScale(
                POINTS_PER_METRE / one,
                one,
                "1 : " + Words.fixed(one, 0),
                bar,
                Words.fixed(bar, bar == Math.rint(bar) ? 0 : 1) + " m");
    }
}
