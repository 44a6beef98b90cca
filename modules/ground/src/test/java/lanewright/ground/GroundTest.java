package lanewright.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Array;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import lanewright.measure.Progress;
import lanewright.survey.Boundary;
import lanewright.survey.Probe;
import lanewright.survey.Ring;
import lanewright.survey.Survey;
import lanewright.survey.SurveyBuilder;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

class GroundTest {

    @Test
    void aLineAlongTheRimHasGroundUnderIt() {
        Ground ground = Shots.ground(Shots.grid(5, 1, 0));
        for (double[] line :
                new double[][] {
                    {0, 0, 4, 0}, {4, 0, 0, 0}, {4, 0, 4, 4}, {0, 4, 0, -3}, {-2, 4, 6, 4}
                }) {
            GroundLine cut = ground.across(line[0], line[1], line[2], line[3]);
            assertTrue(cut.isWhole());
            assertEquals(4, cut.distance(cut.size() - 1) - cut.distance(0), 1e-12);
        }
    }

    @Test
    void aHoleIsAGap() {
        SurveyBuilder survey = Shots.survey(Shots.grid(9, 1, 0));
        survey.boundary(
                new Boundary(
                        new Ring(
                                new double[] {0.5, 7.5, 7.5, 0.5},
                                new double[] {0.5, 0.5, 7.5, 7.5}),
                        List.of(new Ring(new double[] {3, 5, 5, 3}, new double[] {3, 3, 5, 5}))));
        Ground ground = Shots.ground(survey);
        GroundLine line = ground.across(-1, 4.3, 9, 4.3);
        double walked = 0;
        int gaps = 0;
        for (int i = 0; i + 1 < line.size(); i++) {
            if (line.gapAfter(i)) {
                gaps++;
            } else {
                walked += line.distance(i + 1) - line.distance(i);
            }
        }
        assertEquals(1, gaps);
        assertEquals(5, walked, 1e-9);
        assertTrue(Double.isNaN(ground.heightAt(4, 4)));
        assertFalse(Double.isNaN(ground.heightAt(2, 4)));
        assertTrue(ground.across(3, 0, 3, 9).isWhole());
    }

    @Test
    void aSurveyWhollyBeyondItsBoundaryIsNoGround() {
        SurveyBuilder survey = Shots.survey(Shots.scattered(100, 1, 10));
        survey.boundary(
                new Boundary(new Ring(new double[] {50, 60, 55}, new double[] {50, 50, 60})));
        Ground ground = Shots.ground(survey);
        assertEquals(0, ground.triangleCount());
        assertTrue(ground.findings().stream().anyMatch(f -> f.code().equals("no-ground")));
        assertEquals(0, ground.across(0, 0, 10, 10).size());
    }

    @Test
    void probeHolesOnShotsSidesAndTheRimKeepTheSurface() {
        double[][] points = Shots.grid(6, 2, 0);
        SurveyBuilder survey = Shots.survey(points);
        double[][] places = {{2, 2}, {3, 2}, {3, 3}, {4.0004, 5.2}, {0, 5}, {10, 10}, {6.1, 7.3}};
        for (double[] place : places) {
            survey.probe(new Probe("", place[0], place[1], 0.2, false, Double.NaN, false, ""));
        }
        survey.probe(new Probe("far", 11, 3, 0.2, false, Double.NaN, false, ""));
        Ground bare = Shots.ground(points);
        Ground ground = Shots.ground(survey);
        assertEquals(36 + 5, ground.vertexCount());
        assertEquals(
                1,
                ground.findings().stream().filter(f -> f.code().equals("probe-outside")).count());
        int marked = 0;
        for (int v = 0; v < ground.vertexCount(); v++) {
            marked += ground.isProbe(v) ? 1 : 0;
        }
        assertEquals(places.length, marked);
        for (double x = 0; x <= 10; x += 0.125) {
            for (double y = 0; y <= 10; y += 0.125) {
                assertEquals(bare.heightAt(x, y), ground.heightAt(x, y), 1e-9, x + ", " + y);
            }
        }
    }

    @Test
    void surveyAndGroundTogetherKeepAtMost110BytesAPoint() {
        SurveyBuilder builder = Survey.builder().file("shots.csv");
        double[][] points = Shots.scattered(200_000, 12, 450);
        for (int i = 0; i < points.length; i++) {
            builder.point(
                    points[i][0], points[i][1], points[i][2], i % 3 == 0 ? "grass" : "edge", i + 2);
        }
        Survey survey = builder.build();
        Ground ground = Ground.of(survey, GroundOptions.USUAL, Progress.NONE);
        double each = (double) bytes(survey, ground) / points.length;
        assertTrue(each <= 110, each + " bytes a point");
        assertTrue(each > 80, each + " bytes a point: something was not counted");
    }

    /** Bytes of all arrays that the given objects hold on to; everything else is small change. */
    private static long bytes(Object... roots) {
        Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        Deque<Object> open = new ArrayDeque<>(List.of(roots));
        long bytes = 0;
        while (!open.isEmpty()) {
            Object at = open.remove();
            if (!seen.add(at)) {
                continue;
            }
            if (at.getClass().isArray()) {
                bytes += 16 + (long) Array.getLength(at) * width(at.getClass().getComponentType());
                continue;
            }
            if (at instanceof java.util.BitSet bits) {
                bytes += bits.size() / 8;
                continue;
            }
            for (Class<?> c = at.getClass();
                    c != null && c.getName().startsWith("lanewright");
                    c = c.getSuperclass()) {
                for (Field field : c.getDeclaredFields()) {
                    if (!Modifier.isStatic(field.getModifiers())) {
                        field.setAccessible(true);
                        Object value = Assertions.assertDoesNotThrow(() -> field.get(at));
                        if (value != null && !field.getType().isPrimitive()) {
                            open.add(value);
                        }
                    }
                }
            }
        }
        return bytes;
    }

    private static int width(Class<?> type) {
        return type == double.class || type == long.class ? 8 : type == byte.class ? 1 : 4;
    }

    @Test
    void buildingStopsWhenAsked() {
        var impatient =
                new Progress() {
                    @Override
                    public void report(double done, String doing) {}

                    @Override
                    public boolean isCancelled() {
                        return true;
                    }
                };
        Survey survey = Shots.survey(Shots.scattered(100, 1, 10)).build();
        Assertions.assertThrows(
                CancellationException.class,
                () -> Ground.of(survey, GroundOptions.USUAL, impatient));
    }
}
