package lanewright.lane.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import lanewright.ground.Ground;
import lanewright.ground.GroundLine;
import lanewright.ground.LineCutter;
import lanewright.lane.shape.LaneAt;
import lanewright.lane.shape.LaneDesign;
import lanewright.measure.Progress;
import lanewright.measure.SideBySide;

/**
 * Sets rays along the lane so close that straight lines from one to the next stay within a
 * millimetre of the true lane and of the true catch line, and finds where the shape jumps.
 *
 * <p>Between fixed stations (ends, joins, limits of stretches) the lane is halved, or cut where it
 * strays most, until it is true: the same places come out whichever way it is walked.
 */
final class RayMarch {

    /** What a straight line between two rays may be off, across and in height, m. */
    static final double TRUE = 0.001;

    /** Where a kind of side changes, or a catch line leaps, it is found to this, m. */
    static final double FOUND = 0.001;

    /** Rays are never further apart, m: no feature of a lane is longer without showing. */
    private static final double WIDEST = 5;

    /** A cut leaves this share on either side, if that is half of {@link #FOUND} or more. */
    private static final double LEAST_SHARE = 0.05;

    /** Rays so far apart are set first, m; what lies between two of them asks for no other. */
    private static final double LEG = 8 * WIDEST;

    private final LaneDesign design;
    private final Ground ground;
    private final RayCaster caster;
    private final LineCutter cutter;
    private final Progress progress;
    private final List<Ray> rays = new ArrayList<>();

    /**
     * A piece of the lane between two rays.
     *
     * @param begins whether the first of them is not the end of the piece before
     */
    private record Leg(boolean begins, Ray first, Ray end) {}

    RayMarch(LaneDesign design, Ground ground, Progress progress) {
        this.design = design;
        this.ground = ground;
        this.caster = new RayCaster(design, ground);
        this.cutter = ground.cutter();
        this.progress = progress;
    }

    /** Rays in station order, the first at zero and the last at the end. */
    List<Ray> march() {
        List<Leg> legs = legs();
        Ray[][] walked = new Ray[legs.size()][];
        SideBySide.each(
                walked.length,
                () -> legs,
                (all, i) -> walked[i] = new RayMarch(design, ground, progress).between(all.get(i)));
        return Arrays.stream(walked).flatMap(Arrays::stream).toList();
    }

    private List<Leg> legs() {
        List<Leg> legs = new ArrayList<>();
        double[] jumps = jumps();
        double from = 0;
        Ray first = caster.cast(0, design.at(0));
        for (int i = 0; i <= jumps.length; i++) {
            boolean last = i == jumps.length;
            double to = last ? design.length() : jumps[i];
            Ray end = last ? cast(to, true) : caster.cast(to - FOUND / 2, design.atBefore(to));
            along(from, to, first, end, legs);
            if (!last) {
                first = caster.cast(to + FOUND / 2, design.at(to));
            }
            from = to;
            progress.check();
        }
        return legs;
    }

    /** The rays of a leg; what comes out hangs on nothing but its two ends. */
    private Ray[] between(Leg leg) {
        if (leg.begins) {
            rays.add(leg.first);
        }
        double length = leg.end.station() - leg.first.station();
        int parts = (int) Math.max(1, Math.ceil(length / WIDEST - 1e-9));
        Ray a = leg.first;
        for (int i = 1; i <= parts; i++) {
            Ray b = i == parts ? leg.end : cast(leg.first.station() + length * i / parts, false);
            between(a, b);
            a = b;
        }
        return rays.toArray(Ray[]::new);
    }

    /** Stations where the shape itself jumps: sharp angles of the line alone are not among them. */
    private double[] jumps() {
        return Arrays.stream(design.jumps())
                .filter(s -> s > FOUND && s < design.length() - FOUND)
                .filter(s -> !design.at(s).equals(design.atBefore(s)))
                .toArray();
    }

    private Ray cast(double station, boolean before) {
        LaneAt lane = before ? design.atBefore(station) : design.at(station);
        return caster.cast(station, lane);
    }

    private void along(double from, double to, Ray first, Ray end, List<Leg> legs) {
        TreeSet<Double> fixed = new TreeSet<>();
        for (double[] some : new double[][] {design.joins(), design.jumps(), caster.seams()}) {
            for (double s : some) {
                fixed.add(s);
            }
        }
        boolean begins = true;
        Ray a = first;
        for (double s : fixed.subSet(from, false, to, false)) {
            if (s - a.station() > FOUND && end.station() - s > FOUND) {
                Ray b = cast(s, false);
                stretch(begins, a, b, legs);
                begins = false;
                a = b;
            }
        }
        stretch(begins, a, end, legs);
    }

    private void stretch(boolean begins, Ray first, Ray end, List<Leg> legs) {
        double length = end.station() - first.station();
        int parts = (int) Math.max(1, Math.ceil(length / LEG - 1e-9));
        Ray a = first;
        for (int i = 1; i <= parts; i++) {
            Ray b = i == parts ? end : cast(first.station() + length * i / parts, false);
            legs.add(new Leg(begins && i == 1, a, b));
            a = b;
        }
    }

    /** Adds the rays that are needed after {@code a}, and {@code b}. */
    private void between(Ray a, Ray b) {
        progress.check();
        double length = length(a, b);
        if (length <= FOUND) {
            rays.add(b);
            return;
        }
        double cut = a.leadsTo(b) ? cutAt(a, b) : 0.5;
        Ray middle = null;
        if (Double.isNaN(cut) && !isPlain(a, b)) {
            middle = cast((a.station() + b.station()) / 2, false);
            cut = bends(a, b, middle) ? 0.5 : Double.NaN;
        }
        if (Double.isNaN(cut)) {
            rays.add(b);
            return;
        }
        Ray at = middle == null ? cast(a.station() + cut * length, false) : middle;
        between(a, at);
        between(at, b);
    }

    /** True if the lane runs straight from one ray to the next, across and in height. */
    private boolean isPlain(Ray a, Ray b) {
        double middle = (a.station() + b.station()) / 2;
        return design.alignment().curvature(middle) == 0
                && design.profile().rate(middle) == 0
                && a.lane().leftFall() == b.lane().leftFall()
                && a.lane().rightFall() == b.lane().rightFall()
                && a.dx() == b.dx()
                && a.dy() == b.dy();
    }

    private boolean bends(Ray a, Ray b, Ray middle) {
        for (boolean right : new boolean[] {false, true}) {
            if (!a.leadsTo(middle, right) || bends(a, b, middle, right)) {
                return true;
            }
        }
        return false;
    }

    /** Share of the way at which the ground asks for a cut, or NaN if it does not. */
    private double cutAt(Ray a, Ray b) {
        double worst = TRUE;
        double cut = Double.NaN;
        for (boolean right : new boolean[] {false, true}) {
            Stray decision = decisionStray(a, b, right);
            if (decision.off > 0) {
                return keep(decision.share, length(a, b));
            }
            Stray stray = catchStray(a, b, right);
            if (stray.off > worst) {
                worst = stray.off;
                cut = keep(stray.share, length(a, b));
            }
        }
        return cut;
    }

    private static double length(Ray a, Ray b) {
        return b.station() - a.station();
    }

    private static double keep(double share, double length) {
        double least = Math.max(LEAST_SHARE, FOUND / 2 / length);
        return Math.max(least, Math.min(1 - least, share));
    }

    /**
     * True if a strip's edge is not straight: middle ray against the line between the two. The
     * catch line of a straight lane bends with the ground only, and is looked at by itself.
     */
    private boolean bends(Ray a, Ray b, Ray middle, boolean right) {
        Flank fa = a.flank(right);
        Flank fb = b.flank(right);
        Flank fm = middle.flank(right);
        boolean straight = design.alignment().curvature(middle.station()) == 0;
        int count = straight && fa.isClosed() ? fa.strips() : fa.strips() + 1;
        for (int i = 0; i < count; i++) {
            double ax = a.x(right, fa.out(i));
            double ay = a.y(right, fa.out(i));
            double lx = b.x(right, fb.out(i)) - ax;
            double ly = b.y(right, fb.out(i)) - ay;
            double mx = middle.x(right, fm.out(i)) - ax;
            double my = middle.y(right, fm.out(i)) - ay;
            double length = lx * lx + ly * ly;
            if (!(length > 0)) {
                continue;
            }
            double share = (mx * lx + my * ly) / length;
            double aside = Math.abs(mx * ly - my * lx) / Math.sqrt(length);
            int strip = Math.min(i, fa.strips() - 1);
            boolean outer = i > strip;
            double za = fa.finished(strip, outer);
            double zb = fb.finished(strip, outer);
            double up = Math.abs(fm.finished(strip, outer) - za - share * (zb - za));
            boolean onGround = outer && fa.isClosed();
            if (aside > TRUE || (!onGround && up > TRUE)) {
                return true;
            }
        }
        return false;
    }

    /** How far something strays from the truth, and at which share of the way. */
    private record Stray(double off, double share) {
        static final Stray NONE = new Stray(0, Double.NaN);
    }

    /**
     * Where, between two rays that agree on the kind of side, the ground says otherwise: the corner
     * that decides lies on its other side there.
     */
    private Stray decisionStray(Ray a, Ray b, boolean right) {
        Flank fa = a.flank(right);
        Flank fb = b.flank(right);
        double za = fa.decidesHeight();
        double zb = fb.decidesHeight();
        if (Double.isNaN(za) || Double.isNaN(zb) || !fa.isClosed()) {
            return Stray.NONE;
        }
        double ax = a.x(right, fa.decidesOut());
        double ay = a.y(right, fa.decidesOut());
        double bx = b.x(right, fb.decidesOut());
        double by = b.y(right, fb.decidesOut());
        if (ax == bx && ay == by) {
            return Stray.NONE;
        }
        GroundLine line = cutter.cut(ax, ay, bx, by);
        double length = Math.sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay));
        int low = 0;
        int high = 0;
        Stray lowest = Stray.NONE;
        Stray highest = Stray.NONE;
        for (int i = 0; i < line.size(); i++) {
            double share = line.distance(i) / length;
            double above = za + share * (zb - za) - line.z(i);
            boolean inside = i > 0 && i < line.size() - 1;
            if (above < -TRUE) {
                low++;
                lowest = inside && -above > lowest.off ? new Stray(-above, share) : lowest;
            } else if (above > TRUE) {
                high++;
                highest = inside && above > highest.off ? new Stray(above, share) : highest;
            }
        }
        if (low == 0 || high == 0 || line.size() < 3) {
            return Stray.NONE;
        }
        double ends = za - line.z(0) + zb - line.z(line.size() - 1);
        return ends > 0 ? lowest : highest;
    }

    /** How far the straight line between two catch points lies off the ground. */
    private Stray catchStray(Ray a, Ray b, boolean right) {
        Flank fa = a.flank(right);
        Flank fb = b.flank(right);
        if (!fa.isClosed()) {
            return Stray.NONE;
        }
        double ax = a.x(right, fa.catchOut());
        double ay = a.y(right, fa.catchOut());
        double bx = b.x(right, fb.catchOut());
        double by = b.y(right, fb.catchOut());
        if (ax == bx && ay == by) {
            return Stray.NONE;
        }
        double za = fa.catchHeight();
        double zb = fb.catchHeight();
        GroundLine line = cutter.cut(ax, ay, bx, by);
        double length = Math.sqrt((bx - ax) * (bx - ax) + (by - ay) * (by - ay));
        Stray worst = Stray.NONE;
        for (int i = 1; i + 1 < line.size(); i++) {
            double share = line.distance(i) / length;
            double off = Math.abs(za + share * (zb - za) - line.z(i));
            if (off > worst.off) {
                worst = new Stray(off, share);
            }
        }
        return worst;
    }
}
