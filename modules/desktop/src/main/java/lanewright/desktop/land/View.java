package lanewright.desktop.land;

/**
 * What part of the land is seen, north up.
 *
 * @param x local easting in the middle of the board, m
 * @param y local northing in the middle of the board, m
 * @param scale pixels to the metre
 * @param width of the board, px
 * @param height of the board, px
 */
record View(double x, double y, double scale, double width, double height) {

    /** Least pixels to the metre: a county on the board. */
    private static final double FARTHEST = 0.002;

    /** Most pixels to the metre: a boot fills the board. */
    private static final double NEAREST = 2000;

    /** Room left around what is fitted, px. */
    private static final double AROUND = 28;

    /** A view that shows a box of land whole. */
    static View fitting(
            double left, double low, double right, double high, double width, double height) {
        double wide = Math.max(1, right - left);
        double tall = Math.max(1, high - low);
        double scale =
                Math.min(
                        Math.max(20, width - 2 * AROUND) / wide,
                        Math.max(20, height - 2 * AROUND) / tall);
        return new View((left + right) / 2, (low + high) / 2, bounded(scale), width, height);
    }

    private static double bounded(double scale) {
        return Math.max(FARTHEST, Math.min(NEAREST, scale));
    }

    double px(double east) {
        return width / 2 + (east - x) * scale;
    }

    double py(double north) {
        return height / 2 - (north - y) * scale;
    }

    double east(double px) {
        return x + (px - width / 2) / scale;
    }

    double north(double py) {
        return y - (py - height / 2) / scale;
    }

    /** The same land on a board of another size. */
    View sized(double newWidth, double newHeight) {
        return new View(x, y, scale, newWidth, newHeight);
    }

    /** The land moved under the eye. */
    View moved(double dx, double dy) {
        return new View(x - dx / scale, y + dy / scale, scale, width, height);
    }

    /** Nearer or farther, the land under a place of the board staying there. */
    View zoomed(double factor, double atX, double atY) {
        double now = bounded(scale * factor);
        double keepX = east(atX);
        double keepY = north(atY);
        return new View(
                keepX - (atX - width / 2) / now,
                keepY + (atY - height / 2) / now,
                now,
                width,
                height);
    }

    /** The same scale, with a place in the middle. */
    View at(double east, double north) {
        return new View(east, north, scale, width, height);
    }

    boolean sees(double east, double north) {
        double px = px(east);
        double py = py(north);
        return px >= 0 && px <= width && py >= 0 && py <= height;
    }
}
