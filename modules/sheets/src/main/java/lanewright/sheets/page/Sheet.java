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
 * @param joins whether the first of them is the last page of the sheet before
 * @param end how far down its last page is filled, pt
 */
public record Sheet(String name, Paper paper, List<List<Mark>> pages, boolean joins, double end) {
    /** Copies the lists. */
    public Sheet {
        pages = pages.stream().map(List::copyOf).toList();
    }

    /**
     * A page as it is printed.
     *
     * @param begins names of the sheets that begin on it
     * @param drawing what is on it
     */
    public record Page(List<String> begins, Drawing drawing) {
        /** Copies the list. */
        public Page {
            begins = List.copyOf(begins);
        }
    }

    /** Pages that the sheets take, one after the other. */
    public static int count(List<Sheet> sheets) {
        return sheets.stream()
                .mapToInt(sheet -> sheet.pages().size() - (sheet.joins() ? 1 : 0))
                .sum();
    }

    /**
     * The pages of all sheets with their title blocks.
     *
     * @param sheets in order
     * @param plan name of the plan
     * @param date as the owner wrote it; may be empty
     * @param caution said at the foot of every page
     */
    public static List<Page> finished(
            List<Sheet> sheets, String plan, String date, String caution) {
        int of = count(sheets);
        var pages = new ArrayList<Page>();
        var marks = new ArrayList<Mark>();
        var names = new ArrayList<String>();
        var begins = new ArrayList<String>();
        for (int s = 0; s < sheets.size(); s++) {
            Sheet sheet = sheets.get(s);
            for (int i = 0; i < sheet.pages().size(); i++) {
                marks.addAll(sheet.pages().get(i));
                names.add(sheet.name());
                if (i == 0) {
                    begins.add(sheet.name());
                }
                boolean last = i == sheet.pages().size() - 1;
                boolean shared = last && s + 1 < sheets.size() && sheets.get(s + 1).joins();
                if (!shared) {
                    var pen = new Pen();
                    marks.forEach(pen::add);
                    String named = String.join("  ·  ", names);
                    sheet.titleBlock(pen, plan, date, named, caution, pages.size() + 1, of);
                    pages.add(
                            new Page(
                                    begins,
                                    pen.drawing(sheet.paper.width(), sheet.paper.height())));
                    marks.clear();
                    names.clear();
                    begins.clear();
                }
            }
        }
        return pages;
    }

    private void titleBlock(
            Pen pen, String plan, String date, String named, String caution, int number, int of) {
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
                        + Type.cut(named, Type.NOTE, false, third)
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
