package lanewright.drainage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Sags;
import lanewright.drainage.pond.LowSpot;
import lanewright.drainage.pond.LowSpots;
import lanewright.ground.Ground;
import lanewright.ground.GroundOptions;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.line.IntersectionPoint;
import lanewright.lane.line.Profile;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.section.SectionSet;
import lanewright.lane.section.Sections;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.CrossFall;
import lanewright.lane.shape.Ditch;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.Layer;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.TypicalSection;
import lanewright.lane.surface.BuiltSurface;
import lanewright.lane.surface.CompositeSurface;
import lanewright.measure.Finding;
import lanewright.measure.Progress;
import lanewright.survey.Survey;
import lanewright.survey.SurveyBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The report from real ground, a real design and real sections. */
class WaterReportTest {

    /** A hill to climb east, with a hollow across it at x = 60 that falls north. */
    private static double land(double x, double y) {
        return 100 + 0.03 * x - 0.05 * y - 1.5 * StrictMath.exp(-(x - 60) * (x - 60) / 200);
    }

    private static final double LENGTH = 140;

    @Test
    void aLaneOverAHollowAndUpAHill() throws DesignRefused {
        Ground ground = ground();
        LaneDesign design =
                design(
                        new VerticalPoint(0, 100.5, 0),
                        new VerticalPoint(30, 102, 20),
                        new VerticalPoint(LENGTH, 106, 0));
        SectionSet sections = sections(ground, design);
        WaterReport report =
                WaterReport.of(
                        ground,
                        design,
                        sections.sections(),
                        finished(ground, design),
                        List.of(),
                        WaterOptions.USUAL,
                        Progress.NONE);
        List<Pool> held =
                report.made().stream()
                        .filter(
                                pool ->
                                        pool.beside() != null
                                                && pool.beside().zone() == Pool.Zone.GROUND)
                        .toList();
        assertEquals(1, held.size(), report.made().toString());
        Pool.Beside beside = held.get(0).beside();
        assertNotNull(beside);
        assertEquals(60, beside.station(), 4);
        assertNotNull(held.get(0).culvert());
        assertTrue(held.get(0).culvert().falls());
        List<String> codes = report.findings().stream().map(Finding::code).toList();
        assertTrue(
                codes.contains("lane-dams-water") || codes.contains("lane-is-a-dam"),
                codes.toString());
        assertTrue(codes.contains("road-ditch-not-found"), codes.toString());
        assertTrue(codes.contains("lane-falls-to-road"), codes.toString());
        assertFalse(report.assumptions().isEmpty());
    }

    @Test
    void ditchesAndSagsComeFromTheSections() throws DesignRefused {
        Ground ground = ground();
        LaneDesign design =
                design(
                        new VerticalPoint(0, 100.5, 0),
                        new VerticalPoint(30, 100.2, 20),
                        new VerticalPoint(LENGTH, 104.6, 0));
        SectionSet sections = sections(ground, design);
        WaterReport report =
                WaterReport.of(
                        ground,
                        design,
                        sections.sections(),
                        finished(ground, design),
                        List.of(),
                        WaterOptions.USUAL,
                        Progress.NONE);
        assertFalse(report.ditches().isEmpty());
        for (DitchReach ditch : report.ditches()) {
            assertFalse(ditch.outlets().isEmpty());
            for (DitchReach.Leg leg : ditch.legs()) {
                assertTrue(Math.abs(leg.grade()) < 0.2, leg.toString());
            }
        }
        assertEquals(1, report.sags().size());
        Sags.Sag sag = report.sags().get(0);
        // Grades of −1 % and 4 % meet in a 20 m parabola at 30: level a fifth of the way along.
        assertEquals(24, sag.station(), 0.01);
        assertEquals(sections.sections().size(), report.edges().size());
        // Both ditches lead into the sag, and find no way on: water stands there.
        assertEquals(Sags.WayOut.POND, sag.left());
        List<String> codes = report.findings().stream().map(Finding::code).toList();
        assertTrue(codes.contains("water-stands-in-ditch"), codes.toString());
        assertFalse(codes.contains("ditch-dead-end"), "the water in it says so already");
        assertFalse(codes.contains("lane-is-a-trough"), "it is told with the water");
        assertEquals(0.04, report.crossSlopes().get(5).left(), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 10, 37, 45})
    void ditchesThatFallSteadilyHoldNoWaterAtAnyAngle(double degrees) throws DesignRefused {
        double cos = StrictMath.cos(StrictMath.toRadians(degrees));
        double sin = StrictMath.sin(StrictMath.toRadians(degrees));
        SurveyBuilder survey = Survey.builder();
        for (int j = -10; j <= 10; j++) {
            for (int i = -4; i <= 44; i++) {
                double s = 3 * i + 0.4 * StrictMath.sin(5.0 * i + 3 * j);
                double t = 3 * j + 0.4 * StrictMath.cos(3.0 * i + 7 * j);
                survey.point(s * cos - t * sin, s * sin + t * cos, 100 - 0.008 * s);
            }
        }
        survey.origin(0, 0);
        Ground ground = Ground.of(survey.build(), GroundOptions.USUAL, Progress.NONE);
        LaneDesign design =
                design(
                        new IntersectionPoint(120 * cos, 120 * sin, 0),
                        new VerticalPoint(0, 99.9, 0),
                        new VerticalPoint(120, 99.9 - 0.008 * 120, 0));
        LowSpots found =
                LowSpots.of(
                        new GroundMesh(finished(ground, design)),
                        List.of(),
                        new LowSpots.Threshold(0, 0),
                        Progress.NONE);
        // Only at the lane's lower end, where both ditches end against the ground and the water in
        // them joins across the lane.
        assertEquals(1, found.listed().size());
        assertEquals(0, found.small());
        LowSpot spot = found.listed().get(0);
        assertEquals(120, spot.x() * cos + spot.y() * sin, 0.01);
        assertEquals(2, spot.parts().size());
    }

    private static Ground ground() {
        SurveyBuilder survey = Survey.builder();
        for (int j = -12; j <= 12; j++) {
            for (int i = -6; i <= 52; i++) {
                // Off the lattice a little, so that no four points lie on one circle.
                double x = 3 * i + 0.4 * StrictMath.sin(5.0 * i + 3 * j);
                double y = 3 * j + 0.4 * StrictMath.cos(3.0 * i + 7 * j);
                survey.point(x, y, land(x, y));
            }
        }
        survey.origin(0, 0);
        return Ground.of(survey.build(), GroundOptions.USUAL, Progress.NONE);
    }

    private static LaneDesign design(VerticalPoint... grade) throws DesignRefused {
        return design(new IntersectionPoint(LENGTH, 0, 0), grade);
    }

    private static LaneDesign design(IntersectionPoint end, VerticalPoint... grade)
            throws DesignRefused {
        var side = new SideShape(0.5, 2, new Ditch(DitchRule.WHERE_BELOW_GROUND, 0.4, 0), 2, 2);
        return LaneDesign.on(
                        Alignment.of(List.of(new IntersectionPoint(0, 0, 0), end)),
                        Profile.of(List.of(grade)))
                .typical(
                        new TypicalSection(
                                3.6,
                                CrossFall.CROWN,
                                0.04,
                                Bed.ON_TOP,
                                List.of(new Layer("base", 0.2, 1)),
                                Double.NaN,
                                side,
                                side,
                                false,
                                0,
                                false))
                .margin(1)
                .interval(5)
                .build();
    }

    private static SectionSet sections(Ground ground, LaneDesign design) {
        return Sections.of(design, ground, ground.constant(0), null, Progress.NONE);
    }

    private static Ground finished(Ground ground, LaneDesign design) {
        BuiltSurface built = BuiltSurface.of(design, ground, Progress.NONE);
        CompositeSurface composite = CompositeSurface.of(built, Progress.NONE);
        assertEquals(List.of(), composite.findings());
        return composite.ground();
    }
}
