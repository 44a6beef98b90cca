package lanewright.lane;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import lanewright.ground.Ground;
import lanewright.ground.GroundOptions;
import lanewright.ground.VertexField;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.line.IntersectionPoint;
import lanewright.lane.line.Profile;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.section.Sections;
import lanewright.lane.shape.CrossFall;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.Shapes;
import lanewright.lane.surface.BuiltSurface;
import lanewright.lane.surface.TrueSolid;
import lanewright.lane.volume.LaneVolumes;
import lanewright.measure.Progress;
import lanewright.survey.Survey;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;

/**
 * Sections and the built surface are made by different code from the same definitions: as sections
 * stand closer, their volumes must become those of the true solid.
 */
class TwoWaysToOneVolumeTest {

    private static Ground rolling(int seed) {
        var random = new SplittableRandom(seed);
        var survey = Survey.builder();
        for (double x = -40; x < 180; x += 6) {
            for (double y = -60; y < 80; y += 6) {
                double px = x + random.nextDouble(5);
                double py = y + random.nextDouble(5);
                double z = 20 + 2 * Math.sin(px / 23 + seed) + 1.5 * Math.cos(py / 19) + 0.06 * py;
                survey.point(px, py, z + random.nextDouble(0.2));
            }
        }
        return Ground.of(survey.build(), GroundOptions.USUAL, Progress.NONE);
    }

    private static LaneDesign lane(double interval) throws DesignRefused {
        Alignment line =
                Alignment.of(
                        List.of(
                                new IntersectionPoint(0, 0, 0),
                                new IntersectionPoint(60, 20, 35),
                                new IntersectionPoint(100, -15, 30),
                                new IntersectionPoint(140, 0, 0)));
        Profile grade =
                Profile.of(
                        List.of(
                                new VerticalPoint(0, 20.5, 0),
                                new VerticalPoint(70, 22, 40),
                                new VerticalPoint(line.length(), 20, 0)));
        return LaneDesign.on(line, grade)
                .typical(
                        Shapes.lane(3.6)
                                .shed(CrossFall.SHED_LEFT, 0.03)
                                .layer("surface", 0.1, 1.5)
                                .layer("base", 0.2, 1.5)
                                .shoulder(0.4)
                                .slopes(2, 2, 1.5)
                                .ditch(DitchRule.WHERE_BELOW_GROUND, 0.4, 0.3)
                                .strip()
                                .topsoilBack(0.1, false)
                                .make())
                .margin(0.5)
                .interval(interval)
                .build();
    }

    @RepeatedTest(3)
    void sectionsTendToTheTrueSolid(RepetitionInfo run) throws DesignRefused {
        int seed = run.getCurrentRepetition();
        Ground ground = rolling(seed);
        VertexField topsoil = ground.constant(0.2);
        VertexField bearing = ground.constant(0.6);
        TrueSolid solid =
                TrueSolid.of(
                        BuiltSurface.of(lane(10), ground, Progress.NONE),
                        topsoil,
                        bearing,
                        Progress.NONE);
        double coarse = worst(volumes(10, ground, topsoil, bearing), solid, seed);
        double fine = worst(volumes(0.25, ground, topsoil, bearing), solid, seed);
        assertTrue(fine < 0.001, "seed " + seed + " leaves " + fine);
        assertTrue(fine < coarse, "seed " + seed + ": " + coarse + " to " + fine);
    }

    private static LaneVolumes volumes(
            double interval, Ground ground, VertexField topsoil, VertexField bearing)
            throws DesignRefused {
        return LaneVolumes.of(Sections.of(lane(interval), ground, topsoil, bearing, Progress.NONE));
    }

    /** The greatest difference as a part of all earth that is moved. */
    private static double worst(LaneVolumes v, TrueSolid solid, int seed) {
        double moved = solid.cut() + solid.fill();
        assertTrue(solid.cut() > 10 && solid.fill() > 10, "seed " + seed + " has both");
        double[][] pairs = {
            {v.strip().corrected(), solid.strip()},
            {v.cut().corrected(), solid.cut()},
            {v.fill().corrected(), solid.fill()},
            {v.edgeRefill().corrected(), solid.edgeRefill()},
            {v.topsoilBack().corrected(), solid.topsoilBack()},
            {v.undercut().corrected(), solid.undercut()},
            {v.stone().get(0).corrected(), solid.layers().get(0).volume()},
            {v.stone().get(1).corrected(), solid.layers().get(1).volume()}
        };
        double worst = 0;
        for (double[] pair : pairs) {
            worst = Math.max(worst, Math.abs(pair[0] - pair[1]) / moved);
        }
        assertEquals(v.disturbed().corrected(), solid.disturbed(), 0.02 * solid.disturbed());
        return worst;
    }
}
