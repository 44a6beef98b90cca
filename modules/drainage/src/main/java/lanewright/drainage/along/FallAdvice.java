package lanewright.drainage.along;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import lanewright.lane.shape.CrossFall;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

/**
 * How the lane had better fall across, by the ground's own fall across and the lane's grade.
 *
 * <p>On ground that is all but level across, a crown sheds to both sides. On a side slope a lane of
 * gentle grade on soil that does not wash may fall outward, without a ditch: that works up to a
 * grade that the outward fall exceeds by 1 %, and never over 8 % (USDA Forest Service, FSH 7709.56,
 * R1 supplement 1, 1985, section 4.84). Elsewhere it falls inward, to a ditch on the uphill side
 * with pipes or dips to relieve it.
 *
 * @param from station where it begins, m
 * @param to station where it ends, m
 * @param across mean fall of the ground across, rise over run, positive falling to the right
 * @param grade steepest of the lane there, rise over run, never negative
 * @param now how it falls as drawn
 * @param better how it had better fall
 * @param slope across that it needs then, rise over run
 * @param why the reason
 */
public record FallAdvice(
        double from,
        double to,
        double across,
        double grade,
        CrossFall now,
        CrossFall better,
        double slope,
        Saying why) {

    /**
     * Stretches shorter than this go with the one before, m: a change takes as long. Our choice.
     */
    private static final double SHORTEST = 20;

    /** Whether something else than what is drawn is proposed. */
    public boolean isChange() {
        return now != better;
    }

    private record At(double station, double across, double grade, CrossFall now, Kind kind) {}

    private enum Kind {
        LEVEL,
        ON_FILL,
        OUT_LEFT,
        OUT_RIGHT,
        IN_LEFT,
        IN_RIGHT;

        CrossFall fall() {
            return switch (this) {
                case LEVEL, ON_FILL -> CrossFall.CROWN;
                case OUT_LEFT, IN_LEFT -> CrossFall.SHED_LEFT;
                case OUT_RIGHT, IN_RIGHT -> CrossFall.SHED_RIGHT;
            };
        }
    }

    /**
     * Advice for the whole lane, in station order.
     *
     * @param washes whether the soil washes easily, or nobody has said
     */
    public static List<FallAdvice> of(
            List<Section> sections,
            DoubleFunction<TypicalSection> typical,
            CrossSlopes.GradeAt grades,
            Limits limits,
            boolean washes) {
        List<At> at = new ArrayList<>();
        for (Section section : sections) {
            Corner left = section.left().catchPoint();
            Corner right = section.right().catchPoint();
            if (left == null || right == null) {
                continue;
            }
            double across = (left.height() - right.height()) / (right.offset() - left.offset());
            double grade = Math.abs(grades.at(section.station()));
            at.add(
                    new At(
                            section.station(),
                            across,
                            grade,
                            typical.apply(section.station()).fall(),
                            onFill(section) ? Kind.ON_FILL : kind(across, grade, limits, washes)));
        }
        return merged(at, limits);
    }

    private static boolean onFill(Section section) {
        return section.left().kind() == SideResult.Kind.FILL
                && section.right().kind() == SideResult.Kind.FILL;
    }

    private static Kind kind(double across, double grade, Limits limits, boolean washes) {
        if (Math.abs(across) < limits.slopeAcross().value()) {
            return Kind.LEVEL;
        }
        boolean right = across > 0;
        double steepest =
                Math.min(
                        limits.outslopeMost().value(),
                        limits.crossMost().value() - limits.outslopeOver().value());
        return !washes && grade <= steepest
                ? right ? Kind.OUT_RIGHT : Kind.OUT_LEFT
                : right ? Kind.IN_LEFT : Kind.IN_RIGHT;
    }

    private static List<FallAdvice> merged(List<At> at, Limits limits) {
        List<Run> runs = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= at.size(); i++) {
            boolean same =
                    i < at.size()
                            && at.get(i).kind() == at.get(first).kind()
                            && at.get(i).now() == at.get(first).now();
            if (same) {
                continue;
            }
            var run = new Run(first, i - 1);
            boolean isShort =
                    run.to(k -> at.get(k).station(), at.size()) - run.from(k -> at.get(k).station())
                            < SHORTEST;
            if (isShort && !runs.isEmpty()) {
                Run before = runs.remove(runs.size() - 1);
                run = new Run(before.first(), run.last());
            } else if (!runs.isEmpty() && alike(at, runs.get(runs.size() - 1), run)) {
                Run before = runs.remove(runs.size() - 1);
                run = new Run(before.first(), run.last());
            }
            runs.add(run);
            first = i;
        }
        return runs.stream().map(run -> advice(at, run, limits)).toList();
    }

    private static boolean alike(List<At> at, Run a, Run b) {
        return at.get(a.first()).kind() == at.get(b.first()).kind()
                && at.get(a.first()).now() == at.get(b.first()).now();
    }

    private static FallAdvice advice(List<At> at, Run run, Limits limits) {
        double sum = 0;
        double grade = 0;
        for (int i = run.first(); i <= run.last(); i++) {
            sum += at.get(i).across();
            grade = Math.max(grade, at.get(i).grade());
        }
        double across = sum / (run.last() - run.first() + 1);
        Kind kind = at.get(run.first()).kind();
        double least = limits.crossLeast().value();
        double outward = Math.max(least, grade + limits.outslopeOver().value());
        Saying why =
                switch (kind) {
                    case LEVEL ->
                            Saying.plain(
                                    "the ground is all but level across: a crown sheds to both"
                                            + " sides");
                    case ON_FILL ->
                            Saying.plain(
                                    "it stands on fill: a crown sheds to both sides, in thin sheets"
                                            + " that wash the slopes least");
                    case OUT_LEFT, OUT_RIGHT ->
                            Saying.of(
                                    "on a side slope, at {} and on firm soil it sheds downhill in a"
                                            + " thin sheet, without a ditch, if it falls at least"
                                            + " {}; not where it is driven on ice",
                                    Quantity.grade(grade),
                                    Quantity.grade(outward));
                    case IN_LEFT, IN_RIGHT ->
                            Saying.of(
                                    "on a side slope, at {}, water that runs off downhill would"
                                            + " wash the fill: into a ditch on the uphill side, led"
                                            + " under the lane at the places proposed",
                                    Quantity.grade(grade));
                };
        boolean out = kind == Kind.OUT_LEFT || kind == Kind.OUT_RIGHT;
        return new FallAdvice(
                run.from(i -> at.get(i).station()),
                run.to(i -> at.get(i).station(), at.size()),
                across,
                grade,
                at.get(run.first()).now(),
                kind.fall(),
                out ? Math.min(outward, limits.crossMost().value()) : least,
                why);
    }
}
