package lanewright.desktop.land;

import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.measure.Where;
import org.jspecify.annotations.Nullable;

/** Where on the land a finding lies. */
public final class LandPlaces {

    private LandPlaces() {}

    /** Local east and north of a place, m, or null if it has none. */
    public static double @Nullable [] of(Where where, Alignment line) {
        Double x = where.x();
        Double y = where.y();
        if (x != null && y != null) {
            return new double[] {x, y};
        }
        Double from = where.from();
        if (from == null) {
            return null;
        }
        Double to = where.to();
        double station = to == null ? from : (from + to) / 2;
        Double offset = where.offset();
        // While the lane is dragged, findings are still of the one before, which may be longer.
        double on = Math.max(0, Math.min(line.length(), station));
        Place place = new Place(on, offset == null ? 0 : offset);
        return new double[] {line.x(place), line.y(place)};
    }
}
