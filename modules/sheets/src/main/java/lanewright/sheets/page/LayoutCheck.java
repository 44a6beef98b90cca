package lanewright.sheets.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Drawing;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Mark;

/**
 * Finds words that cannot be read: two that overlap, or one that leaves its page or its frame.
 * Looks at the drawing, not at a picture of it, turned words included.
 */
public final class LayoutCheck {

    /**
     * Printers do not reach nearer to the edge of the paper, pt: a quarter inch, common practice.
     */
    static final double EDGE = 18;

    /** Rounding in the places of words, pt. */
    private static final double TOUCH = 0.05;

    private final Drawing drawing;
    private final List<Placed> placed = new ArrayList<>();
    private final List<String> wrong = new ArrayList<>();

    private LayoutCheck(Drawing drawing) {
        this.drawing = drawing;
    }

    /** What is wrong on {@code page}, in words; empty if all can be read. */
    public static List<String> of(Drawing page) {
        var check = new LayoutCheck(page);
        check.gather(
                page.marks(),
                new Box(EDGE, EDGE, page.width() - 2 * EDGE, page.height() - 2 * EDGE));
        check.overlaps();
        return List.copyOf(check.wrong);
    }

    /** The box round some words, turned with them: four corners. */
    @SuppressWarnings("ArrayRecordComponent") // lives for one look at a page
    private record Placed(String text, double[] x, double[] y, Box round) {
        static Placed of(Mark.Words words) {
            double left = words.start() - words.x();
            double right = left + words.width();
            double up = -Face.RISE * words.size();
            double down = Face.FALL * words.size();
            double turn = StrictMath.toRadians(words.turn());
            double cos = StrictMath.cos(turn);
            double sin = StrictMath.sin(turn);
            double[] dx = {left, right, right, left};
            double[] dy = {up, up, down, down};
            double[] x = new double[4];
            double[] y = new double[4];
            for (int i = 0; i < 4; i++) {
                x[i] = words.x() + dx[i] * cos - dy[i] * sin;
                y[i] = words.y() + dx[i] * sin + dy[i] * cos;
            }
            double west = Math.min(Math.min(x[0], x[1]), Math.min(x[2], x[3]));
            double east = Math.max(Math.max(x[0], x[1]), Math.max(x[2], x[3]));
            double top = Math.min(Math.min(y[0], y[1]), Math.min(y[2], y[3]));
            double bottom = Math.max(Math.max(y[0], y[1]), Math.max(y[2], y[3]));
            return new Placed(words.text(), x, y, new Box(west, top, east - west, bottom - top));
        }

        double top() {
            return round.y();
        }

        double bottom() {
            return round.bottom();
        }

        boolean leaves(Box frame) {
            for (int i = 0; i < 4; i++) {
                if (!frame.inset(-TOUCH).holds(x[i], y[i])) {
                    return true;
                }
            }
            return false;
        }

        /** Two boxes are apart if some side of either has the whole other box beyond it. */
        boolean overlaps(Placed other) {
            return round.within(other.round) != null && !apart(this, other) && !apart(other, this);
        }

        private static boolean apart(Placed a, Placed b) {
            for (int i = 0; i < 2; i++) {
                double ux = a.x[i + 1] - a.x[i];
                double uy = a.y[i + 1] - a.y[i];
                double length = Math.hypot(ux, uy);
                double lowA = Double.POSITIVE_INFINITY;
                double highA = Double.NEGATIVE_INFINITY;
                double lowB = Double.POSITIVE_INFINITY;
                double highB = Double.NEGATIVE_INFINITY;
                for (int k = 0; k < 4; k++) {
                    double alongA = (a.x[k] * ux + a.y[k] * uy) / length;
                    double alongB = (b.x[k] * ux + b.y[k] * uy) / length;
                    lowA = Math.min(lowA, alongA);
                    highA = Math.max(highA, alongA);
                    lowB = Math.min(lowB, alongB);
                    highB = Math.max(highB, alongB);
                }
                if (highA <= lowB + TOUCH || highB <= lowA + TOUCH) {
                    return true;
                }
            }
            return false;
        }
    }

    private void gather(List<Mark> marks, Box frame) {
        for (Mark mark : marks) {
            if (mark instanceof Mark.Words words) {
                Placed box = Placed.of(words);
                placed.add(box);
                if (box.leaves(frame)) {
                    wrong.add("\"" + words.text() + "\" leaves its frame " + frame);
                }
            } else if (mark instanceof Mark.Framed framed) {
                gather(framed.marks(), framed.frame());
            }
        }
    }

    private void overlaps() {
        placed.sort(Comparator.comparingDouble(Placed::top));
        for (int i = 0; i < placed.size(); i++) {
            Placed one = placed.get(i);
            for (int k = i + 1; k < placed.size() && placed.get(k).top() < one.bottom(); k++) {
                if (one.overlaps(placed.get(k))) {
                    wrong.add(
                            "\""
                                    + one.text
                                    + "\" and \""
                                    + placed.get(k).text
                                    + "\" overlap on a page of "
                                    + Math.round(drawing.width())
                                    + " by "
                                    + Math.round(drawing.height()));
                }
            }
        }
    }

    /**
     * Keeps words apart while a drawing is being made: takes those that fit and refuses those that
     * would overlap words taken before or leave the frame.
     */
    public static final class Room {
        private final Box frame;
        private final List<Placed> taken = new ArrayList<>();

        /** Room inside a frame. */
        public Room(Box frame) {
            this.frame = frame;
        }

        /** The same room with the same words in it, of which the other will know no more. */
        public Room(Room other) {
            this(other.frame);
            taken.addAll(other.taken);
        }

        /** Keeps words off a box, on which something else is drawn. */
        public void block(Box box) {
            double[] x = {box.x(), box.right(), box.right(), box.x()};
            double[] y = {box.y(), box.y(), box.bottom(), box.bottom()};
            taken.add(new Placed("", x, y, box));
        }

        /** True if the words would find room. */
        public boolean fits(Mark.Words words) {
            Placed box = Placed.of(words);
            return !box.leaves(frame) && taken.stream().noneMatch(box::overlaps);
        }

        /** Takes the words if there is room for them; says whether there was. */
        public boolean take(Mark.Words words) {
            Placed box = Placed.of(words);
            if (box.leaves(frame) || taken.stream().anyMatch(box::overlaps)) {
                return false;
            }
            taken.add(box);
            return true;
        }
    }
}
