package lanewright.drainage.along;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import org.jspecify.annotations.Nullable;

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
     * @param turnOuts where it must be led off so that no part is longer than the table allows,
     *     from the top down: evenly, as far as the grades allow, m; none if it is short enough
     * @param barsAt where bars across the lane would stand likewise, m; none in a ditch
     * @param barsSource source of their distance; empty in a ditch
     * @param steepest its steepest grade, rise over run, never negative
     * @param across how the travelled way falls across there; null in a ditch
     */
    public record Descent(
            Way way,
            double top,
            double foot,
            double length,
            double fall,
            double spacing,
            double bars,
            String source,
            List<Double> turnOuts,
            List<Double> barsAt,
            String barsSource,
            double steepest,
            @Nullable Across across) {

        /** Copies the list. */
        public Descent {
            turnOuts = List.copyOf(turnOuts);
            barsAt = List.copyOf(barsAt);
        }

        /** Whether it is longer than the table allows. */
        public boolean isTooLong() {
            return length > spacing * (1 + LONGER);
        }

        /** Mean grade, rise over run, never negative. */
        public double grade() {
            return length > 0 ? fall / length : 0;
        }
    }

    /** How the travelled way falls across. */
    public enum Across {
        /** To both sides. */
        CROWN("keep its crown"),
        /** To the left in one plane. */
        LEFT("keep its fall to the left in one plane"),
        /** To the right in one plane. */
        RIGHT("keep its fall to the right in one plane"),
        /** Not alike all along. */
        MIXED("keep its fall across");

        private final String keep;

        Across(String keep) {
            this.keep = keep;
        }

        /** How two stretches together fall. */
        Across with(@Nullable Across other) {
            return other == null || other == this ? this : MIXED;
        }

        /** How a section falls. */
        static Across of(CrossSlopes.CrossSlope slope) {
            boolean left = slope.left() > 0;
            boolean right = slope.right() > 0;
            return left && right ? CROWN : left ? LEFT : right ? RIGHT : MIXED;
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

    /** Lengths are compared to this part, so that one just as long as allowed is not too long. */
    private static final double LONGER = 1e-9;

    /** So many places are named; of more, the first. Our choice: what can be read at once. */
    private static final int NAMED = 8;

    private final Spacing spacing;
    private final Spacing bars;
    private final boolean erosive;
    private final List<Descent> found = new ArrayList<>();

    /** The pieces of the way, each {@code {from, to, share of the allowed distance, of bars}}. */
    private final List<double[]> pieces = new ArrayList<>();

    private Way way = Way.LANE;
    private double start = Double.NaN;
    private double end;
    private double length;
    private double fall;
    private double used;
    private double usedByBars;
    private int direction;
    private String source = "";
    private String barsSource = "";
    private double steepest;
    private @Nullable Across across;

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
                across = Across.of(slopes.get(i)).with(across);
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
        Spacing.Row bar = bars.row(grade);
        pieces.add(new double[] {from, to, distance / allowed(row), distance / allowed(bar)});
        usedByBars += distance / allowed(bar);
        steepest = Math.max(steepest, Math.abs(grade));
        barsSource = bar.source();
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
                            source,
                            turnOuts(up, 2, used),
                            way == Way.LANE ? turnOuts(up, 3, usedByBars) : List.of(),
                            way == Way.LANE ? barsSource : "",
                            steepest,
                            way == Way.LANE ? across : null));
        }
        start = Double.NaN;
        across = null;
        pieces.clear();
        direction = 0;
        length = 0;
        fall = 0;
        used = 0;
        usedByBars = 0;
        steepest = 0;
    }

    /**
     * Where the way is led off, from its top down, so that each part uses up as much.
     *
     * @param share which share of a piece is used up
     * @param all what all pieces use up together
     */
    private List<Double> turnOuts(boolean up, int share, double all) {
        int parts = (int) Math.ceil(all - LONGER);
        List<Double> at = new ArrayList<>();
        double before = 0;
        int next = 1;
        for (double[] piece : pieces) {
            while (next < parts && before + piece[share] >= all * next / parts) {
                double part = (all * next / parts - before) / piece[share];
                at.add(piece[0] + part * (piece[1] - piece[0]));
                next++;
            }
            before += piece[share];
        }
        if (up) {
            Collections.reverse(at);
        }
        return at;
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
                                            + " at {} without a way out.",
                                    Quantity.length(descent.length()),
                                    Quantity.grade(descent.grade())),
                            Quantity.length(descent.length()),
                            null,
                            descent.source(),
                            remedy(descent)));
        }
        return findings;
    }

    private static Saying remedy(Descent descent) {
        int count = descent.turnOuts().size();
        Across across = descent.across();
        String what =
                descent.way() == Way.LANE
                        ? "Set {} " + Saying.number(count, "dip", "dips") + " across the lane"
                        : "Turn the ditch out to lower ground, or take it under the lane, at {} "
                                + Saying.number(count, "place", "places");
        List<Quantity> quantities = new ArrayList<>();
        quantities.add(Quantity.count(count));
        var pattern = new StringBuilder(what);
        for (int i = 0; i < Math.min(count, NAMED); i++) {
            pattern.append(i == 0 ? ": " : i == count - 1 ? " and " : ", ").append("{}");
            quantities.add(Quantity.station(descent.turnOuts().get(i)));
        }
        pattern.append(count > NAMED ? " and so on" : "")
                .append(
                        "; then no part is longer than the table allows on its own grade, {} on the"
                                + " whole.");
        quantities.add(Quantity.length(descent.spacing()));
        if (across != null) {
            pattern.append(" Between them ").append(across.keep).append('.');
        }
        return new Saying(pattern.toString(), quantities);
    }
}
