package lanewright.drainage;

import java.util.List;
import lanewright.drainage.along.Limit;
import lanewright.drainage.along.Limits;
import lanewright.drainage.along.Spacing;
import lanewright.measure.Assumption.Mark;
import lanewright.measure.Row;
import lanewright.measure.Table;
import lanewright.measure.Tables;

/**
 * The published tables that water is held against.
 *
 * @param limits limits of slopes, ditches, edges and dams
 * @param crossDrains spacing of dips and pipes across a lane, by grade
 * @param waterBars spacing of water bars, by grade
 */
record WaterTables(Limits limits, Spacing crossDrains, Spacing waterBars) {

    /** International foot, m. */
    private static final double FOOT = 0.3048;

    /** Acre-foot, m³: 43,560 ft² a foot deep. */
    private static final double ACRE_FOOT = 43560 * FOOT * FOOT * FOOT;

    /**
     * Those that travel with the program: {@code lane-drainage-limits} and {@code
     * cross-drain-spacing}.
     */
    static WaterTables published() {
        Table limits = Tables.read("lane-drainage-limits");
        Table spacing = Tables.read("cross-drain-spacing");
        return new WaterTables(
                new Limits(
                        limit(limits, "cross-slope-least"),
                        limit(limits, "cross-slope-most"),
                        limit(limits, "ditch-grade-least"),
                        limit(limits, "ditch-grade-checked"),
                        limit(limits, "ditch-grade-lined"),
                        limit(limits, "ditch-below-stone"),
                        limit(limits, "edge-above-ground"),
                        limit(limits, "pipe-room"),
                        limit(limits, "dam-height"),
                        limit(limits, "dam-volume"),
                        limit(limits, "outslope-grade-most"),
                        limit(limits, "outslope-over-grade"),
                        limit(limits, "dip-grade-most"),
                        limit(limits, "slope-across-least")),
                spacing(spacing, "cross drain"),
                spacing(spacing, "water bar"));
    }

    private static Limit limit(Table table, String name) {
        Row row = table.row("limit", name);
        double value = row.number("value");
        String unit = row.text("unit");
        double metric =
                switch (unit) {
                    case "%" -> value / 100;
                    case "m" -> value;
                    case "ft" -> value * FOOT;
                    case "acre-ft" -> value * ACRE_FOOT;
                    default ->
                            throw new IllegalStateException(
                                    row + ": unit \"" + unit + "\" is not known");
                };
        return new Limit(
                metric,
                row.citation(),
                row.mark() == Row.Mark.PUBLISHED ? Mark.PUBLISHED : Mark.COMMON_PRACTICE);
    }

    private static Spacing spacing(Table table, String device) {
        List<Spacing.Row> rows =
                table.rows().stream()
                        .filter(row -> row.text("device").equals(device))
                        .map(
                                row ->
                                        new Spacing.Row(
                                                row.number("to_grade_pct") / 100,
                                                row.number("low_erosion_m"),
                                                row.number("erosive_m"),
                                                row.citation()))
                        .toList();
        return new Spacing(rows);
    }
}
