package lanewright.ground;

import org.locationtech.jts.algorithm.CGAlgorithmsDD;

/**
 * On which side of a line a point lies. The sign is right for all doubles that a survey can hold:
 * plain doubles where a bound on their rounding proves the sign, double-double arithmetic where it
 * does not.
 */
final class Side {

    /**
     * Rounding bound of the two-by-two determinant, {@code (3 + 16 ε) ε} with ε = 2^-53 (J. R.
     * Shewchuk, Adaptive Precision Floating-Point Arithmetic and Fast Robust Geometric Predicates,
     * Discrete and Computational Geometry 18, 1997, section 4).
     */
    private static final double BOUND = (3 + 16 * 0x1p-53) * 0x1p-53;

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
        if (area > bound || -area > bound) {
            return area;
        }
        return careful(px, py, qx, qy, vx, vy, area);
    }

    private static double careful(
            double px, double py, double qx, double qy, double vx, double vy, double area) {
        int sign = CGAlgorithmsDD.orientationIndex(px, py, qx, qy, vx, vy);
        if (sign == 0) {
            return 0;
        }
        double size = Math.max(Math.abs(area), Double.MIN_NORMAL);
        return sign > 0 ? size : -size;
    }
}
