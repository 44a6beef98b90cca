package lanewright.lane.line;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class AlignmentTest {

    private static IntersectionPoint at(double x, double y, double radius) {
        return new IntersectionPoint(x, y, radius);
    }

    private static Alignment winding(int seed) throws DesignRefused {
        var random = new SplittableRandom(seed);
        List<IntersectionPoint> points = new ArrayList<>();
        double x = 0;
        double y = 0;
        double azimuth = random.nextDouble(6);
        for (int i = 0; i < 6; i++) {
            points.add(at(x, y, random.nextInt(4) == 0 ? 0 : 8 + random.nextDouble(20)));
            azimuth += (random.nextDouble() - 0.5) * 1.6;
            x += 80 * Math.sin(azimuth);
            y += 80 * Math.cos(azimuth);
        }
        return Alignment.of(points);
    }

    @Test
    void curvatureIsPositiveWhereItTurnsRight() throws DesignRefused {
        Alignment line = Alignment.of(List.of(at(0, 0, 0), at(0, 100, 20), at(100, 100, 0)));
        assertEquals(1 / 20.0, line.curvature(90), 1e-15);
        assertEquals(0, line.curvature(0));
        assertEquals(160 + 10 * Math.PI, line.length(), 1e-9);
        assertArrayEquals(new double[] {80, 80 + 10 * Math.PI}, line.joins(), 1e-9);
        assertEquals(5, line.x(new Place(50, 5)), 1e-12, "right of north is east");
        assertEquals(50, line.y(new Place(50, 5)), 1e-12);
    }

    @Test
    void directionAndCurvatureAreTheSlopesOfWhatTheyAreSlopesOf() throws DesignRefused {
        for (int seed = 0; seed < 40; seed++) {
            Alignment line = winding(seed);
            double h = 1e-5;
            for (double s = 0.7; s < line.length() - 1; s += 3.1) {
                double dx = (line.x(s + h) - line.x(s - h)) / (2 * h);
                double dy = (line.y(s + h) - line.y(s - h)) / (2 * h);
                boolean smooth = true;
                for (double join : line.joins()) {
                    smooth &= Math.abs(join - s) > 2 * h;
                }
                if (smooth) {
                    assertEquals(dx, line.directionX(s), 1e-8, "seed " + seed + " at " + s);
                    assertEquals(dy, line.directionY(s), 1e-8, "seed " + seed + " at " + s);
                    double turn =
                            Math.IEEEremainder(
                                    line.azimuth(s + h) - line.azimuth(s - h), 2 * Math.PI);
                    assertEquals(turn / (2 * h), line.curvature(s), 1e-8, "seed " + seed);
                }
            }
        }
    }

    @Test
    void aPlaceBesideTheLineIsFoundAgain() throws DesignRefused {
        for (int seed = 0; seed < 60; seed++) {
            Alignment line = winding(seed);
            var random = new SplittableRandom(seed + 1000);
            for (int i = 0; i < 50; i++) {
                // Nearer than the least radius and to no other part of the line.
                Place place =
                        new Place(
                                random.nextDouble(line.length()), (random.nextDouble() - 0.5) * 4);
                double x = line.x(place);
                double y = line.y(place);
                Place found = line.place(x, y);
                assertNotNull(found, "seed " + seed + " " + place);
                assertTrue(
                        Math.abs(found.offset()) <= Math.abs(place.offset()) + 1e-9,
                        "seed " + seed + " " + place + " " + found);
                boolean nearKink = false;
                for (double kink : line.kinks()) {
                    nearKink |= Math.abs(kink - place.station()) < 5;
                }
                if (!nearKink) {
                    assertEquals(place.station(), found.station(), 1e-9, "seed " + seed);
                    assertEquals(place.offset(), found.offset(), 1e-9, "seed " + seed);
                }
            }
        }
    }

    @Test
    void nothingLiesBesideTheLineBeforeItsStartOrPastItsEnd() throws DesignRefused {
        Alignment line = Alignment.of(List.of(at(0, 0, 0), at(0, 100, 0)));
        assertNull(line.place(3, -0.01));
        assertNull(line.place(3, 100.01));
        assertEquals(new Place(100, 3), line.place(3, 100));
        assertThrows(IllegalArgumentException.class, () -> line.x(100.01));
        assertThrows(IllegalArgumentException.class, () -> line.curvature(-0.01));
    }

    @Test
    void aSharpAngleHasTwoDirections() throws DesignRefused {
        Alignment line = Alignment.of(List.of(at(0, 0, 0), at(0, 50, 0), at(50, 50, 0)));
        assertArrayEquals(new double[] {50}, line.kinks(), 1e-12);
        assertEquals(1, line.directionYBefore(50), 1e-12);
        assertEquals(0, line.directionY(50), 1e-12);
        assertEquals(1, line.directionX(50), 1e-12);
        assertEquals(Math.PI / 2, line.kinkAngle(50), 1e-12);
        assertEquals(0, line.kinkAngle(20), 1e-12);
        // Outside the angle, the angle is nearest: 3-4-5.
        assertEquals(new Place(50, -5), line.place(-3, 54));
        assertEquals(new Place(48, 1), line.place(1, 48));
    }

    @Test
    void pointsInOneLineMakeNoAngle() throws DesignRefused {
        Alignment line = Alignment.of(List.of(at(0, 0, 0), at(30, 40, 0), at(60, 80, 25)));
        assertEquals(0, line.kinks().length);
        assertEquals(100, line.length(), 1e-12);
    }

    @Test
    void whatCannotBeLaidOutIsRefusedWithTheReason() {
        assertRefused("line-points-coincide", at(0, 0, 0), at(0, 0.0005, 0));
        assertRefused("line-turns-back", at(0, 0, 0), at(0, 50, 5), at(0, 10, 0));
        assertRefused("curves-overlap", at(0, 0, 0), at(0, 50, 60), at(60, 50, 0));
        assertThrows(IllegalArgumentException.class, () -> Alignment.of(List.of(at(0, 0, 0))));
    }

    private static void assertRefused(String code, IntersectionPoint... points) {
        DesignRefused refused =
                assertThrows(DesignRefused.class, () -> Alignment.of(List.of(points)));
        assertEquals(code, refused.findings().get(0).code());
        assertTrue(refused.getMessage().length() > 40, refused.getMessage());
    }

    @Test
    void lengthDoesNotChangeWhenTheLineIsWalkedTheOtherWay() throws DesignRefused {
        for (int seed = 0; seed < 20; seed++) {
            Alignment line = winding(seed);
            List<IntersectionPoint> back = new ArrayList<>(line.points());
            Collections.reverse(back);
            Alignment other = Alignment.of(back);
            assertEquals(line.length(), other.length(), 1e-9, "seed " + seed);
            assertEquals(line.x(17), other.x(other.length() - 17), 1e-9, "seed " + seed);
            assertEquals(line.curvature(61.3), -other.curvature(other.length() - 61.3), 1e-12);
        }
    }

    @Test
    void madeOfTheSamePointsIsTheSame() throws DesignRefused {
        assertEquals(winding(3), winding(3));
        assertEquals(winding(3).hashCode(), winding(3).hashCode());
        assertNotEquals(winding(3), winding(4));
    }
}
