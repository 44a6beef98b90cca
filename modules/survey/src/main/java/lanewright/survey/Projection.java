package lanewright.survey;

import java.util.OptionalInt;
import lanewright.measure.LengthUnit;
import lanewright.measure.Words;
import org.geotools.api.metadata.extent.GeographicBoundingBox;
import org.geotools.api.referencing.FactoryException;
import org.geotools.api.referencing.NoSuchAuthorityCodeException;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.api.referencing.crs.GeographicCRS;
import org.geotools.api.referencing.crs.ProjectedCRS;
import org.geotools.api.referencing.crs.SingleCRS;
import org.geotools.api.referencing.cs.AxisDirection;
import org.geotools.api.referencing.cs.CoordinateSystem;
import org.geotools.api.referencing.operation.MathTransform;
import org.geotools.api.referencing.operation.NoninvertibleTransformException;
import org.geotools.api.referencing.operation.TransformException;
import org.geotools.referencing.CRS;
import org.geotools.referencing.crs.DefaultGeographicCRS;
import org.geotools.referencing.operation.transform.ConcatenatedTransform;
import org.jspecify.annotations.Nullable;
import si.uom.NonSI;

/** A projected reference system, kept behind {@link Frame} so that nobody else sees the library. */
final class Projection {

    /** Longitude and latitude of WGS 84, as RFC 7946 wants them. */
    static final int WGS84 = 4326;

    /** How much wider than published an area of use is taken, degrees. */
    private static final double AREA_MARGIN = 0.5;

    /** A change of datum in the library is not quite its own inverse: so often it is put right. */
    private static final int INVERSE_PASSES = 3;

    /** How far from its zero a local zone is believed, m; there its scale is off by 1 in 2,000. */
    private static final double ZONE_REACH = 200_000;

    /**
     * Two units are the same if they differ by less than this part of them: well below ftUS to ft.
     */
    private static final double SAME_UNIT = 1e-9;

    static {
        ReferenceLibrary.ready();
    }

    private final OptionalInt code;
    private final ProjectedCRS system;
    private final LengthUnit unit;
    private final MathTransform fromDegrees;
    private final MathTransform toDegrees;
    private final @Nullable GeographicBoundingBox area;

    private Projection(OptionalInt code, ProjectedCRS system) throws SurveyException {
        this.code = code;
        this.system = system;
        this.unit = unitOf(system);
        this.area = CRS.getGeographicBoundingBox(system);
        this.fromDegrees = transform(DefaultGeographicCRS.WGS84, system);
        this.toDegrees = inverse(fromDegrees);
    }

    static Projection epsg(int code) throws SurveyException {
        if (decode(code) instanceof ProjectedCRS projected) {
            return new Projection(OptionalInt.of(code), projected);
        }
        throw new SurveyException(
                null,
                0,
                "EPSG:" + code + " is not a projected system",
                "A lane is planned in metres on a flat map: state the code of a projected system,"
                        + " such as the UTM zone or state plane zone of the place.");
    }

    static Projection zone(LonLat place) throws SurveyException {
        String text =
                "PROJCS[\"Local zone at longitude "
                        + place.longitude()
                        + ", latitude "
                        + place.latitude()
                        + "\", GEOGCS[\"WGS 84\", DATUM[\"World Geodetic System 1984\","
                        + " SPHEROID[\"WGS 84\", 6378137.0, 298.257223563]],"
                        + " PRIMEM[\"Greenwich\", 0.0], UNIT[\"degree\", 0.017453292519943295],"
                        + " AXIS[\"Longitude\", EAST], AXIS[\"Latitude\", NORTH]],"
                        + " PROJECTION[\"Transverse_Mercator\"],"
                        + " PARAMETER[\"central_meridian\", "
                        + place.longitude()
                        + "], PARAMETER[\"latitude_of_origin\", "
                        + place.latitude()
                        + "], PARAMETER[\"scale_factor\", 1.0], PARAMETER[\"false_easting\", 0.0],"
                        + " PARAMETER[\"false_northing\", 0.0], UNIT[\"m\", 1.0],"
                        + " AXIS[\"Easting\", EAST], AXIS[\"Northing\", NORTH]]";
        return new Projection(OptionalInt.empty(), (ProjectedCRS) parse(text));
    }

    OptionalInt code() {
        return code;
    }

    String name() {
        String name = system.getName().getCode();
        return code.isPresent() ? name + " (EPSG:" + code.getAsInt() + ")" : name;
    }

    LengthUnit unit() {
        return unit;
    }

    String wkt() {
        return system.toWKT();
    }

    LonLat toDegrees(double x, double y) throws SurveyException {
        double[] wanted = {x / unit.metres(), y / unit.metres()};
        double[] first = new double[2];
        double[] back = new double[2];
        try {
            toDegrees.transform(wanted, 0, first, 0, 1);
            double[] at = first.clone();
            for (int pass = 0; pass < INVERSE_PASSES; pass++) {
                fromDegrees.transform(at, 0, back, 0, 1);
                toDegrees.transform(back, 0, back, 0, 1);
                at[0] += first[0] - back[0];
                at[1] += first[1] - back[1];
            }
            return new LonLat(at[0], at[1]);
        } catch (TransformException | IllegalArgumentException tooFar) {
            throw outside(x, y, name(), tooFar);
        }
    }

    boolean mayHold(double x, double y) {
        if (area == null) {
            return Math.hypot(x, y) <= ZONE_REACH;
        }
        try {
            LonLat at = toDegrees(x, y);
            double west = area.getWestBoundLongitude() - AREA_MARGIN;
            double east = area.getEastBoundLongitude() + AREA_MARGIN;
            // An area across the 180° meridian begins east of where it ends.
            boolean across = area.getWestBoundLongitude() > area.getEastBoundLongitude();
            boolean inLongitude =
                    across
                            ? at.longitude() >= west || at.longitude() <= east
                            : at.longitude() >= west && at.longitude() <= east;
            return inLongitude
                    && at.latitude() >= area.getSouthBoundLatitude() - AREA_MARGIN
                    && at.latitude() <= area.getNorthBoundLatitude() + AREA_MARGIN;
        } catch (SurveyException tooFar) {
            return false;
        }
    }

    Frame.Bridge bridgeFrom(int from) throws SurveyException {
        return from == WGS84
                ? bridge(DefaultGeographicCRS.WGS84, "WGS 84 (EPSG:4326)")
                : bridge(from, decode(from));
    }

    Frame.Bridge bridgeFromText(String wkt) throws SurveyException {
        CoordinateReferenceSystem parsed = parse(wkt);
        return bridge(parsed, parsed.getName().getCode());
    }

    private Frame.Bridge bridge(int code, CoordinateReferenceSystem from) throws SurveyException {
        return bridge(from, from.getName().getCode() + " (EPSG:" + code + ")");
    }

    private Frame.Bridge bridge(CoordinateReferenceSystem from, String called)
            throws SurveyException {
        boolean degrees = from instanceof GeographicCRS;
        if (!degrees && !(from instanceof ProjectedCRS)) {
            throw new SurveyException(
                    null,
                    0,
                    called + " is neither a projected system nor longitude and latitude",
                    "State the EPSG code of the coordinates as they stand in the file.");
        }
        MathTransform transform = transform(from, system);
        LengthUnit fromUnit = degrees ? LengthUnit.METRE : unitOf(from);
        return new Crossing(
                called, degrees, fromUnit, doubt((SingleCRS) from), transform, unit.metres());
    }

    /**
     * What a change of datum leaves in doubt. The figures: WGS 84, NAD83 and ETRS89 lie one to two
     * metres apart (from memory); for older datums 13 m was measured between this library, which
     * has no shift grids, and PROJ 9.1.1 for NAD27 at 39.2° north, 86.5° west.
     */
    private String doubt(SingleCRS from) {
        if (CRS.equalsIgnoreMetadata(from.getDatum(), system.getDatum())) {
            return "";
        }
        boolean modern = isModern(from) && isModern(system);
        return from.getDatum().getName().getCode()
                + " to "
                + system.getDatum().getName().getCode()
                + (modern
                        ? ": the degrees are taken over as they are, and may be off by 1 to 2 m"
                        : ": positions may be off by 10 m or more, no shift grids are used");
    }

    private static boolean isModern(SingleCRS system) {
        String datum = system.getDatum().getName().getCode();
        return (datum.contains("WGS") && datum.contains("84"))
                || datum.contains("World Geodetic System 1984")
                || datum.contains("North American Datum 1983")
                || datum.contains("North_American_1983")
                || datum.contains("NAD83")
                || datum.contains("European Terrestrial Reference System 1989");
    }

    private static CoordinateReferenceSystem decode(int code) throws SurveyException {
        try {
            CoordinateReferenceSystem found = CRS.decode("EPSG:" + code, true);
            if (found.getCoordinateSystem().getDimension() != 2) {
                throw new SurveyException(
                        null,
                        0,
                        "EPSG:" + code + " is not a system of two axes",
                        "State the code of the plan coordinates; heights are read apart.");
            }
            refuseStrangeAxes(found.getCoordinateSystem(), "EPSG:" + code);
            return found;
        } catch (NoSuchAuthorityCodeException unknown) {
            throw caused(
                    "EPSG:" + code + " is not a known reference system",
                    "Look the code up again; the data set here is EPSG 11.031.",
                    unknown);
        } catch (FactoryException broken) {
            throw caused(
                    "EPSG:" + code + " cannot be used: " + broken.getMessage(),
                    "State the code of another projected system that covers the place.",
                    broken);
        }
    }

    private static CoordinateReferenceSystem parse(String text) throws SurveyException {
        try {
            CoordinateReferenceSystem parsed = CRS.parseWKT(text);
            refuseStrangeAxes(parsed.getCoordinateSystem(), parsed.getName().getCode());
            return parsed;
        } catch (FactoryException broken) {
            throw caused(
                    "the reference system's description cannot be read: " + broken.getMessage(),
                    "State its EPSG code instead.",
                    broken);
        }
    }

    private static void refuseStrangeAxes(CoordinateSystem axes, String called)
            throws SurveyException {
        if (axes.getDimension() < 2
                || !axes.getAxis(0).getDirection().equals(AxisDirection.EAST)
                || !axes.getAxis(1).getDirection().equals(AxisDirection.NORTH)) {
            throw new SurveyException(
                    null,
                    0,
                    called + " does not count east and north",
                    "State the code of a system with easting and northing axes.");
        }
    }

    /**
     * A transform from one system to another. Between the datums that lie a metre or two apart and
     * have no published shift of use here, degrees are taken over as they are: the library would
     * move them by a few millimetres that mean nothing.
     */
    private static MathTransform transform(CoordinateReferenceSystem from, ProjectedCRS to)
            throws SurveyException {
        if (from instanceof SingleCRS single && isModern(single) && isModern(to)) {
            MathTransform down = found(to.getBaseCRS(), to);
            return from instanceof ProjectedCRS projected
                    ? ConcatenatedTransform.create(found(projected, projected.getBaseCRS()), down)
                    : down;
        }
        return found(from, to);
    }

    private static MathTransform inverse(MathTransform transform) throws SurveyException {
        try {
            return transform.inverse();
        } catch (NoninvertibleTransformException oneWay) {
            throw caused(
                    "the reference system has no way back to the earth",
                    "State the EPSG code of another projected system that covers the place.",
                    oneWay);
        }
    }

    private static MathTransform found(CoordinateReferenceSystem from, CoordinateReferenceSystem to)
            throws SurveyException {
        try {
            // Lenient: without shift grids a strict transform would refuse what is only less exact;
            // the doubt is said instead.
            return CRS.findMathTransform(from, to, true);
        } catch (FactoryException none) {
            throw caused(
                    "there is no way from "
                            + from.getName().getCode()
                            + " to "
                            + to.getName().getCode(),
                    "State a frame on the datum of the file.",
                    none);
        }
    }

    private static LengthUnit unitOf(CoordinateReferenceSystem system) throws SurveyException {
        var axis = system.getCoordinateSystem().getAxis(0);
        if (!axis.getUnit().equals(NonSI.DEGREE_ANGLE)) {
            double metres =
                    axis.getUnit()
                            .asType(javax.measure.quantity.Length.class)
                            .getConverterTo(si.uom.SI.METRE)
                            .convert(1.0);
            for (LengthUnit unit : LengthUnit.values()) {
                if (Math.abs(metres / unit.metres() - 1) < SAME_UNIT) {
                    return unit;
                }
            }
        }
        throw new SurveyException(
                null,
                0,
                system.getName().getCode() + " is measured in " + axis.getUnit(),
                "State a system in metres, feet or US survey feet.");
    }

    private static SurveyException outside(double x, double y, String system, Exception cause) {
        return caused(
                Words.fixed(x, 1) + " / " + Words.fixed(y, 1) + " lies outside " + system,
                "Check the EPSG code, the unit, and the order of the columns.",
                cause);
    }

    private static SurveyException caused(String what, String remedy, Exception cause) {
        var said = new SurveyException(null, 0, what, remedy);
        said.initCause(cause);
        return said;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Projection projection
                && code.equals(projection.code)
                && system.equals(projection.system);
    }

    @Override
    public int hashCode() {
        return system.hashCode();
    }

    /** One way into a frame. */
    private record Crossing(
            String from,
            boolean degrees,
            LengthUnit unit,
            String datumChange,
            MathTransform transform,
            double frameUnit)
            implements Frame.Bridge {

        @Override
        public void carry(double[] eastNorth, int count) throws SurveyException {
            double[] before = eastNorth.clone();
            try {
                transform.transform(eastNorth, 0, eastNorth, 0, count);
            } catch (TransformException tooFar) {
                throw caused(
                        "a place cannot be carried from " + from + " into the frame",
                        "Check the EPSG code, and that longitude stands before latitude.",
                        tooFar);
            }
            for (int k = 0; k < 2 * count; k++) {
                eastNorth[k] *= frameUnit;
                if (!Double.isFinite(eastNorth[k])) {
                    throw new SurveyException(
                            null,
                            0,
                            before[k & ~1] + " / " + before[k | 1] + " lies outside the frame",
                            "Check the EPSG code, and that longitude stands before latitude.");
                }
            }
        }
    }
}
