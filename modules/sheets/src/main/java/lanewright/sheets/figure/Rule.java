package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Kind;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;

/**
 * Round numbers along an axis, in the units that the reader uses.
 *
 * @param step distance between two of them, in shown units
 * @param unit SI size of one shown unit
 */
record Rule(double step, double unit) {

    /** A mark on the axis: where it stands, in SI, and what is written there. */
    record Tick(double at, String words) {}

    /**
     * The finest rule of 1, 2 or 5 times a power of ten whose marks stand {@code least} m apart.
     */
    static Rule of(UnitSystem units, double least) {
        return of(Kind.LENGTH, units, least);
    }

    /**
     * The finest rule of 1, 2 or 5 times a power of ten whose marks stand {@code least} apart.
     *
     * @param kind of what is told along the axis
     * @param least in SI
     */
    static Rule of(Kind kind, UnitSystem units, double least) {
        double unit = Words.factor(kind, units);
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

    /** The marks from one place to another, ends included, in SI. */
    List<Tick> ticks(double from, double to) {
        var ticks = new ArrayList<Tick>();
        int decimals = step >= 1 ? 0 : step >= 0.1 ? 1 : step >= 0.01 ? 2 : 3;
        for (long k = (long) Math.ceil(from / unit / step - 1e-9); ; k++) {
            double shown = k * step;
            if (shown * unit > to + 1e-9) {
                return ticks;
            }
            ticks.add(new Tick(shown * unit, Words.fixed(shown, decimals)));
        }
    }

    /** Distance between marks, in SI. */
    double apart() {
        return step * unit;
    }
}
