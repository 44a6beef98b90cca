package lanewright.desktop.look;

import lanewright.sheets.drawing.Outline;

/**
 * Leaves out corners of a line that make no difference on the screen. From the last corner kept,
 * the directions are followed that pass every later one near enough; the first that none of them
 * passes begins anew. (The cone of Williams, 1978, An efficient algorithm for the piecewise linear
 * approximation of planar curves, Computer Graphics and Image Processing 8.)
 */
final class Thin {

    /** Takes a corner. */
    @FunctionalInterface
    interface Sink {
        void to(double x, double y);
    }

    private final double near;

    /**
     * A thinner.
     *
     * @param near how far a corner that is left out may lie from the line, px
     */
    Thin(double near) {
        this.near = near;
    }

    /** Hands over the corners that stay: the first, the last and those that are needed. */
    void follow(Outline line, Sink kept) {
        int last = line.size() - 1;
        kept.to(line.x(0), line.y(0));
        int from = 0;
        double middle = Double.NaN;
        double low = 0;
        double high = 0;
        for (int i = 1; i <= last; i++) {
            double dx = line.x(i) - line.x(from);
            double dy = line.y(i) - line.y(from);
            double away = Math.sqrt(dx * dx + dy * dy);
            if (away <= near && Double.isNaN(middle)) {
                continue;
            }
            double way = Math.atan2(dy, dx);
            double half = away <= near ? Math.PI : Math.asin(near / away);
            if (!Double.isNaN(middle)) {
                double turn = Math.IEEEremainder(way - middle, 2 * Math.PI);
                boolean on = turn >= low && turn <= high && ahead(line, from, i);
                if (on) {
                    low = Math.max(low, turn - half);
                    high = Math.min(high, turn + half);
                    continue;
                }
                from = i - 1;
                kept.to(line.x(from), line.y(from));
                dx = line.x(i) - line.x(from);
                dy = line.y(i) - line.y(from);
                away = Math.sqrt(dx * dx + dy * dy);
                middle = Double.NaN;
                if (away <= near) {
                    continue;
                }
                way = Math.atan2(dy, dx);
                half = Math.asin(near / away);
            }
            middle = way;
            low = -half;
            high = half;
        }
        if (last > 0) {
            kept.to(line.x(last), line.y(last));
        }
    }

    /** Whether a line goes on away from a corner, and does not come back to it. */
    private static boolean ahead(Outline line, int from, int i) {
        return away(line, from, i) >= away(line, from, i - 1);
    }

    private static double away(Outline line, int from, int to) {
        double dx = line.x(to) - line.x(from);
        double dy = line.y(to) - line.y(from);
        return dx * dx + dy * dy;
    }
}
