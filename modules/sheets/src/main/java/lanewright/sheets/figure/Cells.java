package lanewright.sheets.figure;

import java.util.List;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;

/** One row of a small table below a drawing: heads, and a value under each. */
final class Cells {

    private static final double SIZE = Type.NOTE;
    private static final double LINE = SIZE * 1.2;

    /** Height of a row with its heads, pt. */
    static final double HEIGHT = 2 * LINE + 3;

    private Cells() {}

    /**
     * A cell with its head.
     *
     * @param head what it holds
     * @param value its words, blank for none
     */
    record Cell(String head, String value) {

        private double width() {
            return Math.max(Face.of(false).width(head, SIZE), Face.of(false).width(value, SIZE));
        }
    }

    /** Draws a row from the left of a box over its width. */
    static void draw(Pen pen, List<Cell> cells, Box box) {
        double wide = cells.stream().mapToDouble(Cell::width).sum();
        double gap = Math.max(2, (box.width() - wide) / cells.size());
        pen.fill(Role.BAND, new Box(box.x(), box.y(), box.width(), LINE));
        double x = box.x();
        for (Cell cell : cells) {
            double middle = x + gap / 2 + cell.width() / 2;
            pen.words(Role.NOTE, cell.head(), middle, box.y() + SIZE * 0.98, SIZE, Anchor.MIDDLE);
            pen.words(Role.TEXT, cell.value(), middle, box.y() + LINE + SIZE, SIZE, Anchor.MIDDLE);
            x += cell.width() + gap;
        }
        double foot = box.y() + 2 * LINE + 1;
        pen.line(Role.HAIRLINE, box.x(), foot, box.right(), foot);
    }
}
