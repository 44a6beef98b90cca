package lanewright.sheets.paint;

import java.io.IOException;
import java.util.List;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Drawing;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pattern;
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
        for (Mark mark : marks) {
            if (mark instanceof Mark.Line line) {
                line(line);
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

    private void line(Mark.Line line) throws IOException {
        Style style = Style.of(line.role());
        if (style.stroke() != Style.NOTHING) {
            brush.stroke(List.of(line.path()), style.stroke(), style.width(), style.dash(), false);
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
