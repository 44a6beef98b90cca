package lanewright.lane.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.line.IntersectionPoint;
import lanewright.lane.line.Profile;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.section.Section.Face;
import lanewright.lane.section.SideResult.Kind;
import lanewright.lane.shape.DitchBottom;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.Shapes;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.Stretch;
import lanewright.lane.shape.TieIn;
import lanewright.lane.shape.TypicalSection;
import lanewright.lane.volume.LaneVolumes;
import lanewright.measure.Finding;
import lanewright.measure.Progress;
import org.junit.jupiter.api.Test;

/** Whole lanes on ground whose volumes are known; each expected value is worked by hand. */
class LaneOnSimpleGroundTest {

    private static final double[] WIDE = {-60, 60};

    private static SectionSet on(LaneDesign lane, GroundSource ground) {
        return Sections.of(lane, ground, Progress.NONE);
    }

    private static GroundSource level(DoubleUnaryOperator height, double topsoil) {
        return Worlds.by((s, u) -> height.applyAsDouble(s), topsoil, Double.NaN, WIDE);
    }

    private static List<String> codes(SectionSet set) {
        return set.findings().stream().map(Finding::code).toList();
    }

    @Test
    void sectionsStandAtTheIntervalAndWhereverSomethingBegins() throws DesignRefused {
        Alignment line =
                Alignment.of(
                        List.of(
                                new IntersectionPoint(0, 0, 0),
                                new IntersectionPoint(0, 50, 20),
                                new IntersectionPoint(50, 50, 0)));
        Profile profile =
                Profile.of(
                        List.of(
                                new VerticalPoint(0, 1, 0),
                                new VerticalPoint(42, 3, 10),
                                new VerticalPoint(line.length(), 1, 0)));
        TypicalSection narrow = Shapes.lane(3).make();
        TypicalSection wide = Shapes.lane(5).make();
        LaneDesign lane =
                LaneDesign.on(line, profile)
                        .typical(
                                List.of(
                                        new Stretch<>(0, 71.5, narrow),
                                        new Stretch<>(71.5, line.length(), wide)))
                        .interval(25)
                        .build();
        double arcEnd = 30 + 10 * Math.PI;
        double[] expected = {0, 25, 30, 37, 47, 50, arcEnd, 71.5, 71.5, 75, arcEnd + 30};
        SectionSet set = on(lane, level(s -> 0, 0));
        assertEquals(expected.length, set.sections().size());
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], set.sections().get(i).station(), 1e-9);
        }
        assertEquals(Face.BEFORE, set.sections().get(7).face());
        assertEquals(-1.5, set.sections().get(7).left().edge().offset(), 0);
        assertEquals(Face.AFTER, set.sections().get(8).face());
        assertEquals(-2.5, set.sections().get(8).left().edge().offset(), 0);
        assertEquals(Face.SINGLE, set.sections().get(6).face());
    }

    @Test
    void anUnchangingSectionIsItsAreaTimesTheLength() throws DesignRefused {
        TypicalSection shape = Shapes.lane(4).strip().layer("base", 0.2, 1.5).make();
        LaneDesign lane = Worlds.lane(95, 1.2, 1.2 + 9.5, shape);
        SectionSet set = on(lane, level(s -> 0.1 * s, 0.15));
        LaneVolumes volumes = LaneVolumes.of(set);
        // Subgrade 1.0 up, its hinge 2.3 out, slopes 2 m wide.
        assertEquals(95 * 8.6 * 0.15, volumes.strip().plain(), 1e-9);
        assertEquals(95 * (4.6 + 2 + 8.6 * 0.15), volumes.fill().plain(), 1e-9);
        assertEquals(95 * 0.86, volumes.stone().get(0).plain(), 1e-9);
        assertEquals("base", volumes.stone().get(0).name());
        assertEquals(0, volumes.cut().plain(), 0);
        assertEquals(95 * 8.6, volumes.disturbed().plain(), 1e-9);
        assertTrue(set.isComplete());
        assertEquals(List.of("step-at-end", "step-at-end"), codes(set));
    }

    @Test
    void aDitchBeginsWhereItsBottomComesToTheGround() throws DesignRefused {
        // The lane falls 4 % below level ground; the ditch is 0.5 deep under a level section.
        TypicalSection shape = Shapes.lane(4).ditch(DitchRule.WHERE_BELOW_GROUND, 0.5, 0).make();
        LaneDesign lane = Worlds.lane(60, 1.3, 1.3 - 2.4, shape);
        List<Section> sections = on(lane, level(s -> 0, 0)).sections();
        double begins = 0.8 / 0.04; // bottom 1.3 − 0.04 s − 0.5 at zero
        int found = 0;
        for (int i = 1; i < sections.size(); i++) {
            if (sections.get(i).left().kind() != sections.get(i - 1).left().kind()) {
                found++;
                assertEquals(begins, sections.get(i).station(), 1e-4);
                assertEquals(sections.get(i).station(), sections.get(i - 1).station(), 0);
                assertEquals(Kind.FILL, sections.get(i - 1).left().kind());
                assertEquals(Kind.DITCH, sections.get(i).left().kind());
                assertEquals(Face.BEFORE, sections.get(i - 1).face());
            }
        }
        assertEquals(1, found);
    }

    @Test
    void changesBetweenTwoSectionsAreFoundEvenWhenBothLookAlike() throws DesignRefused {
        // A knoll 6 m long between sections 10 m apart, high enough for a ditch.
        TypicalSection shape = Shapes.lane(4).ditch(DitchRule.WHERE_BELOW_GROUND, 0.5, 0).make();
        LaneDesign lane = Worlds.lane(40, 1, 1, shape);
        SectionSet set = on(lane, level(s -> Math.max(0, 1.5 - 0.5 * Math.abs(s - 15)), 0));
        List<Double> changes =
                set.sections().stream()
                        .filter(s -> s.face() == Face.AFTER)
                        .map(Section::station)
                        .toList();
        // Ground over 0.5: within 2 m of the top. Hinge below ground: within 1 m, no matter here.
        assertEquals(2, changes.size());
        assertEquals(13, changes.get(0), 1e-5);
        assertEquals(17, changes.get(1), 1e-5);
    }

    @Test
    void aCatchPointThatJumpsStandsTwoSections() throws DesignRefused {
        // Beside the lane a bank grows up-station until the slope meets its top instead of the
        // plain behind it.
        TypicalSection shape = Shapes.lane(4).make();
        LaneDesign lane = Worlds.lane(40, 2, 2, shape);
        GroundSource ground =
                Worlds.by((s, u) -> u == 4 ? 0.04 * s : 0, 0, Double.NaN, -60, 2, 3.5, 4, 4.5, 60);
        List<Section> jumps =
                on(lane, ground).sections().stream().filter(s -> s.face() != Face.SINGLE).toList();
        // The slope is 1 high at 4 m out, the bank at 25 m.
        assertEquals(2, jumps.size());
        assertEquals(25, jumps.get(0).station(), 1e-6);
        assertEquals(6, jumps.get(0).right().catchPoint().offset(), 1e-6);
        assertEquals(4, jumps.get(1).right().catchPoint().offset(), 1e-6);
    }

    @Test
    void onACurveEachAreaIsCarriedAlongItsOwnCentroid() throws DesignRefused {
        // Fill wider on the left; the line turns right, so the left is outside.
        Shapes shapes = Shapes.lane(4).layer("base", 0.25, 1);
        SideShape right = shapes.slopes(2, 2, 2).side();
        SideShape left = shapes.slopes(4, 2, 2).side();
        Alignment line =
                Alignment.of(
                        List.of(
                                new IntersectionPoint(0, 0, 0),
                                new IntersectionPoint(0, 30, 30),
                                new IntersectionPoint(30, 30, 0)));
        LaneDesign lane =
                LaneDesign.on(line, Worlds.grade(1.25, 1.25, line.length()))
                        .typical(shapes.make(left, right))
                        .interval(7)
                        .build();
        LaneVolumes volumes = LaneVolumes.of(on(lane, level(s -> 0, 0)));
        // A quarter circle of 30 m. Fill: 4.5 × 1, left triangle 4 × 1 / 2, right 2 × 1 / 2.
        double arc = 15 * Math.PI;
        double area = 4.5 + 2 + 1;
        double moment = -2 * (2.25 + 4.0 / 3) + 1 * (2.25 + 2.0 / 3);
        assertEquals(area * arc, volumes.fill().plain(), 1e-9);
        // Pappus: area times the path of its centroid, farther out on the left.
        double path = (30 - moment / area) * Math.PI / 2;
        assertEquals(area * path, volumes.fill().corrected(), 1e-9);
        assertTrue(volumes.fill().corrected() > volumes.fill().plain());
        // Stone lies even on both sides of the line.
        assertEquals(volumes.stone().get(0).plain(), volumes.stone().get(0).corrected(), 1e-9);
    }

    @Test
    void halvingTheIntervalQuartersTheError() throws DesignRefused {
        // Level lane over a V valley: depth h = 0.1 |s − 50| … area 4 h + 2 h².
        TypicalSection shape = Shapes.lane(4).make();
        Alignment line = Worlds.straight(100);
        // ∫ of 4 h + 2 h² for h from 5 down to 0 over 50 m, twice.
        double exact = 2 * (4 * 5 * 50 / 2.0 + 2 * 25 * 50 / 3.0);
        double last = Double.NaN;
        for (double interval : new double[] {10, 5, 2.5}) {
            LaneDesign lane =
                    LaneDesign.on(line, Worlds.grade(5, 5, 100))
                            .typical(shape)
                            .interval(interval)
                            .build();
            double fill =
                    LaneVolumes.of(on(lane, level(s -> 0.1 * Math.abs(s - 50), 0))).fill().plain();
            // Trapezoidal rule on a parabola: 2 h² with h = 0.1 s is too much by L³ / 6 × 0.02.
            int spans = (int) Math.round(100 / interval);
            double tooMuch = spans * Math.pow(interval, 3) * 0.01 * 2 * 2 / 12;
            assertEquals(exact + tooMuch, fill, 1e-8);
            if (!Double.isNaN(last)) {
                assertEquals(4, last / (fill - exact), 1e-6);
            }
            last = fill - exact;
        }
    }

    @Test
    void twoStretchesMeetInTwoSectionsWithNoVolumeBetween() throws DesignRefused {
        TypicalSection shape = Shapes.lane(4).layer("base", 0.2, 0).make();
        TypicalSection other = Shapes.lane(4).layer("surface", 0.1, 0).layer("base", 0.2, 0).make();
        LaneDesign lane =
                LaneDesign.on(Worlds.straight(60), Worlds.grade(1, 1, 60))
                        .typical(List.of(new Stretch<>(0, 25, shape), new Stretch<>(25, 60, other)))
                        .build();
        LaneVolumes volumes = LaneVolumes.of(on(lane, level(s -> 0, 0)));
        assertEquals(List.of("base", "surface"), names(volumes));
        assertEquals(60 * 0.8, volumes.stone().get(0).plain(), 1e-9);
        assertEquals(35 * 0.4, volumes.stone().get(1).plain(), 1e-9);
    }

    private static List<String> names(LaneVolumes volumes) {
        return volumes.stone().stream().map(r -> r.name()).toList();
    }

    @Test
    void aDitchWithItsOwnGradeIsReadFromEndToEnd() throws DesignRefused {
        TypicalSection shape = Shapes.lane(4).ditch(DitchRule.WHERE_BELOW_GROUND, 0.5, 0).make();
        LaneDesign lane =
                LaneDesign.on(Worlds.straight(50), Worlds.grade(-1, -1, 50))
                        .typical(shape)
                        .leftBottoms(List.of(new Stretch<>(10, 40, new DitchBottom(-1.5, -2.1))))
                        .build();
        List<Section> sections = on(lane, level(s -> 0, 0)).sections();
        for (Section section : sections) {
            double s = section.station();
            double bottom = section.left().ditchInner().height();
            boolean own = s > 10 && (s < 40 || (s == 40 && section.face() == Face.BEFORE));
            assertEquals(own ? -1.5 - 0.02 * (s - 10) : -1.5, bottom, 1e-12, "at " + s);
        }
        assertEquals(
                List.of(40.0),
                sections.stream()
                        .filter(s -> s.face() == Face.AFTER)
                        .map(Section::station)
                        .toList(),
                "no jump at 10, where the bottoms agree");
    }

    @Test
    void groundThatEndsTooSoonIsFoundAndNothingIsMadeUp() throws DesignRefused {
        TypicalSection shape = Shapes.lane(4).make();
        LaneDesign lane = Worlds.lane(40, 1, 3, shape);
        GroundSource ground = Worlds.by((s, u) -> 0, 0, Double.NaN, -7, 60);
        SectionSet set = on(lane, ground);
        // The left slope needs 2 (1 + 0.05 s) m beyond 2 m: it leaves the ground at 30 m.
        Finding finding =
                set.findings().stream()
                        .filter(f -> f.code().equals("no-catch-point"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(Finding.Level.STOP, finding.level());
        assertEquals(30, finding.where().from(), 1e-6);
        assertEquals(40, finding.where().to(), 1e-9);
        Section last = set.sections().get(set.sections().size() - 1);
        assertEquals(2 * 3 + 9, last.areas().fill().area(), 1e-9, "the right side alone");
    }

    @Test
    void offTheGroundIsSaid() throws DesignRefused {
        LaneDesign lane = Worlds.lane(40, 1, 1, Shapes.lane(4).make());
        GroundSource ground =
                (station, before, reach) ->
                        station > 20
                                ? GroundAcross.of(new double[0], new double[0])
                                : Worlds.level(0, 0);
        SectionSet set = on(lane, ground);
        assertTrue(codes(set).contains("lane-off-the-ground"));
        assertEquals(20 * 6, LaneVolumes.of(set).fill().plain(), 1e-6);
    }

    @Test
    void aSideThatReachesPastTheCentreOfItsCurveIsFound() throws DesignRefused {
        Alignment line =
                Alignment.of(
                        List.of(
                                new IntersectionPoint(0, 0, 0),
                                new IntersectionPoint(0, 30, 10),
                                new IntersectionPoint(30, 30, 0)));
        TypicalSection shape = Shapes.lane(4).slopes(3, 2, 2).make();
        LaneDesign lane =
                LaneDesign.on(line, Worlds.grade(3, 3, line.length())).typical(shape).build();
        SectionSet set = on(lane, level(s -> 0, 0));
        Finding finding =
                set.findings().stream()
                        .filter(f -> f.code().equals("side-past-curve-centre"))
                        .findFirst()
                        .orElseThrow();
        assertEquals(20, finding.where().from(), 1e-9);
        assertEquals(20 + 5 * Math.PI, finding.where().to(), 1e-9);
    }

    @Test
    void endsThatDoNotFitAreFound() throws DesignRefused {
        LaneDesign lane =
                LaneDesign.on(Worlds.straight(40), Worlds.grade(0.1, 0.3, 40))
                        .typical(Shapes.lane(4).make())
                        .start(new TieIn(0.1, Double.NaN, 0, 5))
                        .end(new TieIn(0.25, Double.NaN, Double.NaN, 0))
                        .build();
        List<String> codes = codes(on(lane, level(s -> 0, 0)));
        assertEquals(List.of("step-at-end", "tie-in-missed"), codes);
    }

    @Test
    void aSharpAngleStandsTwoSectionsAndIsNoted() throws DesignRefused {
        Alignment line =
                Alignment.of(
                        List.of(
                                new IntersectionPoint(0, 0, 0),
                                new IntersectionPoint(0, 25, 0),
                                new IntersectionPoint(25, 50, 0)));
        LaneDesign lane =
                LaneDesign.on(line, Worlds.grade(1, 1, line.length()))
                        .typical(Shapes.lane(4).make())
                        .build();
        // Ground that differs with the direction looked in, as any slope does.
        GroundSource ground =
                (station, before, reach) ->
                        station <= 25 && (station < 25 || before)
                                ? Worlds.level(0, 0)
                                : Worlds.level(0.5, 0);
        SectionSet set = on(lane, ground);
        assertTrue(codes(set).contains("sharp-angle"));
        List<Section> at =
                set.sections().stream().filter(s -> Math.abs(s.station() - 25) < 1e-6).toList();
        assertEquals(2, at.size());
        assertEquals(6, at.get(0).areas().fill().area(), 1e-9);
        assertEquals(2.5, at.get(1).areas().fill().area(), 1e-9);
    }

    @Test
    void slopesThatRunFarAreFollowedToTheGround() throws DesignRefused {
        // Ground falling 30 % under a slope of 3:1 meets it only 100 times as far as it is high.
        TypicalSection shape = Shapes.lane(4).slopes(3, 2, 2).make();
        LaneDesign lane = Worlds.lane(10, 1, 1, shape);
        GroundSource plane =
                (station, before, reach) ->
                        GroundAcross.of(
                                new double[] {-reach, reach},
                                new double[] {0.3 * reach, -0.3 * reach},
                                new double[2],
                                new double[] {Double.NaN, Double.NaN},
                                false,
                                false);
        SectionSet set = on(lane, plane);
        // 1 − (u − 2)/3 = −0.3 u.
        assertEquals(
                (1 + 2 / 3.0) / (1 / 3.0 - 0.3),
                set.sections().get(0).right().catchPoint().offset(),
                1e-9);
    }
}
