package lanewright.survey.read;

import java.util.Arrays;
import lanewright.survey.Frame;
import lanewright.survey.SurveyBuilder;
import lanewright.survey.SurveyException;

/**
 * Holds the columns of one text file against what ground can look like: point numbers taken for
 * coordinates, degrees for metres, one column for another, places outside the frame.
 */
final class Plausible {

    /** With fewer rows nothing can be said of a column. */
    private static final int FEW = 4;

    /** A survey narrower than this in its own unit is none: it is in degrees. */
    private static final double DEGREES_WIDE = 0.5;

    /** So many points are enough to see how heights are spread. */
    private static final int SPREAD = 5000;

    private final SurveyFile file;
    private final boolean degrees;
    private final boolean list;
    private final Track[] tracks = {
        new Track(Column.EASTING), new Track(Column.NORTHING), new Track(Column.HEIGHT)
    };
    private int rows;

    /**
     * Prepares to look.
     *
     * @param degrees true if places are longitude and latitude
     * @param list true for a list of points in columns, whose columns may have been mixed up
     */
    Plausible(SurveyFile file, boolean degrees, boolean list) {
        this.file = file;
        this.degrees = degrees;
        this.list = list;
    }

    /** Notes the numbers of a row as they stand in the file. */
    void row(double east, double north, double height) {
        tracks[0].see(east, rows);
        tracks[1].see(north, rows);
        tracks[2].see(height, rows);
        rows++;
    }

    /** Holds all rows together against what ground can look like. */
    void check(Gathering all, int first) throws SurveyException {
        if (rows == 0) {
            throw refused("there are no points in it", "Take the file out of the plan.");
        }
        SurveyBuilder survey = all.survey();
        if (rows >= FEW) {
            if (!degrees) {
                refuseDegrees();
            }
            if (list) {
                refuseCounting();
                refuseStandstill();
                refuseSteep(survey, first);
            }
        }
        if (!all.frame().isLocal()) {
            refuseOutside(all.frame(), survey, first);
        }
    }

    private void refuseCounting() throws SurveyException {
        for (Track track : tracks) {
            if (track.counts) {
                throw refused(
                        "the " + track.column.word() + " column counts 1 by 1",
                        "It looks like point numbers: mend \"columns\" in the plan.");
            }
        }
    }

    private void refuseDegrees() throws SurveyException {
        Track east = tracks[0];
        Track north = tracks[1];
        boolean small =
                Math.max(Math.abs(east.least), Math.abs(east.most)) <= 180
                        && Math.max(Math.abs(north.least), Math.abs(north.most)) <= 180;
        if (small && east.width() < DEGREES_WIDE && north.width() < DEGREES_WIDE) {
            throw refused(
                    "all places lie within half a unit of each other and look like degrees",
                    "If they are longitude and latitude, say so in \"columns\" with \"epsg\": 4326,"
                            + " and give the plan a projected frame.");
        }
    }

    private void refuseStandstill() throws SurveyException {
        for (int k = 0; k < 2; k++) {
            if (tracks[k].width() == 0) {
                throw refused(
                        "every point has the same " + tracks[k].column.word(),
                        "Check the order of the columns; ground needs points that do not lie on one"
                                + " line.");
            }
        }
    }

    private void refuseSteep(SurveyBuilder survey, int first) throws SurveyException {
        int count = survey.size() - first;
        int step = Math.max(1, count / SPREAD);
        double[] east = new double[(count + step - 1) / step];
        double[] north = new double[east.length];
        double[] height = new double[east.length];
        for (int k = 0; k < east.length; k++) {
            east[k] = survey.x(first + k * step);
            north[k] = survey.y(first + k * step);
            height[k] = survey.z(first + k * step);
        }
        double wide = Math.max(middle(east), middle(north));
        if (east.length >= FEW && middle(height) > wide) {
            throw refused(
                    "heights differ more than the land is wide",
                    "The columns look swapped: mend \"columns\" in the plan, and the units.");
        }
    }

    /** Spread of the middle four fifths, so that single blunders do not count. */
    private static double middle(double[] values) {
        Arrays.sort(values);
        int tenth = values.length / 10;
        return values[values.length - 1 - tenth] - values[tenth];
    }

    private void refuseOutside(Frame frame, SurveyBuilder survey, int first)
            throws SurveyException {
        double west = Double.POSITIVE_INFINITY;
        double east = Double.NEGATIVE_INFINITY;
        double south = Double.POSITIVE_INFINITY;
        double north = Double.NEGATIVE_INFINITY;
        for (int i = first; i < survey.size(); i++) {
            west = Math.min(west, survey.x(i));
            east = Math.max(east, survey.x(i));
            south = Math.min(south, survey.y(i));
            north = Math.max(north, survey.y(i));
        }
        if (survey.size() == first
                || (frame.mayHold(west, south)
                        && frame.mayHold(west, north)
                        && frame.mayHold(east, south)
                        && frame.mayHold(east, north))) {
            return;
        }
        for (int i = first; i < survey.size(); i++) {
            if (!frame.mayHold(survey.x(i), survey.y(i))) {
                boolean swapped = frame.mayHold(survey.y(i), survey.x(i));
                throw new SurveyException(
                        file.path(),
                        survey.line(i),
                        "the point lies outside the area of "
                                + frame.name()
                                + (swapped ? ", and inside with its coordinates swapped" : ""),
                        swapped
                                ? "Easting and northing look swapped: mend \"columns\" in the plan."
                                : "Check the EPSG code, the unit and the order of the columns.");
            }
        }
    }

    private SurveyException refused(String what, String remedy) {
        return new SurveyException(file.path(), 0, what, remedy);
    }

    /** One column as its rows go by. */
    private static final class Track {
        private final Column column;
        private double least = Double.POSITIVE_INFINITY;
        private double most = Double.NEGATIVE_INFINITY;
        private double last;
        private boolean counts = true;

        Track(Column column) {
            this.column = column;
        }

        void see(double value, int row) {
            counts &= row == 0 || value == last + 1;
            last = value;
            least = Math.min(least, value);
            most = Math.max(most, value);
        }

        double width() {
            return most - least;
        }
    }
}
