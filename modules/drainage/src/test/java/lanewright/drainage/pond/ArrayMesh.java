package lanewright.drainage.pond;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.triangulate.DelaunayTriangulationBuilder;

/** A small surface for tests, from points and triangles. */
public final class ArrayMesh implements Mesh {

    private final double[][] points;
    private final int[][] triangles;
    private final int[][] neighbours;

    /** Points as {x, y, z}; triangles counter-clockwise. */
    public ArrayMesh(double[][] points, int[][] triangles) {
        this.points = points;
        this.triangles = triangles;
        neighbours = new int[triangles.length][3];
        // Sides by the corner that they begin at, the last one first; -1 where there is none.
        int[] first = new int[points.length];
        int[] next = new int[3 * triangles.length];
        Arrays.fill(first, -1);
        for (int side = 0; side < next.length; side++) {
            int a = from(side);
            int b = to(side);
            if (between(a, b, first, next) >= 0) {
                throw new IllegalArgumentException("edge used twice: " + a + " " + b);
            }
            next[side] = first[a];
            first[a] = side;
            int across = between(b, a, first, next);
            neighbours[side / 3][side % 3] = across < 0 ? -1 : across / 3;
            if (across >= 0) {
                neighbours[across / 3][across % 3] = side / 3;
            }
        }
    }

    private int from(int side) {
        return triangles[side / 3][(side + 1) % 3];
    }

    private int to(int side) {
        return triangles[side / 3][(side + 2) % 3];
    }

    private int between(int a, int b, int[] first, int[] next) {
        int side = first[a];
        while (side >= 0 && to(side) != b) {
            side = next[side];
        }
        return side;
    }

    /** A regular sheet of cells cut in two, over [x0, x0 + nx·cell] by [y0, y0 + ny·cell]. */
    public static ArrayMesh sheet(
            double x0, double y0, int nx, int ny, double cell, DoubleBinaryOperator height) {
        double[][] points = new double[(nx + 1) * (ny + 1)][];
        for (int j = 0; j <= ny; j++) {
            for (int i = 0; i <= nx; i++) {
                double x = x0 + i * cell;
                double y = y0 + j * cell;
                points[j * (nx + 1) + i] = new double[] {x, y, height.applyAsDouble(x, y)};
            }
        }
        int[][] triangles = new int[2 * nx * ny][];
        for (int j = 0; j < ny; j++) {
            for (int i = 0; i < nx; i++) {
                int a = j * (nx + 1) + i;
                int b = a + 1;
                int c = b + nx + 1;
                int d = a + nx + 1;
                triangles[2 * (j * nx + i)] = new int[] {a, b, c};
                triangles[2 * (j * nx + i) + 1] = new int[] {a, c, d};
            }
        }
        return new ArrayMesh(points, triangles);
    }

    /** The Delaunay triangles of the points, by JTS. */
    public static ArrayMesh delaunay(double[][] points) {
        Map<Coordinate, Integer> index = new HashMap<>();
        Coordinate[] sites = new Coordinate[points.length];
        for (int i = 0; i < points.length; i++) {
            sites[i] = new Coordinate(points[i][0], points[i][1]);
            index.put(sites[i], i);
        }
        var builder = new DelaunayTriangulationBuilder();
        builder.setSites(new GeometryFactory().createMultiPointFromCoords(sites));
        Geometry found = builder.getTriangles(new GeometryFactory());
        int[][] triangles = new int[found.getNumGeometries()][];
        for (int t = 0; t < triangles.length; t++) {
            Coordinate[] ring = found.getGeometryN(t).getCoordinates();
            int a = index.get(new Coordinate(ring[0].x, ring[0].y));
            int b = index.get(new Coordinate(ring[1].x, ring[1].y));
            int c = index.get(new Coordinate(ring[2].x, ring[2].y));
            double twice =
                    (points[b][0] - points[a][0]) * (points[c][1] - points[a][1])
                            - (points[c][0] - points[a][0]) * (points[b][1] - points[a][1]);
            triangles[t] = twice > 0 ? new int[] {a, b, c} : new int[] {a, c, b};
        }
        return new ArrayMesh(points, triangles);
    }

    /** The same triangles with every point moved. */
    public ArrayMesh moved(DoubleBinaryOperator toX, DoubleBinaryOperator toY, boolean mirrored) {
        double[][] to = new double[points.length][];
        for (int i = 0; i < to.length; i++) {
            double x = points[i][0];
            double y = points[i][1];
            to[i] = new double[] {toX.applyAsDouble(x, y), toY.applyAsDouble(x, y), points[i][2]};
        }
        int[][] turned = new int[triangles.length][];
        for (int t = 0; t < turned.length; t++) {
            int[] c = triangles[t];
            turned[t] = mirrored ? new int[] {c[0], c[2], c[1]} : c;
        }
        return new ArrayMesh(to, turned);
    }

    /** The same surface with an upright wall around it, its top at {@code top} or at the ground. */
    public ArrayMesh walled(double top) {
        List<double[]> corners = new ArrayList<>(List.of(points));
        List<int[]> faces = new ArrayList<>(List.of(triangles));
        Map<Integer, Integer> above = new HashMap<>();
        for (int t = 0; t < triangles.length; t++) {
            for (int k = 0; k < 3; k++) {
                if (neighbours[t][k] < 0) {
                    int a = triangles[t][(k + 1) % 3];
                    int b = triangles[t][(k + 2) % 3];
                    for (int v : new int[] {a, b}) {
                        above.computeIfAbsent(
                                v,
                                of -> {
                                    double[] p = points[of];
                                    corners.add(new double[] {p[0], p[1], Math.max(p[2], top)});
                                    return corners.size() - 1;
                                });
                    }
                    faces.add(new int[] {b, a, above.get(a)});
                    faces.add(new int[] {b, above.get(a), above.get(b)});
                }
            }
        }
        return new ArrayMesh(corners.toArray(new double[0][]), faces.toArray(new int[0][]));
    }

    @Override
    public int vertexCount() {
        return points.length;
    }

    @Override
    public double x(int vertex) {
        return points[vertex][0];
    }

    @Override
    public double y(int vertex) {
        return points[vertex][1];
    }

    @Override
    public double z(int vertex) {
        return points[vertex][2];
    }

    @Override
    public int triangleCount() {
        return triangles.length;
    }

    @Override
    public int corner(int triangle, int k) {
        return triangles[triangle][k];
    }

    @Override
    public int neighbour(int triangle, int k) {
        return neighbours[triangle][k];
    }

    @Override
    public boolean isLine(int triangle, int k) {
        return true;
    }
}
