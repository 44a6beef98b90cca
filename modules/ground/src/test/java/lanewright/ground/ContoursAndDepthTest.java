package lanewright.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import lanewright.measure.Progress;
import lanewright.survey.Probe;
import lanewright.survey.Survey;
import org.junit.jupiter.api.Test;

class ContoursAndDepthTest {

    private static Ground cone(List<Probe> probes) {
        var random = new SplittableRandom(11);
        var builder = Survey.builder();
        for (int i = 0; i < 4000; i++) {
            double x = random.nextDouble(-50, 50);
            double y = random.nextDouble(-50, 50);
            builder.point(x, y, 20 - 0.2 * Math.sqrt(x * x + y * y));
        }
        probes.forEach(builder::probe);
        return Ground.of(builder.build(), GroundOptions.USUAL, Progress.NONE);
    }

    @Test
    void contoursOfAConeAreRings() {
        // 20 − 0.2 r: the height 15 lies at r = 25, length 2πr (plane geometry).
        List<Contour> contours = Contours.of(cone(List.of()), 5, Progress.NONE);
        Contour ring = contours.stream().filter(c -> c.height() == 15).findFirst().orElseThrow();
        assertTrue(ring.isClosed());
        double length = 0;
        for (int i = 0; i < ring.size(); i++) {
            int j = (i + 1) % ring.size();
            length += Math.hypot(ring.x(j) - ring.x(i), ring.y(j) - ring.y(i));
            assertEquals(25, Math.hypot(ring.x(i), ring.y(i)), 0.4);
        }
        assertEquals(2 * Math.PI * 25, length, 1);
    }

    @Test
    void contoursKeepTheirHeight() {
        Ground ground = cone(List.of());
        for (Contour contour : Contours.of(ground, 0.5, Progress.NONE)) {
            for (int i = 0; i < contour.size(); i++) {
                double height = ground.heightAt(contour.x(i), contour.y(i));
                assertTrue(Double.isNaN(height) || Math.abs(height - contour.height()) < 1e-9);
            }
        }
    }

    @Test
    void aHoleKeepsItsDepthAndDoesNotMoveTheGround() {
        var holes =
                List.of(
                        new Probe("A", 3, 4, 0.2, false, 0.5, false, "loam"),
                        new Probe("B", -20, 10, 0.3, true, Double.NaN, false, "silt"),
                        new Probe("C", 30, -12, 0.1, false, 0.3, false, "clay"));
        Ground bare = cone(List.of());
        Ground ground = cone(holes);
        DepthField topsoil = DepthField.topsoil(ground, holes);
        for (Probe hole : holes) {
            GroundLine line = ground.across(hole.x() - 1, hole.y(), hole.x() + 1, hole.y());
            double nearest = 1e9;
            double depth = 0;
            for (int i = 0; i < line.size(); i++) {
                if (Math.abs(line.distance(i) - 1) < nearest) {
                    nearest = Math.abs(line.distance(i) - 1);
                    depth = topsoil.field().along(line, i);
                }
            }
            assertEquals(0, nearest, 1e-9);
            assertEquals(hole.topsoil(), depth, 1e-9);
        }
        var random = new SplittableRandom(2);
        for (int i = 0; i < 500; i++) {
            double x = random.nextDouble(-45, 45);
            double y = random.nextDouble(-45, 45);
            assertEquals(bare.heightAt(x, y), ground.heightAt(x, y), 1e-9);
        }
        assertEquals(1, topsoil.findings().size());
        assertTrue(Double.isNaN(DepthField.bearing(ground, List.of()).field().at(0)));
    }

    @Test
    void bearingSoilIsNotKnownBeyondTheReachOfItsHoles() {
        var holes =
                List.of(
                        new Probe("A", -30, 0, 0.2, false, 0.5, false, "loam"),
                        new Probe("B", 30, 30, 0.3, false, Double.NaN, false, "only topsoil"));
        Ground ground = cone(holes);
        VertexField bearing = DepthField.bearing(ground, holes).field();
        VertexField topsoil = DepthField.topsoil(ground, holes).field();
        for (int v = 0; v < ground.vertexCount(); v++) {
            double away = Math.hypot(ground.x(v) + 30, ground.y(v));
            if (away <= 30) {
                assertEquals(0.5, bearing.at(v), 1e-12);
            } else {
                assertTrue(Double.isNaN(bearing.at(v)), away + " m from the only hole");
            }
            assertTrue(topsoil.at(v) >= 0.2 && topsoil.at(v) <= 0.3);
        }
    }
}
