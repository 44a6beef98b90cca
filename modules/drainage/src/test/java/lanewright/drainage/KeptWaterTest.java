package lanewright.drainage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import lanewright.drainage.flow.Cells;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.pond.GivenPipe;
import lanewright.drainage.pond.PlacedPipe;
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
import lanewright.measure.Progress;
import lanewright.survey.Survey;
import lanewright.survey.SurveyBuilder;
import org.junit.jupiter.api.Test;

/** What is kept from lane to lane against everything taken anew. */
class KeptWaterTest {

    private static final double LENGTH = 120;

    private static Ground ground() {
        var random = new SplittableRandom(11);
        SurveyBuilder survey = Survey.builder();
        for (int i = 0; i < 4000; i++) {
            double x = random.nextDouble(-20, LENGTH + 20);
            double y = random.nextDouble(-40, 40);
            double z = 100 + 2 * StrictMath.sin(x / 13) + 1.5 * StrictMath.cos(y / 9);
            survey.point(x, y, z + random.nextDouble(0.1));
        }
        survey.origin(0, 0);
        return Ground.of(survey.build(), GroundOptions.USUAL, Progress.NONE);
    }

    private static LaneDesign design(double bend, double height) throws DesignRefused {
        var side = new SideShape(0.5, 2, new Ditch(DitchRule.WHERE_BELOW_GROUND, 0.4, 0.3), 2, 2);
        Alignment line =
                Alignment.of(
                        List.of(
                                new IntersectionPoint(0, 0, 0),
                                new IntersectionPoint(LENGTH / 2, bend, 40),
                                new IntersectionPoint(LENGTH, 0, 0)));
        return LaneDesign.on(
                        line,
                        Profile.of(
                                List.of(
                                        new VerticalPoint(0, 101, 0),
                                        new VerticalPoint(50, height, 20),
                                        new VerticalPoint(line.length(), 101, 0))))
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

    @Test
    void cellsNearTheLaneAloneAreTakenAnewAndAllAreTheSame() throws DesignRefused {
        Ground ground = ground();
        var random = new SplittableRandom(5);
        for (double size : new double[] {0.4, 1, 7}) {
            Cells cells = Cells.over(new GroundMesh(ground), size, 1_000_000);
            var base = new FlowGrid.Base(new GroundMesh(ground), cells, Progress.NONE);
            FlowGrid near = base.flow(List.of(), Progress.NONE);
            same(FlowGrid.of(new GroundMesh(ground), cells, List.of(), Progress.NONE), near);
            for (int i = 0; i < 4; i++) {
                LaneDesign design = design(random.nextDouble(-15, 15), 100 + random.nextDouble(2));
                CompositeSurface land =
                        CompositeSurface.of(
                                BuiltSurface.of(design, ground, Progress.NONE), Progress.NONE);
                var mesh = new GroundMesh(land.ground());
                int kept = 0;
                for (int t = 0; t < mesh.triangleCount(); t++) {
                    kept += land.unchanged(t) >= 0 ? 1 : 0;
                }
                assertTrue(kept > ground.triangleCount() / 2, "most of the ground is kept");
                double[] heights = base.heights(mesh, land::unchanged, Progress.NONE);
                List<PlacedPipe> pipes =
                        List.of(
                                PlacedPipe.on(
                                        mesh,
                                        GivenPipe.there("p", 0, 15, 99.5, 2 * i, -15, 99.3, 0.5)));
                near = base.flow(heights, pipes, near, Progress.NONE);
                same(FlowGrid.of(mesh, cells, pipes, Progress.NONE), near);
            }
        }
    }

    private static void same(FlowGrid a, FlowGrid b) {
        for (int cell = 0; cell < a.cells().count(); cell++) {
            assertEquals(bits(a.height(cell)), bits(b.height(cell)), "height of cell " + cell);
            assertEquals(bits(a.level(cell)), bits(b.level(cell)), "level of cell " + cell);
            assertEquals(a.next(cell), b.next(cell), "way from cell " + cell);
            assertEquals(a.drained(cell), b.drained(cell), "land over cell " + cell);
        }
    }

    private static long bits(double value) {
        return Double.doubleToRawLongBits(value);
    }

    @Test
    void reportsOfOneLaneAfterAnotherAreThoseOfEachAlone() throws DesignRefused {
        Ground ground = ground();
        var kept = new KeptWater();
        for (double height : new double[] {100, 101.5, 102.5, 100}) {
            LaneDesign design = design(6, height);
            SectionSet sections =
                    Sections.of(design, ground, ground.constant(0), null, Progress.NONE);
            CompositeSurface land =
                    CompositeSurface.of(
                            BuiltSurface.of(design, ground, Progress.NONE), Progress.NONE);
            WaterReport alone =
                    WaterReport.of(
                            ground,
                            design,
                            sections.sections(),
                            land.ground(),
                            List.of(),
                            WaterOptions.USUAL,
                            Progress.NONE);
            WaterReport ours =
                    kept.of(
                            ground,
                            design,
                            sections.sections(),
                            land,
                            List.of(),
                            WaterOptions.USUAL,
                            Progress.NONE);
            assertEquals(alone.toString(), ours.toString());
        }
    }
}
