package lanewright.survey.read;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import lanewright.measure.LengthUnit;
import lanewright.measure.Progress;
import lanewright.measure.Saying;
import lanewright.survey.Probe;
import lanewright.survey.Reading;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;
import org.jspecify.annotations.Nullable;

/**
 * A unit for a file that states none: one that another file of the survey states, and in which this
 * file's places lie on the land that is known already. It is offered with its reason and never
 * taken by itself.
 *
 * @param unit the unit
 * @param reason why it is offered, to follow the name of the unit
 */
public record UnitOffer(LengthUnit unit, String reason) {

    /**
     * Places so far beside the known land lie near it, of its longer side. Our choice: holes are
     * dug where the lane goes on past the last shot, and in a wrong unit places come to lie at 0.3
     * or 3.3 times their coordinates.
     */
    private static final double NEAR = 0.25;

    /**
     * Units to offer for a file.
     *
     * @param request the survey
     * @param asked the file that states no unit for its coordinates
     * @param known what the other files say
     * @param progress asked whether to go on
     */
    public static List<UnitOffer> of(
            SurveyRequest request, SurveyFile asked, Survey known, Progress progress) {
        List<UnitOffer> offers = new ArrayList<>();
        Set<LengthUnit> seen = EnumSet.noneOf(LengthUnit.class);
        Extent land = Extent.of(known);
        for (Reading reading : known.readings()) {
            LengthUnit unit = unit(reading);
            if (unit != null && seen.add(unit)) {
                String where = where(request, asked, unit, land, progress);
                if (!where.isEmpty()) {
                    offers.add(
                            new UnitOffer(
                                    unit,
                                    "as "
                                            + reading.file()
                                            + " says: then "
                                            + where
                                            + alsoIn(request, asked, unit, land, progress)));
                }
            }
        }
        return offers;
    }

    /** The unit of coordinates that a file states or was declared to have, or null. */
    private static @Nullable LengthUnit unit(Reading reading) {
        Reading.Understood said = reading.understood("unit");
        for (LengthUnit unit : LengthUnit.values()) {
            if (said != null && unit.symbol().equals(said.answer())) {
                return unit;
            }
        }
        return null;
    }

    /** Where the places of the file lie in a unit, in words; empty if not on the land. */
    private static String where(
            SurveyRequest request,
            SurveyFile asked,
            LengthUnit unit,
            Extent land,
            Progress progress) {
        Survey alone;
        try {
            alone =
                    SurveyReader.read(
                            new SurveyRequest(
                                    List.of(asked.unit(unit)),
                                    request.frame(),
                                    LineCodes.NONE,
                                    request.corridor(),
                                    request.heightError()),
                            progress);
        } catch (SurveyException e) {
            // Not readable in this unit, or for another reason, which is told when it is chosen.
            return "";
        }
        Extent places = Extent.of(alone);
        if (places.count == 0 || !places.liesIn(land.grown(NEAR))) {
            return "";
        }
        String what =
                asked.holds() == Holds.PROBES
                        ? Saying.number(places.count, "hole lies", "holes lie")
                        : Saying.number(places.count, "point lies", "points lie");
        return "its "
                + places.count
                + " "
                + what
                + (places.liesIn(land) ? " on that land" : " on that land or close beside it");
    }

    /** Says so if the places would lie on the land in another unit too: then they prove little. */
    private static String alsoIn(
            SurveyRequest request,
            SurveyFile asked,
            LengthUnit unit,
            Extent land,
            Progress progress) {
        LengthUnit other = unit == LengthUnit.METRE ? LengthUnit.FOOT : LengthUnit.METRE;
        return where(request, asked, other, land, progress).isEmpty()
                ? ""
                : ", but in " + other.symbol() + " too, so be sure";
    }

    /** The box round all points and holes of a survey, metres of the frame. */
    private record Extent(double west, double south, double east, double north, int count) {

        static Extent of(Survey survey) {
            double west = Double.POSITIVE_INFINITY;
            double south = Double.POSITIVE_INFINITY;
            double east = Double.NEGATIVE_INFINITY;
            double north = Double.NEGATIVE_INFINITY;
            int points = survey.size();
            List<Probe> probes = survey.probes();
            for (int i = 0; i < points + probes.size(); i++) {
                double x = i < points ? survey.x(i) : probes.get(i - points).x();
                double y = i < points ? survey.y(i) : probes.get(i - points).y();
                west = Math.min(west, x + survey.originX());
                east = Math.max(east, x + survey.originX());
                south = Math.min(south, y + survey.originY());
                north = Math.max(north, y + survey.originY());
            }
            return new Extent(west, south, east, north, points + probes.size());
        }

        Extent grown(double share) {
            double by = share * Math.max(east - west, north - south);
            return new Extent(west - by, south - by, east + by, north + by, count);
        }

        boolean liesIn(Extent other) {
            return west >= other.west
                    && south >= other.south
                    && east <= other.east
                    && north <= other.north;
        }
    }
}
