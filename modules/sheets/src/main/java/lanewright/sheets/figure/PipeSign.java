package lanewright.sheets.figure;

import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;

/** A pipe seen from above. */
final class PipeSign {

    private PipeSign() {}

    /** Two walls with a hollow between them, so that it looks like no other line. */
    static void draw(Pen pen, Outline line) {
        pen.line(Role.PIPE, line).line(Role.PIPE_CORE, line);
        for (int end : new int[] {0, line.size() - 1}) {
            int next = end == 0 ? 1 : end - 1;
            double dx = line.x(end) - line.x(next);
            double dy = line.y(end) - line.y(next);
            double length = Math.max(1e-9, Math.hypot(dx, dy));
            double ux = -dy / length * 3.4;
            double uy = dx / length * 3.4;
            pen.line(
                    Role.TICK,
                    line.x(end) - ux,
                    line.y(end) - uy,
                    line.x(end) + ux,
                    line.y(end) + uy);
        }
    }
}
