package lanewright.desktop.land;

import java.util.ArrayList;
import java.util.List;
import lanewright.desktop.look.Type;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import org.jspecify.annotations.Nullable;

/**
 * What is drawn on the board of the land, in three layers: shapes, words on plates, and what is
 * taken hold of. Words never stand on other words: who comes first has the place, so what matters
 * most comes first, and what finds no room is left out.
 */
final class Plates {

    /** From line to line of words on a plate, px. */
    private static final double LEAD = 13;

    /** How far words that have no room beside their place are led away from it, px. */
    private static final double[] AWAY = {16, 30, 44};

    /** Corners of a line that are looked at together. */
    private static final int PIECE = 16;

    /** From a place to the plate of its words, px. */
    private static final double NEAR = 3;

    /** From the middle of a sign to the plate of its words, px. */
    private static final double SIGN = 7;

    private final View view;
    private final Clip clip;
    private final Pen shapes = new Pen();
    private final Pen words = new Pen();
    private final Pen top = new Pen();
    private final List<Box> taken = new ArrayList<>();
    private final List<Edge> edges = new ArrayList<>();

    Plates(View view) {
        this.view = view;
        clip = new Clip(view.width(), view.height());
    }

    /** Draws shapes, below all words. */
    Pen shapes() {
        return shapes;
    }

    /** Draws words and what they stand on. */
    Pen words() {
        return words;
    }

    /** Draws what is taken hold of, above all words. */
    Pen top() {
        return top;
    }

    /** An area, as far as it is seen. */
    void area(Role role, double[] xy) {
        double[] seen = clip.ring(xy);
        if (seen.length > 0) {
            shapes.area(role, Outline.closed(seen));
        }
    }

    /** A line, as far as it is seen. */
    void lines(Role role, double[] xy) {
        clip.line(xy).forEach(run -> shapes.line(role, run));
    }

    /** The parts of a line that are seen. */
    List<double[]> seen(double[] xy) {
        return clip.line(xy);
    }

    /** A line that ends where it began. */
    static double[] closed(double[] xy) {
        double[] round = java.util.Arrays.copyOf(xy, xy.length + 2);
        round[xy.length] = xy[0];
        round[xy.length + 1] = xy[1];
        return round;
    }

    /** Keeps a part of the board free of words. */
    void keepFree(Box box) {
        taken.add(box);
    }

    /** A line that words keep off where they have a choice. */
    void keepOff(double[] xy) {
        for (double[] run : clip.line(xy)) {
            int corners = run.length / 2;
            for (int from = 0; from < corners - 1; from += PIECE) {
                int to = Math.min(corners - 1, from + PIECE);
                edges.add(Edge.of(java.util.Arrays.copyOfRange(run, 2 * from, 2 * to + 2)));
            }
        }
    }

    /** A piece of a line that words keep off, with the box round it, which tells most at once. */
    @SuppressWarnings("ArrayRecordComponent") // never compared, and made anew for each painting
    private record Edge(double[] xy, Box round) {
        static Edge of(double[] xy) {
            double left = xy[0];
            double right = xy[0];
            double top = xy[1];
            double bottom = xy[1];
            for (int i = 2; i < xy.length; i += 2) {
                left = Math.min(left, xy[i]);
                right = Math.max(right, xy[i]);
                top = Math.min(top, xy[i + 1]);
                bottom = Math.max(bottom, xy[i + 1]);
            }
            // A level line has a box too.
            return new Edge(xy, new Box(left, top, right - left, bottom - top).inset(-0.5));
        }
    }

    /** Words beside a place; null if there is no room. */
    @Nullable Box label(Role role, String text, double x, double y, boolean bold) {
        return label(role, List.of(text), x, y, bold, NEAR);
    }

    /** Words beside a sign that is kept free; null if there is no room. */
    @Nullable Box beside(Role role, String text, double x, double y) {
        return label(role, List.of(text), x, y, false, SIGN);
    }

    /**
     * Lines of words beside a place, off the lines that are kept off if that can be, else on them;
     * or a little away, with a line back. Null if there is no room, or the place is not seen.
     */
    @Nullable Box label(Role role, List<String> lines, double x, double y, boolean bold) {
        return label(role, lines, x, y, bold, NEAR);
    }

    private @Nullable Box label(
            Role role, List<String> lines, double x, double y, boolean bold, double gap) {
        if (x < 0 || y < 0 || x > view.width() || y > view.height()) {
            return null;
        }
        double half = wide(lines, bold) / 2 + 3 + gap;
        double up = -5 - LEAD * (lines.size() - 1);
        double[][] tries = {{half, up}, {-half, up}, {half, 13}, {-half, 13}};
        for (double[] by : tries) {
            Box box = box(lines, x + by[0], y + by[1], bold);
            if (isFree(box) && isClear(box)) {
                return put(role, lines, x + by[0], y + by[1], bold);
            }
        }
        for (double away : AWAY) {
            for (double[] by : tries) {
                double middle = x + by[0] / 2;
                double base = y + by[1] + (by[1] < 0 ? -away : away);
                Box box = box(lines, middle, base, bold);
                if (isFree(box) && isClear(box)) {
                    shapes.line(Role.TICK, x, y, middle, by[1] < 0 ? box.bottom() : box.y());
                    return put(role, lines, middle, base, bold);
                }
            }
        }
        for (double[] by : tries) {
            if (isFree(box(lines, x + by[0], y + by[1], bold))) {
                return put(role, lines, x + by[0], y + by[1], bold);
            }
        }
        return null;
    }

    /**
     * Words of little weight right beside a place, of which there may be many: tried at four
     * places, and left out where there is no room.
     */
    boolean note(Role role, String text, double x, double y) {
        List<String> lines = List.of(text);
        double half = wide(lines, false) / 2 + 3 + NEAR;
        double[][] tries = {{half, -5}, {-half, -5}, {half, 13}, {-half, 13}};
        for (double[] by : tries) {
            Box box = box(lines, x + by[0], y + by[1], false);
            if (isFree(box) && isClear(box)) {
                return put(role, lines, x + by[0], y + by[1], false) != null;
            }
        }
        return false;
    }

    /** Words on a plate, in the middle of a place; null if there is no room. */
    @Nullable Box plate(Role role, String text, double x, double y, boolean bold) {
        return plate(role, List.of(text), x, y, bold);
    }

    /** Lines of words on a plate, the first in the middle of a place; null if there is no room. */
    @Nullable Box plate(Role role, List<String> lines, double x, double y, boolean bold) {
        return isFree(box(lines, x, y, bold)) ? put(role, lines, x, y, bold) : null;
    }

    private static Box box(List<String> lines, double x, double y, boolean bold) {
        double half = wide(lines, bold) / 2 + 3;
        return new Box(x - half, y - 11, 2 * half, 15 + LEAD * (lines.size() - 1));
    }

    private static double wide(List<String> lines, boolean bold) {
        return lines.stream()
                .mapToDouble(line -> Face.of(bold).width(line, Type.NOTE))
                .max()
                .orElse(0);
    }

    private @Nullable Box put(Role role, List<String> lines, double x, double y, boolean bold) {
        if (lines.get(0).isBlank()) {
            return null;
        }
        Box box = box(lines, x, y, bold);
        taken.add(box);
        words.fill(Role.PLATE, box);
        for (int i = 0; i < lines.size(); i++) {
            double base = y + LEAD * i;
            words.words(role, lines.get(i), x, base, Type.NOTE, bold, Anchor.MIDDLE, 0);
        }
        return box;
    }

    /**
     * Turned words without a plate, if nothing was written there.
     *
     * @param turn degrees clockwise about the middle of their base line
     */
    void turned(Role role, String text, double x, double y, double turn) {
        double half = Face.of(false).width(text, Type.NOTE) / 2 + 1;
        double cos = Math.abs(Math.cos(Math.toRadians(turn)));
        double sin = Math.abs(Math.sin(Math.toRadians(turn)));
        // The base line passes through the place; the words reach a font's height to one side.
        double across = half * cos + Type.NOTE * sin;
        double along = half * sin + Type.NOTE * cos;
        Box round = new Box(x - across, y - along, 2 * across, 2 * along);
        if (isFree(round)) {
            taken.add(round);
            words.words(role, text, x, y, Type.NOTE, false, Anchor.MIDDLE, turn);
        }
    }

    /** Whether a part of the board lies wholly on it and nothing was written there. */
    boolean isFree(Box box) {
        if (box.x() < 2
                || box.right() > view.width() - 2
                || box.y() < 2
                || box.bottom() > view.height() - 2) {
            return false;
        }
        return taken.stream().noneMatch(other -> meet(box, other));
    }

    private static boolean meet(Box one, Box other) {
        return one.x() < other.right()
                && other.x() < one.right()
                && one.y() < other.bottom()
                && other.y() < one.bottom();
    }

    /** Whether no line that is kept off passes through a box. */
    private boolean isClear(Box box) {
        for (Edge edge : edges) {
            double[] run = edge.xy();
            for (int i = 2; meet(edge.round(), box) && i + 1 < run.length; i += 2) {
                if (crosses(run[i - 2], run[i - 1], run[i], run[i + 1], box)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether a straight piece meets a box: not if all its corners lie on one side of it. */
    private static boolean crosses(double ax, double ay, double bx, double by, Box box) {
        if (Math.max(ax, bx) < box.x()
                || Math.min(ax, bx) > box.right()
                || Math.max(ay, by) < box.y()
                || Math.min(ay, by) > box.bottom()) {
            return false;
        }
        double a = side(ax, ay, bx, by, box.x(), box.y());
        double b = side(ax, ay, bx, by, box.right(), box.y());
        double c = side(ax, ay, bx, by, box.right(), box.bottom());
        double d = side(ax, ay, bx, by, box.x(), box.bottom());
        return Math.min(Math.min(a, b), Math.min(c, d)) <= 0
                && Math.max(Math.max(a, b), Math.max(c, d)) >= 0;
    }

    private static double side(double ax, double ay, double bx, double by, double x, double y) {
        return (bx - ax) * (y - ay) - (by - ay) * (x - ax);
    }

    /** All that was drawn but for the words and what is above them. */
    List<Mark> below() {
        return shapes.marks();
    }

    /** The words on their plates, then what is taken hold of. */
    List<Mark> above() {
        List<Mark> all = new ArrayList<>(words.marks());
        all.addAll(top.marks());
        return all;
    }
}
