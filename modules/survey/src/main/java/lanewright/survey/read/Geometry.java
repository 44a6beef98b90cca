package lanewright.survey.read;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The places of one GeoJSON geometry in flat arrays, cut into parts: the points of a MultiPoint are
 * one part, each line and each ring is one, and polygons of a MultiPolygon begin new groups.
 */
final class Geometry {

    /** Shapes that are read, with how deep their coordinates are nested. */
    enum Type {
        POINT("Point", 1),
        MULTI_POINT("MultiPoint", 2),
        LINE("LineString", 2),
        MULTI_LINE("MultiLineString", 3),
        POLYGON("Polygon", 3),
        MULTI_POLYGON("MultiPolygon", 4);

        private final String word;
        private final int depth;

        Type(String word, int depth) {
            this.word = word;
            this.depth = depth;
        }

        String word() {
            return word;
        }

        int depth() {
            return depth;
        }

        static @Nullable Type of(@Nullable String word) {
            for (Type each : values()) {
                if (each.word.equals(word)) {
                    return each;
                }
            }
            return null;
        }
    }

    private final long line;
    private double[] x = new double[8];
    private double[] y = new double[8];
    private double[] z = new double[8];
    private int size;

    /** First place of each list, for every depth at which lists open. */
    private final int[][] opened = new int[5][4];

    private final int[] openedCount = new int[5];
    private int depth;
    private Type type = Type.POINT;

    Geometry(long line) {
        this.line = line;
    }

    /** Line of the file on which its coordinates begin. */
    long line() {
        return line;
    }

    void add(double east, double north, double height) {
        if (size == x.length) {
            x = Arrays.copyOf(x, 2 * size);
            y = Arrays.copyOf(y, 2 * size);
            z = Arrays.copyOf(z, 2 * size);
        }
        x[size] = east;
        y[size] = north;
        z[size] = height;
        size++;
    }

    void openPart(int atDepth) {
        int count = openedCount[atDepth]++;
        if (count == opened[atDepth].length) {
            opened[atDepth] = Arrays.copyOf(opened[atDepth], 2 * count);
        }
        opened[atDepth][count] = size;
    }

    void closed(int deepest) {
        depth = deepest;
    }

    int depth() {
        return depth;
    }

    Geometry of(Type known) {
        type = known;
        return this;
    }

    Type type() {
        return type;
    }

    int size() {
        return size;
    }

    double x(int k) {
        return x[k];
    }

    double y(int k) {
        return y[k];
    }

    /** Height of a place, NaN if it has none. */
    double z(int k) {
        return z[k];
    }

    /** How many lists of places there are: lines, rings, or the one list of points. */
    int parts() {
        return depth == 1 ? 1 : openedCount[depth - 1];
    }

    /** First place of a part. */
    int from(int part) {
        return depth == 1 ? 0 : opened[depth - 1][part];
    }

    /** Place after the last of a part. */
    int to(int part) {
        return part + 1 < parts() ? from(part + 1) : size;
    }

    /** How many polygons a MultiPolygon has, 1 for anything else. */
    int groups() {
        return depth == 4 ? openedCount[2] : 1;
    }
}
