package lanewright.sheets.figure;

import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Outline;

/**
 * Where places of the land lie on a map, north up.
 *
 * @param box of the map, pt
 * @param scale of the map
 * @param midX local easting in the middle of the box, m
 * @param midY local northing in the middle of the box, m
 */
record LandView(Box box, MapScale scale, double midX, double midY) {

    /** The whole of the land in the middle of a box. */
    static LandView of(Land land, MapScale scale, Box box) {
        return new LandView(
                box, scale, (land.left() + land.right()) / 2, (land.low() + land.high()) / 2);
    }

    /** Place across the page, pt, of a local easting, m. */
    double x(double east) {
        return box.middle() + (east - midX) * scale.points();
    }

    /** Place down the page, pt, of a local northing, m. */
    double y(double north) {
        return box.y() + box.height() / 2 - (north - midY) * scale.points();
    }

    /** A line or area of the land on the page. */
    Outline outline(Land.Feature feature) {
        return outline(feature.x(), feature.y(), feature.closed());
    }

    /** A line through local places, m, on the page. */
    Outline outline(double[] east, double[] north, boolean closed) {
        double[] xy = new double[2 * east.length];
        for (int i = 0; i < east.length; i++) {
            xy[2 * i] = x(east[i]);
            xy[2 * i + 1] = y(north[i]);
        }
        return closed ? Outline.closed(xy) : Outline.open(xy);
    }

    /** Whether any point of a line on the page lies in the box. */
    boolean shows(Outline line) {
        for (int i = 0; i < line.size(); i++) {
            if (box.holds(line.x(i), line.y(i))) {
                return true;
            }
        }
        return false;
    }
}
