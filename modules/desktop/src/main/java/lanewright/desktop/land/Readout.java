package lanewright.desktop.land;

import lanewright.ground.Ground;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.run.Outcome;
import lanewright.survey.Survey;
import org.jspecify.annotations.Nullable;

/** What is told of the place under the pointer. */
final class Readout {

    /** A difference of height that is worth a word, m. */
    private static final double SAME = 0.005;

    private Readout() {}

    /**
     * Place and height, and what is dug or built up there.
     *
     * @param east local easting, m
     * @param north local northing, m
     * @param outcome what is built, or null if that is not known
     */
    static String of(
            Survey survey,
            Ground ground,
            @Nullable Outcome outcome,
            double east,
            double north,
            UnitSystem units) {
        double height = ground.heightAt(east, north);
        String place =
                "E "
                        + Words.fine(Quantity.length(east + survey.originX()), units)
                        + "   N "
                        + Words.fine(Quantity.length(north + survey.originY()), units);
        if (Double.isNaN(height)) {
            return place + "   no ground was measured here";
        }
        String told = place + "   height " + Words.fine(Quantity.height(height), units);
        double built = outcome == null ? Double.NaN : outcome.finished().heightAt(east, north);
        if (!Double.isNaN(built) && Math.abs(built - height) > SAME) {
            told +=
                    (built < height ? "   dug " : "   built up ")
                            + Words.fine(Quantity.length(Math.abs(built - height)), units);
        }
        return told;
    }
}
