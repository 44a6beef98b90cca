package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import lanewright.sheets.drawing.Role;

/**
 * What lies on a map, in the survey's local metres: x east, y north. Collected first and then drawn
 * from the ground up, so that the order of collecting does not matter to the eye.
 */
public final class Land {

    /** A line or area on the map; the coordinates are kept as given and must not be changed. */
    @SuppressWarnings("ArrayRecordComponent") // kept as given, a map has very many of them
    record Feature(Role role, double[] x, double[] y, boolean closed, boolean filled) {}

    /** Words about a place; those of low rank are left out first where there is no room. */
    record Label(String words, double x, double y, Role role, boolean bold, int rank) {}

    /** A contour with its height, m, and the same in words. */
    @SuppressWarnings("ArrayRecordComponent") // kept as given, a map has very many of them
    record Contour(double[] x, double[] y, boolean heavy, double height, String words) {}

    /** A tick across the lane, with its station, m, and the same in words. */
    record Station(double x, double y, double heading, double halfWidth, double at, String words) {}

    /** A single place that is drawn as a small sign. */
    record Spot(Role role, double x, double y) {}

    /** A warning triangle, and the number of what it warns of. */
    record Look(double x, double y, String words) {}

    /** An area with holes, under all others; rings of places in turn. */
    record Patch(Role role, List<double[]> east, List<double[]> north) {}

    /** Height at a place, NaN where it is not known. */
    @FunctionalInterface
    public interface Heights {
        /** Height at a local place, m. */
        double at(double x, double y);
    }

    private final List<Feature> features = new ArrayList<>();
    private final List<Patch> patches = new ArrayList<>();
    private final List<Label> labels = new ArrayList<>();
    private final List<Contour> contours = new ArrayList<>();
    private final List<Station> stations = new ArrayList<>();
    private final List<Look> looks = new ArrayList<>();
    private final List<Spot> spots = new ArrayList<>();
    private double left = Double.POSITIVE_INFINITY;
    private double right = Double.NEGATIVE_INFINITY;
    private double low = Double.POSITIVE_INFINITY;
    private double high = Double.NEGATIVE_INFINITY;

    /** A line that is drawn as far as the map reaches. */
    public Land line(Role role, double[] x, double[] y) {
        features.add(new Feature(role, x.clone(), y.clone(), false, false));
        return this;
    }

    /** A closed line without filling. */
    public Land ring(Role role, double[] x, double[] y) {
        features.add(new Feature(role, x.clone(), y.clone(), true, false));
        return this;
    }

    /** A filled area. */
    public Land area(Role role, double[] x, double[] y) {
        features.add(new Feature(role, x.clone(), y.clone(), true, true));
        return this;
    }

    /**
     * An area of squares, under all other areas.
     *
     * @param west local easting of the western edge of all squares, m
     * @param south local northing of their southern edge, m
     * @param size side of a square, m
     * @param columns squares from west to east
     * @param rows squares from south to north
     * @param inside whether a square, counted by rows from the south-west, belongs to the area
     */
    public Land squares(
            Role role,
            double west,
            double south,
            double size,
            int columns,
            int rows,
            IntPredicate inside) {
        List<double[]> east = new ArrayList<>();
        List<double[]> north = new ArrayList<>();
        for (int[] ring : SquareRings.of(columns, rows, inside)) {
            double[] x = new double[ring.length / 2];
            double[] y = new double[x.length];
            for (int i = 0; i < x.length; i++) {
                x[i] = west + ring[2 * i] * size;
                y[i] = south + ring[2 * i + 1] * size;
            }
            east.add(x);
            north.add(y);
        }
        if (!east.isEmpty()) {
            patches.add(new Patch(role, east, north));
        }
        return this;
    }

    /** Makes the map reach at least to these places. */
    public Land reach(double[] x, double[] y) {
        for (int i = 0; i < x.length; i++) {
            left = Math.min(left, x[i]);
            right = Math.max(right, x[i]);
            low = Math.min(low, y[i]);
            high = Math.max(high, y[i]);
        }
        return this;
    }

    /** A contour of a height, m; heavy ones carry it in words. */
    public Land contour(double[] x, double[] y, boolean heavy, double height, String words) {
        contours.add(new Contour(x.clone(), y.clone(), heavy, height, words));
        return this;
    }

    /**
     * A tick across the lane.
     *
     * @param heading of the lane there, radians counter-clockwise from east
     * @param halfWidth half the length of the tick, m
     * @param at the station, m
     * @param words the station as it is written
     */
    public Land station(
            double x, double y, double heading, double halfWidth, double at, String words) {
        stations.add(new Station(x, y, heading, halfWidth, at, words));
        return this;
    }

    /** Words about a place; rank zero is placed first and always. */
    public Land label(String words, double x, double y, Role role, boolean bold, int rank) {
        labels.add(new Label(words, x, y, role, bold, rank));
        return this;
    }

    /** A warning triangle at a place, with the number of its finding. */
    public Land look(double x, double y, String words) {
        looks.add(new Look(x, y, words));
        return this;
    }

    /** A single place in the manner of its role. */
    public Land spot(Role role, double x, double y) {
        spots.add(new Spot(role, x, y));
        return this;
    }

    /** A measured point. */
    public Land shot(double x, double y) {
        return spot(Role.SHOT, x, y);
    }

    /** Whether measured points are on it. */
    public boolean hasShots() {
        return spots.stream().anyMatch(spot -> spot.role() == Role.SHOT);
    }

    List<Spot> spots() {
        return spots;
    }

    List<Patch> patches() {
        return patches;
    }

    List<Feature> features() {
        return features;
    }

    List<Label> labels() {
        return labels;
    }

    List<Contour> contours() {
        return contours;
    }

    List<Station> stations() {
        return stations;
    }

    List<Look> looks() {
        return looks;
    }

    double left() {
        return left;
    }

    double right() {
        return right;
    }

    double low() {
        return low;
    }

    double high() {
        return high;
    }

    /** True if the map reaches farther from west to east than from south to north. */
    public boolean isWide() {
        return right - left >= high - low;
    }
}
