package lanewright.sheets.figure;

import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Shade;

/** The land in grey light and shade, under everything else on a map. */
final class HillShade {

    /** Side of a pixel, pt. */
    private static final double PIXEL = 2.4;

    private HillShade() {}

    /**
     * Light from the north-west, 45 degrees high (the custom of printed maps), pale enough that
     * lines and words stand out.
     */
    static void draw(Pen pen, LandView view, Land.Heights heights) {
        Box box = view.box();
        int columns = (int) Math.max(2, Math.round(box.width() / PIXEL));
        int rows = (int) Math.max(2, Math.round(box.height() / PIXEL));
        double step = box.width() / columns / view.scale().points();
        double stepY = box.height() / rows / view.scale().points();
        double[] z = new double[(columns + 1) * (rows + 1)];
        for (int row = 0; row <= rows; row++) {
            for (int column = 0; column <= columns; column++) {
                z[row * (columns + 1) + column] =
                        heights.at(
                                view.midX() + (column - columns / 2.0) * step,
                                view.midY() - (row - rows / 2.0) * stepY);
            }
        }
        byte[] greys = new byte[columns * rows];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                int at = row * (columns + 1) + column;
                double east = (z[at + 1] - z[at]) / step;
                double north = (z[at] - z[at + columns + 1]) / stepY;
                greys[row * columns + column] = (byte) grey(east, north);
            }
        }
        pen.add(new Mark.Picture(box, columns, rows, new Shade(greys)));
    }

    private static int grey(double slopeEast, double slopeNorth) {
        if (Double.isNaN(slopeEast) || Double.isNaN(slopeNorth)) {
            return 255;
        }
        double exaggerated = 2.5;
        double east = slopeEast * exaggerated;
        double north = slopeNorth * exaggerated;
        double light =
                (east - north + Math.sqrt(2)) / (2 * Math.sqrt(1 + east * east + north * north));
        return (int) Math.max(205, Math.min(252, Math.round(190 + 72 * light)));
    }
}
