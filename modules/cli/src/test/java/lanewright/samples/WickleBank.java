package lanewright.samples;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.SplittableRandom;
import lanewright.survey.Frame;
import lanewright.survey.LonLat;
import lanewright.survey.SurveyException;

/**
 * The second sample: a side-hill at Wickle Bank, an invented place, in metres.
 *
 * <p>Contours every half metre as GeoJSON in longitude and latitude, as one downloads them. The
 * place lies in open ocean, so that nobody's land is meant; EPSG:32731 is the zone that it falls
 * in.
 */
final class WickleBank {

    static final String NAME = "wickle-bank";
    static final int EPSG = 32731;

    private static final double EAST = 500_000;
    private static final double NORTH = 6_680_000;
    private static final double WEST_EDGE = 0;
    private static final double EAST_EDGE = 350;
    private static final double SOUTH_EDGE = -45;
    private static final double NORTH_EDGE = 165;
    private static final double INTERVAL = 0.5;

    private final SplittableRandom random = new SplittableRandom(77_003L);
    private final StringBuilder json = new StringBuilder();
    private final Frame frame;
    private boolean first = true;

    private WickleBank() throws SurveyException {
        frame = Frame.epsg(EPSG);
    }

    /** Files of the survey by name. */
    static Map<String, String> files() throws SurveyException {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("contours.geojson", new WickleBank().contours());
        files.put("spots.geojson", new WickleBank().spots());
        return files;
    }

    /**
     * Height of the ground, m; it rises northward everywhere, so each contour is found by halving.
     */
    static double height(double x, double y) {
        double draw = (x - 190 - 0.15 * y) / 13;
        return 96
                + 0.17 * y
                + 2.6 * StrictMath.sin(x / 75 + 0.4)
                + 0.5 * StrictMath.sin(y / 27 + x / 95)
                - 1.7 * StrictMath.exp(-draw * draw / 2);
    }

    private String contours() throws SurveyException {
        json.append("{\n\"type\": \"FeatureCollection\",\n\"features\": [");
        double lowest = Math.ceil(height(WEST_EDGE, SOUTH_EDGE) / INTERVAL - 8) * INTERVAL;
        for (double level = lowest; level < 130; level += INTERVAL) {
            contour(level);
        }
        return json.append("\n]\n}\n").toString();
    }

    private String spots() throws SurveyException {
        json.append("{\n\"type\": \"FeatureCollection\",\n\"features\": [");
        spot(8, 20, "road edge");
        spot(331, 102, "house corner");
        spot(190, 40, "draw");
        return json.append("\n]\n}\n").toString();
    }

    private void contour(double level) throws SurveyException {
        StringBuilder line = new StringBuilder();
        int points = 0;
        double x = WEST_EDGE;
        while (x <= EAST_EDGE) {
            double y = northing(x, level);
            if (Double.isNaN(y)) {
                points = close(line, points, level);
            } else {
                line.append(points == 0 ? "" : ", ").append(position(x, y));
                points++;
            }
            x =
                    x == EAST_EDGE
                            ? EAST_EDGE + 1
                            : Math.min(EAST_EDGE, x + random.nextDouble(3.5, 6.5));
        }
        close(line, points, level);
    }

    private int close(StringBuilder line, int points, double level) {
        if (points > 2) {
            feature("LineString", "[" + line + "]", "\"height\": " + MarrowFold.fixed(level, 1));
        }
        line.setLength(0);
        return 0;
    }

    private static double northing(double x, double level) {
        double low = SOUTH_EDGE;
        double high = NORTH_EDGE;
        if (height(x, low) > level || height(x, high) < level) {
            return Double.NaN;
        }
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (height(x, middle) < level) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private void spot(double x, double y, String code) throws SurveyException {
        feature(
                "Point",
                position(x, y),
                "\"height\": "
                        + MarrowFold.fixed(height(x, y), 2)
                        + ", \"code\": \""
                        + code
                        + "\"");
    }

    private String position(double x, double y) throws SurveyException {
        LonLat place = frame.longitudeLatitude(EAST + x, NORTH + y);
        return "["
                + MarrowFold.fixed(place.longitude(), 8)
                + ", "
                + MarrowFold.fixed(place.latitude(), 8)
                + "]";
    }

    private void feature(String type, String coordinates, String properties) {
        json.append(first ? "\n" : ",\n")
                .append("{\"type\": \"Feature\", \"properties\": {")
                .append(properties)
                .append("}, \"geometry\": {\"type\": \"")
                .append(type)
                .append("\", \"coordinates\": ")
                .append(coordinates)
                .append("}}");
        first = false;
    }
}
