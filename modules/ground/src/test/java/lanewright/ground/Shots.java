package lanewright.ground;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import lanewright.measure.Progress;
import lanewright.survey.Survey;
import lanewright.survey.SurveyBuilder;

/** Ground that a reader of a test can picture, and exact questions about its triangles. */
final class Shots {

    private Shots() {}

    static SurveyBuilder survey(double[][] points) {
        SurveyBuilder builder = Survey.builder();
        for (double[] point : points) {
            builder.point(point[0], point[1], point[2]);
        }
        return builder;
    }

    static Ground ground(double[][] points) {
        return ground(survey(points));
    }

    static Ground ground(SurveyBuilder survey) {
        return Ground.of(survey.build(), GroundOptions.USUAL, Progress.NONE);
    }

    static Ground wholeHull(double[][] points) {
        return Ground.of(survey(points).build(), GroundOptions.WHOLE_HULL, Progress.NONE);
    }

    /** Scattered shots on a square as wide as given. */
    static double[][] scattered(int n, int seed, double wide) {
        var random = new SplittableRandom(seed);
        double[][] points = new double[n][];
        for (int i = 0; i < n; i++) {
            points[i] =
                    new double[] {
                        random.nextDouble(wide), random.nextDouble(wide), random.nextDouble(10)
                    };
        }
        return points;
    }

    /** As a crew shoots: rows across at uneven steps, dense near the middle, then clumps. */
    static double[][] irregular(int n, int seed) {
        var random = new SplittableRandom(seed);
        double wide = Math.sqrt(n);
        double[][] points = new double[n][];
        for (int i = 0; i < n; i++) {
            double x;
            double y;
            if (i % 3 == 0) {
                x = Math.floor(random.nextDouble(wide) / 8) * 8 + random.nextDouble(0.3);
                y = random.nextDouble(wide);
            } else if (i % 3 == 1) {
                x = random.nextDouble(wide);
                y = wide * (0.5 + 0.2 * random.nextDouble(-1, 1) * random.nextDouble());
            } else {
                x = random.nextDouble(wide);
                y = random.nextDouble(wide);
            }
            points[i] = new double[] {x, y, 5 * Math.sin(x / 20) + 3 * Math.cos(y / 15)};
        }
        return points;
    }

    /** A grid of n by n, a step apart, turned by an angle in degrees. */
    static double[][] grid(int n, double step, double degrees) {
        double c = Math.cos(Math.toRadians(degrees));
        double s = Math.sin(Math.toRadians(degrees));
        double[][] points = new double[n * n][];
        for (int i = 0; i < n * n; i++) {
            int column = i % n;
            int row = i / n;
            points[i] =
                    new double[] {
                        step * (column * c - row * s),
                        step * (column * s + row * c),
                        (column * 7 + row * 13) % 5
                    };
        }
        return points;
    }

    static double[][] openData(String name) throws IOException {
        List<double[]> points = new ArrayList<>();
        try (var lines =
                new BufferedReader(
                        new InputStreamReader(
                                Objects.requireNonNull(
                                        Shots.class.getResourceAsStream("/open-data/" + name)),
                                StandardCharsets.UTF_8))) {
            String head = lines.readLine();
            int first = head.startsWith("id") ? 1 : 0;
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                String[] cells = line.split(",", -1);
                points.add(
                        new double[] {
                            Double.parseDouble(cells[first]),
                            Double.parseDouble(cells[first + 1]),
                            Double.parseDouble(cells[first + 2])
                        });
            }
        }
        return points.toArray(double[][]::new);
    }

    /** Twice the area of a triangle in whole decimal arithmetic: its sign. */
    static int exactSide(double px, double py, double qx, double qy, double vx, double vy) {
        BigDecimal left = minus(qx, px).multiply(minus(vy, py));
        BigDecimal right = minus(qy, py).multiply(minus(vx, px));
        return left.compareTo(right);
    }

    /** The in-circle determinant of a, b, c counter-clockwise and d in whole decimal arithmetic. */
    static int exactCircle(double... v) {
        BigDecimal ax = minus(v[0], v[6]);
        BigDecimal ay = minus(v[1], v[7]);
        BigDecimal bx = minus(v[2], v[6]);
        BigDecimal by = minus(v[3], v[7]);
        BigDecimal cx = minus(v[4], v[6]);
        BigDecimal cy = minus(v[5], v[7]);
        return lift(ax, ay)
                .multiply(cross(bx, by, cx, cy))
                .add(lift(bx, by).multiply(cross(cx, cy, ax, ay)))
                .add(lift(cx, cy).multiply(cross(ax, ay, bx, by)))
                .signum();
    }

    private static BigDecimal minus(double a, double b) {
        return new BigDecimal(a).subtract(new BigDecimal(b));
    }

    private static BigDecimal lift(BigDecimal x, BigDecimal y) {
        return x.multiply(x).add(y.multiply(y));
    }

    private static BigDecimal cross(BigDecimal ax, BigDecimal ay, BigDecimal bx, BigDecimal by) {
        return ax.multiply(by).subtract(ay.multiply(bx));
    }

    /**
     * What is wrong with the triangles of a ground, voids included, or an empty string: every
     * triangle must run counter-clockwise, neighbours must agree, and no free side may have the
     * corner across it inside the circle of its triangle. All signs exact.
     */
    static String faults(Ground ground) {
        Mesh mesh = ground.mesh();
        for (int t = 0; t < mesh.triangles(); t++) {
            int a = mesh.corner[3 * t];
            int b = mesh.corner[3 * t + 1];
            int c = mesh.corner[3 * t + 2];
            double[] x = mesh.x;
            double[] y = mesh.y;
            if (exactSide(x[a], y[a], x[b], y[b], x[c], y[c]) <= 0) {
                return "triangle " + t + " is turned over";
            }
            for (int k = 0; k < 3; k++) {
                int other = mesh.neighbour[3 * t + k];
                if (other == Mesh.NONE) {
                    continue;
                }
                int back = mesh.sideTo(other, t);
                if (mesh.neighbour[3 * other + back] != t
                        || mesh.corner[3 * other + Mesh.next(back)]
                                != mesh.corner[3 * t + Mesh.last(k)]
                        || mesh.corner[3 * other + Mesh.last(back)]
                                != mesh.corner[3 * t + Mesh.next(k)]
                        || mesh.breaks.get(3 * other + back) != mesh.breaks.get(3 * t + k)) {
                    return "triangles " + t + " and " + other + " do not agree";
                }
                int d = mesh.corner[3 * other + back];
                if (other > t
                        && !mesh.breaks.get(3 * t + k)
                        && exactCircle(x[a], y[a], x[b], y[b], x[c], y[c], x[d], y[d]) > 0) {
                    return "vertex " + d + " lies in the circle of triangle " + t;
                }
            }
        }
        return "";
    }
}
