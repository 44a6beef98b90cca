package lanewright.lane.surface;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import lanewright.ground.Ground;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.LaneDesign;
import lanewright.measure.Progress;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class BuiltSurfaceTest {

    private static Ground hills() {
        return World.grid(
                -70,
                -40,
                110,
                150,
                4,
                (x, y) -> 20 + 0.05 * y + 1.2 * Math.sin(x / 9) + Math.cos(y / 13));
    }

    private static LaneDesign bent() throws DesignRefused {
        Alignment line = World.line(0, 0, 0, 5, 50, 30, 40, 110, 0);
        var ditched = World.ditched(0.6, 2.5, 0.5, 0.4);
        return World.lane(
                line,
                World.grade(0, 21, 0, 50, 22.5, 40, line.length(), 26, 0),
                World.stoned(Bed.ON_TOP, ditched, ditched));
    }

    @Test
    void straightLinesBetweenRaysAreWithinAMillimetreOfTheLane() throws DesignRefused {
        LaneDesign design = bent();
        Ground ground = hills();
        List<Ray> rays = BuiltSurface.of(design, ground, Progress.NONE).rays();
        RayCaster caster = new RayCaster(design, ground);
        var random = new SplittableRandom(3);
        int looked = 0;
        for (int i = 0; i + 1 < rays.size(); i++) {
            Ray a = rays.get(i);
            Ray b = rays.get(i + 1);
            double s = a.station() + random.nextDouble() * (b.station() - a.station());
            Ray truth = caster.cast(s, design.at(s));
            for (boolean right : new boolean[] {false, true}) {
                if (!a.leadsTo(b) || !a.leadsTo(truth, right)) {
                    continue;
                }
                for (int e = 0; e < a.flank(right).strips(); e++) {
                    looked++;
                    double off = off(a, b, truth, right, e);
                    assertTrue(off < 1.1e-3, "edge " + e + " at " + s + " is off by " + off);
                }
            }
        }
        assertTrue(looked > 1000, "looked at " + looked);
    }

    /** Distance in space of a strip's inner edge from the straight line between two rays. */
    private static double off(Ray a, Ray b, Ray truth, boolean right, int edge) {
        double[] p = at(a, right, edge);
        double[] q = at(b, right, edge);
        double[] m = at(truth, right, edge);
        double along = 0;
        double length = 0;
        for (int i = 0; i < 3; i++) {
            along += (m[i] - p[i]) * (q[i] - p[i]);
            length += (q[i] - p[i]) * (q[i] - p[i]);
        }
        double off = 0;
        for (int i = 0; i < 3; i++) {
            double d = m[i] - p[i] - along / length * (q[i] - p[i]);
            off += d * d;
        }
        return Math.sqrt(off);
    }

    private static double[] at(Ray ray, boolean right, int edge) {
        Flank flank = ray.flank(right);
        double out = flank.out(edge);
        return new double[] {ray.x(right, out), ray.y(right, out), flank.finished(edge, false)};
    }

    @Test
    void catchLinesLieOnTheGround() throws DesignRefused {
        Ground ground = hills();
        BuiltSurface built = BuiltSurface.of(bent(), ground, Progress.NONE);
        for (boolean right : new boolean[] {false, true}) {
            List<double[]> lines = built.catchLine(right);
            assertEquals(1, lines.size());
            double[] line = lines.get(0);
            for (int i = 0; i < line.length; i += 3) {
                assertEquals(ground.heightAt(line[i], line[i + 1]), line[i + 2], 1e-9);
            }
            for (int i = 0; i + 1 < built.rays().size(); i++) {
                Ray a = built.rays().get(i);
                Ray b = built.rays().get(i + 1);
                if (b.station() - a.station() > RayMarch.FOUND) {
                    double x = (line[3 * i] + line[3 * i + 3]) / 2;
                    double y = (line[3 * i + 1] + line[3 * i + 4]) / 2;
                    double z = (line[3 * i + 2] + line[3 * i + 5]) / 2;
                    assertEquals(ground.heightAt(x, y), z, 1.001e-3, "at " + x + ", " + y);
                }
            }
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Travelled way round a sharp angle covers width times length, with no wedge open and none"
                    + " double | plain geometry: a mitre takes inside what it adds outside | derived")
    void aSharpAngleIsMitred() throws DesignRefused {
        Ground ground = World.grid(-60, -60, 120, 120, 9, (x, y) -> 10);
        Alignment line = World.line(0, 0, 0, 0, 50, 0, 45, 75, 0);
        LaneDesign design =
                World.lane(
                        line,
                        World.grade(0, 11, 0, line.length(), 11, 0),
                        World.bare(4, 0, World.plain(0.5, 2)));
        Skin skin = BuiltSurface.of(design, ground, Progress.NONE).finished();
        double area = 0;
        for (int t = 0; t < skin.triangleCount(); t++) {
            int a = skin.corner(t, 0);
            int b = skin.corner(t, 1);
            int c = skin.corner(t, 2);
            double twice =
                    (skin.x(b) - skin.x(a)) * (skin.y(c) - skin.y(a))
                            - (skin.y(b) - skin.y(a)) * (skin.x(c) - skin.x(a));
            assertTrue(twice > 0, "triangle " + t + " lies upside down");
            area += skin.part(t) == SurfacePart.TRAVELLED ? twice / 2 : 0;
        }
        assertEquals(4 * line.length(), area, 1e-6);
    }

    @Test
    void aSideThatReachesPastTheCentreIsSaid() throws DesignRefused {
        Ground ground = World.grid(-60, -60, 120, 120, 9, (x, y) -> 10);
        Alignment line = World.line(0, 0, 0, 0, 50, 8, 45, 50, 0);
        LaneDesign design =
                World.lane(
                        line,
                        World.grade(0, 14, 0, line.length(), 14, 0),
                        World.bare(4, 0, World.plain(0.5, 2)));
        BuiltSurface built = BuiltSurface.of(design, ground, Progress.NONE);
        assertEquals(1, built.findings().size());
        assertEquals("side-folds", built.findings().get(0).code());
    }

    @Test
    void whereTheGroundEndsStoneIsCountedAndNoEarth() throws DesignRefused {
        // three metres of fill need a base of seven and a half metres to each side
        Ground wide = World.grid(-40, -10, 40, 110, 10, (x, y) -> 10);
        Ground narrow = World.grid(-5, -10, 40, 110, 5, (x, y) -> 10);
        LaneDesign design =
                World.lane(
                        World.line(0, 0, 0, 0, 100, 0),
                        World.grade(0, 13, 0, 100, 13, 0),
                        World.stoned(Bed.ON_TOP, World.plain(0.5, 2), World.plain(0.5, 2)));
        TrueSolid whole = World.solid(design, wide, 0.1);
        TrueSolid half = World.solid(design, narrow, 0.1);
        assertEquals(whole.stone(), half.stone(), 1e-9 * whole.stone());
        assertEquals(whole.fill() / 2, half.fill(), 1e-9 * whole.fill());
        assertEquals(whole.strip() / 2, half.strip(), 1e-9 * whole.strip());
    }
}
