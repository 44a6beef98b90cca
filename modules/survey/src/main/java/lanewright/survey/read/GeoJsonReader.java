package lanewright.survey.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lanewright.measure.Finding.Level;
import lanewright.measure.LengthUnit;
import lanewright.measure.Progress;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Words;
import lanewright.survey.Boundary;
import lanewright.survey.Frame;
import lanewright.survey.Reading;
import lanewright.survey.Reading.Understood;
import lanewright.survey.Ring;
import lanewright.survey.SurveyBuilder;
import lanewright.survey.SurveyException;
import lanewright.survey.SurveyLine;
import org.jspecify.annotations.Nullable;

/** Reads points, breaklines, contours and a boundary from GeoJSON (RFC 7946). */
final class GeoJsonReader {

    /** Heights along one contour may differ by this much, m: rounding in the file, no more. */
    private static final double LEVEL = 0.001;

    private static final String KIND = "kind";
    private static final int SAMPLES = 3;
    private static final int WGS84 = 4326;

    private final Gathering all;
    private final SurveyFile file;
    private final Frame.@Nullable Bridge bridge;
    private final LengthUnit unit;
    private final List<Understood> understood = new ArrayList<>();
    private final List<Reading.Sample> samples = new ArrayList<>();
    private final GeoJsonHeights heights;
    private final Plausible plausible;

    private int notGround;
    private int lines;
    private int withoutPlace;
    private int repeated;
    private @Nullable Progress progress;

    private GeoJsonReader(Gathering all, SurveyFile file) throws SurveyException {
        this.all = all;
        this.file = file;
        if (file.local()) {
            bridge = null;
            unit = plainUnit();
            say("places", "plain coordinates in " + unit.symbol(), "declared");
        } else {
            bridge = ownSystem();
            unit = bridge.degrees() ? LengthUnit.METRE : bridge.unit();
            say(
                    "places",
                    bridge.degrees()
                            ? "longitude and latitude, carried to " + all.frame().name()
                            : bridge.from() + ", carried to " + all.frame().name(),
                    file.epsg() == null ? "so RFC 7946 prescribes" : "declared");
        }
        heights = new GeoJsonHeights(file, bridge != null && bridge.degrees(), unit, understood);
        plausible = new Plausible(file, bridge != null && bridge.degrees(), false);
    }

    /** Reads all features of a file. */
    static void read(Gathering all, SurveyFile file, Progress progress) throws SurveyException {
        if (file.holds() == Holds.PROBES || file.holds() == Holds.GRID) {
            throw new SurveyException(
                    file.path(),
                    0,
                    "GeoJSON is not read as "
                            + (file.holds() == Holds.GRID ? "a grid" : "probe holes"),
                    "Give probe holes as delimited text, and a grid as GeoTIFF or ASCII grid.");
        }
        new GeoJsonReader(all, file).read(progress);
    }

    private LengthUnit plainUnit() throws SurveyException {
        LengthUnit declared = file.unit();
        if (declared != null) {
            return declared;
        }
        if (!all.frame().isLocal()) {
            return all.frame().unit();
        }
        throw new SurveyException(
                file.path(),
                0,
                "nothing says the unit of its plain coordinates",
                "Declare \"unit\": \"m\", \"ft\" (international foot) or \"ftUS\" (US survey foot)"
                        + " for this file in the plan.",
                SurveyException.Asks.UNIT);
    }

    private Frame.Bridge ownSystem() throws SurveyException {
        if (all.frame().isLocal()) {
            throw new SurveyException(
                    file.path(),
                    0,
                    "GeoJSON is longitude and latitude, and the plan has no frame on the earth",
                    "State the EPSG code of a projected system, or a local zone, as the frame; or"
                            + " declare \"coordinates\": \"local\" if these are plain coordinates.");
        }
        Integer code = file.epsg();
        return all.bridge(file, code == null ? WGS84 : code);
    }

    private void read(Progress listener) throws SurveyException {
        progress = listener;
        SurveyBuilder survey = all.survey();
        survey.file(file.name());
        int first = survey.size();
        try (var parser = new GeoJsonParser(file.path())) {
            parser.read(this::feature);
        }
        all.lines().endOfFile(survey);
        all.leftOut(file, notGround, 0);
        boolean outlineOnly = survey.size() == first && file.holds() == Holds.BOUNDARY;
        if (outlineOnly && !survey.hasBoundary()) {
            throw new SurveyException(
                    file.path(),
                    0,
                    "there is no polygon in it",
                    "Export the outline as a Polygon.");
        }
        if (!outlineOnly) {
            plausible.check(all, first);
        }
        if (withoutPlace > 0) {
            all.say(
                    "feature-without-place",
                    Level.NOTE,
                    Saying.of(
                            "Features of "
                                    + Gathering.inSaying(file.name())
                                    + " that have no place and are left out: {}",
                            Quantity.count(withoutPlace)),
                    "Nothing to do if they are not meant to be ground");
        }
        if (repeated > 0) {
            all.say(
                    "repeated-place",
                    Level.NOTE,
                    Saying.of(
                            "Places in lines of "
                                    + Gathering.inSaying(file.name())
                                    + " that repeat the place right before them and are taken"
                                    + " once: {}",
                            Quantity.count(repeated)),
                    "Nothing to do");
        }
        survey.reading(
                new Reading(
                        file.name(),
                        understood,
                        samples,
                        List.of(),
                        survey.size() - first,
                        lines,
                        0));
    }

    private void feature(GeoJsonParser.Feature feature) throws SurveyException {
        if (progress != null && feature.number() % 1000 == 0) {
            progress.check();
        }
        Geometry shape = feature.geometry();
        if (shape == null) {
            withoutPlace++;
            return;
        }
        Holds holds = file.holds() == Holds.MIXED ? kind(feature) : file.holds();
        switch (holds) {
            case POINTS -> points(feature, shape);
            case BREAKLINES -> lines(feature, shape, SurveyLine.Kind.BREAKLINE);
            case CONTOURS -> lines(feature, shape, SurveyLine.Kind.CONTOUR);
            default -> boundary(feature, shape);
        }
    }

    private Holds kind(GeoJsonParser.Feature feature) throws SurveyException {
        String declared = file.kindProperty();
        String property = declared == null ? KIND : declared;
        String word = feature.properties().getOrDefault(property, "");
        return switch (word.strip().toLowerCase(Locale.ROOT)) {
            case "point" -> Holds.POINTS;
            case "breakline" -> Holds.BREAKLINES;
            case "contour" -> Holds.CONTOURS;
            case "boundary" -> Holds.BOUNDARY;
            default ->
                    throw bad(
                            feature,
                            "the property \"" + property + "\" is '" + word + "'",
                            "Each feature says there what it is: point, breakline, contour or"
                                    + " boundary.");
        };
    }

    private void points(GeoJsonParser.Feature feature, Geometry shape) throws SurveyException {
        if (shape.type() != Geometry.Type.POINT && shape.type() != Geometry.Type.MULTI_POINT) {
            throw unexpected(feature, shape, "points", "Point");
        }
        double[] z = heights.of(feature, shape);
        double[] places = carried(feature, shape, z);
        String code = code(feature.properties());
        CodedLines.Meaning meaning = all.lines().meaning(code);
        for (int k = 0; k < shape.size(); k++) {
            all.refuseTooMany(file);
            int point = all.survey().size();
            if (meaning.notGround()) {
                notGround++;
            } else {
                all.survey().point(places[2 * k], places[2 * k + 1], z[k], code, at(feature));
                all.lines().next(point, code, meaning, all.survey());
            }
        }
        sample(feature, shape, z[0]);
    }

    private void lines(GeoJsonParser.Feature feature, Geometry shape, SurveyLine.Kind kind)
            throws SurveyException {
        if (shape.type() != Geometry.Type.LINE && shape.type() != Geometry.Type.MULTI_LINE) {
            String plural = kind == SurveyLine.Kind.CONTOUR ? "contours" : "breaklines";
            throw unexpected(feature, shape, plural, "LineString");
        }
        double[] z = heights.of(feature, shape);
        double[] places = carried(feature, shape, z);
        String code = code(feature.properties());
        for (int part = 0; part < shape.parts(); part++) {
            if (kind == SurveyLine.Kind.CONTOUR) {
                refuseSloping(feature, shape, z, part);
            }
            int[] line = new int[shape.to(part) - shape.from(part)];
            int count = 0;
            for (int k = shape.from(part); k < shape.to(part); k++) {
                double x = places[2 * k];
                double y = places[2 * k + 1];
                if (count > 0 && same(line[count - 1], x, y, z[k])) {
                    repeated++;
                    continue;
                }
                boolean closes = k == shape.to(part) - 1 && count > 2 && same(line[0], x, y, z[k]);
                if (!closes) {
                    all.refuseTooMany(file);
                    all.survey().point(x, y, z[k], code, at(feature));
                }
                line[count++] = closes ? line[0] : all.survey().size() - 1;
            }
            if (count < 2) {
                throw bad(
                        feature,
                        "a line has " + count + (count == 1 ? " place" : " places"),
                        "A line needs two different places: mend it or take it out.");
            }
            all.survey().line(new SurveyLine(kind, code, Arrays.copyOf(line, count)));
            lines++;
        }
        sample(feature, shape, z[0]);
    }

    private boolean same(int point, double x, double y, double z) {
        SurveyBuilder survey = all.survey();
        return survey.x(point) == x && survey.y(point) == y && survey.z(point) == z;
    }

    private void refuseSloping(GeoJsonParser.Feature feature, Geometry shape, double[] z, int part)
            throws SurveyException {
        for (int k = shape.from(part); k < shape.to(part); k++) {
            if (Math.abs(z[k] - z[shape.from(part)]) > LEVEL) {
                throw bad(
                        feature,
                        "a contour is not level: it goes from "
                                + Words.fixed(z[shape.from(part)], 3)
                                + " m to "
                                + Words.fixed(z[k], 3)
                                + " m",
                        "Declare the file as breaklines, or mend the heights.");
            }
        }
    }

    private void boundary(GeoJsonParser.Feature feature, Geometry shape) throws SurveyException {
        boolean one =
                shape.type() == Geometry.Type.POLYGON
                        || (shape.type() == Geometry.Type.MULTI_POLYGON && shape.groups() == 1);
        if (!one) {
            throw unexpected(feature, shape, "a boundary", "Polygon");
        }
        if (all.survey().hasBoundary()) {
            throw bad(
                    feature,
                    "there is a second boundary",
                    "A survey has one: join the outlines into one Polygon.");
        }
        double[] none = new double[shape.size()];
        double[] places = carried(feature, shape, none);
        List<Ring> rings = new ArrayList<>();
        for (int part = 0; part < shape.parts(); part++) {
            rings.add(ring(feature, shape, places, part));
        }
        var outline = new Boundary(rings.get(0), rings.subList(1, rings.size()));
        String trouble = Outlines.trouble(outline);
        if (!trouble.isEmpty()) {
            throw bad(feature, "the boundary " + trouble, "Draw the outline without crossings.");
        }
        all.survey().boundary(outline);
        say("boundary", rings.get(0).size() + " corners", "the polygon of the file");
    }

    private Ring ring(GeoJsonParser.Feature feature, Geometry shape, double[] places, int part)
            throws SurveyException {
        int from = shape.from(part);
        int size = shape.to(part) - from;
        if (size < 4) {
            throw bad(
                    feature,
                    "a ring of the boundary has " + size + " places",
                    "A closed ring needs four, the last the same as the first.");
        }
        int last = from + size - 1;
        if (shape.x(from) != shape.x(last) || shape.y(from) != shape.y(last)) {
            throw bad(
                    feature,
                    "a ring of the boundary is not closed",
                    "Its last place must be the same as its first (RFC 7946, section 3.1.6).");
        }
        double[] x = new double[size];
        double[] y = new double[size];
        for (int k = 0; k < size; k++) {
            x[k] = places[2 * (from + k)];
            y[k] = places[2 * (from + k) + 1];
        }
        return new Ring(x, y);
    }

    /** All places of a shape in frame metres, east and north in turn. */
    private double[] carried(GeoJsonParser.Feature feature, Geometry shape, double[] z)
            throws SurveyException {
        double[] places = new double[2 * shape.size()];
        double factor = bridge == null ? unit.metres() : 1;
        boolean degrees = bridge != null && bridge.degrees();
        for (int k = 0; k < shape.size(); k++) {
            if (degrees) {
                refuseNoDegrees(shape, shape.x(k), shape.y(k));
            }
            places[2 * k] = shape.x(k) * factor;
            places[2 * k + 1] = shape.y(k) * factor;
            if (!Limits.placeExists(places[2 * k]) || !Limits.placeExists(places[2 * k + 1])) {
                throw bad(
                        feature,
                        "a coordinate is further away than the earth is wide",
                        "Mend the coordinate.");
            }
            if (file.holds() != Holds.BOUNDARY) {
                plausible.row(shape.x(k), shape.y(k), z[k]);
            }
        }
        if (bridge != null) {
            try {
                bridge.carry(places, shape.size());
            } catch (SurveyException outside) {
                throw bad(feature, outside.what(), outside.remedy());
            }
        }
        return places;
    }

    private void refuseNoDegrees(Geometry shape, double longitude, double latitude)
            throws SurveyException {
        if (Math.abs(longitude) <= 180 && Math.abs(latitude) <= 90) {
            return;
        }
        boolean swapped = Math.abs(longitude) <= 90 && Math.abs(latitude) <= 180;
        throw new SurveyException(
                file.path(),
                shape.line(),
                longitude + ", " + latitude + " is no longitude and latitude",
                swapped
                        ? "Latitude stands first: GeoJSON wants longitude first (RFC 7946, section"
                                + " 3.1.1)."
                        : "If these are plain coordinates, declare \"coordinates\": \"local\" or \"epsg\" for"
                                + " this file in the plan.");
    }

    private static String code(Map<String, String> properties) {
        for (String name : List.of("code", "description", "desc")) {
            String found = properties.get(name);
            if (found != null) {
                return found.strip();
            }
        }
        return "";
    }

    private static int at(GeoJsonParser.Feature feature) {
        return (int) Math.min(feature.line(), Integer.MAX_VALUE);
    }

    private void sample(GeoJsonParser.Feature feature, Geometry shape, double z) {
        if (samples.size() < SAMPLES) {
            samples.add(
                    new Reading.Sample(
                            feature.line(),
                            shape.size() == 1
                                    ? shape.type().word()
                                    : shape.type().word() + " of " + shape.size() + " places",
                            "height " + Words.fixed(z, 3) + " m"));
        }
    }

    private void say(String what, String answer, String why) {
        understood.add(new Understood(what, answer, why));
    }

    private SurveyException unexpected(
            GeoJsonParser.Feature feature, Geometry shape, String declared, String wanted) {
        return bad(
                feature,
                "a " + shape.type().word() + " stands in a file declared to hold " + declared,
                "Use " + wanted + " there, or mend \"holds\" for this file in the plan.");
    }

    private SurveyException bad(GeoJsonParser.Feature feature, String what, String remedy) {
        return new SurveyException(file.path(), feature.line(), what, remedy);
    }
}
