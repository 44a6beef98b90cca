package lanewright.drainage.along;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;

/**
 * Water that runs down the lane, or down its ditches, rather than across.
 *
 * <p>On the travelled way water runs more down than across where the grade is steeper than the
 * cross slope. The distance that a published table allows depends on the grade; where the grade
 * changes along the way, each part uses up its length over its own allowed distance, and together
 * they may use up one.
 */
public final class Descents {

    /**
     * An unbroken way down.
     *
     * @param way what the water runs in
     * @param top station of its upper end, m
     * @param foot station of its lower end, m
     * @param length its own length in plan, m
     * @param fall height lost, m
     * @param spacing distance that the table allows on its grades between dips or pipes, m
     * @param bars distance that it allows between bars across the lane, m; NaN in a ditch
     * @param source source of that distance
     */
    public record Descent(
            Way way,
            double top,
            double foot,
            double length,
            double fall,
            double spacing,
            double bars,
            String source) {

        /** Whether it is longer than the table allows. */
        public boolean isTooLong() {
            return length > spacing * (1 + 1e-9);
        }

        /** Mean grade, rise over run, never negative. */
        public double grade() {
            return length > 0 ? fall / length : 0;
        }
    }

    /** What water runs down in. */
    public enum Way {
        /** On the stone itself. */
        LANE("on the lane"),
        /** In the left ditch. */
        LEFT_DITCH("in the left ditch"),
        /** In the right ditch. */
        RIGHT_DITCH("in the right ditch");

        private final String words;

        Way(String words) {
            this.words = words;
        }

        /** Where, in words. */
        public String words() {
            return words;
        }
    }

    /** Sections this close are two sides of a change, and no way lies between them, m. */
    private static final double NO_WAY = 0.001;

    private final Spacing spacing;
    private final Spacing bars;
    private final boolean erosive;
    private final List<Descent> found = new ArrayList<>();

    private Way way = Way.LANE;
    private double start = Double.NaN;
    private double end;
    private double length;
    private double fall;
    private double used;
    private double usedByBars;
    private int direction;
    private String source = "";

    private Descents(Spacing spacing, Spacing bars, boolean erosive) {
        this.spacing = spacing;
        this.bars = bars;
        this.erosive = erosive;
    }

    /**
     * All unbroken ways down: on the lane first, then in the ditches, each in station order.
     *
     * @param spacing of dips or pipes
     * @param bars of bars across the lane
     * @param erosive whether the soil washes easily
     */
    public static List<Descent> of(
            List<CrossSlopes.CrossSlope> slopes,
            List<Double> profileHeights,
            List<DitchReach> ditches,
            Spacing spacing,
            Spacing bars,
            boolean erosive) {
        var descents = new Descents(spacing, bars, erosive);
        descents.onLane(slopes, profileHeights);
        for (DitchReach ditch : ditches) {
            descents.inDitch(ditch);
        }
        return descents.found;
    }

    private void onLane(List<CrossSlopes.CrossSlope> slopes, List<Double> heights) {
        way = Way.LANE;
        for (int i = 1; i < slopes.size(); i++) {
            double from = slopes.get(i - 1).station();
            double to = slopes.get(i).station();
            if (!(to > from + NO_WAY)) {
                continue;
            }
            double grade = (heights.get(i) - heights.get(i - 1)) / (to - from);
            double cross = Math.min(slopes.get(i - 1).gentler(), slopes.get(i).gentler());
            if (Math.abs(grade) > cross) {
                run(from, to, to - from, grade);
            } else {
                close();
            }
        }
        close();
    }

    private void inDitch(DitchReach ditch) {
        way = ditch.side() == Side.LEFT ? Way.LEFT_DITCH : Way.RIGHT_DITCH;
        for (DitchReach.Leg leg : ditch.legs()) {
            run(leg.from(), leg.to(), leg.length(), leg.grade());
        }
        close();
    }

    private void run(double from, double to, double distance, double grade) {
        int sign = grade > 0 ? 1 : grade < 0 ? -1 : direction;
        if (sign != direction) {
            close();
        }
        if (Double.isNaN(start)) {
            start = from;
            direction = sign;
        }
        Spacing.Row row = spacing.row(grade);
        end = to;
        length += distance;
        fall += Math.abs(grade) * distance;
        used += distance / allowed(row);
        usedByBars += distance / allowed(bars.row(grade));
        source = row.source();
    }

    private double allowed(Spacing.Row row) {
        return erosive ? row.erosive() : row.lowErosion();
    }

    private void close() {
        if (!Double.isNaN(start) && length > 0) {
            boolean up = direction > 0; // the lane climbs, so water comes from the far end
            found.add(
                    new Descent(
                            way,
                            up ? end : start,
                            up ? start : end,
                            length,
                            fall,
                            length / used,
                            way == Way.LANE ? length / usedByBars : Double.NaN,
                            source));
        }
        start = Double.NaN;
        direction = 0;
        length = 0;
        fall = 0;
        used = 0;
        usedByBars = 0;
    }

    /** Those that are longer than the table allows. */
    public static List<Finding> check(List<Descent> descents) {
        List<Finding> findings = new ArrayList<>();
        for (Descent descent : descents) {
            if (!descent.isTooLong()) {
                continue;
            }
            findings.add(
                    new Finding(
                            descent.way() == Way.LANE ? "water-down-lane" : "water-down-ditch",
                            Level.NOTE,
                            Topic.WATER,
                            Where.stretch(
                                    Math.min(descent.top(), descent.foot()),
                                    Math.max(descent.top(), descent.foot())),
                            Saying.of(
                                    "Water runs {} down "
                                            + descent.way().words()
                                            + " at {}; it should be led off every {}.",
                                    Quantity.length(descent.length()),
                                    Quantity.grade(descent.grade()),
                                    Quantity.length(descent.spacing())),
                            Quantity.length(descent.length()),
                            Quantity.length(descent.spacing()),
                            descent.source(),
                            remedy(descent)));
        }
        return findings;
    }

    private static Saying remedy(Descent descent) {
        return descent.way() == Way.LANE
                ? Saying.of(
                        "Lead it off sideways: keep the crown, and set dips across the lane, or"
                                + " bars every {}.",
                        Quantity.length(descent.bars()))
                : Saying.plain(
                        "Turn the ditch out to lower ground, or take it under the lane, more"
                                + " often.");
    }
}
