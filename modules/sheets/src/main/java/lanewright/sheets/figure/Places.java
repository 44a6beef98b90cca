package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.List;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.LayoutCheck;
import lanewright.sheets.page.Type;
import org.jspecify.annotations.Nullable;

/**
 * Free places for words in a drawing: where they hide no line that must be seen, no mark and no
 * other words. Words that do not find room at their own place stand away from it, with a thin line
 * that leads back.
 */
final class Places {

    /** Words nearer than this to the place they speak of need no line that leads to it, pt. */
    private static final double NEAR = 9;

    /** White kept around words, pt. */
    private static final double AIR = 1.5;

    private static final int TURNS = 16;
    private static final double STEP = 7;

    /** What it is worth to a reader that a line from words to their place crosses no words, pt. */
    private static final double OVER_WORDS = 400;

    /** The same, that it crosses no line from other words and no area, pt. */
    private static final double OVER_LEAD = 60;

    /** The same, that it crosses no other line, pt. */
    private static final double OVER_LINE = 14;

    /** A line may end on another one: so near its end, pt, that is no crossing. */
    private static final double END = 1.5;

    private final LayoutCheck.Room room;
    private final List<Line> lines = new ArrayList<>();
    private final List<Box> placed = new ArrayList<>();
    private final List<Box> marks = new ArrayList<>();
    private final List<Outline> areas = new ArrayList<>();

    /** So many straight pieces of a line have a box of their own, for contours are long. */
    private static final int RUN = 16;

    /**
     * A line that is kept free, the boxes round it and round each run of its pieces, and what it is
     * worth not to cross it, pt.
     */
    private record Line(Outline path, Box round, List<Box> runs, double worth) {

        static Line of(Outline path, double worth) {
            var runs = new ArrayList<Box>();
            for (int from = 0; from < pieces(path); from += RUN) {
                double[] xy = new double[2 * (Math.min(RUN, pieces(path) - from) + 1)];
                for (int i = 0; i < xy.length / 2; i++) {
                    xy[2 * i] = path.x((from + i) % path.size());
                    xy[2 * i + 1] = path.y((from + i) % path.size());
                }
                runs.add(Box.around(List.of(Outline.open(xy))));
            }
            return new Line(path, Box.around(List.of(path)), runs, worth);
        }

        private static int pieces(Outline path) {
            return path.isClosed() ? path.size() : path.size() - 1;
        }

        /** Whether something holds of a straight piece that may reach into a box. */
        boolean any(Box near, Piece what) {
            if (!touch(round, near)) {
                return false;
            }
            for (int run = 0; run < runs.size(); run++) {
                if (touch(runs.get(run), near) && any(run, what)) {
                    return true;
                }
            }
            return false;
        }

        private boolean any(int run, Piece what) {
            int end = Math.min((run + 1) * RUN, pieces(path));
            for (int i = run * RUN; i < end; i++) {
                int k = (i + 1) % path.size();
                if (what.holds(path.x(i), path.y(i), path.x(k), path.y(k))) {
                    return true;
                }
            }
            return false;
        }
    }

    /** What is asked of a straight piece of a line. */
    private interface Piece {
        boolean holds(double x1, double y1, double x2, double y2);
    }

    /** Places inside a frame. */
    Places(Box frame) {
        room = new LayoutCheck.Room(frame);
    }

    /** The same as another with all that it has taken; what either takes later is its own. */
    Places(Places other) {
        room = new LayoutCheck.Room(other.room);
        lines.addAll(other.lines);
        placed.addAll(other.placed);
        marks.addAll(other.marks);
        areas.addAll(other.areas);
    }

    /** Words at a free place, and how bad that is, pt. */
    record Found(Mark.Words words, double cost) {

        /**
         * Whether the line from them to their place crosses other words, a line from them or an
         * area.
         */
        boolean isCrossed() {
            return cost >= OVER_LEAD;
        }
    }

    /** A straight line from what words speak of to the words, as far as it is drawn. */
    private record Lead(double x, double y, double toX, double toY) {

        double length() {
            return Math.hypot(toX - x, toY - y);
        }

        Outline path() {
            return Outline.open(x, y, toX, toY);
        }
    }

    /** Keeps words off an area, and leads to words about it from its rim. */
    void keepOffArea(Outline ring) {
        lines.add(Line.of(ring, OVER_LEAD));
        areas.add(ring);
    }

    /** Keeps words off a box, on which something else is drawn. */
    void keepOff(Box box) {
        room.block(box);
        marks.add(box);
    }

    /** Keeps words off a line. */
    void keepOff(Outline line) {
        lines.add(Line.of(line, OVER_LINE));
    }

    /** Takes the words if they hide nothing; says whether they do not. */
    boolean take(Mark.Words text) {
        if (!hidesNothing(text) || !room.take(text)) {
            return false;
        }
        if (text.turn() == 0) {
            placed.add(box(text));
        }
        return true;
    }

    /** How much worse a place for words is for what the line back to their place crosses, pt. */
    private double crossed(double x, double y, Box box) {
        Lead lead = leading(x, y, box);
        double length = lead.length();
        if (length <= NEAR) {
            return 0;
        }
        double toX = lead.toX();
        double toY = lead.toY();
        double fromX = lead.x() + (toX - lead.x()) * END / length;
        double fromY = lead.y() + (toY - lead.y()) * END / length;
        double worse = 0;
        for (Box other : placed) {
            worse += crosses(lead.x(), lead.y(), toX, toY, other) ? OVER_WORDS : 0;
        }
        var reach =
                new Box(
                        Math.min(fromX, toX),
                        Math.min(fromY, toY),
                        Math.abs(toX - fromX),
                        Math.abs(toY - fromY));
        for (Line line : lines) {
            if (line.any(reach, (x1, y1, x2, y2) -> meet(fromX, fromY, toX, toY, x1, y1, x2, y2))) {
                worse += line.worth();
            }
        }
        return worse;
    }

    /** The line from a place to the nearest point of a box; from an area that holds it, its rim. */
    private Lead leading(double x, double y, Box box) {
        double toX = Math.max(box.x(), Math.min(box.right(), x));
        double toY = Math.max(box.y(), Math.min(box.bottom(), y));
        double part = 0;
        for (Outline area : areas) {
            part = Math.max(part, rim(area, x, y, toX, toY));
        }
        return new Lead(x + part * (toX - x), y + part * (toY - y), toX, toY);
    }

    /** How far along a line, as a part of it, it leaves an area; zero if it begins outside. */
    private static double rim(Outline area, double x, double y, double toX, double toY) {
        double last = 0;
        boolean inside = false;
        int n = area.size();
        for (int i = 0; i < n; i++) {
            double ax = area.x(i);
            double ay = area.y(i);
            double bx = area.x((i + 1) % n);
            double by = area.y((i + 1) % n);
            if ((ay > y) != (by > y) && x < ax + (y - ay) / (by - ay) * (bx - ax)) {
                inside = !inside;
            }
            double turn = (toX - x) * (by - ay) - (toY - y) * (bx - ax);
            if (turn != 0) {
                double along = ((ax - x) * (by - ay) - (ay - y) * (bx - ax)) / turn;
                double across = ((ax - x) * (toY - y) - (ay - y) * (toX - x)) / turn;
                if (along >= 0 && along <= 1 && across >= 0 && across <= 1) {
                    last = Math.max(last, along);
                }
            }
        }
        return inside ? last : 0;
    }

    /** Whether two straight pieces cross, neither beginning or ending on the other. */
    private static boolean meet(
            double x1,
            double y1,
            double x2,
            double y2,
            double x3,
            double y3,
            double x4,
            double y4) {
        double a = side(x1, y1, x2, y2, x3, y3);
        double b = side(x1, y1, x2, y2, x4, y4);
        double c = side(x3, y3, x4, y4, x1, y1);
        double d = side(x3, y3, x4, y4, x2, y2);
        return a * b < 0 && c * d < 0;
    }

    private static double side(double x1, double y1, double x2, double y2, double x, double y) {
        return (x2 - x1) * (y - y1) - (y2 - y1) * (x - x1);
    }

    private boolean hidesNothing(Mark.Words words) {
        if (!room.fits(words)) {
            return false;
        }
        Box box = box(words);
        for (Box other : placed) {
            if (words.turn() == 0 && meet(box, other)) {
                return false;
            }
        }
        boolean level = words.turn() == 0;
        Box near = level ? box : anyTurn(words, box);
        Piece hidden =
                level ? (x1, y1, x2, y2) -> crosses(x1, y1, x2, y2, box) : turned(words, box);
        for (Line line : lines) {
            if (line.any(near, hidden)) {
                return false;
            }
        }
        return true;
    }

    /** The box that holds words however they are turned about their anchor. */
    private static Box anyTurn(Mark.Words words, Box box) {
        double reach =
                Math.hypot(
                        Math.max(words.x() - box.x(), box.right() - words.x()),
                        Math.max(words.y() - box.y(), box.bottom() - words.y()));
        return new Box(words.x(), words.y(), 0, 0).inset(-reach);
    }

    /** Whether turned words hide a piece, as seen from the words, for which they lie level. */
    private static Piece turned(Mark.Words words, Box box) {
        double turn = StrictMath.toRadians(words.turn());
        double cos = StrictMath.cos(turn);
        double sin = StrictMath.sin(turn);
        double x = words.x();
        double y = words.y();
        return (x1, y1, x2, y2) ->
                crosses(
                        x + (x1 - x) * cos + (y1 - y) * sin,
                        y - (x1 - x) * sin + (y1 - y) * cos,
                        x + (x2 - x) * cos + (y2 - y) * sin,
                        y - (x2 - x) * sin + (y2 - y) * cos,
                        box);
    }

    /** The box round level words, with some air. */
    static Box box(Mark.Words words) {
        return new Box(
                words.start() - AIR,
                words.y() - words.size() * 0.78 - AIR,
                words.width() + 2 * AIR,
                words.size() + 2 * AIR);
    }

    private static boolean meet(Box a, Box b) {
        return a.x() < b.right() && b.x() < a.right() && a.y() < b.bottom() && b.y() < a.bottom();
    }

    private static boolean touch(Box a, Box b) {
        return a.x() <= b.right()
                && b.x() <= a.right()
                && a.y() <= b.bottom()
                && b.y() <= a.bottom();
    }

    /** Whether a straight piece meets a box: what is left of it after cutting at each side. */
    private static boolean crosses(double x1, double y1, double x2, double y2, Box box) {
        if (Math.max(x1, x2) < box.x()
                || Math.min(x1, x2) > box.right()
                || Math.max(y1, y2) < box.y()
                || Math.min(y1, y2) > box.bottom()) {
            return false;
        }
        double[] step = {x1 - x2, x2 - x1, y1 - y2, y2 - y1};
        double[] room = {x1 - box.x(), box.right() - x1, y1 - box.y(), box.bottom() - y1};
        double enters = 0;
        double leaves = 1;
        for (int i = 0; i < 4; i++) {
            if (step[i] == 0) {
                if (room[i] < 0) {
                    return false;
                }
            } else if (step[i] < 0) {
                enters = Math.max(enters, room[i] / step[i]);
            } else {
                leaves = Math.min(leaves, room[i] / step[i]);
            }
        }
        return enters <= leaves;
    }

    /**
     * Puts level words as near to a place as they hide nothing, on white, with a line that leads to
     * the place where they do not stand at it.
     *
     * @param farthest from the place to the nearest side of the words, pt
     * @return whether there was room
     */
    boolean put(
            Pen pen,
            Role role,
            String text,
            double x,
            double y,
            double size,
            boolean bold,
            double farthest) {
        Found found = find(role, text, x, y, size, bold, farthest);
        if (found == null) {
            return false;
        }
        Mark.Words words = found.words();
        lead(pen, x, y, box(words));
        plate(pen, words);
        pen.add(words);
        return true;
    }

    /**
     * Takes the best free place for words, and draws nothing; null if there is none. The best is
     * the nearest, unless the line back from one a little farther crosses less.
     */
    @Nullable Found find(
            Role role,
            String text,
            double x,
            double y,
            double size,
            boolean bold,
            double farthest) {
        if (text.isBlank()) {
            return null;
        }
        double half = Face.of(bold).width(text, size) / 2 + AIR;
        double tall = size / 2 + AIR;
        Mark.Words best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double away = 4; away <= farthest && away < least; away += STEP) {
            for (double[] by : around(away, half, tall)) {
                var words =
                        new Mark.Words(
                                role,
                                text,
                                x + by[0],
                                y + by[1] + size * 0.28,
                                size,
                                bold,
                                Anchor.MIDDLE,
                                0);
                if (hidesNothing(words)) {
                    double cost = away + crossed(x, y, box(words));
                    if (cost < least) {
                        least = cost;
                        best = words;
                    }
                }
            }
        }
        return best != null && take(best) ? new Found(best, least) : null;
    }

    /**
     * Middles of words about a place, pt right and down: to the right first, then to either side of
     * it, and so round to the left; then above and below, moved aside.
     */
    private static List<double[]> around(double away, double half, double tall) {
        var middles = new ArrayList<double[]>();
        for (int k = 0; k < TURNS; k++) {
            double turn = 2 * Math.PI / TURNS * ((k & 1) == 0 ? k / 2 : -(k + 1) / 2);
            middles.add(
                    new double[] {
                        StrictMath.cos(turn) * (away + half), StrictMath.sin(turn) * (away + tall)
                    });
        }
        for (double aside : new double[] {-1, -0.5, 0.5, 1}) {
            middles.add(new double[] {aside * half, -away - tall});
            middles.add(new double[] {aside * half, away + tall});
        }
        return middles;
    }

    /**
     * Names a line: words straight or nearly so above or below a place on it, and a thin line from
     * them to a dot on the place.
     *
     * @param below 1 for words below the place, -1 for words above
     * @param farthest from the place to the words, pt
     * @return whether there was room from which that line crosses no words; never if a mark stands
     *     on the place
     */
    boolean name(Pen pen, String text, double x, double y, int below, double farthest) {
        return name(pen, text, x, y, below, 5, farthest);
    }

    /**
     * Names a line, as {@link #name(Pen, String, double, double, int, double)} does.
     *
     * @param nearest that the words stand to the place, pt: more than usual lets what is small be
     *     seen
     */
    boolean name(
            Pen pen, String text, double x, double y, int below, double nearest, double farthest) {
        if (marks.stream().anyMatch(mark -> mark.holds(x, y))) {
            return false;
        }
        double size = Type.NOTE;
        double half = Face.of(false).width(text, size) / 2;
        for (double away = nearest; away <= farthest; away += 3) {
            for (double aside : new double[] {0, 0.5, -0.5, 1, -1}) {
                double middle = y + below * (away + size / 2 + AIR);
                var words =
                        new Mark.Words(
                                Role.TEXT,
                                text,
                                x + aside * (half + 4),
                                middle + size * 0.28,
                                size,
                                false,
                                Anchor.MIDDLE,
                                0);
                Box box = box(words);
                double toX = Math.max(box.x(), Math.min(box.right(), x));
                double toY = below > 0 ? box.y() : box.bottom();
                boolean clear = placed.stream().noneMatch(one -> crosses(x, y, toX, toY, one));
                if (clear && take(words)) {
                    pen.line(Role.LEADER, x, y, toX, toY);
                    pen.area(Role.TICK, Outline.circle(x, y, 1.1, 8));
                    keepOff(Outline.open(x, y, toX, toY));
                    plate(pen, words);
                    pen.add(words);
                    return true;
                }
            }
        }
        return false;
    }

    /**
     * A thin line from a place to the nearest point of a box, unless it is close by; no words stand
     * on it afterwards.
     */
    void lead(Pen pen, double x, double y, Box box) {
        Lead lead = leading(x, y, box);
        if (lead.length() > NEAR) {
            pen.line(Role.LEADER, lead.path());
            lines.add(Line.of(lead.path(), OVER_LEAD));
        }
    }

    /** White under words. */
    static void plate(Pen pen, Mark.Words words) {
        pen.fill(Role.PLATE, box(words).inset(0.5));
    }
}
