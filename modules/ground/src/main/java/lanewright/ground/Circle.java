package lanewright.ground;

import java.math.BigDecimal;

/**
 * Whether a point lies inside the circle through three others. The answer is exact for all finite
 * doubles: plain doubles where a bound on their rounding proves the sign, pairs of doubles where
 * those prove it, whole decimal arithmetic for the rest. For one thread.
 */
final class Circle {

    /**
     * Rounding bound of the determinant in doubles, {@code (10 + 96 ε) ε} with ε = 2^-53 (J. R.
     * Shewchuk, Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric Predicates,
     * Discrete and Computational Geometry 18, 1997, section 4).
     */
    private static final double BOUND = (10 + 96 * 0x1p-53) * 0x1p-53;

    /**
     * Rounding bound of the same determinant in pairs of doubles. Every operation on pairs is good
     * to 2^-102 at least; fewer than 64 of them follow each other here, so this is generous.
     */
    private static final double PAIR_BOUND = 0x1p-95;

    /** Below this size products may lose their last digits below the smallest double. */
    private static final double TINY = 0x1p-600;

    /** Grids in whole metres and binary parts of one are counted in steps this small. */
    private static final double PER_METRE = 64;

    /** Steps below this leave a determinant of six times its fourth power, under 2^63. */
    private static final double MOST_STEPS = 1 << 14;

    private double high;
    private double low;

    /**
     * Over zero if d lies inside the circle through a, b and c (counter-clockwise), under zero
     * outside, zero on it.
     */
    int of(double ax, double ay, double bx, double by, double cx, double cy, double dx, double dy) {
        double adx = ax - dx;
        double ady = ay - dy;
        double bdx = bx - dx;
        double bdy = by - dy;
        double cdx = cx - dx;
        double cdy = cy - dy;
        double bc = bdx * cdy;
        double cb = cdx * bdy;
        double ca = cdx * ady;
        double ac = adx * cdy;
        double ab = adx * bdy;
        double ba = bdx * ady;
        double liftA = adx * adx + ady * ady;
        double liftB = bdx * bdx + bdy * bdy;
        double liftC = cdx * cdx + cdy * cdy;
        double determinant = liftA * (bc - cb) + liftB * (ca - ac) + liftC * (ab - ba);
        double size =
                (Math.abs(bc) + Math.abs(cb)) * liftA
                        + (Math.abs(ca) + Math.abs(ac)) * liftB
                        + (Math.abs(ab) + Math.abs(ba)) * liftC;
        double bound = BOUND * size;
        if (Math.abs(determinant) > bound && bound > TINY) {
            return determinant > 0 ? 1 : -1;
        }
        if (isRectangle(ax, ay, bx, by, cx, cy, dx, dy)) {
            return 0;
        }
        if (isCoarse(adx)
                && isCoarse(ady)
                && isCoarse(bdx)
                && isCoarse(bdy)
                && isCoarse(cdx)
                && isCoarse(cdy)
                && Side.isExact(ax, dx, adx)
                && Side.isExact(ay, dy, ady)
                && Side.isExact(bx, dx, bdx)
                && Side.isExact(by, dy, bdy)
                && Side.isExact(cx, dx, cdx)
                && Side.isExact(cy, dy, cdy)) {
            return inWholes(
                    (long) (adx * PER_METRE),
                    (long) (ady * PER_METRE),
                    (long) (bdx * PER_METRE),
                    (long) (bdy * PER_METRE),
                    (long) (cdx * PER_METRE),
                    (long) (cdy * PER_METRE));
        }
        int sign = inPairs(ax, ay, bx, by, cx, cy, dx, dy, size);
        return sign != 0 ? sign : exact(ax, ay, bx, by, cx, cy, dx, dy);
    }

    /** True for a number of whole steps so small that whole-number arithmetic cannot overflow. */
    private static boolean isCoarse(double difference) {
        double steps = difference * PER_METRE;
        return Math.abs(steps) < MOST_STEPS && steps == Math.rint(steps);
    }

    private static int inWholes(long ax, long ay, long bx, long by, long cx, long cy) {
        long determinant =
                (ax * ax + ay * ay) * (bx * cy - cx * by)
                        + (bx * bx + by * by) * (cx * ay - ax * cy)
                        + (cx * cx + cy * cy) * (ax * by - bx * ay);
        return Long.signum(determinant);
    }

    /** Corners of an upright rectangle, as on every grid, lie on one circle. */
    private static boolean isRectangle(
            double ax,
            double ay,
            double bx,
            double by,
            double cx,
            double cy,
            double dx,
            double dy) {
        return (ax == bx && bx != cx && cx == dx && ay == dy && by == cy)
                || (ax == dx && bx == cx && ay == by && cy == dy);
    }

    private int inPairs(
            double ax,
            double ay,
            double bx,
            double by,
            double cx,
            double cy,
            double dx,
            double dy,
            double size) {
        double adx = ax - dx;
        double ady = ay - dy;
        double bdx = bx - dx;
        double bdy = by - dy;
        double cdx = cx - dx;
        double cdy = cy - dy;
        double adxLow = lost(ax, dx, adx);
        double adyLow = lost(ay, dy, ady);
        double bdxLow = lost(bx, dx, bdx);
        double bdyLow = lost(by, dy, bdy);
        double cdxLow = lost(cx, dx, cdx);
        double cdyLow = lost(cy, dy, cdy);
        term(adx, adxLow, ady, adyLow, bdx, bdxLow, bdy, bdyLow, cdx, cdxLow, cdy, cdyLow);
        double sum = high;
        double sumLow = low;
        term(bdx, bdxLow, bdy, bdyLow, cdx, cdxLow, cdy, cdyLow, adx, adxLow, ady, adyLow);
        add(sum, sumLow, high, low);
        sum = high;
        sumLow = low;
        term(cdx, cdxLow, cdy, cdyLow, adx, adxLow, ady, adyLow, bdx, bdxLow, bdy, bdyLow);
        add(sum, sumLow, high, low);
        double bound = PAIR_BOUND * size;
        if (size > TINY && Math.abs(high) > bound) {
            return high > 0 ? 1 : -1;
        }
        return 0;
    }

    /** What rounding took from {@code difference = a - b}. */
    private static double lost(double a, double b, double difference) {
        double shareB = a - difference;
        double shareA = difference + shareB;
        return (a - shareA) + (shareB - b);
    }

    /** {@code (px² + py²) (qx ry − rx qy)}. */
    private void term(
            double px,
            double pxl,
            double py,
            double pyl,
            double qx,
            double qxl,
            double qy,
            double qyl,
            double rx,
            double rxl,
            double ry,
            double ryl) {
        multiply(px, pxl, px, pxl);
        double lift = high;
        double liftLow = low;
        multiply(py, pyl, py, pyl);
        add(lift, liftLow, high, low);
        lift = high;
        liftLow = low;
        multiply(qx, qxl, ry, ryl);
        double cross = high;
        double crossLow = low;
        multiply(rx, rxl, qy, qyl);
        add(cross, crossLow, -high, -low);
        multiply(lift, liftLow, high, low);
    }

    private void multiply(double a, double aLow, double b, double bLow) {
        double product = a * b;
        double rest = Math.fma(a, b, -product) + (a * bLow + aLow * b);
        high = product + rest;
        low = rest - (high - product);
    }

    private void add(double a, double aLow, double b, double bLow) {
        double sum = a + b;
        double part = sum - a;
        double rest = (a - (sum - part)) + (b - part);
        double lowSum = aLow + bLow;
        double lowPart = lowSum - aLow;
        double lowRest = (aLow - (lowSum - lowPart)) + (bLow - lowPart);
        rest += lowSum;
        double s = sum + rest;
        rest = rest - (s - sum) + lowRest;
        high = s + rest;
        low = rest - (high - s);
    }

    private static int exact(
            double ax,
            double ay,
            double bx,
            double by,
            double cx,
            double cy,
            double dx,
            double dy) {
        BigDecimal x = new BigDecimal(dx);
        BigDecimal y = new BigDecimal(dy);
        BigDecimal adx = new BigDecimal(ax).subtract(x);
        BigDecimal ady = new BigDecimal(ay).subtract(y);
        BigDecimal bdx = new BigDecimal(bx).subtract(x);
        BigDecimal bdy = new BigDecimal(by).subtract(y);
        BigDecimal cdx = new BigDecimal(cx).subtract(x);
        BigDecimal cdy = new BigDecimal(cy).subtract(y);
        return term(adx, ady, bdx, bdy, cdx, cdy)
                .add(term(bdx, bdy, cdx, cdy, adx, ady))
                .add(term(cdx, cdy, adx, ady, bdx, bdy))
                .signum();
    }

    private static BigDecimal term(
            BigDecimal px,
            BigDecimal py,
            BigDecimal qx,
            BigDecimal qy,
            BigDecimal rx,
            BigDecimal ry) {
        BigDecimal lift = px.multiply(px).add(py.multiply(py));
        return lift.multiply(qx.multiply(ry).subtract(rx.multiply(qy)));
    }
}
