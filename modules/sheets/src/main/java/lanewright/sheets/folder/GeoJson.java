package lanewright.sheets.folder;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lanewright.survey.Frame;
import lanewright.survey.LonLat;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;

/**
 * Map layers as GeoJSON. With a reference system the places are longitude and latitude (RFC 7946,
 * longitude first; nine decimals, a tenth of a millimetre, since stakes are among them). Without
 * one they are the survey's own metres, and the member {@code frame} says so: GeoJSON of the older
 * kind, for programs that take it as it stands.
 */
public final class GeoJson {

    private static final int DEGREE_DECIMALS = 9;
    private static final int METRE_DECIMALS = 4;

    /** What a feature is drawn as. */
    public enum Shape {
        /** One place. */
        POINT("Point"),
        /** A line. */
        LINE("LineString"),
        /** An area; the rings are closed and turned as RFC 7946 wants them. */
        AREA("Polygon");

        private final String word;

        Shape(String word) {
            this.word = word;
        }
    }

    /**
     * A thing on the map.
     *
     * @param shape how it is drawn
     * @param parts local x and y in metres: one place, one line, or rings with the outer one first
     * @param properties strings, numbers (finite) and truths, by name
     */
    public record Feature(Shape shape, List<double[][]> parts, Map<String, Object> properties) {
        /** Copies the list and orders the properties by name. */
        public Feature {
            parts = List.copyOf(parts);
            properties = java.util.Collections.unmodifiableMap(new TreeMap<>(properties));
        }

        /** A place. */
        public static Feature point(double x, double y, Map<String, Object> properties) {
            return new Feature(
                    Shape.POINT, List.<double[][]>of(new double[][] {{x}, {y}}), properties);
        }

        /** A line through local places. */
        public static Feature line(double[] x, double[] y, Map<String, Object> properties) {
            return new Feature(
                    Shape.LINE,
                    List.<double[][]>of(new double[][] {x.clone(), y.clone()}),
                    properties);
        }
    }

    private final Survey survey;
    private final JsonGenerator json;

    private GeoJson(Survey survey, JsonGenerator json) {
        this.survey = survey;
        this.json = json;
    }

    /**
     * The layer as UTF-8 text.
     *
     * @param survey whose frame and origin the places are in
     * @throws SurveyException if the frame cannot bring a place to longitude and latitude
     */
    public static byte[] of(Survey survey, List<Feature> features) throws SurveyException {
        var out = new ByteArrayOutputStream();
        try (JsonGenerator json = new JsonFactory().createGenerator(out)) {
            new GeoJson(survey, json).write(features);
        } catch (IOException impossible) {
            throw new IllegalStateException("writing to memory failed", impossible);
        }
        out.write('\n');
        return out.toByteArray();
    }

    private void write(List<Feature> features) throws IOException, SurveyException {
        Frame frame = survey.frame();
        json.writeStartObject();
        json.writeStringField("type", "FeatureCollection");
        if (frame.isLocal()) {
            json.writeStringField("frame", "local metres, x east, y north; no reference system");
        }
        json.writeArrayFieldStart("features");
        for (Feature feature : features) {
            json.writeStartObject();
            json.writeStringField("type", "Feature");
            properties(feature.properties());
            json.writeObjectFieldStart("geometry");
            json.writeStringField("type", feature.shape().word);
            json.writeFieldName("coordinates");
            switch (feature.shape()) {
                case POINT -> place(feature.parts().get(0)[0][0], feature.parts().get(0)[1][0]);
                case LINE -> line(feature.parts().get(0));
                case AREA -> area(feature.parts());
            }
            json.writeEndObject();
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void properties(Map<String, Object> properties) throws IOException {
        json.writeObjectFieldStart("properties");
        for (Map.Entry<String, Object> property : properties.entrySet()) {
            json.writeFieldName(property.getKey());
            Object value = property.getValue();
            if (value instanceof Boolean truth) {
                json.writeBoolean(truth);
            } else if (value instanceof Integer number) {
                json.writeNumber(number);
            } else if (value instanceof Double number && Double.isFinite(number)) {
                json.writeNumber(number);
            } else if (value instanceof String words) {
                json.writeString(words);
            } else {
                json.writeNull();
            }
        }
        json.writeEndObject();
    }

    private void line(double[][] xy) throws IOException, SurveyException {
        json.writeStartArray();
        for (int i = 0; i < xy[0].length; i++) {
            place(xy[0][i], xy[1][i]);
        }
        json.writeEndArray();
    }

    private void area(List<double[][]> rings) throws IOException, SurveyException {
        json.writeStartArray();
        for (int r = 0; r < rings.size(); r++) {
            double[][] ring = rings.get(r);
            int n = ring[0].length;
            boolean turn = isCounterClockwise(ring) != (r == 0);
            json.writeStartArray();
            for (int i = 0; i <= n; i++) {
                int at = turn ? (n - i) % n : i % n;
                place(ring[0][at], ring[1][at]);
            }
            json.writeEndArray();
        }
        json.writeEndArray();
    }

    private static boolean isCounterClockwise(double[][] ring) {
        double twice = 0;
        int n = ring[0].length;
        for (int i = 0; i < n; i++) {
            int next = (i + 1) % n;
            twice +=
                    (ring[0][i] - ring[0][0]) * (ring[1][next] - ring[1][0])
                            - (ring[0][next] - ring[0][0]) * (ring[1][i] - ring[1][0]);
        }
        return twice > 0;
    }

    private void place(double x, double y) throws IOException, SurveyException {
        json.writeStartArray();
        if (survey.frame().isLocal()) {
            number(survey.originX() + x, METRE_DECIMALS);
            number(survey.originY() + y, METRE_DECIMALS);
        } else {
            LonLat place = survey.onEarth(x, y);
            number(place.longitude(), DEGREE_DECIMALS);
            number(place.latitude(), DEGREE_DECIMALS);
        }
        json.writeEndArray();
    }

    private void number(double value, int decimals) throws IOException {
        json.writeNumber(
                java.math.BigDecimal.valueOf(value)
                        .setScale(decimals, java.math.RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString());
    }
}
