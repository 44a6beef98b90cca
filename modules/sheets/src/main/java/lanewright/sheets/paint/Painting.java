package lanewright.sheets.paint;

import java.io.IOException;
import java.util.ArrayList;
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
        new Painting(brush).marks(drawing.marks());
    }

    private void marks(List<Mark> marks) throws IOException {
        for (Mark mark : marks) {
            if (mark instanceof Mark.Line line) {
                line(line);
            } else if (mark instanceof Mark.Area area) {
                area(area);
            } else if (mark instanceof Mark.Words words) {
                brush.words(words, Style.of(words.role()).fill());
            } else if (mark instanceof Mark.Picture picture) {
                brush.picture(picture);
            } else if (mark instanceof Mark.Framed framed) {
                Box frame = framed.frame();
                brush.hold(
                        List.of(Outline.box(frame.x(), frame.y(), frame.width(), frame.height())));
                marks(framed.marks());
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

    private void area(Mark.Area area) throws IOException {
        Style style = Style.of(area.role());
        if (style.fill() != Style.NOTHING) {
            brush.fill(area.rings(), style.fill());
        }
        if (style.pattern() != Pattern.NONE) {
            List<Outline> pieces = pieces(area, style.pattern());
            if (!pieces.isEmpty()) {
                brush.cover(area.rings(), pieces, style.stroke(), style.patternWidth());
            }
        }
    }

    private static List<Outline> pieces(Mark.Area area, Pattern pattern) {
        double left = Double.POSITIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (Outline ring : area.rings()) {
            for (int i = 0; i < ring.size(); i++) {
                left = Math.min(left, ring.x(i));
                right = Math.max(right, ring.x(i));
                top = Math.min(top, ring.y(i));
                bottom = Math.max(bottom, ring.y(i));
            }
        }
        var pieces = new ArrayList<Outline>();
        if (left <= right) {
            pattern.cover(left, top, right, bottom, pieces::add);
        }
        return pieces;
    }
}
