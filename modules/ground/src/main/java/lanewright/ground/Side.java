package lanewright.ground;

import java.math.BigDecimal;

/**
 * On which side of a line a point lies. The sign is exact for all finite doubles: plain doubles
 * where a bound on their rounding proves the sign, products without rounding where the differences
 * of coordinates had none, and whole decimal arithmetic for the rest.
 */
final class Side {

    /**
     * Rounding bound of the two-by-two determinant, {@code (3 + 16 ε) ε} with ε = 2^-53 (J. R.
     * Shewchuk, Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric Predicates,
     * Discrete and Computational Geometry 18, 1997, section 4).
     */
    private static final double BOUND = (3 + 16 * 0x1p-53) * 0x1p-53;

    /** Products smaller than this may lose their last digits below the smallest double. */
    private static final double TINY = 0x1p-900;

    private Side() {}

    /**
     * Twice the area of the triangle p, q, v: over zero if v lies to the left of the line from p to
     * q, under zero to the right, zero on it. The sign is exact, the size as good as a double.
     */
    static double of(double px, double py, double qx, double qy, double vx, double vy) {
        double left = (qx - px) * (vy - py);
        double right = (qy - py) * (vx - px);
        double area = left - right;
        double bound = BOUND * (Math.abs(left) + Math.abs(right));
        if ((area > bound || -area > bound) && bound > TINY) {
            return area;
        }
        return careful(px, py, qx, qy, vx, vy, area);
    }

    private static double careful(
            double px, double py, double qx, double qy, double vx, double vy, double area) {
        double ax = qx - px;
        double ay = qy - py;
        double bx = vx - px;
        double by = vy - py;
        if (isExact(qx, px, ax)
                && isExact(qy, py, ay)
                && isExact(vx, px, bx)
                && isExact(vy, py, by)) {
            double left = ax * by;
            double right = ay * bx;
            if (isSafe(left, ax, by) && isSafe(right, ay, bx)) {
                double lowLeft = Math.fma(ax, by, -left);
                double lowRight = Math.fma(ay, bx, -right);
                if (left == right) {
                    return signed(Double.compare(lowLeft + 0.0, lowRight + 0.0), area);
                }
                if (Math.abs(left - right) > Math.abs(lowLeft) + Math.abs(lowRight)) {
                    return signed(left > right ? 1 : -1, area);
                }
            }
        }
        return signed(exact(px, py, qx, qy, vx, vy), area);
    }

    /** True if a product is zero because a factor is, or far from the smallest double. */
    private static boolean isSafe(double product, double a, double b) {
        return a == 0 || b == 0 || Math.abs(product) > TINY;
    }

    /**
     * True if {@code difference} is {@code a - b} without rounding (D. E. Knuth, The Art of
     * Computer Programming 2, 4.2.2, theorem B).
     */
    static boolean isExact(double a, double b, double difference) {
        double shareB = a - difference;
        double shareA = difference + shareB;
        return (a - shareA) + (shareB - b) == 0;
    }

    private static int exact(double px, double py, double qx, double qy, double vx, double vy) {
        BigDecimal x = new BigDecimal(px);
        BigDecimal y = new BigDecimal(py);
        BigDecimal left = new BigDecimal(qx).subtract(x).multiply(new BigDecimal(vy).subtract(y));
        BigDecimal right = new BigDecimal(qy).subtract(y).multiply(new BigDecimal(vx).subtract(x));
        return left.compareTo(right);
    }

    private static double signed(int sign, double area) {
        if (sign == 0) {
            return 0;
        }
        double size = Math.max(Math.abs(area), Double.MIN_NORMAL);
        return sign > 0 ? size : -size;
    }
}
