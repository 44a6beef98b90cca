package lanewright.lane.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleBinaryOperator;
import lanewright.ground.Ground;
import lanewright.ground.GroundOptions;
import lanewright.ground.VertexField;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.line.IntersectionPoint;
import lanewright.lane.line.Profile;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.shape.CrossFall;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.Shapes;
import lanewright.lane.shape.TypicalSection;
import lanewright.lane.volume.LaneVolumes;
import lanewright.lane.volume.Running;
import lanewright.measure.Progress;
import lanewright.survey.Survey;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

/** Lanes on triangulated ground: what must not change when the world is turned, and what must. */
class LaneOnTrianglesTest {

    /** What the volumes of a world may change by when it is turned, shifted or mirrored. */
    private static final double TURNED = 1e-9;

    private static final double LENGTH_OF_SIDE = 170;

    /** A way to move the whole world: turn, shift, and mirror in the first axis. */
    private record Move(double angle, double east, double north, boolean mirror) {
        double x(double x, double y) {
            double own = mirror ? -x : x;
            return Math.cos(angle) * own - Math.sin(angle) * y + east;
        }

        double y(double x, double y) {
            double own = mirror ? -x : x;
            return Math.sin(angle) * own + Math.cos(angle) * y + north;
        }
    }

    private static final Move STAY = new Move(0, 0, 0, false);

    /** Rolling ground without ties, with topsoil of its own at every shot. */
    private static final class World {
        private final List<double[]> shots = new ArrayList<>();
        private final int seed;

        World(int seed) {
            this.seed = seed;
            var random = new SplittableRandom(seed);
            for (double x = -20; x < LENGTH_OF_SIDE; x += 5) {
                for (double y = -20; y < LENGTH_OF_SIDE; y += 5) {
                    double px = x + random.nextDouble(4);
                    double py = y + random.nextDouble(4);
                    double z =
                            40
                                    + 3 * Math.sin(px / 31 + seed)
                                    + 2 * Math.cos(py / 17)
                                    + random.nextDouble(0.4);
                    shots.add(new double[] {px, py, z, 0.1 + random.nextDouble(0.3)});
                }
            }
        }

        LaneVolumes volumes(Move move, boolean back) throws DesignRefused {
            var survey = Survey.builder();
            for (double[] shot : shots) {
                survey.point(move.x(shot[0], shot[1]), move.y(shot[0], shot[1]), shot[2]);
            }
            Ground ground = Ground.of(survey.build(), GroundOptions.USUAL, Progress.NONE);
            double[] soil = new double[ground.vertexCount()];
            for (int v = 0; v < soil.length; v++) {
                soil[v] = shots.get(shotAt(move, ground.x(v), ground.y(v)))[3];
            }
            LaneDesign lane = lane(move, back);
            SectionSet set = Sections.of(lane, ground, ground.field(soil), null, Progress.NONE);
            assertTrue(set.isComplete(), "seed " + seed);
            return LaneVolumes.of(set);
        }

        /** The shot at a place of the moved world: the only one within half a millimetre. */
        private int shotAt(Move move, double x, double y) {
            for (int i = 0; i < shots.size(); i++) {
                double[] shot = shots.get(i);
                if (Math.abs(move.x(shot[0], shot[1]) - x) < 5e-4
                        && Math.abs(move.y(shot[0], shot[1]) - y) < 5e-4) {
                    return i;
                }
            }
            throw new IllegalStateException("no shot at " + x + ", " + y);
        }

        private LaneDesign lane(Move move, boolean back) throws DesignRefused {
            double[][] points = {{10, 8, 0}, {45, 60, 25}, {100, 70, 18}, {130, 140, 0}};
            List<IntersectionPoint> line = new ArrayList<>();
            for (double[] p : points) {
                line.add(new IntersectionPoint(move.x(p[0], p[1]), move.y(p[0], p[1]), p[2]));
            }
            if (back) {
                Collections.reverse(line);
            }
            Alignment alignment = Alignment.of(line);
            double length = alignment.length();
            List<VerticalPoint> grade = new ArrayList<>();
            grade.add(new VerticalPoint(back ? length : 0, 42, 0));
            grade.add(new VerticalPoint(back ? length - 70 : 70, 40, 30));
            grade.add(new VerticalPoint(back ? 0 : length, 41.5, 0));
            if (back) {
                Collections.reverse(grade);
            }
            return LaneDesign.on(alignment, Profile.of(grade))
                    .typical(shape(move.mirror() != back))
                    .interval(length / 24)
                    .margin(0.6)
                    .build();
        }

        /** A lane that is not the same on both sides. */
        private static TypicalSection shape(boolean mirrored) {
            Shapes shapes =
                    Shapes.lane(3.6)
                            .shed(mirrored ? CrossFall.SHED_LEFT : CrossFall.SHED_RIGHT, 0.03)
                            .layer("surface", 0.1, 1.5)
                            .layer("base", 0.15, 1.5)
                            .strip()
                            .topsoilBack(0.1, false);
            var one =
                    shapes.shoulder(0.4)
                            .slopes(2, 1.5, 1.5)
                            .ditch(DitchRule.WHERE_BELOW_GROUND, 0.4, 0.3)
                            .side();
            var two = shapes.shoulder(0.2).slopes(3, 2, 1).ditch(DitchRule.NEVER, 1, 0).side();
            return mirrored ? shapes.make(two, one) : shapes.make(one, two);
        }
    }

    private static void assertSame(LaneVolumes a, LaneVolumes b, String message) {
        assertSame(a.strip(), b.strip(), message);
        assertSame(a.cut(), b.cut(), message);
        assertSame(a.fill(), b.fill(), message);
        assertSame(a.edgeRefill(), b.edgeRefill(), message);
        assertSame(a.topsoilBack(), b.topsoilBack(), message);
        assertSame(a.disturbed(), b.disturbed(), message);
        for (int i = 0; i < a.stone().size(); i++) {
            assertSame(a.stone().get(i), b.stone().get(i), message);
        }
    }

    private static void assertSame(Running a, Running b, String message) {
        String what = message + ", " + a.name();
        assertEquals(a.plain(), b.plain(), TURNED * a.plain(), what);
        assertEquals(a.corrected(), b.corrected(), TURNED * a.corrected(), what);
    }

    @RepeatedTest(6)
    void volumesStayWhenTheWorldIsTurnedShiftedOrMirrored(RepetitionInfo run) throws DesignRefused {
        int seed = run.getCurrentRepetition();
        World world = new World(seed);
        LaneVolumes here = world.volumes(STAY, false);
        assertTrue(here.cut().plain() > 20 && here.fill().plain() > 20, "a lane of both");
        assertSame(here, world.volumes(new Move(0.7, 0, 0, false), false), "turned " + seed);
        assertSame(here, world.volumes(new Move(0, 731.3, -250.7, false), false), "moved " + seed);
        assertSame(here, world.volumes(new Move(0, 0, 0, true), false), "mirrored " + seed);
        assertSame(here, world.volumes(new Move(2.1, -90, 33, true), false), "all " + seed);
    }

    @RepeatedTest(6)
    void volumesStayWhenTheLaneIsWalkedTheOtherWay(RepetitionInfo run) throws DesignRefused {
        World world = new World(run.getCurrentRepetition());
        assertSame(
                world.volumes(STAY, false),
                world.volumes(STAY, true),
                "seed " + run.getCurrentRepetition());
    }

    @RepeatedTest(4)
    void partsAddUpOverTheWholeLane(RepetitionInfo run) throws DesignRefused {
        World world = new World(run.getCurrentRepetition());
        LaneDesign lane = world.lane(STAY, false);
        var survey = Survey.builder();
        world.shots.forEach(shot -> survey.point(shot[0], shot[1], shot[2]));
        Ground ground = Ground.of(survey.build(), GroundOptions.USUAL, Progress.NONE);
        SectionSet set = Sections.of(lane, ground, ground.constant(0.25), null, Progress.NONE);
        LaneVolumes v = LaneVolumes.of(set);
        double raised = 0;
        for (int i = 1; i < set.sections().size(); i++) {
            Section a = set.sections().get(i - 1);
            Section b = set.sections().get(i);
            raised += (b.station() - a.station()) * (raised(a) + raised(b)) / 2;
        }
        double stone = v.stone().stream().mapToDouble(Running::plain).sum();
        double parts =
                stone
                        + v.fill().plain()
                        + v.topsoilBack().plain()
                        - v.cut().plain()
                        - v.strip().plain();
        assertEquals(raised, parts, 1e-8, "seed " + run.getCurrentRepetition());
    }

    /**
     * A section cut by itself is the one that stands there among all; and where none stands, its
     * parts add up as all sections' do.
     */
    @Test
    void aSectionCutByItselfIsLikeTheOthers() throws DesignRefused {
        World world = new World(3);
        LaneDesign lane = world.lane(STAY, false);
        var survey = Survey.builder();
        world.shots.forEach(shot -> survey.point(shot[0], shot[1], shot[2]));
        Ground ground = Ground.of(survey.build(), GroundOptions.USUAL, Progress.NONE);
        VertexField soil = ground.constant(0.25);
        int alike = 0;
        for (Section each : Sections.of(lane, ground, soil, null, Progress.NONE).sections()) {
            if (each.face() == Section.Face.SINGLE) {
                assertEquals(each, Sections.at(lane, ground, soil, null, each.station()));
                alike++;
            }
            double between = Math.min(lane.length(), each.station() + 1.37);
            Section own = Sections.at(lane, ground, soil, null, between);
            Areas areas = own.areas();
            double stone = areas.layers().stream().mapToDouble(Part::area).sum();
            double parts =
                    stone
                            + areas.fill().area()
                            + areas.topsoilBack().area()
                            - areas.cut().area()
                            - areas.strip().area();
            assertEquals(raised(own), parts, 1e-9, "at " + between);
        }
        assertTrue(alike > 20, alike + " sections");
    }

    /** Finished less ground between the catch points, by the shoelace formula. */
    private static double raised(Section s) {
        double from = s.left().catchPoint().offset();
        double to = s.right().catchPoint().offset();
        return area(s.finished(), from, to) - area(s.ground(), from, to);
    }

    private static double area(SectionLine line, double from, double to) {
        double sum = 0;
        for (int i = 1; i < line.size(); i++) {
            double a = Math.max(line.offset(i - 1), from);
            double b = Math.min(line.offset(i), to);
            if (a < b) {
                double rise =
                        (line.height(i) - line.height(i - 1))
                                / (line.offset(i) - line.offset(i - 1));
                double za = line.height(i - 1) + (a - line.offset(i - 1)) * rise;
                double zb = line.height(i - 1) + (b - line.offset(i - 1)) * rise;
                sum += (b - a) * (za + zb) / 2;
            }
        }
        return sum;
    }

    private static Ground surveyed(DoubleBinaryOperator height, double spacing) {
        var survey = Survey.builder();
        double row = spacing * Math.sqrt(0.75);
        for (int j = 0; j * row < 100; j++) {
            for (int i = 0; i * spacing < 160; i++) {
                double x = -30 + (i + (j % 2 == 0 ? 0 : 0.5)) * spacing;
                double y = -50 + j * row;
                survey.point(x, y, height.applyAsDouble(x, y));
            }
        }
        return Ground.of(survey.build(), GroundOptions.USUAL, Progress.NONE);
    }

    private static LaneDesign eastward(TypicalSection shape, double from, double to)
            throws DesignRefused {
        Alignment line =
                Alignment.of(
                        List.of(new IntersectionPoint(0, 0, 0), new IntersectionPoint(100, 0, 0)));
        return LaneDesign.on(line, Worlds.grade(from, to, 100)).typical(shape).build();
    }

    @Test
    void sideHillOnTrianglesIsTheSideHillByHand() throws DesignRefused {
        // Falls 20 % to the south, the right of a lane that runs east and climbs with it by 4 %.
        Ground ground = surveyed((x, y) -> 7 + 0.2 * y + 0.04 * x, 9);
        TypicalSection shape = Shapes.lane(4).slopes(2, 1, 1).strip().make();
        SectionSet set =
                Sections.of(
                        eastward(shape, 7, 11), ground, ground.constant(0.1), null, Progress.NONE);
        LaneVolumes volumes = LaneVolumes.of(set);
        double right = 1 / (0.5 - 0.2);
        double left = 2 / (1 - 0.2);
        assertEquals(100 * 0.1 * (left + right), volumes.strip().plain(), 1e-7);
        assertEquals(
                100 * (0.2 * right - 0.2 * left + 0.1 * (left + right)),
                volumes.fill().plain() - volumes.cut().plain(),
                1e-7);
        assertEquals(volumes.fill().plain(), volumes.fill().corrected(), 0);
    }

    @Test
    void halvingTheSpacingOfShotsQuartersTheError() throws DesignRefused {
        DoubleBinaryOperator rolling =
                (x, y) -> 10 + 2 * Math.sin(x / 20) * Math.cos(y / 25) + 0.05 * y;
        TypicalSection shape = Shapes.lane(4).make();
        double[] fill = new double[4];
        for (int i = 0; i < 4; i++) {
            Ground ground = surveyed(rolling, 8 / Math.pow(2, i));
            VertexField none = ground.constant(0);
            LaneDesign lane = eastward(shape, 13, 13);
            fill[i] =
                    LaneVolumes.of(Sections.of(lane, ground, none, null, Progress.NONE))
                            .fill()
                            .plain();
        }
        double first = (fill[0] - fill[1]) / (fill[1] - fill[2]);
        double second = (fill[1] - fill[2]) / (fill[2] - fill[3]);
        assertTrue(first > 3 && first < 5, "ratio " + first);
        assertTrue(second > 3 && second < 5, "ratio " + second);
    }

    @Test
    void groundLinesAreKeptAndGiveTheSameSections() throws DesignRefused {
        World world = new World(3);
        LaneDesign lane = world.lane(STAY, false);
        var survey = Survey.builder();
        world.shots.forEach(shot -> survey.point(shot[0], shot[1], shot[2]));
        Ground ground = Ground.of(survey.build(), GroundOptions.USUAL, Progress.NONE);
        VertexField soil = ground.constant(0.2);
        GroundLines lines = new GroundLines(lane.alignment(), ground, soil, null);
        SectionSet once = Sections.of(lane, lines, Progress.NONE);
        // Another grade in between, with slopes that reach farther.
        double length = lane.length();
        Sections.of(lane.withProfile(Worlds.grade(50, 55, length)), lines, Progress.NONE);
        SectionSet again = Sections.of(lane, lines, Progress.NONE);
        SectionSet fresh = Sections.of(lane, ground, soil, null, Progress.NONE);
        assertEquals(once.sections(), again.sections());
        assertEquals(once.sections(), fresh.sections());
    }
}
