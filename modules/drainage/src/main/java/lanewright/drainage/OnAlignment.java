package lanewright.drainage;

import lanewright.drainage.along.LaneLine;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import org.jspecify.annotations.Nullable;

/** The lane's own alignment, as water sees it. */
record OnAlignment(Alignment alignment) implements LaneLine {

    @Override
    public double length() {
        return alignment.length();
    }

    @Override
    public double x(Place place) {
        return alignment.x(place);
    }

    @Override
    public double y(Place place) {
        return alignment.y(place);
    }

    @Override
    public @Nullable Place place(double x, double y) {
        return alignment.place(x, y);
    }
}
