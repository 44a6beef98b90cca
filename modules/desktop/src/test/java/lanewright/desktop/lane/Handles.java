package lanewright.desktop.lane;

import lanewright.desktop.session.Session;
import lanewright.lane.line.VerticalPoint;

/** Where a person sees the handles of the unrolled lane. */
public final class Handles {

    private Handles() {}

    /** Place of a point between grades on a board of a size, px. */
    public static double[] place(
            Session session, double width, double height, VerticalPoint point) {
        Frame frame =
                Unrolled.fitted(
                        session.shown().get().draft(), Math.floor(width), Math.floor(height));
        return new double[] {frame.x(point.station()), frame.y(point.height())};
    }
}
