package lanewright.planner.proposal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.line.Profile;
import lanewright.lane.line.TurningPoint;
import lanewright.planner.proposal.GradeLimits.Fixed;
import lanewright.planner.proposal.GroundAlong.Look;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class FirstGradeTest {

    /** Rounding of heights to a hundredth of a foot over the shortest piece is allowed for. */
    private static final double ROUNDING = 1e-6;

    private static final double DROP = 0.07;

    private static GroundAlong land(
            double length, DoubleUnaryOperator centre, double fallsRight, boolean ditched) {
        List<Look> looks = new ArrayList<>();
        int count = (int) (length / 3);
        for (int i = 0; i <= count; i++) {
            double s = length * i / count;
            double z = centre.applyAsDouble(s);
            looks.add(
                    new Look(
                            s,
                            z,
                            z + 4 * fallsRight,
                            z - 4 * fallsRight,
                            z + 0.05,
                            DROP,
                            5,
                            ditched));
        }
        return new GroundAlong(looks);
    }

    private static GradeLimits limits(double start, double end) {
        return new GradeLimits(
                0.10,
                0.01,
                0.15,
                100,
                start,
                Double.NaN,
                end,
                Double.NaN,
                6,
                List.of(),
                List.of(),
                0.3048);
    }

    private static double earth(GroundAlong land, DoubleUnaryOperator profile) {
        double earth = 0;
        for (Look look : land.looks()) {
            earth += GradeSearch.earth(look, profile.applyAsDouble(look.station()));
        }
        return earth;
    }

    @RepeatedTest(50)
    void everyLimitIsKeptOrTheCollidingOnesAreNamed(RepetitionInfo run) throws DesignRefused {
        int seed = run.getCurrentRepetition();
        var random = new SplittableRandom(seed);
        double length = 120 + random.nextDouble(500);
        double slope = (random.nextDouble() - 0.5) * 0.22;
        double high = random.nextDouble(4);
        double wave = 60 + random.nextDouble(200);
        double phase = random.nextDouble(6.3);
        double rough = random.nextDouble(0.6);
        double side = (random.nextDouble() - 0.5) * 0.3;
        DoubleUnaryOperator ground =
                s ->
                        100
                                + slope * s
                                + high * StrictMath.sin(phase + s * 6.283 / wave)
                                + rough * StrictMath.sin(s * 6.283 / 23);
        GroundAlong land = land(length, ground, side, random.nextBoolean());
        GradeLimits limits =
                limits(
                        ground.applyAsDouble(0) + random.nextDouble(0.3),
                        random.nextInt(4) == 0
                                ? Double.NaN
                                : ground.applyAsDouble(length) + random.nextDouble(0.3));
        GradeProposal laid = FirstGrade.of(land, limits);
        Profile profile = Profile.of(laid.points());
        String where = "seed " + seed + ": " + laid.collisions();
        assertEquals(limits.start(), profile.height(0), ROUNDING, where);
        if (!Double.isNaN(limits.end())) {
            assertEquals(limits.end(), profile.height(length), ROUNDING, where);
        }
        boolean named = !laid.collisions().isEmpty();
        for (double s = 0; s <= length; s += 0.5) {
            boolean turning = profile.rate(s) != 0;
            double grade = Math.abs(profile.grade(s));
            assertTrue(
                    named || grade <= limits.steepest() + ROUNDING,
                    () -> where + " steep " + grade);
            assertTrue(
                    named || turning || grade >= limits.flattest() - ROUNDING,
                    () -> where + " flat " + grade);
        }
        long sags = profile.turningPoints().stream().filter(TurningPoint::sag).count();
        assertTrue(named || sags == laid.ways().size(), where + " sags without a way out");
        assertFalse(laid.reasons().isEmpty(), where);
    }

    @Test
    void itMovesLessEarthThanAStraightGradeOverRollingGround() throws DesignRefused {
        DoubleUnaryOperator ground = s -> 100 + 0.04 * s + 1.5 * StrictMath.sin(s / 25);
        GroundAlong land = land(300, ground, 0, true);
        GradeLimits limits = limits(100.1, ground.applyAsDouble(300) + 0.1);
        GradeProposal laid = FirstGrade.of(land, limits);
        assertTrue(laid.collisions().isEmpty(), laid.collisions().toString());
        Profile profile = Profile.of(laid.points());
        double straight =
                earth(land, s -> limits.start() + (limits.end() - limits.start()) * s / 300);
        assertTrue(earth(land, profile::height) < 0.6 * straight);
    }

    @Test
    void onAnEvenSlopeTheEdgeStandsSixInchesOverTheGround() throws DesignRefused {
        GroundAlong land = land(200, s -> 100 + 0.05 * s, 0, true);
        double up = 0.15 + DROP;
        Profile profile = Profile.of(FirstGrade.of(land, limits(100 + up, 110 + up)).points());
        for (double s = 0; s <= 200; s += 5) {
            assertEquals(100 + 0.05 * s + up, profile.height(s), 0.02, "at " + s);
        }
    }

    @Test
    void aClimbThatIsTooSteepIsNamedWithWhatItTakes() {
        GroundAlong land = land(200, s -> 100 + 0.14 * s, 0, true);
        GradeProposal laid = FirstGrade.of(land, limits(100, 128));
        assertEquals("grade-steepest-collides", laid.collisions().get(0).code());
        assertEquals(0.14, laid.collisions().get(0).measured().value(), 0.01);
    }

    @Test
    void aValleyThatMustBeCrossedInACutWithoutAWayOutIsNamed() {
        // Both ends lie low between higher ground all the way: the lane must dip and cannot drain.
        List<Look> looks = new ArrayList<>();
        for (double s = 0; s <= 90; s += 3) {
            looks.add(new Look(s, 105, 105, 105, 105, DROP, 5, true));
        }
        GradeLimits limits =
                new GradeLimits(
                        0.10, 0.01, 0.15, 100, 100, -0.03, 100, 0.03, 10, List.of(), List.of(),
                        0.3048);
        GradeProposal laid = FirstGrade.of(new GroundAlong(looks), limits);
        assertFalse(laid.collisions().isEmpty());
        assertEquals("grade-sag-no-way-out", laid.collisions().get(0).code());
        GradeProposal led =
                FirstGrade.of(
                        new GroundAlong(looks),
                        new GradeLimits(
                                0.10,
                                0.01,
                                0.15,
                                100,
                                100,
                                -0.03,
                                100,
                                0.03,
                                10,
                                List.of(),
                                List.of(10.0, 30.0, 45.0, 60.0, 80.0),
                                0.3048));
        assertTrue(led.collisions().isEmpty(), led.collisions().toString());
        assertFalse(led.ways().isEmpty());
    }

    @Test
    void heightsToPassThroughAreMetOnTheFinishedSurface() throws DesignRefused {
        GroundAlong land = land(300, s -> 100 + 0.04 * s, 0, true);
        GradeLimits limits =
                new GradeLimits(
                        0.10,
                        0.01,
                        0.15,
                        100,
                        100.2,
                        Double.NaN,
                        112.2,
                        Double.NaN,
                        6,
                        List.of(new Fixed(100, 105.2), new Fixed(200, 107.4)),
                        List.of(),
                        0.3048);
        GradeProposal laid = FirstGrade.of(land, limits);
        assertTrue(laid.collisions().isEmpty(), laid.collisions().toString());
        Profile profile = Profile.of(laid.points());
        assertEquals(105.2, profile.height(100), ROUNDING);
        assertEquals(107.4, profile.height(200), ROUNDING);
    }

    @Test
    void theSameLandGivesTheSameGrade() {
        GroundAlong land = land(300, s -> 100 + 0.04 * s + StrictMath.sin(s / 20), 0.05, true);
        assertEquals(FirstGrade.of(land, limits(100, 112)), FirstGrade.of(land, limits(100, 112)));
    }
}
