package lanewright.sheets.figure;

import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;

/** Arrows that say which way water takes. */
final class FlowArrows {

    private FlowArrows() {}

    /**
     * Arrows down a way of water, in the direction that it takes over some length, so that a small
     * step of it does not turn them.
     */
    static void draw(Pen pen, Outline line) {
        double length = 0;
        for (int i = 1; i < line.size(); i++) {
            length += Math.hypot(line.x(i) - line.x(i - 1), line.y(i) - line.y(i - 1));
        }
        if (length < 16) {
            return;
        }
        int count = (int) Math.max(1, Math.round(length / 90));
        for (int k = 0; k < count; k++) {
            double middle = length * (k + 0.6) / count;
            double[] from = at(line, middle - 7);
            double[] to = at(line, middle + 7);
            double dx = to[0] - from[0];
            double dy = to[1] - from[1];
            double chord = Math.hypot(dx, dy);
            if (chord < 9) {
                continue;
            }
            double[] tip = at(line, middle + 3.5);
            double ux = dx / chord * 7;
            double uy = dy / chord * 7;
            pen.area(
                    Role.FLOW,
                    Outline.closed(
                            tip[0],
                            tip[1],
                            tip[0] - ux + uy * 0.42,
                            tip[1] - uy - ux * 0.42,
                            tip[0] - ux - uy * 0.42,
                            tip[1] - uy + ux * 0.42));
        }
    }

    /** The place so far along a line, held to its ends. */
    private static double[] at(Outline line, double length) {
        double left = length;
        for (int i = 1; i < line.size(); i++) {
            double dx = line.x(i) - line.x(i - 1);
            double dy = line.y(i) - line.y(i - 1);
            double piece = Math.hypot(dx, dy);
            if (left <= piece || i == line.size() - 1) {
                double part = piece > 0 ? Math.max(0, Math.min(1, left / piece)) : 0;
                return new double[] {line.x(i - 1) + part * dx, line.y(i - 1) + part * dy};
            }
            left -= piece;
        }
        return new double[] {line.x(0), line.y(0)};
    }
}
