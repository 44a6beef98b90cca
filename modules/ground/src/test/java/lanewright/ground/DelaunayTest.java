package lanewright.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;
import org.locationtech.jts.triangulate.IncrementalDelaunayTriangulator;
import org.locationtech.jts.triangulate.quadedge.QuadEdgeSubdivision;
import org.locationtech.jts.triangulate.quadedge.Vertex;

class DelaunayTest {

    /** What the two ways of triangulating the same points have apart. */
    private record Apart(int onlyOurs, int onlyTheirs, int unexplained) {}

    /** One number for three corners, whichever comes first. */
    private static long key(int... corners) {
        int[] sorted = corners.clone();
        Arrays.sort(sorted);
        return ((long) sorted[0] * 2_000_003 + sorted[1]) * 2_000_003 + sorted[2];
    }

    private static Apart compare(double[][] points) {
        Ground ground = Shots.wholeHull(points);
        long[] ours = new long[ground.triangleCount()];
        for (int t = 0; t < ours.length; t++) {
            ours[t] = key(ground.corner(t, 0), ground.corner(t, 1), ground.corner(t, 2));
        }
        Arrays.sort(ours);
        int both = 0;
        int onlyTheirs = 0;
        int unexplained = 0;
        for (Vertex[] corners : library(ground)) {
            int[] triangle = new int[3];
            for (int k = 0; k < 3; k++) {
                triangle[k] = (int) corners[k].getZ();
            }
            if (Arrays.binarySearch(ours, key(triangle)) >= 0) {
                both++;
            } else {
                onlyTheirs++;
                unexplained += isTied(ground, triangle) ? 0 : 1;
            }
        }
        return new Apart(ours.length - both, onlyTheirs, unexplained);
    }

    /**
     * The library's triangles. Large sets go to it point by point in our order, which keeps its
     * searches short; it loses its way on a grid fed like that, so small sets go by its own sort.
     * The number of a point goes along as its height.
     */
    @SuppressWarnings("unchecked") // the library is older than generics here
    private static List<Vertex[]> library(Ground ground) {
        List<Coordinate> sites = new ArrayList<>();
        for (int v = 0; v < ground.vertexCount(); v++) {
            sites.add(new Coordinate(ground.x(v), ground.y(v), v));
        }
        if (sites.size() < 10_000) {
            var builder = new DelaunayTriangulationBuilder();
            builder.setSites(sites);
            return builder.getSubdivision().getTriangleVertices(false);
        }
        var around = DelaunayTriangulationBuilder.envelope(sites);
        var subdivision = new QuadEdgeSubdivision(around, 0);
        new IncrementalDelaunayTriangulator(subdivision)
                .insertSites(DelaunayTriangulationBuilder.toVertices(sites));
        return subdivision.getTriangleVertices(false);
    }

    /** True if the corners of a triangle lie on one circle with the fourth of one of ours. */
    private static boolean isTied(Ground ground, int[] triangle) {
        Set<Integer> corners = Set.of(triangle[0], triangle[1], triangle[2]);
        for (int t = 0; t < ground.triangleCount(); t++) {
            int shared = 0;
            int fourth = -1;
            for (int k = 0; k < 3; k++) {
                if (corners.contains(ground.corner(t, k))) {
                    shared++;
                } else {
                    fourth = ground.corner(t, k);
                }
            }
            if (shared == 2 && onCircle(ground, triangle, fourth)) {
                return true;
            }
        }
        return false;
    }

    private static boolean onCircle(Ground ground, int[] c, int v) {
        return Shots.exactCircle(
                        ground.x(c[0]),
                        ground.y(c[0]),
                        ground.x(c[1]),
                        ground.y(c[1]),
                        ground.x(c[2]),
                        ground.y(c[2]),
                        ground.x(v),
                        ground.y(v))
                == 0;
    }

    /**
     * The library works inside a finite frame, so a few slivers along the hull are missing there;
     * what it has must be ours too, up to four corners on one circle.
     */
    private static void agree(double[][] points, double missing, String what) {
        Apart apart = compare(points);
        assertEquals(0, apart.unexplained, what);
        assertTrue(
                apart.onlyOurs - apart.onlyTheirs <= missing * points.length + 3,
                what + ": " + apart);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Triangles of 20 irregular sets of 100,000 points | JTS 1.20.0, IncrementalDelaunayTriangulator | derived")
    void irregularSetsGiveTheTrianglesOfAnotherLibrary() {
        IntStream.rangeClosed(1, 20)
                .parallel()
                .forEach(seed -> agree(Shots.irregular(100_000, seed), 0.001, "seed " + seed));
    }

    @Test
    @Tag("outside")
    @DisplayName("Triangles of 52 spot heights | J. C. Davis 1973, table; JTS 1.20.0 | read")
    void spotHeightsGiveTheTrianglesOfAnotherLibrary() throws IOException {
        double[][] points = Shots.openData("davis-spot-heights.csv");
        assertEquals(52, points.length);
        agree(points, 0, "Davis");
        assertEquals("", Shots.faults(Shots.wholeHull(points)));
    }

    @Test
    @Tag("outside")
    @DisplayName("Triangles of 1,065 lidar points | laspy simple.las; JTS 1.20.0 | read")
    void lidarGivesTheTrianglesOfAnotherLibrary() throws IOException {
        double[][] points = Shots.openData("lidar-sample.csv");
        assertEquals(1065, points.length);
        agree(points, 0, "lidar");
        assertEquals("", Shots.faults(Shots.wholeHull(points)));
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Triangles of 1,600 cells of an elevation grid, all on circles of four"
                    + " | Matplotlib sample data, Jacksboro fault; JTS 1.20.0 | read")
    void gridGivesTheTrianglesOfAnotherLibrary() throws IOException {
        double[][] points = Shots.openData("jacksboro-part.csv");
        assertEquals(1600, points.length);
        agree(points, 0, "Jacksboro");
        assertEquals("", Shots.faults(Shots.wholeHull(points)));
    }

    @Test
    void everyCircleIsEmptyAndTheHullIsConvex() {
        for (int seed = 1; seed <= 5; seed++) {
            check(Shots.scattered(3000, seed, 100), "scattered " + seed);
            check(Shots.irregular(3000, seed), "irregular " + seed);
        }
    }

    @Test
    void gridsAtAnyAngleHaveSoundTriangles() {
        for (double degrees : new double[] {0, 10, 30, 36.8698976458440, 45, 60, 89.999}) {
            for (double step : new double[] {1, 0.3, 0.3048, 7.62}) {
                check(Shots.grid(30, step, degrees), degrees + "° " + step);
            }
        }
    }

    @Test
    void shotsFarApartOrInAStringHaveSoundTriangles() {
        double[][] points = Shots.scattered(500, 4, 1);
        points[0][0] = 90_000;
        points[1][1] = -80_000;
        check(points, "far apart");
        double[][] string = Shots.scattered(400, 6, 1000);
        for (int i = 0; i < string.length; i++) {
            string[i][1] = i % 50 == 0 ? 1 : 0;
        }
        check(string, "string");
    }

    private static void check(double[][] points, String what) {
        Ground ground = Shots.wholeHull(points);
        assertEquals("", Shots.faults(ground), what);
        Mesh mesh = ground.mesh();
        Map<Integer, Integer> next = new HashMap<>();
        for (int s = 0; s < mesh.neighbour.length; s++) {
            if (mesh.neighbour[s] == Mesh.NONE) {
                int t = s / 3;
                next.put(
                        mesh.corner[3 * t + Mesh.next(s % 3)],
                        mesh.corner[3 * t + Mesh.last(s % 3)]);
            }
        }
        int n = next.size();
        int seen = 0;
        int begin = next.keySet().iterator().next();
        int at = begin;
        do {
            int b = next.get(at);
            int c = next.get(b);
            assertTrue(
                    Shots.exactSide(
                                    mesh.x[at],
                                    mesh.y[at],
                                    mesh.x[b],
                                    mesh.y[b],
                                    mesh.x[c],
                                    mesh.y[c])
                            >= 0,
                    what);
            at = b;
            seen++;
        } while (at != begin);
        assertEquals(n, seen, what);
        // Euler: a triangulation of n points with h of them on the hull has 2 n - 2 - h triangles.
        assertEquals(2 * mesh.x.length - 2 - n, mesh.triangles(), what);
    }

    @Test
    void pointsOnOneLineMakeNoGround() {
        double[][] points = new double[50][];
        for (int i = 0; i < 50; i++) {
            points[i] = new double[] {i, 2 * i, 1};
        }
        Ground ground = Shots.ground(points);
        assertEquals(0, ground.triangleCount());
        assertEquals("no-ground", ground.findings().get(0).code());
        assertTrue(Double.isNaN(ground.heightAt(1, 2)));
        assertEquals(0, ground.across(0, 0, 10, 10).size());
        points[49][1] = 3;
        assertEquals(48, Shots.wholeHull(points).triangleCount());
    }

    @Test
    void numbersOfVerticesAndTrianglesDoNotDependOnTheRun() {
        Mesh one = Shots.ground(Shots.irregular(5000, 3)).mesh();
        Mesh other = Shots.ground(Shots.irregular(5000, 3)).mesh();
        assertTrue(Arrays.equals(one.corner, other.corner));
        assertTrue(Arrays.equals(one.neighbour, other.neighbour));
        assertTrue(Arrays.equals(one.x, other.x));
    }
}
