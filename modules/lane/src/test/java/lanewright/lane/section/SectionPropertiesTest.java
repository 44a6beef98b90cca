package lanewright.lane.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import lanewright.lane.shape.CrossFall;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.LaneAt;
import lanewright.lane.shape.Shapes;
import lanewright.lane.shape.TypicalSection;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;

/** What must hold for any shape on any ground; the seed is in the message. */
class SectionPropertiesTest {

    /** A dozen sums of products of numbers below 100. */
    private static final double ROUNDING = 1e-11;

    private static TypicalSection shape(SplittableRandom random) {
        Shapes shapes =
                Shapes.lane(2.5 + random.nextDouble(3))
                        .shoulder(random.nextInt(3) == 0 ? 0 : random.nextDouble())
                        .slopes(
                                1 + random.nextDouble(3),
                                1 + random.nextDouble(2),
                                1 + random.nextDouble(2))
                        .ditch(
                                random.nextInt(4) == 0
                                        ? DitchRule.NEVER
                                        : DitchRule.WHERE_BELOW_GROUND,
                                0.2 + random.nextDouble(0.6),
                                random.nextInt(2) == 0 ? 0 : random.nextDouble());
        CrossFall way = List.of(CrossFall.values()).get(random.nextInt(3));
        double fall = random.nextDouble(0.06);
        shapes.shed(way, fall);
        if (random.nextBoolean()) {
            shapes.boxed();
        }
        int layers = random.nextInt(4);
        for (int i = 0; i < layers; i++) {
            shapes.layer("layer " + i, 0.05 + random.nextDouble(0.2), random.nextDouble(2));
        }
        if (layers > 0 && random.nextBoolean()) {
            shapes.under(fall + random.nextDouble(0.01));
        }
        if (random.nextBoolean()) {
            shapes.strip();
        }
        if (random.nextBoolean()) {
            shapes.topsoilBack(random.nextDouble(0.2), random.nextBoolean());
        }
        return shapes.make();
    }

    private static GroundAcross ground(SplittableRandom random, boolean mirrored) {
        int n = 60;
        double[] offsets = new double[n];
        double[][] values = new double[3][n];
        double tilt = (random.nextDouble() - 0.5) * 0.5;
        for (int i = 0; i < n; i++) {
            offsets[i] = -30 + i + random.nextDouble(0.9);
            values[0][i] = tilt * offsets[i] + random.nextDouble(0.7);
            values[1][i] = random.nextDouble(0.5);
            values[2][i] = random.nextDouble(1.2);
        }
        if (mirrored) {
            double[] back = new double[n];
            double[][] mirror = new double[3][n];
            for (int i = 0; i < n; i++) {
                back[i] = -offsets[n - 1 - i];
                for (int v = 0; v < 3; v++) {
                    mirror[v][i] = values[v][n - 1 - i];
                }
            }
            return GroundAcross.of(back, mirror[0], mirror[1], mirror[2], true, true);
        }
        return GroundAcross.of(offsets, values[0], values[1], values[2], true, true);
    }

    private static double under(SectionLine line, double from, double to) {
        double sum = 0;
        for (int i = 1; i < line.size(); i++) {
            double a = Math.max(line.offset(i - 1), from);
            double b = Math.min(line.offset(i), to);
            if (a < b) {
                sum += (b - a) * (inside(line, i, a) + inside(line, i, b)) / 2;
            }
        }
        return sum;
    }

    private static double inside(SectionLine line, int i, double at) {
        double part = (at - line.offset(i - 1)) / (line.offset(i) - line.offset(i - 1));
        return line.height(i - 1) + part * (line.height(i) - line.height(i - 1));
    }

    private static double stone(Section section) {
        return section.areas().layers().stream().mapToDouble(Part::area).sum();
    }

    @RepeatedTest(300)
    void finishedLessGroundIsStoneFillAndTopsoilLessCutAndStrip(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        var random = new SplittableRandom(seed);
        TypicalSection shape = shape(random);
        Section section = Worlds.cut(shape, random.nextDouble(2) - 1, 0.5, ground(random, false));
        if (!section.complete()) {
            return;
        }
        double from = section.left().catchPoint().offset();
        double to = section.right().catchPoint().offset();
        double raised = under(section.finished(), from, to) - under(section.ground(), from, to);
        Areas areas = section.areas();
        double parts =
                stone(section)
                        + areas.fill().area()
                        + areas.topsoilBack().area()
                        - areas.cut().area()
                        - areas.strip().area();
        assertEquals(raised, parts, ROUNDING, "seed " + seed);
        // Stone by the template is stone between the lines.
        double hingeLeft = section.left().hinge().offset();
        double hingeRight = section.right().hinge().offset();
        double between =
                under(section.finished(), hingeLeft, hingeRight)
                        - under(section.subgrade(), hingeLeft, hingeRight);
        assertEquals(between, stone(section), ROUNDING, "seed " + seed);
        assertTrue(areas.edgeRefill().area() <= areas.fill().area() + ROUNDING, "seed " + seed);
        assertEquals(
                section.ground().at(from),
                section.left().catchPoint().height(),
                ROUNDING,
                "seed " + seed);
    }

    @RepeatedTest(100)
    void aMirroredLaneIsMirroredToTheLastBit(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        TypicalSection shape = shape(new SplittableRandom(seed));
        TypicalSection mirrored =
                new TypicalSection(
                        shape.width(),
                        switch (shape.fall()) {
                            case CROWN -> CrossFall.CROWN;
                            case SHED_LEFT -> CrossFall.SHED_RIGHT;
                            case SHED_RIGHT -> CrossFall.SHED_LEFT;
                        },
                        shape.crossSlope(),
                        shape.bed(),
                        shape.layers(),
                        shape.subgradeFall(),
                        shape.right(),
                        shape.left(),
                        shape.strip(),
                        shape.topsoilBack(),
                        shape.topsoilInDitch());
        Section one = Worlds.cut(shape, 0.1, 0.5, ground(new SplittableRandom(seed), false));
        Section two = Worlds.cut(mirrored, 0.1, 0.5, ground(new SplittableRandom(seed), true));
        assertEquals(one.areas().cut().area(), two.areas().cut().area(), "seed " + seed);
        assertEquals(one.areas().fill().area(), two.areas().fill().area(), "seed " + seed);
        assertEquals(one.areas().strip().area(), two.areas().strip().area(), "seed " + seed);
        assertEquals(one.areas().undercut().area(), two.areas().undercut().area());
        assertEquals(one.areas().cut().centroid(), -two.areas().cut().centroid() + 0.0);
        assertEquals(one.left().limit(), -two.right().limit(), "seed " + seed);
        assertEquals(one.left().kind(), two.right().kind(), "seed " + seed);
    }

    /** A plain slow way: thin strips, each taken at its middle. */
    @RepeatedTest(40)
    void areasAgreeWithThinStrips(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        var random = new SplittableRandom(seed);
        TypicalSection shape = shape(random);
        GroundAcross ground = ground(random, false);
        LaneAt lane =
                new LaneAt(
                        0.1,
                        shape,
                        shape.leftFall(),
                        shape.rightFall(),
                        shape.leftUnder(),
                        shape.rightUnder(),
                        Double.NaN,
                        Double.NaN);
        Section s = new SectionCutter(lane).cut(0, Section.Face.SINGLE, lane, 0.5, ground);
        if (!s.complete()) {
            return;
        }
        double from = s.left().catchPoint().offset();
        double to = s.right().catchPoint().offset();
        int n = 40_000;
        double cut = 0;
        double fill = 0;
        double moment = 0;
        double edge = 0;
        double undercut = 0;
        for (int i = 0; i < n; i++) {
            double u = from + (to - from) * (i + 0.5) / n;
            double earth = s.subgrade().at(u) - s.stripped().at(u);
            boolean slope = u < s.left().hinge().offset() || u > s.right().hinge().offset();
            cut += Math.max(0, -earth);
            fill += Math.max(0, earth);
            moment += u * Math.max(0, earth);
            if (slope && s.finished().at(u) <= s.ground().at(u)) {
                edge += Math.max(0, earth);
            }
            if (!slope) {
                double top = Math.min(s.subgrade().at(u), s.stripped().at(u));
                undercut += Math.max(0, top - s.bearing().at(u));
            }
        }
        double w = (to - from) / n;
        assertEquals(cut * w, s.areas().cut().area(), 2e-3, "seed " + seed);
        assertEquals(fill * w, s.areas().fill().area(), 2e-3, "seed " + seed);
        assertEquals(
                moment * w,
                s.areas().fill().area() * s.areas().fill().centroid(),
                2e-2,
                "seed " + seed);
        assertEquals(edge * w, s.areas().edgeRefill().area(), 2e-3, "seed " + seed);
        assertEquals(undercut * w, s.areas().undercut().area(), 2e-3, "seed " + seed);
    }
}
