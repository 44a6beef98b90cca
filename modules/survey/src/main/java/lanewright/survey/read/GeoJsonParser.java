package lanewright.survey.read;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import lanewright.survey.SurveyException;
import lanewright.survey.text.Lines;
import org.jspecify.annotations.Nullable;

/**
 * Walks through a GeoJSON file (RFC 7946) and hands over one feature after another. Nothing is kept
 * of a feature once it is handed over; depth, lengths and counts are bounded.
 */
final class GeoJsonParser implements AutoCloseable {

    /** Positions of one feature: a contour of a county has fewer. */
    private static final int MOST_POSITIONS = 2_000_000;

    private static final JsonFactory FACTORY =
            JsonFactory.builder()
                    .streamReadConstraints(
                            StreamReadConstraints.builder()
                                    .maxNestingDepth(50)
                                    .maxNumberLength(100)
                                    .maxNameLength(1000)
                                    .maxStringLength(100_000)
                                    .maxDocumentLength(2_000_000_000L)
                                    .build())
                    .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                    .build();

    /** Takes features as they come. */
    interface Sink {
        void feature(Feature feature) throws SurveyException;
    }

    /**
     * One feature.
     *
     * @param line line on which it begins
     * @param number its number in the file, from 1
     * @param geometry its shape, or null if it has none
     * @param properties its plain properties (numbers, words, true and false) in words
     */
    record Feature(
            long line, int number, @Nullable Geometry geometry, Map<String, String> properties) {}

    private final Path path;
    private final InputStream in;
    private final JsonParser json;
    private int features;

    GeoJsonParser(Path path) throws SurveyException {
        this.path = path;
        // Lines finds out at once that a file is missing, empty or binary, and says it well.
        new Lines(path).close();
        try {
            in = Files.newInputStream(path);
            json = FACTORY.createParser(in);
        } catch (IOException failed) {
            throw Lines.cannotRead(path, failed);
        }
    }

    /** Hands over all features of the file. */
    void read(Sink sink) throws SurveyException {
        try {
            if (json.nextToken() != JsonToken.START_OBJECT) {
                throw wrong("the file does not begin with a JSON object", "Export it as GeoJSON.");
            }
            object(sink);
            if (json.nextToken() != null) {
                throw wrong(
                        "something follows the end of the GeoJSON object",
                        "A file holds one object: take the rest out.");
            }
        } catch (StreamConstraintsException tooMuch) {
            boolean deep = String.valueOf(tooMuch.getOriginalMessage()).contains("depth");
            throw caused(
                    json.currentLocation(),
                    deep
                            ? "the JSON is nested far too deeply"
                            : "a number, name or word in the JSON is far too long",
                    "No survey looks like that: check where the file comes from.",
                    tooMuch);
        } catch (JsonProcessingException broken) {
            String reason = firstLine(broken.getOriginalMessage());
            boolean letters = reason.startsWith("Invalid UTF-8");
            throw caused(
                    broken.getLocation(),
                    letters ? "the text is not UTF-8" : "the JSON is broken: " + reason,
                    letters
                            ? "Save the file as UTF-8, as RFC 8259 prescribes for JSON."
                            : "Export the file again; it may be cut off.",
                    broken);
        } catch (IOException failed) {
            throw Lines.cannotRead(path, failed);
        }
    }

    private static String firstLine(@Nullable String message) {
        return message == null ? "" : message.lines().findFirst().orElse("");
    }

    /** Reads the outermost object: a collection, a single feature, or a bare geometry. */
    private void object(Sink sink) throws IOException, SurveyException {
        long line = line();
        var one = new Parts();
        boolean collection = false;
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String name = json.currentName();
            json.nextToken();
            switch (name) {
                case "features" -> {
                    collection = true;
                    features(sink);
                }
                case "crs" -> refuseCrs();
                default -> one.member(name);
            }
        }
        if ("FeatureCollection".equals(one.type) && !collection) {
            throw new SurveyException(
                    path, line, "the collection has no \"features\"", "Export the file again.");
        }
        if (one.type == null) {
            throw new SurveyException(
                    path,
                    line,
                    "the object has no \"type\", so it is no GeoJSON",
                    "Export the file as GeoJSON (RFC 7946).");
        }
        if (!collection) {
            sink.feature(one.feature(line, ++features));
        }
    }

    private void features(Sink sink) throws IOException, SurveyException {
        if (json.currentToken() != JsonToken.START_ARRAY) {
            throw wrong("\"features\" is not a list", "Export the file as GeoJSON (RFC 7946).");
        }
        while (json.nextToken() != JsonToken.END_ARRAY) {
            if (json.currentToken() != JsonToken.START_OBJECT) {
                throw wrong("a feature is not an object", "Export the file again.");
            }
            long line = line();
            var parts = new Parts();
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String name = json.currentName();
                json.nextToken();
                parts.member(name);
            }
            if (!"Feature".equals(parts.type)) {
                throw new SurveyException(
                        path,
                        line,
                        "the list holds something of type "
                                + parts.type
                                + " where a Feature is expected",
                        "Export the file as GeoJSON (RFC 7946, section 3.2).");
            }
            sink.feature(parts.feature(line, ++features));
        }
    }

    /** RFC 7946 took this member out: a file that has one is of the older form. */
    private void refuseCrs() throws IOException, SurveyException {
        if (json.currentToken() == JsonToken.VALUE_NULL) {
            return;
        }
        long line = line();
        String found = "";
        int depth = 0;
        do {
            JsonToken token = json.currentToken();
            if (token.isStructStart()) {
                depth++;
            } else if (token.isStructEnd()) {
                depth--;
            } else if (token == JsonToken.VALUE_STRING && "name".equals(json.currentName())) {
                found = json.getText();
            }
        } while (depth > 0 && json.nextToken() != null);
        boolean wgs84 = found.endsWith("CRS84") || found.endsWith(":4326");
        if (!wgs84) {
            throw new SurveyException(
                    path,
                    line,
                    "the file names a reference system of its own ('"
                            + found
                            + "'), which GeoJSON no longer does (RFC 7946, section 4)",
                    "Export it in longitude and latitude of WGS 84; or take \"crs\" out and declare"
                            + " \"epsg\" for the file in the plan.");
        }
    }

    private long line() {
        return json.currentTokenLocation().getLineNr();
    }

    private SurveyException wrong(String what, String remedy) {
        return new SurveyException(path, line(), what, remedy);
    }

    private SurveyException caused(
            @Nullable JsonLocation where, String what, String remedy, Exception cause) {
        long line = where == null ? 0 : Math.max(0, where.getLineNr());
        var said = new SurveyException(path, line, what, remedy);
        said.initCause(cause);
        return said;
    }

    @Override
    public void close() throws SurveyException {
        try {
            json.close();
            in.close();
        } catch (IOException failed) {
            throw Lines.cannotRead(path, failed);
        }
    }

    /** The members of a feature or geometry, in whatever order they come. */
    private final class Parts {
        private @Nullable String type;
        private @Nullable Geometry geometry;
        private @Nullable Geometry coordinates;
        private final Map<String, String> properties = new LinkedHashMap<>();

        void member(String name) throws IOException, SurveyException {
            switch (name) {
                case "type" -> type = word(name);
                case "geometry" -> geometry = geometry();
                case "coordinates" -> coordinates = coordinates();
                case "properties" -> properties();
                default -> json.skipChildren();
            }
        }

        private String word(String name) throws IOException, SurveyException {
            if (json.currentToken() != JsonToken.VALUE_STRING) {
                throw wrong("\"" + name + "\" is not a word", "Export the file again.");
            }
            return json.getText();
        }

        private @Nullable Geometry geometry() throws IOException, SurveyException {
            if (json.currentToken() == JsonToken.VALUE_NULL) {
                return null;
            }
            if (json.currentToken() != JsonToken.START_OBJECT) {
                throw wrong("a geometry is not an object", "Export the file again.");
            }
            long line = line();
            String shape = null;
            Geometry places = null;
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String name = json.currentName();
                json.nextToken();
                if ("type".equals(name)) {
                    shape = word(name);
                } else if ("coordinates".equals(name)) {
                    places = coordinates();
                } else {
                    json.skipChildren();
                }
            }
            return shaped(line, shape, places);
        }

        private Geometry shaped(long line, @Nullable String shape, @Nullable Geometry places)
                throws SurveyException {
            Geometry.Type known = Geometry.Type.of(shape);
            if (known == null) {
                throw new SurveyException(
                        path,
                        line,
                        "a geometry is of type " + shape + ", which is not read here",
                        "Use Point, LineString, Polygon or their Multi forms; split a"
                                + " GeometryCollection into features.");
            }
            if (places == null) {
                throw new SurveyException(
                        path, line, "a " + shape + " has no coordinates", "Export it again.");
            }
            if (places.depth() != known.depth()) {
                throw new SurveyException(
                        path,
                        line,
                        "the coordinates of a "
                                + shape
                                + " are nested "
                                + places.depth()
                                + " deep where "
                                + known.depth()
                                + " is right",
                        "Export it again as GeoJSON (RFC 7946, section 3.1).");
            }
            return places.of(known);
        }

        private Geometry coordinates() throws IOException, SurveyException {
            var places = new Geometry(line());
            int deepest = array(places, 1);
            places.closed(deepest);
            return places;
        }

        /** Reads an array of numbers (a position) or of arrays; how deep it went. */
        private int array(Geometry places, int depth) throws IOException, SurveyException {
            if (json.currentToken() != JsonToken.START_ARRAY) {
                throw wrong("coordinates are not a list", "Export the file again.");
            }
            if (depth > 4) {
                throw wrong(
                        "coordinates are nested more than 4 deep",
                        "Export it again as GeoJSON (RFC 7946, section 3.1).");
            }
            JsonToken token = json.nextToken();
            if (token == null || token.isScalarValue()) {
                position(places);
                return depth;
            }
            int deepest = depth;
            places.openPart(depth);
            while (json.currentToken() != JsonToken.END_ARRAY) {
                int inner = array(places, depth + 1);
                if (deepest != depth && inner != deepest) {
                    throw wrong(
                            "places and lists of places are mixed",
                            "Export it again as GeoJSON (RFC 7946, section 3.1).");
                }
                deepest = inner;
                json.nextToken();
            }
            return deepest;
        }

        private void position(Geometry places) throws IOException, SurveyException {
            double[] at = {Double.NaN, Double.NaN, Double.NaN};
            int count = 0;
            while (json.currentToken() != JsonToken.END_ARRAY) {
                if (json.currentToken() == null || !json.currentToken().isNumeric()) {
                    throw wrong(
                            "a coordinate is not a number: " + Signs.quoted(json.getText()),
                            "Coordinates are bare numbers: longitude, latitude, height.");
                }
                double value = json.getDoubleValue();
                if (!Double.isFinite(value)) {
                    throw wrong(
                            "a coordinate is too large for a number: "
                                    + Signs.quoted(json.getText()),
                            "Mend the coordinate.");
                }
                if (count < 3) {
                    at[count] = value;
                }
                count++;
                json.nextToken();
            }
            if (count < 2) {
                throw wrong(
                        "a place has " + count + (count == 1 ? " number" : " numbers"),
                        "A place is written as longitude, latitude and, if it has one, height.");
            }
            if (places.size() == MOST_POSITIONS) {
                throw wrong(
                        "one feature has more than " + MOST_POSITIONS + " places",
                        "Cut the file down to the land that the lane may touch.");
            }
            places.add(at[0], at[1], at[2]);
        }

        private void properties() throws IOException, SurveyException {
            if (json.currentToken() == JsonToken.VALUE_NULL) {
                return;
            }
            if (json.currentToken() != JsonToken.START_OBJECT) {
                throw wrong("\"properties\" is not an object", "Export the file again.");
            }
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String name = json.currentName();
                JsonToken token = json.nextToken();
                if (token.isStructStart()) {
                    json.skipChildren();
                } else if (token != JsonToken.VALUE_NULL) {
                    properties.put(name, json.getText());
                }
            }
        }

        Feature feature(long line, int number) throws SurveyException {
            Geometry shape = geometry;
            if (shape == null && coordinates != null) {
                shape = shaped(line, type, coordinates);
            }
            return new Feature(line, number, shape, properties);
        }
    }
}
