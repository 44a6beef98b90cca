package lanewright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Drawing;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;

/**
 * One sheet of the set, of one or more pages, still without its title block.
 *
 * @param name as the list on the cover has it
 * @param paper size of its pages
 * @param pages what is on each
 */
public record Sheet(String name, Paper paper, List<List<Mark>> pages) {
    /** Copies the lists. */
    public Sheet {
        pages = pages.stream().map(List::copyOf).toList();
    }

    /**
     * The pages with their title blocks.
     *
     * @param plan name of the plan
     * @param date as the owner wrote it; may be empty
     * @param caution said at the foot of every page
     * @param first number of the first of these pages in the set
     * @param of number of pages in the set
     */
    public List<Drawing> finished(String plan, String date, String caution, int first, int of) {
        var drawings = new ArrayList<Drawing>();
        for (int i = 0; i < pages.size(); i++) {
            var pen = new Pen();
            pages.get(i).forEach(pen::add);
            titleBlock(pen, plan, date, caution, first + i, of);
            drawings.add(pen.drawing(paper.width(), paper.height()));
        }
        return drawings;
    }

    private void titleBlock(Pen pen, String plan, String date, String caution, int number, int of) {
        double left = Flow.MARGIN;
        double right = paper.width() - Flow.MARGIN;
        double top = paper.height() - Flow.FOOT + 12;
        double third = (right - left) / 3;
        pen.line(Role.FRAME, left, top, right, top);
        double base = top + 12;
        pen.bold(
                Role.TEXT,
                Type.cut(plan, Type.NOTE, true, third * 1.4),
                left,
                base,
                Type.NOTE,
                Anchor.START);
        String says =
                Type.cut(date, Type.NOTE, false, third / 2)
                        + (date.isBlank() ? "" : "  ·  ")
                        + name
                        + "  ·  sheet "
                        + number
                        + " of "
                        + of;
        pen.gauge(
                new Gauge(Gauge.Use.SHEET, says, List.of((double) number, (double) of)),
                right,
                base,
                Type.NOTE,
                false,
                Anchor.END);
        pen.words(
                Role.NOTE,
                Type.cut(caution, Type.NOTE, false, right - left),
                left,
                base + Type.NOTE * Type.LEAD,
                Type.NOTE,
                Anchor.START);
    }
}
