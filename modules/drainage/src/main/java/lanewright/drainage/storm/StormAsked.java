package lanewright.drainage.storm;

import lanewright.drainage.channel.Check;
import lanewright.drainage.channel.Lining;
import lanewright.drainage.runoff.Cover;
import lanewright.drainage.runoff.GraphicalPeak;

/**
 * The storm that pipes are to carry, and the land it falls on.
 *
 * @param rain of 24 hours, m
 * @param years how often it comes, one year in so many; zero if that was not said
 * @param storm how its rain falls over the day
 * @param cover what the land is
 * @param soil what ditches are dug in, by a name of the published linings
 */
public record StormAsked(
        double rain, double years, GraphicalPeak.Storm storm, Cover cover, String soil) {

    /** More than any day has had on record, m: a misread unit. */
    private static final double MOST = 2;

    /**
     * @throws IllegalArgumentException if a figure is out of range
     */
    public StormAsked {
        Check.positive("rain of 24 hours, m,", rain);
        Check.notNegative("how often it comes, years,", years);
        if (Lining.named(soil).kind() != Lining.Kind.SOIL) {
            throw new IllegalArgumentException(
                    soil + " is a lining and no soil; name the soil that ditches are dug in");
        }
        if (rain > MOST) {
            throw new IllegalArgumentException(
                    "rain of " + rain + " m in a day is more than was ever seen; check its unit");
        }
    }
}
