package lanewright.sheets.drawing;

import java.util.ArrayList;
import java.util.List;

/** Puts marks on a drawing, one after the other. Lives as long as one drawing is being made. */
public final class Pen {

    /** Distance from line to line, part of the size. */
    private static final double LEAD = 1.32;

    private final List<Mark> marks = new ArrayList<>();

    /** What was drawn so far, in order. */
    public List<Mark> marks() {
        return List.copyOf(marks);
    }

    /** Adds a mark. */
    public Pen add(Mark mark) {
        marks.add(mark);
        return this;
    }

    /** An open line; {@code xy} holds x and y in turn. */
    public Pen line(Role role, double... xy) {
        return add(new Mark.Line(role, Outline.open(xy)));
    }

    /** Any line. */
    public Pen line(Role role, Outline path) {
        return add(new Mark.Line(role, path));
    }

    /** A filled area. */
    public Pen area(Role role, Outline... rings) {
        return add(new Mark.Area(role, List.of(rings)));
    }

    /** A filled box. */
    public Pen fill(Role role, Box box) {
        return area(role, Outline.box(box.x(), box.y(), box.width(), box.height()));
    }

    /** The sides of a box. */
    public Pen frame(Role role, Box box) {
        return line(role, Outline.box(box.x(), box.y(), box.width(), box.height()));
    }

    /** Ordinary words, level. */
    public Pen words(Role role, String text, double x, double y, double size, Anchor anchor) {
        return words(role, text, x, y, size, false, anchor, 0);
    }

    /** Bold words, level. */
    public Pen bold(Role role, String text, double x, double y, double size, Anchor anchor) {
        return words(role, text, x, y, size, true, anchor, 0);
    }

    /** Words of any kind; nothing is drawn for a blank. */
    public Pen words(
            Role role,
            String text,
            double x,
            double y,
            double size,
            boolean bold,
            Anchor anchor,
            double turn) {
        if (!text.isBlank()) {
            add(new Mark.Words(role, text, x, y, size, bold, anchor, turn));
        }
        return this;
    }

    /** What a gauge says, in small type, level. */
    public Pen gauge(Gauge gauge, double x, double y, double size, boolean bold, Anchor anchor) {
        return add(new Mark.Words(Role.NOTE, gauge.words(), x, y, size, bold, anchor, 0, gauge));
    }

    /**
     * What a gauge says, in small type and already broken into lines.
     *
     * @param y base line of the first line, pt
     */
    public Pen paragraph(Gauge gauge, List<String> lines, double x, double y, double size) {
        double base = y;
        for (String line : lines) {
            add(new Mark.Words(Role.NOTE, line, x, base, size, false, Anchor.START, 0, gauge));
            base += size * LEAD;
        }
        return this;
    }

    /** Everything that another pen drew, seen only inside {@code frame}. */
    public Pen framed(Box frame, Pen inside) {
        return add(new Mark.Framed(frame, inside.marks()));
    }

    /** The sign for "look here": an upright triangle of the given width about a middle, pt. */
    public Pen look(double x, double y, double wide) {
        double half = wide / 2;
        Outline triangle =
                Outline.closed(x, y - half, x + half, y + half * 0.8, x - half, y + half * 0.8);
        return area(Role.LOOK, triangle).line(Role.LOOK, triangle);
    }

    /** A finished drawing of what was drawn. */
    public Drawing drawing(double width, double height) {
        return new Drawing(width, height, marks);
    }
}
