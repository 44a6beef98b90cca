package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;

/**
 * Round numbers along an axis, in the units that the reader uses.
 *
 * @param step distance between two of them, in shown units
 * @param unit m in one shown unit
 */
record Rule(double step, double unit) {

    private static final double FOOT = 0.3048;

    /** A mark on the axis: where it stands, m, and what is written there. */
    record Tick(double at, String words) {}

    /**
     * The finest rule of 1, 2 or 5 times a power of ten whose marks stand {@code least} m apart.
     */
    static Rule of(UnitSystem units, double least) {
        double unit = units == UnitSystem.US ? FOOT : 1;
        double wanted = least / unit;
        double power = 1e-3;
        while (power * 10 <= wanted) {
            power *= 10;
        }
        for (double times : new double[] {1, 2, 5}) {
            if (power * times >= wanted) {
                return new Rule(power * times, unit);
            }
        }
        return new Rule(power * 10, unit);
    }

    /** The marks from one place to another, ends included, m. */
    List<Tick> ticks(double from, double to) {
        var ticks = new ArrayList<Tick>();
        int decimals = step >= 1 ? 0 : step >= 0.1 ? 1 : 2;
        for (long k = (long) Math.ceil(from / unit / step - 1e-9); ; k++) {
            double shown = k * step;
            if (shown * unit > to + 1e-9) {
                return ticks;
            }
            ticks.add(new Tick(shown * unit, Words.fixed(shown, decimals)));
        }
    }

    /** Distance between marks, m. */
    double apart() {
        return step * unit;
    }
}
