package lanewright.lane.line;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The line of the lane in plan: straight tangents joined by circular arcs, or meeting at sharp
 * angles. Station is measured along it from its start, m. Immutable.
 *
 * <p>Directions are azimuths, clockwise from north (the y axis), so that curvature, positive to the
 * right, is the change of azimuth with station.
 *
 * <p>Where direction or curvature jumps, the plain methods tell what holds just after the station
 * and those named <i>before</i> what holds just before; at the start and at the end both tell the
 * one that there is.
 */
public final class Alignment {

    /** A station this little past an end is taken for the end, m: room for rounding only. */
    private static final double END = 1e-6;

    /** A change of direction under this is none, radians: a millimetre in 1000 km. */
    static final double STRAIGHT = 1e-9;

    private final List<IntersectionPoint> points;
    private final List<Arc> arcs;
    private final Piece[] pieces;
    private final double length;

    Alignment(List<IntersectionPoint> points, List<Arc> arcs, Piece[] pieces) {
        this.points = points;
        this.arcs = List.copyOf(arcs);
        this.pieces = pieces;
        this.length = pieces[pieces.length - 1].to;
    }

    /**
     * The alignment through intersection points.
     *
     * @param points where tangents meet, at least two; the first and last are the ends, and their
     *     radii are not used
     * @throws DesignRefused if points coincide, the line turns back on itself or curves overlap
     */
    public static Alignment of(List<IntersectionPoint> points) throws DesignRefused {
        return new AlignmentBuilder(points).build();
    }

    /** The points that it was made from. */
    public List<IntersectionPoint> points() {
        return points;
    }

    /** Its arcs, in station order. */
    public List<Arc> arcs() {
        return arcs;
    }

    /** Length in plan, m; the last station. */
    public double length() {
        return length;
    }

    /** Local easting at a station, m. */
    public double x(double station) {
        return after(station).x(clamp(station));
    }

    /** Local northing at a station, m. */
    public double y(double station) {
        return after(station).y(clamp(station));
    }

    /** Local easting of a place beside the line, m; at a sharp angle, square to what follows. */
    public double x(Place place) {
        Piece piece = after(place.station());
        double s = clamp(place.station());
        return piece.x(s) + place.offset() * piece.dy(s);
    }

    /** Local northing of a place beside the line, m; at a sharp angle, square to what follows. */
    public double y(Place place) {
        Piece piece = after(place.station());
        double s = clamp(place.station());
        return piece.y(s) - place.offset() * piece.dx(s);
    }

    /** East part of the direction up-station, of 1. */
    public double directionX(double station) {
        return after(station).dx(clamp(station));
    }

    /** North part of the direction up-station, of 1. */
    public double directionY(double station) {
        return after(station).dy(clamp(station));
    }

    /** East part of the direction just before a station, of 1. */
    public double directionXBefore(double station) {
        return before(station).dx(clamp(station));
    }

    /** North part of the direction just before a station, of 1. */
    public double directionYBefore(double station) {
        return before(station).dy(clamp(station));
    }

    /** Azimuth up-station, radians clockwise from north, 0 to 2π. */
    public double azimuth(double station) {
        double azimuth = StrictMath.atan2(directionX(station), directionY(station));
        return azimuth < 0 ? azimuth + 2 * Math.PI : azimuth;
    }

    /** Curvature, 1/m, positive where the line turns right. */
    public double curvature(double station) {
        return after(station).curvature;
    }

    /** Curvature just before a station, 1/m, positive where the line turns right. */
    public double curvatureBefore(double station) {
        return before(station).curvature;
    }

    /**
     * Stations where tangents and arcs join or the line has a sharp angle, in order, the ends left
     * out.
     */
    public double[] joins() {
        double[] joins = new double[pieces.length - 1];
        for (int i = 0; i < joins.length; i++) {
            joins[i] = pieces[i].to;
        }
        return joins;
    }

    /** Stations of sharp angles, in order. */
    public double[] kinks() {
        double[] kinks = new double[pieces.length];
        int count = 0;
        for (int i = 1; i < pieces.length; i++) {
            if (isKink(i)) {
                kinks[count++] = pieces[i].from;
            }
        }
        return Arrays.copyOf(kinks, count);
    }

    /** Change of direction at a sharp angle, radians, positive to the right; zero elsewhere. */
    public double kinkAngle(double station) {
        double ax = directionXBefore(station);
        double ay = directionYBefore(station);
        double bx = directionX(station);
        double by = directionY(station);
        return StrictMath.atan2(bx * ay - by * ax, ax * bx + ay * by);
    }

    /**
     * The place beside the line that lies nearest to a point of the map. In the wedge outside a
     * sharp angle the nearest place is the angle itself: its offset is then the distance to it, not
     * square to either tangent. Of places equally near, the first.
     *
     * @return the place, or null if the point lies before the start or past the end
     */
    public @Nullable Place place(double x, double y) {
        double station = Double.NaN;
        double offset = Double.POSITIVE_INFINITY;
        for (int i = 0; i < pieces.length; i++) {
            Piece piece = pieces[i];
            double along = piece.along(x, y);
            if (along >= -END && along <= piece.length() + END) {
                double aside = piece.aside(x, y);
                if (Math.abs(aside) < Math.abs(offset)) {
                    offset = aside;
                    station = piece.from + Math.min(Math.max(along, 0), piece.length());
                }
            }
            if (isKink(i)) {
                double aside = wedge(pieces[i - 1], piece, x - piece.x, y - piece.y);
                if (Math.abs(aside) < Math.abs(offset)) {
                    offset = aside;
                    station = piece.from;
                }
            }
        }
        return Double.isNaN(station) ? null : new Place(station, offset);
    }

    private boolean isKink(int i) {
        return i > 0
                && pieces[i - 1].curvature == 0
                && pieces[i].curvature == 0
                && Math.abs(pieces[i - 1].dx * pieces[i].dy - pieces[i - 1].dy * pieces[i].dx)
                        > STRAIGHT;
    }

    /** Signed distance to the angle between two tangents from the wedge outside, else infinite. */
    private static double wedge(Piece in, Piece out, double px, double py) {
        if (px * in.dx + py * in.dy < 0 || px * out.dx + py * out.dy > 0) {
            return Double.POSITIVE_INFINITY;
        }
        double left = in.dx * out.dy - in.dy * out.dx;
        return Math.copySign(Math.hypot(px, py), left);
    }

    private Piece after(double station) {
        clamp(station);
        int i = 0;
        while (i < pieces.length - 1 && station >= pieces[i].to) {
            i++;
        }
        return pieces[i];
    }

    private Piece before(double station) {
        clamp(station);
        int i = pieces.length - 1;
        while (i > 0 && station <= pieces[i].from) {
            i--;
        }
        return pieces[i];
    }

    private double clamp(double station) {
        if (!(station >= -END && station <= length + END)) {
            throw new IllegalArgumentException(
                    "station " + station + " is not on an alignment of " + length + " m");
        }
        return Math.min(Math.max(station, 0), length);
    }

    /** Equal if made from equal points. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Alignment that && points.equals(that.points);
    }

    @Override
    public int hashCode() {
        return points.hashCode();
    }

    /** A tangent or an arc: its stations, the point and direction at its start, its curvature. */
    record Piece(
            double from, double to, double x, double y, double dx, double dy, double curvature) {

        double length() {
            return to - from;
        }

        double x(double station) {
            double t = station - from;
            return x + dx * ahead(t) + dy * right(t);
        }

        double y(double station) {
            double t = station - from;
            return y + dy * ahead(t) - dx * right(t);
        }

        double dx(double station) {
            double turn = curvature * (station - from);
            return curvature == 0 ? dx : dx * StrictMath.cos(turn) + dy * StrictMath.sin(turn);
        }

        double dy(double station) {
            double turn = curvature * (station - from);
            return curvature == 0 ? dy : dy * StrictMath.cos(turn) - dx * StrictMath.sin(turn);
        }

        /** How far ahead of the start, in the start's direction, the line has come. */
        private double ahead(double t) {
            return curvature == 0 ? t : StrictMath.sin(curvature * t) / curvature;
        }

        /** How far to the right of the start's direction the line has come. */
        private double right(double t) {
            if (curvature == 0) {
                return 0;
            }
            double half = StrictMath.sin(curvature * t / 2);
            return 2 * half * half / curvature;
        }

        /**
         * Distance along this piece, m, of the foot of a point; outside 0 to length if not on it.
         */
        double along(double px, double py) {
            double ahead = (px - x) * dx + (py - y) * dy;
            if (curvature == 0) {
                return ahead;
            }
            double towards = 1 - curvature * ((px - x) * dy - (py - y) * dx);
            return StrictMath.atan2(Math.abs(curvature) * ahead, towards) / Math.abs(curvature);
        }

        /** Signed distance from this piece, positive right. */
        double aside(double px, double py) {
            double right = (px - x) * dy - (py - y) * dx;
            if (curvature == 0) {
                return right;
            }
            double ahead = (px - x) * dx + (py - y) * dy;
            double radius = Math.abs(1 / curvature);
            double fromCentre = Math.hypot(ahead, right - 1 / curvature);
            return curvature > 0 ? radius - fromCentre : fromCentre - radius;
        }
    }
}
