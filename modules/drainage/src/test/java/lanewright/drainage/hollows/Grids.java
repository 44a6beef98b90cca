package lanewright.drainage.hollows;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.SplittableRandom;

/** Grids to try things on. */
final class Grids {

    private Grids() {}

    /** A grid and its heights. */
    @SuppressWarnings("ArrayRecordComponent")
    record Grid(int columns, int rows, double[] z) {
        Terrain terrain(int shift) {
            return Terrain.of(columns, rows, 2, z, shift);
        }

        int beside(int cell, int east, int north) {
            int column = cell % columns + east;
            int row = cell / columns + north;
            return column < 0 || row < 0 || column >= columns || row >= rows
                    ? -1
                    : row * columns + column;
        }

        boolean isLand(int cell) {
            return cell >= 0 && !Double.isNaN(z[cell]);
        }

        boolean isRim(int cell) {
            for (int north = -1; north <= 1; north++) {
                for (int east = -1; east <= 1; east++) {
                    if (!isLand(beside(cell, east, north))) {
                        return true;
                    }
                }
            }
            return false;
        }

        /** Turned by a quarter, against the clock. */
        Grid turned() {
            double[] turned = new double[z.length];
            for (int row = 0; row < rows; row++) {
                for (int column = 0; column < columns; column++) {
                    turned[column * rows + rows - 1 - row] = z[row * columns + column];
                }
            }
            return new Grid(/* columns= */ rows, /* rows= */ columns, turned);
        }

        /** West and east changed about. */
        Grid mirrored() {
            double[] mirrored = new double[z.length];
            for (int row = 0; row < rows; row++) {
                for (int column = 0; column < columns; column++) {
                    mirrored[row * columns + columns - 1 - column] = z[row * columns + column];
                }
            }
            return new Grid(columns, rows, mirrored);
        }
    }

    /**
     * Rough ground: every third with few different heights (many flats and ties), every third with
     * all different, every third rolling; some with holes.
     */
    static Grid rough(int seed) {
        var random = new SplittableRandom(seed);
        int columns = random.nextInt(3, 40);
        int rows = random.nextInt(3, 40);
        double[] z = new double[columns * rows];
        for (int cell = 0; cell < z.length; cell++) {
            int row = cell / columns;
            double rolling = 3 * Math.sin(row / 3.0) + 2 * Math.cos(cell % columns / 4.0);
            z[cell] =
                    switch (seed % 3) {
                        case 0 -> random.nextInt(2 + seed % 7);
                        case 1 -> random.nextDouble(10);
                        default -> Math.rint(4 * (rolling + random.nextDouble())) / 4;
                    };
        }
        if (seed % 4 == 0) {
            for (int i = 0; i < z.length / 15; i++) {
                z[random.nextInt(z.length)] = Double.NaN;
            }
        }
        return new Grid(columns, rows, z);
    }

    /** A part of an open elevation model: whole metres, many flats. */
    static Grid jacksboro() {
        try (InputStream in = Grids.class.getResourceAsStream("/open-data/jacksboro-cells.txt")) {
            String[] lines =
                    new String(in.readAllBytes(), StandardCharsets.US_ASCII).strip().split("\n");
            int rows = lines.length;
            int columns = lines[0].split(" ").length;
            double[] z = new double[rows * columns];
            for (int row = 0; row < rows; row++) {
                String[] numbers = lines[rows - 1 - row].split(" ");
                for (int column = 0; column < columns; column++) {
                    z[row * columns + column] = Integer.parseInt(numbers[column]);
                }
            }
            return new Grid(columns, rows, z);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
