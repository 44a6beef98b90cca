package lanewright.planner.run;

import lanewright.planner.document.Spot;
import lanewright.planner.document.SurveyPart.MapFrame;
import lanewright.survey.Frame;
import lanewright.survey.LonLat;
import lanewright.survey.SurveyException;

/** Turns places as the owner gives them into local metres. */
final class Places {

    private final Frame frame;
    private final double originX;
    private final double originY;

    /**
     * Places about a local zero.
     *
     * @param originX easting of the local zero, frame metres
     * @param originY northing of the local zero, frame metres
     */
    Places(Frame frame, double originX, double originY) {
        this.frame = frame;
        this.originX = originX;
        this.originY = originY;
    }

    /** The frame that a plan names. */
    static Frame frame(MapFrame named) throws SurveyException {
        return switch (named.kind()) {
            case LOCAL -> Frame.local();
            case EPSG -> Frame.epsg(named.epsg());
            case ZONE -> Frame.zone(new LonLat(named.longitude(), named.latitude()));
        };
    }

    /**
     * East and north of a place, local metres.
     *
     * @throws SurveyException if it is in degrees and the frame has no place on the earth
     */
    double[] local(Spot spot) throws SurveyException {
        double[] at =
                spot.degrees()
                        ? frame.eastNorth(new LonLat(spot.across(), spot.up()))
                        : new double[] {spot.across(), spot.up()};
        return new double[] {at[0] - originX, at[1] - originY};
    }
}
