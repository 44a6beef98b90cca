package lanewright.lane.surface;

import java.util.Arrays;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.HalfShape;
import lanewright.lane.shape.LaneAt;
import lanewright.lane.shape.Layer;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.TypicalSection;

/**
 * One side of the lane along a ray, from the alignment out to the ground, cut into strips on which
 * earth, topsoil and each layer of stone are linear. Strips of no width are kept, so that two
 * flanks of the same kind and shape have the same strips.
 */
final class Flank {

    /** How a flank meets the ground. Each kind has strips of its own. */
    enum Kind {
        /** The foreslope runs down to the ground, or the ground is met at the hinge. */
        FILL,
        /** The slope from a hinge below the ground. */
        CUT,
        /** A ditch, and a backslope. */
        DITCH,
        /** A ditch whose bottom comes out of the ground. */
        DAYLIGHT,
        /** The ground ends before it is met. */
        OPEN,
        /** The ground is not met before the centre of a curve. */
        FOLDED
    }

    /**
     * Heights nearer than this are the same, m, where it is decided which way a slope goes: keeps
     * rounding from deciding where lane and ground coincide.
     */
    private static final double SAME_HEIGHT = 1e-6;

    private final Kind kind;
    private final int layers;
    private final double[] out;
    private final double[] earth;
    private final double[] soil;
    private final double[] stone;
    private final SurfacePart[] parts;
    private final int hinge;
    private final double decidesOut;
    private final double decidesHeight;
    private final boolean known;
    private final double limit;

    private Flank(Making made, Kind kind) {
        this.kind = kind;
        layers = made.layers;
        out = made.out;
        earth = made.earth;
        soil = made.soil;
        stone = made.stone;
        parts = made.parts;
        hinge = made.hinge;
        decidesOut = made.decidesOut;
        decidesHeight = made.decidesHeight;
        known = made.known;
        limit = made.limit;
    }

    /**
     * Follows a side of the lane to the ground.
     *
     * @param lane what the lane is there
     * @param right which side
     * @param margin width of the margin, m
     * @param ground the ground outward
     * @param most how far out a side may go before it folds over, m
     */
    static Flank of(LaneAt lane, boolean right, double margin, GroundRun ground, double most) {
        return new Making(lane, right, margin, ground, most).make();
    }

    Kind kind() {
        return kind;
    }

    /** True if it meets the ground. */
    boolean isClosed() {
        return kind != Kind.OPEN && kind != Kind.FOLDED;
    }

    /** False if more ground must be read before the kind is certain. */
    boolean isKnown() {
        return known;
    }

    /** Number of strips; beyond the hinge there are none on a flank that is not closed. */
    int strips() {
        return out.length - 1;
    }

    int layers() {
        return layers;
    }

    /** Distance out of the inner edge of strip {@code i}, m; its outer edge is that of the next. */
    double out(int i) {
        return out[i];
    }

    SurfacePart part(int strip) {
        return parts[strip];
    }

    /** Number of the strip that begins at the hinge. */
    int hinge() {
        return hinge;
    }

    double hingeOut() {
        return out[hinge];
    }

    double catchOut() {
        return out[out.length - 1];
    }

    double catchHeight() {
        return finished(out.length - 2, true);
    }

    /** Outer end of the margin, m out. */
    double limit() {
        return limit;
    }

    /** Subgrade at the inner or outer edge of a strip, m. */
    double earth(int strip, boolean outer) {
        return earth[2 * strip + (outer ? 1 : 0)];
    }

    /** Thickness of the topsoil put back, m. */
    double soil(int strip, boolean outer) {
        return soil[2 * strip + (outer ? 1 : 0)];
    }

    /** Thickness of a layer, m. */
    double stone(int strip, int layer, boolean outer) {
        return stone[2 * (strip * layers + layer) + (outer ? 1 : 0)];
    }

    /** Finished surface, m. */
    double finished(int strip, boolean outer) {
        double z = earth(strip, outer) + soil(strip, outer);
        for (int i = 0; i < layers; i++) {
            z += stone(strip, i, outer);
        }
        return z;
    }

    /**
     * Distance out of the corner whose height against the ground decides the kind, m: the hinge, or
     * the inner end of the ditch's bottom where it is only dug below the ground; NaN if nothing is
     * to be decided.
     */
    double decidesOut() {
        return decidesOut;
    }

    /** Height of that corner, m. */
    double decidesHeight() {
        return decidesHeight;
    }

    /** Builds a flank strip by strip; lives for one call. */
    private static final class Making {
        private final LaneAt lane;
        private final TypicalSection typical;
        private final SideShape side;
        private final HalfShape half;
        private final double fall;
        private final double under;
        private final double bottom;
        private final double margin;
        private final GroundRun ground;
        private final double most;
        private final int layers;
        private double[] out;
        private double[] earth;
        private double[] soil;
        private double[] stone;
        private SurfacePart[] parts;
        private int size;
        private int hinge;
        private double decidesOut = Double.NaN;
        private double decidesHeight = Double.NaN;
        private boolean known = true;
        private double limit;

        Making(LaneAt lane, boolean right, double margin, GroundRun ground, double most) {
            this.lane = lane;
            this.typical = lane.typical();
            this.side = right ? typical.right() : typical.left();
            this.half = HalfShape.of(lane, right);
            this.fall = right ? lane.rightFall() : lane.leftFall();
            this.layers = typical.layers().size();
            this.under = layers == 0 ? fall : right ? lane.rightUnder() : lane.leftUnder();
            this.bottom = right ? lane.rightBottom() : lane.leftBottom();
            this.margin = margin;
            this.ground = ground;
            this.most = most;
            int room = 2 * layers + 6;
            out = new double[room + 1];
            earth = new double[2 * room];
            soil = new double[2 * room];
            stone = new double[2 * room * layers];
            parts = new SurfacePart[room];
        }

        Flank make() {
            toHinge();
            hinge = size;
            Kind kind = toGround();
            if (kind != Kind.OPEN && out[size] > most) {
                kind = Kind.FOLDED;
            }
            if (kind == Kind.OPEN || kind == Kind.FOLDED) {
                size = hinge;
                limit = out[hinge];
                known |= kind == Kind.FOLDED;
            } else {
                limit = Math.min(Math.min(out[size] + margin, ground.end()), most);
                known &= limit >= Math.min(out[size] + margin, most) || ground.ends();
            }
            trim();
            return new Flank(this, kind);
        }

        private void trim() {
            out = Arrays.copyOf(out, size + 1);
            earth = Arrays.copyOf(earth, 2 * size);
            soil = Arrays.copyOf(soil, 2 * size);
            stone = Arrays.copyOf(stone, 2 * size * layers);
            parts = Arrays.copyOf(parts, size);
        }

        private void toHinge() {
            double total = typical.stoneThickness();
            double edge = typical.width() / 2;
            double inner = lane.height() - total;
            strip(SurfacePart.TRAVELLED, edge, inner, inner - under * edge);
            for (int i = 0; i < layers; i++) {
                full(size - 1, i);
            }
            double shoulder = side.shoulder();
            if (typical.bed() == Bed.BOXED) {
                double z = lane.height() - fall * edge;
                strip(SurfacePart.SHOULDER, edge + shoulder, z, z - fall * shoulder);
                return;
            }
            for (int i = 0; i < layers; i++) {
                double width = typical.layers().get(i).width();
                ledge(i == 0 || Double.isNaN(width) ? out[size] : width / 2, i);
                ledge(foot(i), i);
                stone[2 * ((size - 1) * layers + i) + 1] = 0;
            }
            double toe = out[size];
            strip(
                    SurfacePart.SHOULDER,
                    toe + shoulder,
                    inner - under * toe,
                    inner - under * (toe + shoulder));
        }

        /**
         * Where the edge of a layer that has just reached the end of its top comes down to the
         * plane below: it falls by its thickness while that plane falls too.
         */
        private double foot(int layer) {
            double top = out[size];
            double thick = thickness(layer, top);
            double slope = typical.layers().get(layer).edgeSlope();
            double below = layer == layers - 1 ? under : fall;
            return top + thick * slope / (1 - below * slope);
        }

        /** A strip outside the travelled way that layer {@code top} and those below it reach. */
        private void ledge(double to, int top) {
            double inner = lane.height() - typical.stoneThickness();
            strip(SurfacePart.STONE_EDGE, to, inner - under * out[size], inner - under * to);
            for (int i = top; i < layers; i++) {
                full(size - 1, i);
            }
        }

        /** Gives a strip the whole thickness of a layer. */
        private void full(int strip, int layer) {
            int at = 2 * (strip * layers + layer);
            stone[at] = thickness(layer, out[strip]);
            stone[at + 1] = thickness(layer, out[strip + 1]);
        }

        /** Thickness of a layer under its top; the lowest takes up the subgrade's own fall. */
        private double thickness(int layer, double at) {
            Layer stated = typical.layers().get(layer);
            return stated.thickness() + (layer == layers - 1 ? (under - fall) * at : 0);
        }

        private void strip(SurfacePart part, double to, double earthIn, double earthOut) {
            parts[size] = part;
            earth[2 * size] = earthIn;
            earth[2 * size + 1] = earthOut;
            out[++size] = to;
        }

        /** A strip outside the hinge: its finished heights, less topsoil where there is any. */
        private void slope(SurfacePart part, double to, double zIn, double zOut, boolean covered) {
            double back = covered ? typical.topsoilBack() : 0;
            soil[2 * size] = back;
            soil[2 * size + 1] = back;
            strip(part, to, zIn - back, zOut - back);
        }

        private Kind toGround() {
            double at = out[hinge];
            double z = lane.height() + half.hingeRise();
            double there = ground.at(at);
            if (Double.isNaN(there)) {
                known = ground.ends();
                return Kind.OPEN;
            }
            double low = Double.isNaN(bottom) ? z - side.ditch().depth() : bottom;
            boolean ditched = side.ditch().rule() != DitchRule.NEVER && low < z;
            double innerAt = at + side.foreslope() * (z - low);
            if (!ditched || side.ditch().rule() != DitchRule.ALWAYS) {
                decidesOut = ditched ? innerAt : at;
                decidesHeight = ditched ? low : z;
            }
            double below = ditched ? ground.at(innerAt) : Double.NaN;
            if (ditched && Double.isNaN(below) && !ground.ends()) {
                known = false;
                return Kind.OPEN;
            }
            if (ditched && (side.ditch().rule() == DitchRule.ALWAYS || low < below - SAME_HEIGHT)) {
                return ditch(z, innerAt, low);
            }
            if (Math.abs(z - there) <= SAME_HEIGHT) {
                slope(SurfacePart.FILL_SLOPE, at, z, z, true);
                return Kind.FILL;
            }
            boolean cut = z < there;
            boolean rises = cut && side.ditch().rule() == DitchRule.NEVER;
            double rise = rises ? 1 / side.cutSlope() : -1 / side.foreslope();
            double met = meet(at, z, rise, Double.POSITIVE_INFINITY);
            if (Double.isNaN(met)) {
                return Kind.OPEN;
            }
            slope(
                    cut ? SurfacePart.CUT_SLOPE : SurfacePart.FILL_SLOPE,
                    met,
                    z,
                    z + rise * (met - at),
                    true);
            return cut ? Kind.CUT : Kind.FILL;
        }

        private Kind ditch(double z, double innerAt, double low) {
            slope(SurfacePart.FORESLOPE, innerAt, z, low, true);
            double outerAt = innerAt + side.ditch().bottom();
            double met = ground.meet(innerAt, low, 0, outerAt);
            if (!Double.isNaN(met)) {
                slope(SurfacePart.DITCH_BOTTOM, met, low, low, typical.topsoilInDitch());
                return Kind.DAYLIGHT;
            }
            slope(SurfacePart.DITCH_BOTTOM, outerAt, low, low, typical.topsoilInDitch());
            double rise = 1 / side.backslope();
            met = meet(outerAt, low, rise, Double.POSITIVE_INFINITY);
            if (Double.isNaN(met)) {
                return Kind.OPEN;
            }
            slope(SurfacePart.BACKSLOPE, met, low, low + rise * (met - outerAt), true);
            return Kind.DITCH;
        }

        private double meet(double from, double z, double rise, double until) {
            double met = ground.meet(from, z, rise, until);
            if (Double.isNaN(met)) {
                known &= ground.ends();
            }
            return met;
        }
    }
}
