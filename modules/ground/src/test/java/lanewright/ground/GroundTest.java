package lanewright.ground;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import lanewright.measure.Progress;
import lanewright.survey.Boundary;
import lanewright.survey.Ring;
import lanewright.survey.Survey;
import lanewright.survey.SurveyBuilder;
import lanewright.survey.SurveyLine;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;

class GroundTest {

    private static final GeometryFactory JTS = new GeometryFactory();

    private static Ground of(double[][] points, int[]... chains) {
        double[] x = new double[points.length];
        double[] y = new double[points.length];
        double[] z = new double[points.length];
        for (int i = 0; i < points.length; i++) {
            x[i] = points[i][0];
            y[i] = points[i][1];
            z[i] = points[i][2];
        }
        SurveyBuilder builder = Survey.builder().points(x, y, z);
        for (int[] chain : chains) {
            builder.line(new SurveyLine(SurveyLine.Kind.BREAKLINE, "edge", chain));
        }
        return Ground.of(builder.build(), GroundOptions.USUAL, Progress.NONE);
    }

    private static double[][] random(int n, int seed) {
        var random = new SplittableRandom(seed);
        double[][] points = new double[n][];
        for (int i = 0; i < n; i++) {
            points[i] =
                    new double[] {
                        random.nextDouble(100), random.nextDouble(100), random.nextDouble(10)
                    };
        }
        return points;
    }

    private static double[][] grid(int n) {
        double[][] points = new double[n * n][];
        for (int i = 0; i < n * n; i++) {
            int column = i % n;
            int row = i / n;
            points[i] = new double[] {column, row, (column * 7 + row * 13) % 5};
        }
        return points;
    }

    /** A line must agree with the facets under it, and be as long as the ground under it. */
    private static void check(
            Ground ground, double x0, double y0, double x1, double y1, String seed) {
        GroundLine line = ground.across(x0, y0, x1, y1);
        double covered = 0;
        LineString cut =
                JTS.createLineString(
                        new Coordinate[] {new Coordinate(x0, y0), new Coordinate(x1, y1)});
        for (int t = 0; t < ground.triangleCount(); t++) {
            Coordinate[] ring = new Coordinate[4];
            for (int k = 0; k < 4; k++) {
                ring[k] =
                        new Coordinate(
                                ground.x(ground.corner(t, k % 3)),
                                ground.y(ground.corner(t, k % 3)));
            }
            Polygon facet = JTS.createPolygon(ring);
            if (!facet.getEnvelopeInternal().intersects(cut.getEnvelopeInternal())) {
                continue;
            }
            Geometry piece = facet.intersection(cut);
            covered += piece.getLength() * (alongSide(facet, piece) ? 0.5 : 1);
        }
        double walked = 0;
        for (int i = 0; i + 1 < line.size(); i++) {
            double length = line.distance(i + 1) - line.distance(i);
            assertTrue(length >= 0, seed);
            if (!line.gapAfter(i)) {
                walked += length;
                if (length > 1e-9) {
                    double mx = (line.x(i) + line.x(i + 1)) / 2;
                    double my = (line.y(i) + line.y(i + 1)) / 2;
                    double height = ground.heightAt(mx, my);
                    if (!Double.isNaN(height)) {
                        assertEquals(height, (line.z(i) + line.z(i + 1)) / 2, 1e-7, seed);
                    }
                }
            }
        }
        assertEquals(covered, walked, 1e-9, seed);
    }

    private static boolean alongSide(Polygon facet, Geometry piece) {
        return piece.getLength() > 1e-9
                && facet.getBoundary().intersection(piece).getLength() > 1e-9;
    }

    @Test
    void linesAgreeWithTheFacetsUnderThem() {
        Ground ground = of(random(400, 1));
        var random = new SplittableRandom(7);
        for (int i = 0; i < 300; i++) {
            check(
                    ground,
                    random.nextDouble(-20, 120),
                    random.nextDouble(-20, 120),
                    random.nextDouble(-20, 120),
                    random.nextDouble(-20, 120),
                    "line " + i);
        }
    }

    @Test
    void linesThroughVerticesAndAlongSidesOfAGrid() {
        Ground ground = of(grid(12));
        var random = new SplittableRandom(3);
        for (int i = 0; i < 400; i++) {
            double x0 = random.nextInt(-1, 13);
            double y0 = random.nextInt(-1, 13);
            double x1 = random.nextInt(-1, 13);
            double y1 = random.nextInt(-1, 13);
            if ((x0 != x1 || y0 != y1) && inside(x0, y0, x1, y1)) {
                check(
                        ground,
                        x0,
                        y0,
                        x1,
                        y1,
                        "line " + i + ": " + x0 + "," + y0 + " " + x1 + "," + y1);
            }
        }
    }

    private static boolean inside(double... values) {
        // Along the rim JTS sees one facet where it sees two inside; the rim has its own test.
        return !(values[0] == values[2] && (values[0] <= 0 || values[0] >= 11))
                && !(values[1] == values[3] && (values[1] <= 0 || values[1] >= 11));
    }

    @Test
    void aLineAlongTheRimHasGroundUnderIt() {
        Ground ground = of(grid(5));
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
        double[][] points = grid(9);
        SurveyBuilder builder = Survey.builder();
        double[] x = new double[81];
        double[] y = new double[81];
        double[] z = new double[81];
        for (int i = 0; i < 81; i++) {
            x[i] = points[i][0];
            y[i] = points[i][1];
            z[i] = points[i][2];
        }
        builder.points(x, y, z);
        builder.boundary(
                new Boundary(
                        new Ring(
                                new double[] {0.5, 7.5, 7.5, 0.5},
                                new double[] {0.5, 0.5, 7.5, 7.5}),
                        List.of(new Ring(new double[] {3, 5, 5, 3}, new double[] {3, 3, 5, 5}))));
        Ground ground = Ground.of(builder.build(), GroundOptions.USUAL, Progress.NONE);
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
        GroundLine along = ground.across(3, 0, 3, 9);
        assertTrue(along.isWhole());
    }

    @Test
    void breaklinesAreChainsOfEdgesAlsoWhereTheyCross() {
        double[][] points = random(2000, 5);
        Ground ground = of(points, new int[] {0, 1, 2}, new int[] {3, 4, 5}, new int[] {6, 7});
        assertTrue(ground.findings().stream().noneMatch(f -> f.code().equals("breakline-lost")));
        int[][] pairs = {{0, 1}, {1, 2}, {3, 4}, {4, 5}, {6, 7}};
        for (int[] pair : pairs) {
            GroundLine line =
                    ground.across(
                            points[pair[0]][0],
                            points[pair[0]][1],
                            points[pair[1]][0],
                            points[pair[1]][1]);
            for (int i = 0; i < line.size(); i++) {
                double share = line.share(i);
                assertTrue(
                        line.from(i) == line.to(i) || share < 1e-6 || share > 1 - 1e-6,
                        "point " + i);
            }
        }
    }

    @Test
    void unconstrainedTrianglesAreThoseOfAnotherLibrary() {
        double[][] points = random(3000, 9);
        Ground ground = Ground.of(survey(points), GroundOptions.WHOLE_HULL, Progress.NONE);
        var builder = new DelaunayTriangulationBuilder();
        builder.setSites(Arrays.stream(points).map(p -> new Coordinate(p[0], p[1])).toList());
        Geometry triangles = builder.getTriangles(JTS);
        double area = 0;
        for (int t = 0; t < ground.triangleCount(); t++) {
            area += ground.mesh().twiceArea(t) / 2;
        }
        assertEquals(
                JTS.createMultiPointFromCoords(
                                Arrays.stream(points)
                                        .map(p -> new Coordinate(p[0], p[1]))
                                        .toArray(Coordinate[]::new))
                        .convexHull()
                        .getArea(),
                area,
                1e-6);
        assertTrue(Math.abs(triangles.getNumGeometries() - ground.triangleCount()) < 20);
    }

    private static Survey survey(double[][] points) {
        double[] x = new double[points.length];
        double[] y = new double[points.length];
        double[] z = new double[points.length];
        for (int i = 0; i < points.length; i++) {
            x[i] = points[i][0];
            y[i] = points[i][1];
            z[i] = points[i][2];
        }
        return Survey.builder().points(x, y, z).build();
    }
}
