package lanewright.planner.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewright.drainage.runoff.DesignRain;
import lanewright.measure.Kind;
import lanewright.measure.Parse;
import lanewright.measure.QuantityException;
import lanewright.measure.UnitSystem;

/** The owner's table of rain, from its words. */
final class RainTable {

    private static final double HOUR = 3600;

    private RainTable() {}

    /**
     * Refuses what is no table, in words.
     *
     * @param years the period that is asked for, zero if none is
     */
    static void check(List<String> periods, List<WaterPart.RainRow> rows, double years) {
        if (rows.isEmpty() && !periods.isEmpty()) {
            throw new IllegalArgumentException(
                    "the rain has periods and no table; give its rows, or leave the periods out");
        }
        if (rows.isEmpty()) {
            return;
        }
        DesignRain rain = of(periods, rows, years).orElseThrow();
        rain.intensity(rain.longestBurst(), years);
    }

    /** The table, or empty where there is none. */
    static Optional<DesignRain> of(
            List<String> periods, List<WaterPart.RainRow> rows, double years) {
        if (rows.isEmpty()) {
            return Optional.empty();
        }
        List<Double> columns = new ArrayList<>();
        for (String period : periods) {
            columns.add(read(Kind.COUNT, period, "a period"));
        }
        if (columns.isEmpty()) {
            if (!(years > 0)) {
                throw new IllegalArgumentException(
                        "a table of rain of one column needs years: how often that rain comes");
            }
            columns.add(years);
        }
        List<Double> durations = new ArrayList<>();
        List<List<Double>> depths = new ArrayList<>();
        for (WaterPart.RainRow row : rows) {
            double lasts = HOUR * read(Kind.HOURS, row.lasts(), "how long it rains");
            durations.add(lasts);
            List<Double> cells = new ArrayList<>();
            for (String cell : row.rain()) {
                boolean hard = cell.contains("/h");
                double value = read(hard ? Kind.SPEED : Kind.DEPTH, cell, "rain");
                cells.add(hard ? value * lasts : value);
            }
            depths.add(cells);
        }
        return Optional.of(new DesignRain(durations, columns, depths));
    }

    private static double read(Kind kind, String text, String what) {
        try {
            return Parse.of(kind, text, UnitSystem.METRIC).value();
        } catch (QuantityException e) {
            throw new IllegalArgumentException(
                    what + " in the table of rain: " + e.what() + "; " + e.remedy(), e);
        }
    }
}
