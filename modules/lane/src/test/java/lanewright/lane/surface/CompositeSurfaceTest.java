package lanewright.lane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import lanewright.ground.Ground;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.Stretch;
import lanewright.measure.Progress;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class CompositeSurfaceTest {

    /**
     * Every side is shared whole, every facet the right way up, no vertex stands alone or twice.
     */
    static void conforms(Ground land, String seed) {
        Set<Integer> used = new HashSet<>();
        for (int t = 0; t < land.triangleCount(); t++) {
            int a = land.corner(t, 0);
            int b = land.corner(t, 1);
            int c = land.corner(t, 2);
            double twice =
                    (land.x(b) - land.x(a)) * (land.y(c) - land.y(a))
                            - (land.y(b) - land.y(a)) * (land.x(c) - land.x(a));
            assertTrue(twice > 0, seed + ": facet " + t + " has twice the area " + twice);
            for (int k = 0; k < 3; k++) {
                used.add(land.corner(t, k));
                int other = land.neighbour(t, k);
                if (other >= 0) {
                    int from = land.corner(t, (k + 1) % 3);
                    int to = land.corner(t, (k + 2) % 3);
                    boolean shared = false;
                    for (int j = 0; j < 3; j++) {
                        shared |=
                                land.neighbour(other, j) == t
                                        && land.corner(other, (j + 1) % 3) == to
                                        && land.corner(other, (j + 2) % 3) == from;
                    }
                    assertTrue(shared, seed + ": side " + k + " of " + t + " is not shared");
                }
            }
        }
        Set<List<Double>> places = new HashSet<>();
        for (int v : used) {
            places.add(List.of(land.x(v), land.y(v)));
        }
        assertEquals(used.size(), places.size(), seed + ": two vertices at one place");
    }

    private static double area(Ground land) {
        double twice = 0;
        for (int t = 0; t < land.triangleCount(); t++) {
            int a = land.corner(t, 0);
            int b = land.corner(t, 1);
            int c = land.corner(t, 2);
            twice +=
                    (land.x(b) - land.x(a)) * (land.y(c) - land.y(a))
                            - (land.y(b) - land.y(a)) * (land.x(c) - land.x(a));
        }
        return twice / 2;
    }

    private static Ground rough(int seed, double step) {
        var random = new SplittableRandom(seed);
        double a = random.nextDouble(6);
        double b = random.nextDouble(6);
        double noise = random.nextDouble(0.15);
        return World.grid(
                -70,
                -40,
                110,
                150,
                step,
                (x, y) ->
                        20
                                + 0.05 * y
                                + 1.5 * Math.sin(x / 9 + a)
                                + 1.1 * Math.cos(y / 13 + b)
                                + noise * random.nextDouble());
    }

    private static LaneDesign lane(int seed, Bed bed) throws DesignRefused {
        var random = new SplittableRandom(seed + 1000);
        double radius = seed % 3 == 0 ? 0 : 25 + random.nextDouble(20);
        Alignment line = World.line(0, 0, 0, 5, 50, radius, 40 - random.nextDouble(30), 110, 0);
        var left = World.ditched(0.6, 2.5, 0.5, 0.4);
        var right = World.ditched(0.6, 2.0, 0.4, 0);
        double length = line.length();
        return LaneDesign.on(
                        line,
                        World.grade(
                                0,
                                20 + random.nextDouble(1),
                                0,
                                50,
                                22.5 + random.nextDouble(1),
                                30,
                                length,
                                25 + random.nextDouble(2),
                                0))
                .typical(
                        List.of(
                                new Stretch<>(0, 60, World.stoned(bed, left, right)),
                                new Stretch<>(
                                        60, length, World.stoned(bed, World.plain(0.5, 2), right))))
                .margin(0.7)
                .build();
    }

    @RepeatedTest(16)
    void joinsWholeSidesAndLeavesTheRestAsItWas(RepetitionInfo run) throws DesignRefused {
        int seed = run.getCurrentRepetition();
        Ground ground = rough(seed, seed % 2 == 0 ? 2 : 6);
        LaneDesign design = lane(seed, seed % 4 < 2 ? Bed.ON_TOP : Bed.BOXED);
        BuiltSurface built = BuiltSurface.of(design, ground, Progress.NONE);
        CompositeSurface land = CompositeSurface.of(built, Progress.NONE);
        assertTrue(land.findings().isEmpty(), "seed " + seed + " " + land.findings());
        assertTrue(built.findings().isEmpty(), "seed " + seed + " " + built.findings());
        conforms(land.ground(), "seed " + seed);
        for (int v = 0; v < ground.vertexCount(); v++) {
            assertEquals(ground.x(v), land.ground().x(v), "a vertex keeps its number");
            assertEquals(ground.y(v), land.ground().y(v), "a vertex keeps its number");
        }
        assertEquals(area(ground), area(land.ground()), 1e-6, "seed " + seed);

        TrueSolid solid = TrueSolid.of(built, ground.constant(0.2), null, Progress.NONE);
        double raised =
                solid.stone() + solid.fill() + solid.topsoilBack() - solid.cut() - solid.strip();
        double leaning = 0.002 * built.rays().size(); // some steps lean over by a millimetre
        assertEquals(volume(land.ground()) - volume(ground), raised, leaning, "seed " + seed);
        for (int t = 0; t < land.ground().triangleCount(); t++) {
            if (land.part(t) == null) {
                for (int k = 0; k < 3; k++) {
                    int v = land.ground().corner(t, k);
                    double x = land.ground().x(v);
                    double y = land.ground().y(v);
                    double was = ground.heightAt(x, y);
                    if (!Double.isNaN(was)) {
                        assertEquals(was, land.ground().z(v), 2e-5, "seed " + seed);
                    }
                }
            }
        }
    }

    private static double volume(Ground land) {
        double six = 0;
        for (int t = 0; t < land.triangleCount(); t++) {
            int a = land.corner(t, 0);
            int b = land.corner(t, 1);
            int c = land.corner(t, 2);
            six +=
                    ((land.x(b) - land.x(a)) * (land.y(c) - land.y(a))
                                    - (land.y(b) - land.y(a)) * (land.x(c) - land.x(a)))
                            * (land.z(a) + land.z(b) + land.z(c));
        }
        return six / 6;
    }

    @Test
    void aLaneThatRunsIntoItselfIsSaid() throws DesignRefused {
        Ground ground = World.grid(-60, -60, 160, 160, 8, (x, y) -> 10);
        Alignment line = World.line(0, 0, 0, 100, 0, 5, 100, 11, 5, 0, 11, 0);
        LaneDesign design =
                World.lane(
                        line,
                        World.grade(0, 14, 0, line.length(), 14, 0),
                        World.bare(4, 0.03, World.plain(0.5, 2)));
        CompositeSurface land =
                CompositeSurface.of(BuiltSurface.of(design, ground, Progress.NONE), Progress.NONE);
        conforms(land.ground(), "hairpin");
        assertTrue(
                land.findings().stream().anyMatch(f -> f.code().equals("lane-not-joined")),
                "findings " + land.findings());
    }
}
