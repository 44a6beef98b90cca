package lanewright.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class ExactSignsTest {

    private static void side(double px, double py, double qx, double qy, double vx, double vy) {
        assertEquals(
                Shots.exactSide(px, py, qx, qy, vx, vy),
                (int) Math.signum(Side.of(px, py, qx, qy, vx, vy)),
                px + " " + py + ", " + qx + " " + qy + ", " + vx + " " + vy);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Signs of which side of a line, at points all but on it"
                    + " | whole decimal arithmetic of java.math | derived")
    void sidesHaveTheirTrueSign() {
        var random = new SplittableRandom(1);
        for (int i = 0; i < 40_000; i++) {
            double px = random.nextDouble(-900, 900);
            double py = random.nextDouble(-900, 900);
            double qx = random.nextDouble(-900, 900);
            double qy = random.nextDouble(-900, 900);
            double part = random.nextDouble(-1, 2);
            double vx = px + part * (qx - px);
            double vy = py + part * (qy - py);
            side(px, py, qx, qy, vx, vy);
            side(px, py, qx, qy, Math.nextUp(vx), vy);
            side(px, py, qx, qy, vx, Math.nextDown(vy));
            side(px * 1e-5, py * 1e5, qx * 1e-5, qy * 1e5, vx * 1e-5, vy * 1e5);
        }
        // Near-collinear by construction: 0.5 + i ulp on the diagonal (L. Kettner and others,
        // Classroom examples of robustness problems in geometric computations, 2008, figure 2).
        for (int i = 0; i < 64; i++) {
            for (int j = 0; j < 64; j++) {
                side(12, 12, 24, 24, 0.5 + i * 0x1p-53, 0.5 + j * 0x1p-53);
            }
        }
        side(0, 0, 1e-200, 1e-200, 3e-200, 3e-200);
        side(0, 0, 1e-200, 1e-200, 3e-200, 3.0000001e-200);
        side(0, 0, 4, 4, -0.0, 0.0);
    }

    private static void circle(double... v) {
        assertEquals(
                Shots.exactCircle(v),
                new Circle().of(v[0], v[1], v[2], v[3], v[4], v[5], v[6], v[7]),
                () -> java.util.Arrays.toString(v));
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Signs of in or out of a circle, at points all but on it"
                    + " | whole decimal arithmetic of java.math | derived")
    void circlesHaveTheirTrueSign() {
        var random = new SplittableRandom(2);
        for (int i = 0; i < 15_000; i++) {
            double cx = random.nextDouble(-500, 500);
            double cy = random.nextDouble(-500, 500);
            double r = random.nextDouble(0.1, 50);
            double turn = random.nextDouble(6);
            double[] v = new double[8];
            double[] angles = {0, 1 + random.nextDouble(0.9), 3, 4 + random.nextDouble()};
            for (int k = 0; k < 4; k++) {
                v[2 * k] = cx + r * Math.cos(turn + angles[k]);
                v[2 * k + 1] = cy + r * Math.sin(turn + angles[k]);
            }
            circle(v);
            v[6] = Math.nextUp(v[6]);
            circle(v);
            v[7] += 1e-9;
            circle(v);
        }
        for (int i = 0; i < 20_000; i++) {
            double[] v = new double[8];
            double step = i % 4 == 0 ? 1 : i % 4 == 1 ? 0.25 : i % 4 == 2 ? 0.3 : 0.3048;
            for (int k = 0; k < 8; k++) {
                v[k] = 100 + step * random.nextInt(7);
            }
            if (Shots.exactSide(v[0], v[1], v[2], v[3], v[4], v[5]) > 0) {
                circle(v);
            }
        }
    }
}
