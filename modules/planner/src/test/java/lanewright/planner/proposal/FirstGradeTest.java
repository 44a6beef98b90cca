package lanewright.planner.proposal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import lanewright.ground.Ground;
import lanewright.ground.GroundOptions;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.line.IntersectionPoint;
import lanewright.lane.line.Profile;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.section.Sections;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.CrossFall;
import lanewright.lane.shape.Ditch;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.Layer;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.Stretch;
import lanewright.lane.shape.TypicalSection;
import lanewright.lane.volume.LaneVolumes;
import lanewright.measure.LengthUnit;
import lanewright.measure.Progress;
import lanewright.survey.Frame;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;
import lanewright.survey.read.Holds;
import lanewright.survey.read.SurveyFile;
import lanewright.survey.read.SurveyReader;
import lanewright.survey.read.SurveyRequest;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class FirstGradeTest {

    /** The ladder search leaves limits by no more than rounding. */
    private static final double ROUNDING = 1e-6;

    private static final Path SAMPLES = Path.of("..", "..", "sample-surveys");

    private static TypicalSection shape(DitchRule rule) {
        SideShape side = new SideShape(0.3, 3, new Ditch(rule, 0.4, 0.3), 2, 2);
        return new TypicalSection(
                3.6,
                CrossFall.CROWN,
                0.04,
                Bed.ON_TOP,
                List.of(new Layer("surface", 0.075, 1.5), new Layer("base", 0.15, 1.5)),
                Double.NaN,
                side,
                side,
                true,
                0,
                false);
    }

    private static Ground hills(int seed) {
        var random = new SplittableRandom(seed);
        double a = random.nextDouble(0, 4);
        double b = random.nextDouble(0, 2);
        double tilt = random.nextDouble(-0.09, 0.09);
        double side = random.nextDouble(-0.15, 0.15);
        double phase = random.nextDouble(6);
        var builder = Survey.builder();
        for (int i = 0; i < 3000; i++) {
            double x = random.nextDouble(-30, 330);
            double y = random.nextDouble(-40, 40);
            builder.point(
                    x,
                    y,
                    100
                            + tilt * x
                            + side * y
                            + a * Math.sin(x / 45 + phase)
                            + b * Math.cos(x / 19 + y / 30));
        }
        return Ground.of(builder.build(), GroundOptions.USUAL, Progress.NONE);
    }

    @RepeatedTest(50)
    void onSeededGroundEveryLimitIsMetOrNamed(RepetitionInfo run) throws DesignRefused {
        int seed = run.getCurrentRepetition();
        Ground ground = hills(seed);
        Alignment line =
                Alignment.of(
                        List.of(new IntersectionPoint(0, 0, 0), new IntersectionPoint(300, 0, 0)));
        double start = ground.heightAt(0, 0);
        double end = ground.heightAt(300, 0);
        DitchRule rule = seed % 2 == 0 ? DitchRule.NEVER : DitchRule.WHERE_BELOW_GROUND;
        GradeWish wish =
                new GradeWish(
                        line,
                        List.of(new Stretch<>(0, line.length(), shape(rule))),
                        start,
                        end,
                        0.12,
                        0.005,
                        0.1524,
                        0.15);
        GradeProposal proposal = FirstGrade.of(wish, ground, Progress.NONE);
        Profile profile = Profile.of(proposal.points());
        assertEquals(start, profile.height(0), ROUNDING, "seed " + seed);
        assertEquals(end, profile.height(300), ROUNDING, "seed " + seed);
        if (!proposal.findings().isEmpty()) {
            assertFalse(proposal.findings().get(0).says().pattern().isBlank());
            return;
        }
        for (double s = 0; s <= 300; s += 0.5) {
            double grade = profile.grade(s);
            assertTrue(
                    Math.abs(grade) <= 0.12 + ROUNDING, "seed " + seed + " at " + s + ": " + grade);
            assertTrue(
                    Math.abs(grade) >= 0.005 - ROUNDING
                            || onTurningCurve(profile, proposal.points(), s),
                    "seed " + seed + " at " + s + ": " + grade);
        }
        assertTrue(
                proposal.effort() <= proposal.straightEffort() * 1.000001
                        || rule == DitchRule.NEVER,
                "seed " + seed);
    }

    /** True on a parabola whose two grades have different signs. */
    private static boolean onTurningCurve(Profile profile, List<VerticalPoint> points, double s) {
        for (int i = 1; i + 1 < points.size(); i++) {
            VerticalPoint point = points.get(i);
            double half = point.curve() / 2;
            boolean on = Math.abs(s - point.station()) <= half;
            if (on
                    && profile.grade(point.station() - half) * profile.grade(point.station() + half)
                            <= 0) {
                return true;
            }
        }
        return false;
    }

    @Test
    void limitsThatCollideAreNamed() throws DesignRefused {
        Ground ground = hills(3);
        Alignment line =
                Alignment.of(
                        List.of(new IntersectionPoint(0, 0, 0), new IntersectionPoint(300, 0, 0)));
        List<Stretch<TypicalSection>> typical =
                List.of(new Stretch<>(0, 300, shape(DitchRule.NEVER)));
        GradeProposal steep =
                FirstGrade.of(
                        new GradeWish(line, typical, 100, 145, 0.12, 0.005, 0.15, 0),
                        ground,
                        Progress.NONE);
        assertEquals("grade-too-steep", steep.findings().get(0).code());
        // Rise of 45 m over 300 m is 15 %, by plain division.
        assertEquals(0.15, steep.findings().get(0).measured().value(), 1e-12);
    }

    @Test
    void onBothSamplesItMovesLessEarthThanTheStraightGrade() throws SurveyException, DesignRefused {
        Survey points =
                SurveyReader.read(
                        SurveyRequest.of(
                                SurveyFile.of(
                                                SAMPLES.resolve("marrow-fold/points.csv"),
                                                Holds.POINTS)
                                        .unit(LengthUnit.FOOT)),
                        Progress.NONE);
        double foot = 0.3048;
        compare(
                points,
                List.of(
                        new IntersectionPoint(
                                5003 * foot - points.originX(), 2000 * foot - points.originY(), 0),
                        new IntersectionPoint(
                                5330 * foot - points.originX(), 1990 * foot - points.originY(), 60),
                        new IntersectionPoint(
                                5760 * foot - points.originX(),
                                2030 * foot - points.originY(),
                                0)));
        Survey contours =
                SurveyReader.read(
                        SurveyRequest.of(
                                        SurveyFile.of(
                                                        SAMPLES.resolve(
                                                                "wickle-bank/contours.geojson"),
                                                        Holds.CONTOURS)
                                                .heightUnit(LengthUnit.METRE))
                                .in(Frame.epsg(32731)),
                        Progress.NONE);
        compare(
                contours,
                List.of(
                        new IntersectionPoint(
                                500_010 - contours.originX(), 6_680_020 - contours.originY(), 0),
                        new IntersectionPoint(
                                500_160 - contours.originX(), 6_680_042 - contours.originY(), 40),
                        new IntersectionPoint(
                                500_325 - contours.originX(), 6_680_095 - contours.originY(), 0)));
    }

    private static void compare(Survey survey, List<IntersectionPoint> points)
            throws DesignRefused {
        Ground ground = Ground.of(survey, GroundOptions.USUAL, Progress.NONE);
        Alignment line = Alignment.of(points);
        double start = ground.heightAt(line.x(0), line.y(0));
        double end = ground.heightAt(line.x(line.length()), line.y(line.length()));
        TypicalSection shape = shape(DitchRule.WHERE_BELOW_GROUND);
        GradeWish wish =
                new GradeWish(
                        line,
                        List.of(new Stretch<>(0, line.length(), shape)),
                        start,
                        end,
                        0.12,
                        0.005,
                        0.1524,
                        0.15);
        GradeProposal proposal = FirstGrade.of(wish, ground, Progress.NONE);
        assertTrue(proposal.findings().isEmpty());
        double laid = moved(line, Profile.of(proposal.points()), shape, ground);
        double straight =
                moved(
                        line,
                        Profile.of(
                                List.of(
                                        new VerticalPoint(0, start, 0),
                                        new VerticalPoint(line.length(), end, 0))),
                        shape,
                        ground);
        assertTrue(laid < straight, laid + " against " + straight);
    }

    private static double moved(
            Alignment line, Profile profile, TypicalSection shape, Ground ground)
            throws DesignRefused {
        LaneDesign design =
                LaneDesign.on(line, profile).typical(shape).margin(1).interval(5).build();
        LaneVolumes volumes =
                LaneVolumes.of(
                        Sections.of(design, ground, ground.constant(0.15), null, Progress.NONE));
        return volumes.cut().corrected() + volumes.fill().corrected();
    }
}
