package lanewright.lane.section;

import java.util.Arrays;

/**
 * Areas of one side of a section and their moments about the alignment, by integrating
 * piecewise-linear lines: every integral is that of a straight line between two places and exact.
 * Used again for every section.
 */
final class SideAreas {

    static final int STRIP = 0;
    static final int CUT = 1;
    static final int FILL = 2;
    static final int EDGE_REFILL = 3;
    static final int TOPSOIL_BACK = 4;
    static final int UNDERCUT = 5;
    static final int COUNT = 6;

    private final double[] area = new double[COUNT];
    private final double[] moment = new double[COUNT];

    double area(int which) {
        return area[which];
    }

    /** Area times the distance of its centroid out from the alignment, m³. */
    double moment(int which) {
        return moment[which];
    }

    /** Forgets the side before; a side that never meets the ground keeps these zeros. */
    void clear() {
        Arrays.fill(area, 0);
        Arrays.fill(moment, 0);
    }

    /**
     * Measures a side that meets the ground.
     *
     * @param strip whether topsoil is stripped
     */
    void measure(SideTrace side, boolean strip) {
        clear();
        GroundSide g = side.ground();
        Corners f = side.finished;
        Corners s = side.subgrade;
        double end = side.catchOut();
        double hinge = side.hingeOut();
        int i = 0;
        int j = 0;
        int k = 0;
        double a = 0;
        while (a < end) {
            while (f.out[i + 1] <= a) {
                i++;
            }
            while (s.out[j + 1] <= a) {
                j++;
            }
            while (g.out[k + 1] <= a) {
                k++;
            }
            double b = Math.min(Math.min(f.out[i + 1], s.out[j + 1]), Math.min(g.out[k + 1], end));
            double soilA = strip ? at(g.out, g.topsoil, k, a) : 0;
            double soilB = strip ? at(g.out, g.topsoil, k, b) : 0;
            double groundA = at(g.out, g.height, k, a);
            double groundB = at(g.out, g.height, k, b);
            double finishedA = at(f.out, f.height, i, a);
            double finishedB = at(f.out, f.height, i, b);
            double earthA = at(s.out, s.height, j, a);
            double earthB = at(s.out, s.height, j, b);
            double fillA = earthA - (groundA - soilA);
            double fillB = earthB - (groundB - soilB);
            add(STRIP, a, b, soilA, soilB);
            addPositive(FILL, a, b, fillA, fillB);
            addPositive(CUT, a, b, -fillA, -fillB);
            if (a >= hinge) {
                add(TOPSOIL_BACK, a, b, finishedA - earthA, finishedB - earthB);
                edge(a, b, fillA, fillB, finishedA - groundA, finishedB - groundB);
            } else {
                double bearsA = at(g.out, g.bearing, k, a) - soilA;
                double bearsB = at(g.out, g.bearing, k, b) - soilB;
                undercut(a, b, fillA, fillB, bearsA, bearsB);
            }
            a = b;
        }
        if (strip) {
            margin(g, end, side.limit());
        }
    }

    private static double at(double[] out, double[] value, int i, double at) {
        return GroundSide.lerp(out[i], out[i + 1], value[i], value[i + 1], at);
    }

    /** In the margin topsoil is stripped, and put back to the old ground. */
    private void margin(GroundSide g, double from, double to) {
        int k = g.segment(from);
        double a = from;
        while (a < to) {
            while (g.out[k + 1] <= a) {
                k++;
            }
            double b = Math.min(g.out[k + 1], to);
            double soilA = at(g.out, g.topsoil, k, a);
            double soilB = at(g.out, g.topsoil, k, b);
            add(STRIP, a, b, soilA, soilB);
            add(TOPSOIL_BACK, a, b, soilA, soilB);
            a = b;
        }
    }

    /** Fill on a slope whose finished line lies at or below the old ground. */
    private void edge(
            double a, double b, double fillA, double fillB, double aboveA, double aboveB) {
        if (aboveA <= 0 && aboveB <= 0) {
            addPositive(EDGE_REFILL, a, b, fillA, fillB);
        } else if (aboveA <= 0 || aboveB <= 0) {
            double part = aboveA / (aboveA - aboveB);
            double middle = a + part * (b - a);
            double fill = fillA + part * (fillB - fillA);
            if (aboveA <= 0) {
                addPositive(EDGE_REFILL, a, middle, fillA, fill);
            } else {
                addPositive(EDGE_REFILL, middle, b, fill, fillB);
            }
        }
    }

    /**
     * Earth that does not bear, from the lower of subgrade and stripped ground down.
     *
     * @param bearsA depth of the bearing line under the stripped ground
     */
    private void undercut(
            double a, double b, double fillA, double fillB, double bearsA, double bearsB) {
        if (Double.isNaN(bearsA) || Double.isNaN(bearsB)) {
            return;
        }
        if (fillA < 0 == fillB < 0) {
            addPositive(UNDERCUT, a, b, Math.min(fillA, 0) + bearsA, Math.min(fillB, 0) + bearsB);
            return;
        }
        double part = fillA / (fillA - fillB);
        double middle = a + part * (b - a);
        double bears = bearsA + part * (bearsB - bearsA);
        addPositive(UNDERCUT, a, middle, Math.min(fillA, 0) + bearsA, bears);
        addPositive(UNDERCUT, middle, b, bears, Math.min(fillB, 0) + bearsB);
    }

    /** Adds the part of a straight line that lies above zero. */
    private void addPositive(int which, double a, double b, double va, double vb) {
        if (va >= 0 && vb >= 0) {
            add(which, a, b, va, vb);
        } else if (va > 0) {
            add(which, a, a + (b - a) * (va / (va - vb)), va, 0);
        } else if (vb > 0) {
            add(which, b - (b - a) * (vb / (vb - va)), b, 0, vb);
        }
    }

    /** ∫ v du and ∫ u v du of a straight line from (a, va) to (b, vb). */
    private void add(int which, double a, double b, double va, double vb) {
        double width = b - a;
        double part = (va + vb) / 2 * width;
        area[which] += part;
        moment[which] += a * part + width * width * (va / 6 + vb / 3);
    }
}
