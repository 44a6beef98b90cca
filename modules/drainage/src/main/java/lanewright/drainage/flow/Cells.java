package lanewright.drainage.flow;

import lanewright.drainage.pond.Mesh;

/**
 * A rectangle of square cells laid over a surface, numbered by rows from the south-west.
 *
 * @param west local easting of its western edge, m
 * @param south local northing of its southern edge, m
 * @param size side of a cell, m, over zero
 * @param columns cells from west to east
 * @param rows cells from south to north
 */
public record Cells(double west, double south, double size, int columns, int rows) {

    /** Checks that there is something to lay. */
    public Cells {
        if (!(size > 0) || columns < 1 || rows < 1 || (long) columns * rows > Integer.MAX_VALUE) {
            throw new IllegalArgumentException(
                    "cells must have a size and be countable, were "
                            + columns
                            + " by "
                            + rows
                            + " of "
                            + size
                            + " m");
        }
    }

    /**
     * Cells of at least {@code wanted} m over all of {@code mesh}, and no more than {@code most}:
     * where the land is too large for that, the cells grow.
     */
    public static Cells over(Mesh mesh, double wanted, int most) {
        double west = Double.POSITIVE_INFINITY;
        double south = Double.POSITIVE_INFINITY;
        double east = Double.NEGATIVE_INFINITY;
        double north = Double.NEGATIVE_INFINITY;
        for (int v = 0; v < mesh.vertexCount(); v++) {
            west = Math.min(west, mesh.x(v));
            east = Math.max(east, mesh.x(v));
            south = Math.min(south, mesh.y(v));
            north = Math.max(north, mesh.y(v));
        }
        double size = wanted;
        while (Math.ceil((east - west) / size) * Math.ceil((north - south) / size) > most) {
            size *= 1.05;
        }
        return new Cells(
                west,
                south,
                size,
                Math.max(1, (int) Math.ceil((east - west) / size)),
                Math.max(1, (int) Math.ceil((north - south) / size)));
    }

    /** How many cells. */
    public int count() {
        return columns * rows;
    }

    /** Area of one cell, m². */
    public double area() {
        return size * size;
    }

    /** Local easting of a cell's middle, m. */
    public double x(int cell) {
        return west + (cell % columns + 0.5) * size;
    }

    /** Local northing of a cell's middle, m. */
    public double y(int cell) {
        int row = cell / columns;
        return south + (row + 0.5) * size;
    }

    /**
     * The cell that holds a place, or -1 outside; on the eastern and northern edge, the last one.
     */
    public int at(double x, double y) {
        double across = (x - west) / size;
        double up = (y - south) / size;
        if (!(across >= 0 && across <= columns && up >= 0 && up <= rows)) {
            return -1;
        }
        int column = Math.min(columns - 1, (int) across);
        int row = Math.min(rows - 1, (int) up);
        return row * columns + column;
    }
}
