package lanewright.drainage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Side;
import lanewright.drainage.flow.Cells;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.pond.ArrayMesh;
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
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What gathers in a ditch, against plane geometry and against following every cell by itself. */
class DitchWaterTest {

    private static final double LENGTH = 120;
    private static final double WIDTH = 3.6;
    private static final double TOP = 36;

    private static WaterReport report(CrossFall fall) throws DesignRefused {
        SurveyBuilder survey = Survey.builder();
        for (int j = -12; j <= 12; j++) {
            for (int i = -6; i <= 46; i++) {
                boolean rim = Math.abs(j) == 12;
                double x = 3 * i + (rim ? 0 : 0.4 * StrictMath.sin(5.0 * i + 3 * j));
                double y = 3 * j + (rim ? 0 : 0.4 * StrictMath.cos(3.0 * i + 7 * j));
                survey.point(x, y, 100 - 0.02 * x + 0.15 * y);
            }
        }
        survey.origin(0, 0);
        Ground ground = Ground.of(survey.build(), GroundOptions.USUAL, Progress.NONE);
        var side = new SideShape(0.5, 2, new Ditch(DitchRule.WHERE_BELOW_GROUND, 0.4, 0), 2, 2);
        LaneDesign design =
                LaneDesign.on(
                                Alignment.of(
                                        List.of(
                                                new IntersectionPoint(0, 0, 0),
                                                new IntersectionPoint(LENGTH, 0, 0))),
                                Profile.of(
                                        List.of(
                                                new VerticalPoint(0, 99.8, 0),
                                                new VerticalPoint(
                                                        LENGTH, 99.8 - 0.02 * LENGTH, 0))))
                        .typical(
                                new TypicalSection(
                                        WIDTH,
                                        fall,
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
        SectionSet sections = Sections.of(design, ground, ground.constant(0), null, Progress.NONE);
        BuiltSurface built = BuiltSurface.of(design, ground, Progress.NONE);
        return WaterReport.of(
                ground,
                design,
                sections.sections(),
                CompositeSurface.of(built, Progress.NONE).ground(),
                List.of(),
                WaterOptions.USUAL,
                Progress.NONE);
    }

    private static DitchWater left(WaterReport report) {
        return report.channels().stream()
                .filter(each -> each.ditch().side() == Side.LEFT)
                .findFirst()
                .orElseThrow();
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "land, slopes and lane that drain into a ditch below an even hillside | plane geometry,"
                    + " strips straight down the slope | derived")
    void aHillsideGathersInTheDitchBelowIt() throws DesignRefused {
        DitchWater water = left(report(CrossFall.CROWN));
        double length = water.ditch().to() - water.ditch().from();
        assertEquals(LENGTH, length, 1e-6);
        // Edge 1.8 out; stone 0.2 thick at 1:1, shoulder 0.5, foreslope 2:1 over 0.4, back 2:1.
        double edge = WIDTH / 2;
        double lane = 0;
        double slopes = 0;
        double land = 0;
        for (DitchWater.Piece piece : water.pieces()) {
            assertEquals(edge * (piece.to() - piece.from()), piece.lane(), 1e-6);
            lane += piece.lane();
            slopes += piece.slopes();
            land += piece.land();
            assertEquals(-0.02, piece.grade(), 1e-6);
            assertEquals(0.4, piece.depth(), 1e-6);
        }
        assertEquals(edge * LENGTH, lane, 1e-6);
        double met = edge + slopes / LENGTH;
        // Where the backslope meets the plane: from the bottom at b, (y − b) / 2 = 0.15 y + rise.
        double bottom = edge + 0.2 + 0.5 + 0.8;
        double low = -0.2 - 0.04 * edge - 0.2 + under() - 0.4;
        assertEquals((bottom / 2 - low) / (0.5 - 0.15), met, 0.02);
        // Water runs straight down: across the corners at the ends a few columns come and go.
        assertEquals((TOP - met) * LENGTH, land, 0.04 * TOP * LENGTH);
    }

    /** The subgrade falls as the lane does, out to the hinge. */
    private static double under() {
        return -0.04 * 0.7;
    }

    @Test
    void onePlaneSendsAllOfTheLaneToOneSide() throws DesignRefused {
        DitchWater away = left(report(CrossFall.SHED_RIGHT));
        assertTrue(away.pieces().stream().allMatch(piece -> piece.lane() == 0));
        DitchWater here = left(report(CrossFall.SHED_LEFT));
        double lane = here.pieces().stream().mapToDouble(DitchWater.Piece::lane).sum();
        assertEquals(WIDTH * (here.ditch().to() - here.ditch().from()), lane, 1e-6);
    }

    @Test
    void everyDitchIsTakenInPiecesFromEndToEnd() throws DesignRefused {
        for (DitchWater water : report(CrossFall.CROWN).channels()) {
            DitchReach ditch = water.ditch();
            assertFalse(water.pieces().isEmpty());
            assertEquals(ditch.legs().size(), water.pieces().size());
        }
    }

    @Test
    void gatheredLandIsWhatEveryCellFindsByItself() {
        var random = new Random(20);
        for (int round = 0; round < 20; round++) {
            ArrayMesh mesh =
                    ArrayMesh.sheet(
                            0, 0, 24, 24, 1, (x, y) -> 0.05 * x + 0.02 * y + random.nextDouble());
            FlowGrid flow = FlowGrid.of(mesh, new Cells(0, 0, 1, 24, 24), List.of(), Progress.NONE);
            int[] places = new int[flow.cells().count()];
            Arrays.fill(places, -1);
            for (int i = 0; i < 40; i++) {
                places[random.nextInt(places.length)] = i % 7;
            }
            double[] area = new double[7];
            double[] longest = new double[7];
            for (int cell = 0; cell < places.length; cell++) {
                double way = 0;
                int at = cell;
                while (at >= 0 && places[at] < 0) {
                    int next = flow.next(at);
                    way +=
                            next < 0
                                    ? 0
                                    : Math.hypot(
                                            flow.cells().x(at) - flow.cells().x(next),
                                            flow.cells().y(at) - flow.cells().y(next));
                    at = next;
                }
                if (at >= 0 && places[cell] < 0) {
                    area[places[at]] += 1;
                    longest[places[at]] = Math.max(longest[places[at]], way);
                }
            }
            List<FlowGrid.Gathered> found = flow.gathered(places, 7);
            for (int i = 0; i < 7; i++) {
                assertEquals(area[i], found.get(i).area(), 1e-9);
                assertEquals(longest[i], found.get(i).way().length(), 1e-9);
            }
        }
    }
}
