package lanewright.drainage.storm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewright.drainage.channel.Check;
import lanewright.drainage.channel.Lining;
import lanewright.drainage.runoff.Cover;
import lanewright.drainage.runoff.DesignRain;
import lanewright.drainage.runoff.GraphicalPeak;
import lanewright.drainage.runoff.Peak;
import lanewright.drainage.runoff.Rational;
import lanewright.drainage.runoff.RationalPeak;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

/**
 * The storm that pipes and ditches are to carry, and the land it falls on. With the depth of a day
 * the flow comes by curve number and the graphical method; with a table of short rains by the
 * rational method.
 *
 * @param rain of 24 hours, m; NaN where the table is given in its place
 * @param years how often it comes, one year in so many; zero if that was not said
 * @param storm how the rain of a day falls over it
 * @param lands what the land is, each with its share; the shares make one
 * @param soil what ditches are dug in, by a name of the published linings
 * @param table rain by duration and return period, if it is to be taken
 */
public record StormAsked(
        double rain,
        double years,
        GraphicalPeak.Storm storm,
        List<Land> lands,
        String soil,
        Optional<DesignRain> table) {

    /** More than any day has had on record, m: a misread unit. */
    private static final double MOST = 2;

    /** Shares written in whole percent, as thirds are, make one to this. */
    private static final double WHOLE = 0.011;

    /**
     * Part of the land.
     *
     * @param cover what it is
     * @param share over 0, at most 1
     */
    public record Land(Cover cover, double share) {
        /**
         * @throws IllegalArgumentException if the share is out of range
         */
        public Land {
            if (!(share > 0 && share <= 1)) {
                throw new IllegalArgumentException(
                        "a share of the land is over 0 and at most 100 %, was "
                                + 100 * share
                                + " %; leave out what is not there");
            }
        }
    }

    /**
     * @throws IllegalArgumentException if a figure is out of range
     */
    public StormAsked {
        lands = List.copyOf(lands);
        if (table.isEmpty()) {
            Check.positive("rain of 24 hours, m,", rain);
        } else {
            table.get().intensity(table.get().longestBurst(), years);
        }
        Check.notNegative("how often it comes, years,", years);
        if (Lining.named(soil).kind() != Lining.Kind.SOIL) {
            throw new IllegalArgumentException(
                    soil + " is a lining and no soil; name the soil that ditches are dug in");
        }
        if (rain > MOST) {
            throw new IllegalArgumentException(
                    "rain of " + rain + " m in a day is more than was ever seen; check its unit");
        }
        double sum = lands.stream().mapToDouble(Land::share).sum();
        if (!(Math.abs(sum - 1) <= WHOLE)) {
            throw new IllegalArgumentException(
                    "the shares of the land make "
                            + Math.round(1000 * sum) / 10.0
                            + " %; they must make 100 %");
        }
    }

    /** The depth of a day, on land of one cover. */
    public StormAsked(
            double rain, double years, GraphicalPeak.Storm storm, Cover cover, String soil) {
        this(rain, years, storm, List.of(new Land(cover, 1)), soil, Optional.empty());
    }

    /** What most of the land is; of equal parts, the first. */
    public Cover cover() {
        Land most = lands.get(0);
        for (Land land : lands) {
            most = land.share() > most.share() ? land : most;
        }
        return most.cover();
    }

    /** What the lane itself is, on the soil of most of the land. */
    public Cover laneCover() {
        return new Cover("gravel road", cover().group());
    }

    /** The curve number of the land, its parts by their shares (TR-55, 1986, chapter 2). */
    public double curveNumber() {
        double sum = 0;
        double all = 0;
        for (Land land : lands) {
            sum += land.share() * land.cover().curveNumber().value();
            all += land.share();
        }
        return sum / all;
    }

    /**
     * Part of a short rain that runs off the land, its parts by their shares; more in a rare storm.
     *
     * @param slope of the land, rise over run
     */
    public double coefficient(double slope) {
        double sum = 0;
        double all = 0;
        for (Land land : lands) {
            sum += land.share() * land.cover().coefficient(slope).value();
            all += land.share();
        }
        return rare(sum / all);
    }

    private double rare(double coefficient) {
        return years > 0 ? Rational.rare(coefficient, years) : coefficient;
    }

    /**
     * The flow at its height.
     *
     * @param lane gravel of the lane, m², zero or more
     * @param rest land, m², zero or more; both together over zero
     * @param time in which the water gathers, s
     * @param slope of the land, rise over run
     */
    public Peak peak(double lane, double rest, double time, double slope) {
        double area = lane + rest;
        if (table.isPresent()) {
            double gravel = rare(laneCover().coefficient(slope).value());
            return RationalPeak.of(
                    table.get(),
                    years,
                    (lane * gravel + rest * coefficient(slope)) / area,
                    area,
                    time);
        }
        double gravel = laneCover().curveNumber().value();
        return GraphicalPeak.of(
                storm, rain, (lane * gravel + rest * curveNumber()) / area, area, time, 0);
    }

    /** The storm and its land, in words that have no full stop. */
    public Saying words() {
        Saying rain = StormAssumptions.rain(this);
        Saying land = StormAssumptions.lands(this);
        List<Quantity> quantities = new ArrayList<>(rain.quantities());
        quantities.addAll(land.quantities());
        return new Saying(
                rain.pattern()
                        + " on "
                        + land.pattern()
                        + (table.isPresent()
                                ? "; flow by the rational method"
                                : "; flow by curve number and the graphical method"),
                quantities);
    }
}
