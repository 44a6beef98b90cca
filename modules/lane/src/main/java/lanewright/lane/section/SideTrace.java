package lanewright.lane.section;

import lanewright.lane.section.SideResult.Kind;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.HalfShape;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.TypicalSection;

/**
 * One side of a section, from the alignment out to where it meets the ground. All distances are
 * outward, so both sides come out of the same arithmetic. Used again for every section.
 *
 * <p>A ditch is dug where the inner end of its bottom lies below the ground, or always, or never,
 * by its rule. The slope then runs from the ditch up to the ground. Without a ditch the foreslope
 * runs on from the hinge to the ground; only where a ditch is ruled out and the hinge lies below
 * the ground does a slope rise from the hinge. In each case the catch point is the first meeting
 * with the ground going outward from the ditch's inner bottom, or from the hinge.
 */
final class SideTrace {

    /**
     * Heights nearer than this are one height when it is decided whether a ditch is dug or a slope
     * rises or falls, m. Keeps rounding from deciding where lane and ground coincide all along.
     */
    static final double SAME_HEIGHT = 1e-6;

    final Corners finished = new Corners();
    final Corners subgrade = new Corners();

    private Kind kind = Kind.OPEN;
    private double height;
    private HalfShape half;
    private GroundSide ground = GroundSide.NONE;
    private boolean dug;
    private double innerOut;
    private double innerHeight;
    private double outerOut;
    private double topsoil;
    private boolean topsoilInDitch;
    private double limit;
    private boolean unread;
    private boolean bottomTooHigh;

    SideTrace(HalfShape any) {
        half = any;
    }

    /**
     * Follows a side to the ground.
     *
     * @param shape the lane from alignment to hinge
     * @param profile finished height at the alignment, m
     * @param typical the typical section
     * @param side its side
     * @param bottom height of the ditch bottom, m, or NaN for its depth under the hinge
     * @param margin how far the limit lies beyond the catch point, m
     * @param across the ground on this side
     */
    void follow(
            HalfShape shape,
            double profile,
            TypicalSection typical,
            SideShape side,
            double bottom,
            double margin,
            GroundSide across) {
        half = shape;
        height = profile;
        ground = across;
        topsoil = typical.topsoilBack();
        topsoilInDitch = typical.topsoilInDitch();
        unread = false;
        bottomTooHigh = false;
        dug = false;
        toHinge();
        toGround(side, bottom);
        setLimit(margin);
    }

    private void toHinge() {
        finished.clear();
        for (int i = 0; i < half.finishedSize(); i++) {
            finished.add(half.finishedOut(i), height + half.finishedRise(i));
        }
        subgrade.clear();
        for (int i = 0; i < half.subgradeSize(); i++) {
            subgrade.add(half.subgradeOut(i), height + half.subgradeRise(i));
        }
    }

    private void toGround(SideShape side, double bottom) {
        double hingeOut = finished.lastOut();
        double hingeHeight = finished.lastHeight();
        double there = ground.heightAt(hingeOut);
        kind = Kind.OPEN;
        if (Double.isNaN(there)) {
            unread = !ground.ends;
            return;
        }
        innerHeight = Double.isNaN(bottom) ? hingeHeight - side.ditch().depth() : bottom;
        innerOut = hingeOut + side.foreslope() * (hingeHeight - innerHeight);
        bottomTooHigh = side.ditch().rule() != DitchRule.NEVER && innerHeight >= hingeHeight;
        dug = isDug(side);
        if (dug) {
            earth(hingeOut, hingeHeight, 0, topsoil);
            ditch(side);
            return;
        }
        double above = hingeHeight - there;
        if (Math.abs(above) <= SAME_HEIGHT) {
            kind = Kind.FILL;
        } else {
            earth(hingeOut, hingeHeight, 0, topsoil);
            boolean rises = above < 0 && side.ditch().rule() == DitchRule.NEVER;
            double slope = rises ? 1 / side.cutSlope() : -1 / side.foreslope();
            slope(hingeOut, hingeHeight, slope, above < 0 ? Kind.CUT : Kind.FILL);
        }
    }

    private boolean isDug(SideShape side) {
        if (bottomTooHigh || side.ditch().rule() == DitchRule.NEVER) {
            return false;
        }
        if (side.ditch().rule() == DitchRule.ALWAYS) {
            return true;
        }
        double there = ground.heightAt(innerOut);
        if (Double.isNaN(there)) {
            unread |= !ground.ends;
            return false;
        }
        return innerHeight < there - SAME_HEIGHT;
    }

    private void ditch(SideShape side) {
        finished.add(innerOut, innerHeight);
        earth(innerOut, innerHeight, topsoil, topsoilInDitch ? topsoil : 0);
        outerOut = innerOut + side.ditch().bottom();
        if (Double.isNaN(ground.heightAt(innerOut))) {
            unread |= !ground.ends;
            return;
        }
        double met = meet(innerOut, innerHeight, 0, outerOut);
        if (!Double.isNaN(met)) {
            kind = Kind.DITCH;
            outerOut = met;
            end(met, innerHeight, topsoilInDitch ? topsoil : 0);
            return;
        }
        if (outerOut > innerOut) {
            finished.add(outerOut, innerHeight);
        }
        earth(outerOut, innerHeight, topsoilInDitch ? topsoil : 0, topsoil);
        slope(outerOut, innerHeight, 1 / side.backslope(), Kind.DITCH);
    }

    /** Runs a slope out to the ground, or to the ground's end where it never meets it. */
    private void slope(double out, double z, double rise, Kind found) {
        double met = meet(out, z, rise, Double.POSITIVE_INFINITY);
        if (!Double.isNaN(met)) {
            kind = found;
            end(met, z + (met - out) * rise, topsoil);
            return;
        }
        unread |= !ground.ends;
        if (ground.end() > out) {
            end(ground.end(), z + (ground.end() - out) * rise, topsoil);
        }
    }

    private void end(double out, double z, double soil) {
        finished.addNew(out, z);
        subgrade.addNew(out, z - soil);
    }

    /** The subgrade at a corner of the finished surface, where topsoil may begin or end. */
    private void earth(double out, double z, double soilBefore, double soilAfter) {
        subgrade.addNew(out, z - soilBefore);
        subgrade.addNew(out, z - soilAfter);
    }

    /** First place, going outward, where a straight line meets the ground; NaN if none. */
    private double meet(double out, double z, double rise, double until) {
        int k = ground.segment(out);
        double a = out;
        double above = z - ground.heightAt(out);
        if (above == 0) {
            return out;
        }
        for (int i = k + 1; i < ground.out.length && a < until; i++) {
            double b = Math.min(ground.out[i], until);
            double there =
                    b < ground.out[i]
                            ? GroundSide.lerp(
                                    ground.out[i - 1],
                                    ground.out[i],
                                    ground.height[i - 1],
                                    ground.height[i],
                                    b)
                            : ground.height[i];
            double next = z + (b - out) * rise - there;
            if (next == 0) {
                return b;
            }
            if (above < 0 != next < 0) {
                return a + (b - a) * (above / (above - next));
            }
            a = b;
            above = next;
        }
        return Double.NaN;
    }

    private void setLimit(double margin) {
        if (kind == Kind.OPEN) {
            limit = ground.isEmpty() ? 0 : ground.end();
            return;
        }
        limit = finished.lastOut() + margin;
        if (limit > ground.end()) {
            limit = ground.end();
            unread |= !ground.ends;
        }
    }

    Kind kind() {
        return kind;
    }

    GroundSide ground() {
        return ground;
    }

    double hingeOut() {
        return half.hingeOut();
    }

    double catchOut() {
        return finished.lastOut();
    }

    double limit() {
        return limit;
    }

    boolean isOpen() {
        return kind == Kind.OPEN;
    }

    /** True if more ground must be read before this side is known. */
    boolean isUnread() {
        return unread;
    }

    /** True if a ditch bottom was given that does not lie below the hinge. */
    boolean isBottomTooHigh() {
        return bottomTooHigh;
    }

    /** What came out, with offsets positive right. */
    SideResult result(int sign) {
        boolean met = kind != Kind.OPEN;
        return new SideResult(
                kind,
                corner(sign, half.edgeOut(), height + half.edgeRise()),
                corner(sign, half.stoneOut(), height + half.stoneRise()),
                corner(sign, half.hingeOut(), height + half.hingeRise()),
                dug ? corner(sign, innerOut, innerHeight) : null,
                dug ? corner(sign, outerOut, innerHeight) : null,
                met ? corner(sign, finished.lastOut(), finished.lastHeight()) : null,
                sign * limit);
    }

    private static Corner corner(int sign, double out, double z) {
        return new Corner(sign * out, z);
    }
}
