package lanewright.lane.line;

/**
 * A place beside the lane.
 *
 * @param station distance along the alignment from its start, m, measured in plan
 * @param offset distance square to the alignment, m; positive is right, looking up-station
 */
public record Place(double station, double offset) {
    /** Checks that both are finite. */
    public Place {
        if (!Double.isFinite(station) || !Double.isFinite(offset)) {
            throw new IllegalArgumentException(
                    "place must be finite, was " + station + " / " + offset);
        }
    }
}
