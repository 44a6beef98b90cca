package lanewright.sheets.paint;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Drawing;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pattern;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.drawing.Style;

/** Turns the roles of a drawing into colours, widths and patterns for a brush. */
public final class Painting {

    private final Brush brush;

    private Painting(Brush brush) {
        this.brush = brush;
    }

    /** Paints all marks in their order. */
    public static void paint(Drawing drawing, Brush brush) throws IOException {
        new Painting(brush)
                .marks(drawing.marks(), new Box(0, 0, drawing.width(), drawing.height()));
    }

    private void marks(List<Mark> marks, Box seen) throws IOException {
        int end;
        for (int i = 0; i < marks.size(); i = end) {
            Mark mark = marks.get(i);
            end = i + 1;
            if (mark instanceof Mark.Line line) {
                end = endOfLines(marks, i, line.role());
                lines(line.role(), marks.subList(i, end));
            } else if (mark instanceof Mark.Area area) {
                area(area, seen);
            } else if (mark instanceof Mark.Words words) {
                brush.words(words, Style.of(words.role()).fill());
            } else if (mark instanceof Mark.Picture picture) {
                brush.picture(picture);
            } else if (mark instanceof Mark.Framed framed) {
                Box frame = framed.frame();
                brush.hold(
                        List.of(Outline.box(frame.x(), frame.y(), frame.width(), frame.height())));
                marks(framed.marks(), frame);
                brush.release();
            }
        }
    }

    /** Where lines of one role that follow each other end. */
    private static int endOfLines(List<Mark> marks, int from, Role role) {
        int end = from + 1;
        while (end < marks.size()
                && marks.get(end) instanceof Mark.Line next
                && next.role() == role) {
            end++;
        }
        return end;
    }

    /** Lines of one role in one stroke of work. */
    private void lines(Role role, List<Mark> lines) throws IOException {
        Style style = Style.of(role);
        if (style.stroke() != Style.NOTHING) {
            List<Outline> paths = new ArrayList<>(lines.size());
            for (Mark line : lines) {
                paths.add(((Mark.Line) line).path());
            }
            brush.stroke(paths, style.stroke(), style.width(), style.dash(), false);
        }
    }

    private void area(Mark.Area area, Box seen) throws IOException {
        Style style = Style.of(area.role());
        if (style.fill() != Style.NOTHING) {
            brush.fill(area.rings(), style.fill());
        }
        if (style.pattern() != Pattern.NONE) {
            brush.cover(area.rings(), seen, style.pattern(), style.stroke(), style.patternWidth());
        }
    }
}
