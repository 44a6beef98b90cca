package lanewright.lane.line;

/**
 * A highest or lowest place of the profile.
 *
 * @param from station where it begins, m
 * @param to station where it ends, m; over {@code from} only where the profile runs level there
 * @param height m above the datum
 * @param sag true for a lowest place, false for a highest
 */
public record TurningPoint(double from, double to, double height, boolean sag) {

    /** Its station, the middle of it where it is level, m. */
    public double station() {
        return (from + to) / 2;
    }
}
