package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.LayoutCheck;
import lanewright.sheets.page.Type;

/**
 * The lane unrolled: heights along the alignment of the ground, the finished lane, the earth as
 * shaped and the ditch bottoms, with grades and the points between them, and figures below.
 */
public final class ProfileDrawing {

    /**
     * Water that sits beside or under the lane.
     *
     * @param from station, m
     * @param to station, m, not before {@code from}
     * @param bottom lowest height, m
     * @param level height of the water when it spills, m
     */
    public record Pool(double from, double to, double bottom, double level) {}

    private static final double LEFT = 44;
    private static final double FIGURES = 96;
    private static final double NOTE = Type.NOTE;

    /** Heights are stretched no more than this; more would make every lane a mountain. */
    private static final double MOST_STRETCH = 10;

    private final List<Section> sections;
    private final List<VerticalPoint> points;
    private final List<Pool> pools;
    private final UnitSystem units;
    private final double from;
    private final double to;

    /**
     * A stretch of the profile.
     *
     * @param sections of the whole lane, in station order
     * @param points vertical points of the whole lane, in station order
     * @param pools water that sits
     * @param units in which it is read
     * @param from first station drawn, m
     * @param to last station drawn, m
     */
    public ProfileDrawing(
            List<Section> sections,
            List<VerticalPoint> points,
            List<Pool> pools,
            UnitSystem units,
            double from,
            double to) {
        if (!(from < to)) {
            throw new IllegalArgumentException("a profile runs forward: " + from + " to " + to);
        }
        this.sections =
                sections.stream().filter(s -> s.station() >= from && s.station() <= to).toList();
        this.points = List.copyOf(points);
        this.pools = List.copyOf(pools);
        this.units = units;
        this.from = from;
        this.to = to;
    }

    /**
     * How many times heights are stretched in a box of this size: a whole number.
     *
     * @param width of the box, pt
     * @param height of the box, pt
     */
    public double stretch(double width, double height) {
        double across = (width - LEFT - 10) / (to - from);
        double[] range = range();
        double fits = (height - FIGURES - 34) / ((range[1] - range[0]) * across);
        return Math.max(1, Math.min(MOST_STRETCH, Math.floor(fits)));
    }

    private double[] range() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Section section : sections) {
            List<ToDoubleFunction<Section>> heights =
                    List.of(
                            ProfileDrawing::ground,
                            Section::profileHeight,
                            ProfileDrawing::subgrade);
            for (ToDoubleFunction<Section> height : heights) {
                double z = height.applyAsDouble(section);
                if (Double.isFinite(z)) {
                    low = Math.min(low, z);
                    high = Math.max(high, z);
                }
            }
            for (double z : new double[] {leftDitch(section), rightDitch(section)}) {
                low = Double.isFinite(z) ? Math.min(low, z) : low;
            }
        }
        for (Pool pool : pools) {
            if (pool.to() >= from && pool.from() <= to) {
                low = Math.min(low, pool.bottom());
            }
        }
        if (!(low <= high)) {
            return new double[] {0, 1};
        }
        return new double[] {low, Math.max(high, low + 0.5)};
    }

    private static double ground(Section section) {
        return section.ground().at(0);
    }

    private static double subgrade(Section section) {
        return section.subgrade().at(0);
    }

    private static double leftDitch(Section section) {
        return height(section.left().ditchInner());
    }

    private static double rightDitch(Section section) {
        return height(section.right().ditchInner());
    }

    private static double height(@org.jspecify.annotations.Nullable Corner corner) {
        return corner == null ? Double.NaN : corner.height();
    }

    /** Draws the stretch into a box. */
    public void draw(Pen pen, Box box) {
        double across = (box.width() - LEFT - 10) / (to - from);
        double up = across * stretch(box.width(), box.height());
        double[] range = range();
        Box plot = new Box(box.x() + LEFT, box.y(), (to - from) * across, box.height() - FIGURES);
        double spare = plot.height() - (range[1] - range[0]) * up;
        Scale scale = Scale.in(plot, from, range[0] - spare / 2 / up, across, up);
        var room = new LayoutCheck.Room(plot.inset(1));
        grid(pen, plot, scale);
        var inside = new Pen();
        pools(inside, scale);
        hatches(inside, scale);
        curve(inside, Role.DITCH_LEFT, ProfileDrawing::leftDitch, scale);
        curve(inside, Role.DITCH_RIGHT, ProfileDrawing::rightDitch, scale);
        curve(inside, Role.SUBGRADE, ProfileDrawing::subgrade, scale);
        curve(inside, Role.GROUND_LINE, ProfileDrawing::ground, scale);
        curve(inside, Role.FINISHED, Section::profileHeight, scale);
        labels(inside, scale, room, plot);
        pen.framed(plot, inside);
        pen.frame(Role.FRAME, plot);
        figures(pen, plot, scale, box);
    }

    private void grid(Pen pen, Box plot, Scale scale) {
        Rule heights = Rule.of(units, 22 / scale.up());
        double low = scale.b0();
        for (Rule.Tick tick : heights.ticks(low, low + plot.height() / scale.up())) {
            double y = scale.y(tick.at());
            pen.line(Role.GRID, plot.x(), y, plot.right(), y);
            if (y > plot.y() + 7 && y < plot.bottom() - 2) {
                pen.gauge(
                        Gauge.of(Gauge.Use.HEIGHT, tick.words(), tick.at()),
                        plot.x() - 5,
                        y + 3,
                        NOTE,
                        false,
                        Anchor.END);
            }
        }
        for (Rule.Tick tick : Rule.of(units, 60 / scale.across()).ticks(from, to)) {
            double x = scale.x(tick.at());
            pen.line(Role.GRID, x, plot.y(), x, plot.bottom());
        }
    }

    private void pools(Pen pen, Scale scale) {
        for (Pool pool : pools) {
            double left = scale.x(pool.from());
            double wide = Math.max(6, scale.x(pool.to()) - left);
            double top = scale.y(pool.level());
            pen.fill(
                    Role.WATER,
                    new Box(left, top, wide, Math.max(1, scale.y(pool.bottom()) - top)));
        }
    }

    /** Between stripped ground and subgrade at the line: dug where the ground is higher. */
    private void hatches(Pen pen, Scale scale) {
        for (int i = 1; i < sections.size(); i++) {
            Section a = sections.get(i - 1);
            Section b = sections.get(i);
            double groundA = a.stripped().at(0);
            double groundB = b.stripped().at(0);
            double subA = subgrade(a);
            double subB = subgrade(b);
            if (b.station() > a.station() && Double.isFinite(groundA + groundB + subA + subB)) {
                piece(
                        pen,
                        scale,
                        a.station(),
                        b.station(),
                        groundA - subA,
                        groundB - subB,
                        subA,
                        subB);
            }
        }
    }

    private static void piece(
            Pen pen,
            Scale scale,
            double from,
            double to,
            double digFrom,
            double digTo,
            double subFrom,
            double subTo) {
        if (digFrom * digTo < 0) {
            double part = digFrom / (digFrom - digTo);
            double middle = from + part * (to - from);
            double sub = subFrom + part * (subTo - subFrom);
            piece(pen, scale, from, middle, digFrom, 0, subFrom, sub);
            piece(pen, scale, middle, to, 0, digTo, sub, subTo);
            return;
        }
        Role role = digFrom + digTo >= 0 ? Role.CUT : Role.FILL;
        pen.area(
                role,
                Outline.closed(
                        scale.x(from),
                        scale.y(subFrom),
                        scale.x(from),
                        scale.y(subFrom + digFrom),
                        scale.x(to),
                        scale.y(subTo + digTo),
                        scale.x(to),
                        scale.y(subTo)));
    }

    private void curve(Pen pen, Role role, ToDoubleFunction<Section> height, Scale scale) {
        var path = new Outline.Builder();
        for (Section section : sections) {
            double z = height.applyAsDouble(section);
            if (Double.isFinite(z)) {
                path.to(scale.x(section.station()), scale.y(z));
            } else {
                path = finish(pen, role, path);
            }
        }
        finish(pen, role, path);
    }

    private static Outline.Builder finish(Pen pen, Role role, Outline.Builder path) {
        if (path.size() > 1) {
            pen.line(role, path.open());
        }
        return new Outline.Builder();
    }

    private void labels(Pen pen, Scale scale, LayoutCheck.Room room, Box plot) {
        for (int i = 0; i < points.size(); i++) {
            VerticalPoint point = points.get(i);
            if (point.station() < from || point.station() > to) {
                continue;
            }
            double x = scale.x(point.station());
            double y = scale.y(finishedAt(point.station(), point.height()));
            pen.line(Role.TICK, x, y - 3.5, x, y + 3.5);
            Outline diamond = Outline.closed(x, y - 4, x + 4, y, x, y + 4, x - 4, y);
            pen.area(Role.PLATE, diamond).line(Role.MARKER, diamond);
            String words =
                    Words.fine(Quantity.station(point.station()), units)
                            + " · "
                            + Words.fine(Quantity.height(point.height()), units);
            place(pen, room, words, x, y - 14, true, plot);
        }
        for (int i = 1; i < points.size(); i++) {
            grade(pen, scale, room, points.get(i - 1), points.get(i), plot);
        }
        for (Pool pool : pools) {
            depth(pen, scale, room, pool, plot);
        }
    }

    private void depth(Pen pen, Scale scale, LayoutCheck.Room room, Pool pool, Box plot) {
        double middle = (pool.from() + pool.to()) / 2;
        if (middle < from || middle > to) {
            return;
        }
        String words = Words.fine(Quantity.length(pool.level() - pool.bottom()), units) + " deep";
        place(pen, room, words, scale.x(middle), scale.y(pool.bottom()) + NOTE + 2, true, plot);
    }

    private double finishedAt(double station, double otherwise) {
        for (int i = 1; i < sections.size(); i++) {
            Section a = sections.get(i - 1);
            Section b = sections.get(i);
            if (station >= a.station() && station <= b.station() && b.station() > a.station()) {
                double part = (station - a.station()) / (b.station() - a.station());
                return a.profileHeight() + part * (b.profileHeight() - a.profileHeight());
            }
        }
        return otherwise;
    }

    private void grade(
            Pen pen,
            Scale scale,
            LayoutCheck.Room room,
            VerticalPoint a,
            VerticalPoint b,
            Box plot) {
        double left = Math.max(from, a.station());
        double right = Math.min(to, b.station());
        if (right - left <= 0.1 * (b.station() - a.station())) {
            return;
        }
        double middle = (left + right) / 2;
        double grade = (b.height() - a.height()) / (b.station() - a.station());
        double y = scale.y(finishedAt(middle, a.height() + grade * (middle - a.station())));
        place(
                pen,
                room,
                Words.fine(Quantity.grade(grade), units),
                scale.x(middle),
                y - 9,
                true,
                plot);
    }

    /** Puts words above or below a place, wherever there is room first; they say nothing new. */
    private static void place(
            Pen pen,
            LayoutCheck.Room room,
            String words,
            double x,
            double y,
            boolean bold,
            Box plot) {
        double half = lanewright.sheets.drawing.Face.of(bold).width(words, NOTE) / 2 + 2;
        double at = Math.max(plot.x() + half, Math.min(plot.right() - half, x));
        for (double shift : new double[] {0, 32, -12, 44, -24, 56, -36, 68, -48, 80, -60}) {
            var mark =
                    new Mark.Words(Role.TEXT, words, at, y + shift, NOTE, bold, Anchor.MIDDLE, 0);
            if (room.take(mark)) {
                pen.fill(
                        Role.PLATE,
                        new Box(at - half, y + shift - NOTE * 0.8, 2 * half, NOTE * 1.06));
                pen.add(mark);
                return;
            }
        }
    }

    /** Station, ground, finished height and their difference below the plot, as many as fit. */
    private void figures(Pen pen, Box plot, Scale scale, Box box) {
        double least = 2.1 * NOTE / scale.across();
        double rowHeight = (box.bottom() - plot.bottom()) / 2.2;
        double ground = plot.bottom() + 5;
        double finished = ground + rowHeight * 0.86;
        double station = finished + rowHeight * 0.86;
        pen.words(Role.NOTE, "ground", plot.x() - 5, ground + 14, NOTE, Anchor.END);
        pen.words(Role.TEXT, "finished", plot.x() - 5, finished + 14, NOTE, Anchor.END);
        pen.words(Role.NOTE, "station", plot.x() - 5, station + 10, NOTE, Anchor.END);
        double next = from;
        double lastX = Double.NEGATIVE_INFINITY;
        double lastStation = Double.NEGATIVE_INFINITY;
        for (Section section : sections) {
            if (section.station() < next - 1e-9) {
                continue;
            }
            double x =
                    Math.max(plot.x() + 4, Math.min(plot.right() - 4, scale.x(section.station())));
            pen.line(
                    Role.TICK,
                    scale.x(section.station()),
                    plot.bottom(),
                    scale.x(section.station()),
                    plot.bottom() + 3);
            String down = shown(ground(section));
            String on = shown(section.profileHeight());
            double size = NOTE;
            if (x - lastX >= 2 * size * 0.6) {
                turned(pen, Role.NOTE, down, x, ground);
                turned(pen, Role.TEXT, on, x, finished);
                lastX = x;
            }
            String at = Words.fine(Quantity.station(section.station()), units);
            double half = lanewright.sheets.drawing.Face.of(false).width(at, NOTE) / 2;
            double middle = Math.max(plot.x() - 2 + half, Math.min(box.right() - half, x));
            if (middle - half > lastStation + 5) {
                pen.words(Role.TEXT, at, middle, station + 10, NOTE, Anchor.MIDDLE);
                lastStation = middle + half;
            }
            next = section.station() + least;
        }
    }

    private String shown(double height) {
        return Words.number(Quantity.height(height), units);
    }

    private static void turned(Pen pen, Role role, String words, double x, double top) {
        pen.words(role, words, x + NOTE * 0.35, top, NOTE, false, Anchor.END, -90);
    }

    /** Stretches to draw one by one so that each is readable: as few equal ones as possible. */
    public static List<double[]> stretches(double length, double most) {
        int count = (int) Math.max(1, Math.ceil(length / most - 1e-9));
        var stretches = new ArrayList<double[]>();
        for (int i = 0; i < count; i++) {
            stretches.add(new double[] {length * i / count, length * (i + 1) / count});
        }
        return stretches;
    }
}
