package lanewright.desktop.land;

import java.util.ArrayList;
import java.util.List;
import lanewright.desktop.session.Session;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.LinePart;
import lanewright.planner.document.Plan;
import lanewright.planner.document.Spot;
import lanewright.planner.run.Draft;
import lanewright.survey.LonLat;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;

/**
 * The intersection points of the lane that is worked on: where they lie on the land, and how they
 * are moved, put in and taken out.
 *
 * @param session the plan that is worked on
 * @param survey what its land was measured by
 */
record LaneCorners(Session session, Survey survey) {

    private static final double FOOT = 0.3048;

    /** A new bend has this radius where the lane has none yet, m. */
    private static final double FIRST_RADIUS = 20;

    /** Local places, m: of the lane as laid out, or of the plan where it cannot be laid out. */
    List<double[]> places() {
        Draft draft = session.shown().get().draft();
        if (draft == null || session.shown().get().wrong() != null) {
            return planned();
        }
        return draft.design().alignment().points().stream()
                .map(point -> new double[] {point.x(), point.y()})
                .toList();
    }

    private List<double[]> planned() {
        List<double[]> points = new ArrayList<>();
        for (LinePart.Point point : session.file().plan().line().points()) {
            Spot spot = point.spot();
            double[] at = {spot.across(), spot.up()};
            if (spot.degrees()) {
                try {
                    at = survey.frame().eastNorth(new LonLat(spot.across(), spot.up()));
                } catch (SurveyException e) {
                    return List.of();
                }
            }
            points.add(new double[] {at[0] - survey.originX(), at[1] - survey.originY()});
        }
        return points;
    }

    /** The plan with a point moved to a local place, m. */
    Plan moved(Plan plan, int index, double[] to) {
        List<LinePart.Point> points = new ArrayList<>(plan.line().points());
        LinePart.Point old = points.get(index);
        points.set(index, new LinePart.Point(old.name(), spot(old, to[0], to[1]), old.radius()));
        return plan.with(new LinePart(points));
    }

    /**
     * Puts a point into the lane at a station, without bending it much.
     *
     * @return its number among the points
     */
    int putIn(Alignment line, double station) {
        double x = line.x(station);
        double y = line.y(station);
        List<double[]> corners = places();
        int after = 0;
        for (int i = 1; i < corners.size() - 1; i++) {
            Place place = line.place(corners.get(i)[0], corners.get(i)[1]);
            if (place != null && place.station() < station) {
                after = i;
            }
        }
        int index = after + 1;
        session.edit(
                "a point put into the lane",
                plan -> {
                    List<LinePart.Point> points = new ArrayList<>(plan.line().points());
                    double radius = points.size() > 2 ? points.get(1).radius() : FIRST_RADIUS;
                    points.add(index, new LinePart.Point("", spot(points.get(0), x, y), radius));
                    return plan.with(new LinePart(points));
                });
        return index;
    }

    /** Takes a point out, unless it is an end. */
    void takeOut(int index) {
        session.edit(
                "a point taken out of the lane",
                plan -> {
                    List<LinePart.Point> points = new ArrayList<>(plan.line().points());
                    if (index > 0 && index < points.size() - 1) {
                        points.remove(index);
                    }
                    return plan.with(new LinePart(points));
                });
    }

    /** A place of the land as the plan writes places: in degrees if its other points are. */
    private Spot spot(LinePart.Point like, double x, double y) {
        if (like.spot().degrees()) {
            try {
                LonLat place = survey.onEarth(x, y);
                return Spot.onEarth(place.longitude(), place.latitude());
            } catch (SurveyException e) {
                throw new IllegalArgumentException(e.getMessage(), e);
            }
        }
        double step = session.file().plan().units() == UnitSystem.US ? 0.1 * FOOT : 0.05;
        return Spot.at(
                Math.rint((x + survey.originX()) / step) * step,
                Math.rint((y + survey.originY()) / step) * step);
    }
}
