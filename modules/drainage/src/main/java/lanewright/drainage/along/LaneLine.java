package lanewright.drainage.along;

import lanewright.lane.line.Place;
import org.jspecify.annotations.Nullable;

/** Where the lane runs, as far as its water needs to know. */
public interface LaneLine {

    /** Its length, m. */
    double length();

    /** Local easting of a place beside it, m. */
    double x(Place place);

    /** Local northing of a place beside it, m. */
    double y(Place place);

    /** The place of a point on the map, or null if it lies off the lane's ends. */
    @Nullable Place place(double x, double y);
}
