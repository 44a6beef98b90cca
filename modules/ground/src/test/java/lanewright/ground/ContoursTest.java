package lanewright.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import lanewright.measure.Progress;
import lanewright.survey.SurveyBuilder;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class ContoursTest {

    /** Length of all contours at one height. */
    private static double length(List<Contour> contours, double height) {
        double length = 0;
        for (Contour contour : contours) {
            if (contour.height() == height) {
                int n = contour.size();
                for (int i = contour.isClosed() ? 0 : 1; i < n; i++) {
                    int before = (i + n - 1) % n;
                    length +=
                            Math.hypot(
                                    contour.x(i) - contour.x(before),
                                    contour.y(i) - contour.y(before));
                }
            }
        }
        return length;
    }

    /** The same by cutting every triangle on its own, without joining anything. */
    private static double slowly(Ground ground, double height) {
        double length = 0;
        for (int t = 0; t < ground.triangleCount(); t++) {
            double[] x = new double[2];
            double[] y = new double[2];
            int found = 0;
            for (int k = 0; k < 3; k++) {
                int a = ground.corner(t, Mesh.next(k));
                int b = ground.corner(t, Mesh.last(k));
                if (ground.z(a) >= height != ground.z(b) >= height) {
                    double part = (height - ground.z(a)) / (ground.z(b) - ground.z(a));
                    x[found] = ground.x(a) + part * (ground.x(b) - ground.x(a));
                    y[found] = ground.y(a) + part * (ground.y(b) - ground.y(a));
                    found++;
                }
            }
            length += found == 2 ? Math.hypot(x[1] - x[0], y[1] - y[0]) : 0;
        }
        return length;
    }

    @Test
    void joinedContoursAreAsLongAsTheirPieces() {
        for (int seed = 1; seed <= 6; seed++) {
            double[][] points = Shots.scattered(900, seed, 60);
            if (seed > 3) {
                // Whole heights: nearly every contour meets vertices and flats at its own height.
                for (double[] point : points) {
                    point[2] = Math.rint(point[2] / 3);
                }
            }
            Ground ground = Shots.ground(points);
            double interval = seed > 3 ? 1 : 0.07;
            List<Contour> contours = Contours.of(ground, interval, Progress.NONE);
            for (int level = 1; level * interval < 10; level++) {
                double height = level * interval;
                assertEquals(
                        slowly(ground, height),
                        length(contours, height),
                        1e-7,
                        "seed " + seed + ", height " + height);
            }
        }
    }

    @Test
    void openContoursEndAtTheRimAndNoPointComesTwiceInARow() {
        double[][] points = Shots.grid(25, 1, 0);
        Ground ground = Shots.ground(points);
        for (Contour contour : Contours.of(ground, 1, Progress.NONE)) {
            int n = contour.size();
            for (int i = 0; i < n; i++) {
                int next = (i + 1) % n;
                if (i + 1 < n || contour.isClosed()) {
                    assertTrue(contour.x(i) != contour.x(next) || contour.y(i) != contour.y(next));
                }
            }
            if (!contour.isClosed()) {
                assertTrue(onRim(contour, 0) && onRim(contour, n - 1));
            }
        }
    }

    private static boolean onRim(Contour contour, int i) {
        return Math.min(contour.x(i), contour.y(i)) == 0
                || Math.max(contour.x(i), contour.y(i)) == 24;
    }

    @Test
    void higherGroundLiesOnTheLeft() {
        Ground ground = Shots.ground(Shots.irregular(2000, 5));
        for (Contour contour : Contours.of(ground, 0.5, Progress.NONE)) {
            double mx = (contour.x(0) + contour.x(1)) / 2;
            double my = (contour.y(0) + contour.y(1)) / 2;
            double dx = contour.x(1) - contour.x(0);
            double dy = contour.y(1) - contour.y(0);
            double left = ground.heightAt(mx - 1e-4 * dy, my + 1e-4 * dx);
            if (!Double.isNaN(left)) {
                assertTrue(left > contour.height() - 1e-9);
            }
        }
    }

    @Test
    @Tag("outside")
    @DisplayName("Contours of a paraboloid are rings of radius sqrt(h) | plane geometry | derived")
    void contoursOfABowlAreRings() {
        SurveyBuilder survey = Shots.survey(new double[][] {{0, 0, 0}});
        var random = new SplittableRandom(2);
        for (int i = 0; i < 20_000; i++) {
            double x = random.nextDouble(-11, 11);
            double y = random.nextDouble(-11, 11);
            survey.point(x, y, x * x + y * y);
        }
        List<Contour> contours = Contours.of(Shots.ground(survey), 10, Progress.NONE);
        for (Contour contour : contours) {
            assertNotEquals(0.0, contour.height(), "the one lowest shot makes no contour");
            if (contour.height() <= 100) {
                assertTrue(contour.isClosed());
                for (int i = 0; i < contour.size(); i++) {
                    assertEquals(
                            Math.sqrt(contour.height()),
                            Math.hypot(contour.x(i), contour.y(i)),
                            0.05);
                }
            }
        }
        assertEquals(10, contours.stream().filter(c -> c.height() <= 100).count());
    }

    @Test
    void tooManyHeightsAreRefused() {
        Ground ground = Shots.ground(Shots.grid(4, 1, 0));
        assertThrows(
                IllegalArgumentException.class, () -> Contours.of(ground, 1e-6, Progress.NONE));
        assertThrows(IllegalArgumentException.class, () -> Contours.of(ground, 0, Progress.NONE));
        assertEquals(List.of(), Contours.of(Shots.ground(new double[0][]), 1, Progress.NONE));
    }
}
