package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionLine;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;
import org.jspecify.annotations.Nullable;

/**
 * The lane unrolled: heights along the alignment of the ground, the finished lane, the earth as
 * shaped and the ditch bottoms, with the points between grades numbered, and below them a band of
 * figures in which every column has its own station.
 */
public final class ProfileDrawing {

    /**
     * Water that sits beside or under the lane.
     *
     * @param from station, m
     * @param to station, m, not before {@code from}
     * @param leftmost least offset of its edge, m
     * @param rightmost greatest offset of its edge, m
     * @param bottom lowest height, m
     * @param level height of the water when it spills, m
     * @param words what is said of it
     */
    public record Pool(
            double from,
            double to,
            double leftmost,
            double rightmost,
            double bottom,
            double level,
            String words) {

        /** The same water with other words, none if they are blank. */
        public Pool saying(String other) {
            return new Pool(from, to, leftmost, rightmost, bottom, level, other);
        }
    }

    private static final double LEFT = 50;
    private static final double RIM = 9;
    private static final double NOTE = Type.NOTE;

    /** Height of a row of figures, which stand upright, pt. */
    private static final double ROW = 39;

    /** Least distance between two columns of figures, pt. */
    private static final double COLUMN = 1.45 * NOTE;

    /** Height of the row of grades where all of them lie level, pt. */
    private static final double LEVEL_GRADES = 14;

    /** Heights are stretched no more than this; more would make every lane a mountain. */
    private static final double MOST_STRETCH = 10;

    /** Ditch bottoms nearer in height than this are drawn as one line, pt. */
    private static final double ALIKE = 1.2;

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
        this.pools = pools.stream().filter(pool -> pool.to() >= from && pool.from() <= to).toList();
        this.units = units;
        this.from = from;
        this.to = to;
    }

    private double across(double width) {
        return (width - LEFT - 2 * RIM - 4) / (to - from);
    }

    private double figureHeight(double width) {
        return 3 * ROW + gradeHeight(across(width)) + 6;
    }

    /**
     * How many times heights are stretched in a box of this size: a whole number.
     *
     * @param width of the box, pt
     * @param height of the box, pt
     */
    public double stretch(double width, double height) {
        double[] range = range();
        double fits = (height - figureHeight(width) - 46) / ((range[1] - range[0]) * across(width));
        return Math.max(1, Math.min(MOST_STRETCH, Math.floor(fits)));
    }

    private double[] range() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Section section : sections) {
            for (double z :
                    new double[] {
                        ground(section),
                        section.profileHeight(),
                        subgrade(section),
                        leftDitch(section),
                        rightDitch(section)
                    }) {
                low = Double.isFinite(z) ? Math.min(low, z) : low;
                high = Double.isFinite(z) ? Math.max(high, z) : high;
            }
        }
        for (Pool pool : pools) {
            low = Math.min(low, pool.bottom());
        }
        if (!(low <= high)) {
            return new double[] {0, 1};
        }
        return new double[] {low, Math.max(high, low + 0.5)};
    }

    private static double ground(Section section) {
        return section.ground().at(0);
    }

    private static double stripped(Section section) {
        return section.stripped().at(0);
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

    private static double height(@Nullable Corner corner) {
        return corner == null ? Double.NaN : corner.height();
    }

    /**
     * Draws the stretch into a box.
     *
     * @return what is drawn, for a legend
     */
    public Set<Role> draw(Pen pen, Box box) {
        var drawn = EnumSet.noneOf(Role.class);
        double across = across(box.width());
        double up = across * stretch(box.width(), box.height());
        double[] range = range();
        Box plot =
                new Box(
                        box.x() + LEFT,
                        box.y(),
                        (to - from) * across + 2 * RIM,
                        box.height() - figureHeight(box.width()));
        double spare = plot.height() - (range[1] - range[0]) * up;
        double floor = range[0] - spare / 2 / up;
        Scale scale = Scale.in(plot, from - RIM / across, floor, across, up);
        var places = new Places(plot.inset(1));
        List<Section> columns = columns(across);
        grid(pen, plot, scale, columns);
        var inside = new Pen();
        pools(inside, scale, drawn);
        hatches(inside, scale, drawn);
        levels(inside, scale);
        var curves = new Curves(inside, scale, places, drawn);
        ditches(curves, up);
        curves.draw(Role.STRIPPED_LINE, ProfileDrawing::stripped);
        curves.draw(Role.SUBGRADE, ProfileDrawing::subgrade);
        curves.draw(Role.GROUND_LINE, ProfileDrawing::ground);
        curves.draw(Role.FINISHED, Section::profileHeight);
        points(inside, scale, places);
        waterWords(inside, scale, places);
        ends(inside, plot, places);
        pen.framed(plot, inside);
        pen.frame(Role.FRAME, plot);
        double below = plot.bottom() + 3;
        grades(pen, plot, scale, below);
        figures(pen, plot, scale, columns, below + gradeHeight(across));
        return drawn;
    }

    private void grid(Pen pen, Box plot, Scale scale, List<Section> columns) {
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
        for (Section section : columns) {
            double x = scale.x(section.station());
            pen.line(Role.GRID, x, plot.y(), x, plot.bottom());
        }
    }

    /** Water from what it stands on up to its level: nothing where the land stands out of it. */
    private void pools(Pen pen, Scale scale, Set<Role> drawn) {
        for (Pool pool : pools) {
            for (int i = 1; i < sections.size(); i++) {
                Section a = sections.get(i - 1);
                Section b = sections.get(i);
                double begin = Math.max(pool.from(), a.station());
                double end = Math.min(pool.to(), b.station());
                if (!(begin < end)) {
                    continue;
                }
                double length = b.station() - a.station();
                double bedA = bed(a, pool);
                double rise = (bed(b, pool) - bedA) / length;
                double deepBegin = pool.level() - bedA - rise * (begin - a.station());
                double deepEnd = pool.level() - bedA - rise * (end - a.station());
                if (!Double.isFinite(deepBegin + deepEnd) || (deepBegin <= 0 && deepEnd <= 0)) {
                    continue;
                }
                if (deepBegin < 0) {
                    begin += (end - begin) * deepBegin / (deepBegin - deepEnd);
                    deepBegin = 0;
                } else if (deepEnd < 0) {
                    end = begin + (end - begin) * deepBegin / (deepBegin - deepEnd);
                    deepEnd = 0;
                }
                water(pen, scale, pool, new double[] {begin, end, deepBegin, deepEnd});
                drawn.add(Role.WATER);
            }
        }
    }

    /** How high water stands, as a line all along: it shows on the far side of a bank too. */
    private void levels(Pen pen, Scale scale) {
        for (Pool pool : pools) {
            double y = scale.y(pool.level());
            double left = scale.x(Math.max(from, pool.from()));
            double right = scale.x(Math.min(to, pool.to()));
            if (left < right) {
                pen.line(Role.WATER, left, y, right, y);
            }
        }
    }

    private static void water(Pen pen, Scale scale, Pool pool, double[] piece) {
        double left = scale.x(piece[0]);
        double right = scale.x(piece[1]);
        double top = scale.y(pool.level());
        pen.area(
                Role.WATER,
                Outline.closed(
                        left,
                        top,
                        right,
                        top,
                        right,
                        scale.y(pool.level() - piece[3]),
                        left,
                        scale.y(pool.level() - piece[2])));
    }

    /** The lowest that the finished land is across the lane within the reach of a pool, m. */
    private static double bed(Section section, Pool pool) {
        double low = Double.NaN;
        SectionLine finished = section.finished();
        double left = finished.size() < 2 ? 0 : finished.offset(0);
        double right = finished.size() < 2 ? 0 : finished.offset(finished.size() - 1);
        for (boolean built : new boolean[] {false, true}) {
            SectionLine line = built ? finished : section.ground();
            for (int i = 0; i < line.size(); i++) {
                double offset = line.offset(i);
                boolean inside = offset >= left && offset <= right;
                if (offset >= pool.leftmost() - 0.01
                        && offset <= pool.rightmost() + 0.01
                        && inside == built) {
                    low = Double.isNaN(low) ? line.height(i) : Math.min(low, line.height(i));
                }
            }
        }
        for (double offset : new double[] {pool.leftmost(), pool.rightmost()}) {
            boolean built = offset >= left && offset <= right;
            double z = (built ? finished : section.ground()).at(offset);
            low = Double.isNaN(low) || z < low ? z : low;
        }
        return low;
    }

    /** Between stripped ground and subgrade at the line: dug where the ground is higher. */
    private void hatches(Pen pen, Scale scale, Set<Role> drawn) {
        for (int i = 1; i < sections.size(); i++) {
            Section a = sections.get(i - 1);
            Section b = sections.get(i);
            double groundA = a.stripped().at(0);
            double groundB = b.stripped().at(0);
            double subA = subgrade(a);
            double subB = subgrade(b);
            if (b.station() > a.station() && Double.isFinite(groundA + groundB + subA + subB)) {
                drawn.add(groundA - subA + groundB - subB >= 0 ? Role.CUT : Role.FILL);
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

    /** Draws lines along the lane, and keeps words off them. */
    private final class Curves {
        private final Pen pen;
        private final Scale scale;
        private final Places places;
        private final Set<Role> drawn;

        Curves(Pen pen, Scale scale, Places places, Set<Role> drawn) {
            this.pen = pen;
            this.scale = scale;
            this.places = places;
            this.drawn = drawn;
        }

        void draw(Role role, ToDoubleFunction<Section> height) {
            draw(role, sections.stream().mapToDouble(height).toArray());
        }

        /** Broken where a height is not a number. */
        void draw(Role role, double[] heights) {
            var path = new Outline.Builder();
            for (int i = 0; i < heights.length; i++) {
                if (Double.isFinite(heights[i])) {
                    path.to(scale.x(sections.get(i).station()), scale.y(heights[i]));
                } else {
                    path = finish(role, path);
                }
            }
            finish(role, path);
        }

        private Outline.Builder finish(Role role, Outline.Builder path) {
            if (path.size() > 1) {
                pen.line(role, path.open());
                places.keepOff(path.open());
                drawn.add(role);
            }
            return new Outline.Builder();
        }
    }

    /** Both bottoms as one line where they are equally high, else each as its own. */
    private void ditches(Curves curves, double up) {
        int n = sections.size();
        double[] left = new double[n];
        double[] right = new double[n];
        boolean[] alike = new boolean[n];
        for (int i = 0; i < n; i++) {
            left[i] = leftDitch(sections.get(i));
            right[i] = rightDitch(sections.get(i));
            alike[i] = Math.abs(left[i] - right[i]) * up <= ALIKE;
        }
        double[] both = new double[n];
        for (int i = 0; i < n; i++) {
            boolean inside =
                    alike[i]
                            && (i == 0 || alike[i - 1] || !known(left[i - 1], right[i - 1]))
                            && (i == n - 1 || alike[i + 1] || !known(left[i + 1], right[i + 1]));
            both[i] = alike[i] ? left[i] : Double.NaN;
            if (inside) {
                left[i] = Double.NaN;
                right[i] = Double.NaN;
            }
        }
        curves.draw(Role.DITCH_BOTH, both);
        curves.draw(Role.DITCH_LEFT, left);
        curves.draw(Role.DITCH_RIGHT, right);
    }

    private static boolean known(double left, double right) {
        return Double.isFinite(left) || Double.isFinite(right);
    }

    /** A diamond on the finished lane for each point between grades, and its number over it. */
    private void points(Pen pen, Scale scale, Places places) {
        for (VerticalPoint point : points) {
            if (point.station() >= from && point.station() <= to) {
                double x = scale.x(point.station());
                double y = scale.y(finishedAt(point.station(), point.height()));
                Outline diamond = Outline.closed(x, y - 4, x + 4, y, x, y + 4, x - 4, y);
                places.keepOff(new Box(x - 4.5, y - 4.5, 9, 9));
                pen.area(Role.PLATE, diamond).line(Role.MARKER, diamond);
            }
        }
        for (int i = 0; i < points.size(); i++) {
            double station = points.get(i).station();
            if (station >= from && station <= to) {
                double x = scale.x(station);
                double y = scale.y(finishedAt(station, points.get(i).height()));
                number(pen, places, Words.fixed(i + 1, 0), x, y);
            }
        }
    }

    /** A number right above its point, as high up as it must stand to hide no line. */
    private static void number(Pen pen, Places places, String text, double x, double y) {
        for (double above = 8; above < 120; above += 4) {
            for (double beside : new double[] {0, -5, 5}) {
                var words =
                        new Mark.Words(
                                Role.TEXT,
                                text,
                                x + beside,
                                y - above,
                                NOTE,
                                true,
                                Anchor.MIDDLE,
                                0);
                if (places.take(words)) {
                    if (above > 12) {
                        pen.line(Role.LEADER, x + beside, y - above + 2, x, y - 4);
                    }
                    pen.add(words);
                    return;
                }
            }
        }
    }

    private void waterWords(Pen pen, Scale scale, Places places) {
        for (Pool pool : pools) {
            double middle = Math.max(from, Math.min(to, (pool.from() + pool.to()) / 2));
            double deepest = Double.POSITIVE_INFINITY;
            for (Section section : sections) {
                double bed = bed(section, pool);
                if (section.station() >= pool.from()
                        && section.station() <= pool.to()
                        && bed < deepest) {
                    deepest = bed;
                    middle = section.station();
                }
            }
            double x = scale.x(middle);
            double y = scale.y(pool.level() - Math.min(0.1, (pool.level() - pool.bottom()) / 2));
            places.put(pen, Role.WATER_TEXT, pool.words(), x, y + 4, NOTE, true, 160);
        }
    }

    /** Which end is which, in the upper corners. */
    private void ends(Pen pen, Box plot, Places places) {
        if (from <= 0) {
            corner(pen, places, "road", plot.x() + 4, plot, Anchor.START);
        }
        if (to >= points.get(points.size() - 1).station() - 1e-6) {
            corner(pen, places, "far end", plot.right() - 4, plot, Anchor.END);
        }
    }

    private static void corner(
            Pen pen, Places places, String text, double x, Box plot, Anchor anchor) {
        for (double y : new double[] {plot.y() + 12, plot.bottom() - 5}) {
            var words = new Mark.Words(Role.TEXT, text, x, y, NOTE, true, anchor, 0);
            if (places.take(words)) {
                pen.add(words);
                return;
            }
        }
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

    private double gradeHeight(double across) {
        for (int i = 1; i < points.size(); i++) {
            double wide = (points.get(i).station() - points.get(i - 1).station()) * across;
            if (Face.of(false).width(gradeWords(i), NOTE) + 4 > wide) {
                return ROW;
            }
        }
        return LEVEL_GRADES;
    }

    private double gradeTo(int i) {
        VerticalPoint a = points.get(i - 1);
        VerticalPoint b = points.get(i);
        return (b.height() - a.height()) / (b.station() - a.station());
    }

    private String gradeWords(int i) {
        String words = Words.fine(Quantity.grade(gradeTo(i)), units);
        return gradeTo(i) > 0 ? "+" + words : words;
    }

    /** The grade between each two points, in a row of its own below the plot. */
    private void grades(Pen pen, Box plot, Scale scale, double top) {
        double tall = gradeHeight(scale.across());
        pen.words(Role.TEXT, "grade", plot.x() - 5, top + tall / 2 + 3, NOTE, Anchor.END);
        for (int i = 1; i < points.size(); i++) {
            double left = scale.x(Math.max(from, points.get(i - 1).station()));
            double right = scale.x(Math.min(to, points.get(i).station()));
            if (right - left < 2) {
                continue;
            }
            pen.frame(Role.HAIRLINE, new Box(left, top, right - left, tall));
            String words = gradeWords(i);
            double wide = Face.of(false).width(words, NOTE);
            double middle = (left + right) / 2;
            if (wide + 4 <= right - left) {
                pen.words(Role.TEXT, words, middle, top + tall / 2 + 3, NOTE, Anchor.MIDDLE);
            } else if (right - left >= NOTE * 1.05) {
                pen.words(
                        Role.TEXT,
                        words,
                        middle + NOTE * 0.28,
                        top + tall / 2,
                        NOTE,
                        false,
                        Anchor.MIDDLE,
                        -90);
            }
        }
    }

    /**
     * The sections that have a column of figures: both ends, then the roundest stations, as far as
     * there is room for each.
     */
    private List<Section> columns(double across) {
        var ranked = new ArrayList<Section>();
        int last = sections.size() - 1;
        if (last < 0) {
            return ranked;
        }
        ranked.add(sections.get(0));
        ranked.add(sections.get(last));
        for (double round : rounds()) {
            sections.stream().filter(section -> isRound(section, round)).forEach(ranked::add);
        }
        var taken = new ArrayList<Section>();
        for (Section section : ranked) {
            boolean free = true;
            for (Section other : taken) {
                free &= Math.abs(other.station() - section.station()) * across >= COLUMN;
            }
            if (free) {
                taken.add(section);
            }
        }
        taken.sort(Comparator.comparingDouble(Section::station));
        return taken;
    }

    /** Distances that stations are counted in, widest first, m. */
    private double[] rounds() {
        double foot = 0.3048;
        return units == UnitSystem.US
                ? new double[] {500 * foot, 100 * foot, 50 * foot, 25 * foot, 10 * foot, 5 * foot}
                : new double[] {500, 100, 50, 20, 10, 5, 1};
    }

    private static boolean isRound(Section section, double round) {
        return Math.abs(Math.IEEEremainder(section.station(), round)) < 1e-6;
    }

    /** Station, ground and finished height, a column for each that has room. */
    private void figures(Pen pen, Box plot, Scale scale, List<Section> columns, double top) {
        double bottom = top + 3 * ROW;
        String[] names = {"station", "ground", "finished"};
        for (int row = 0; row < names.length; row++) {
            double y = top + (row + 1) * ROW;
            pen.words(Role.TEXT, names[row], plot.x() - 5, y - ROW / 2 + 3, NOTE, Anchor.END);
            pen.line(Role.HAIRLINE, plot.x(), y, plot.right(), y);
        }
        for (Section section : columns) {
            double x = scale.x(section.station());
            pen.line(Role.TICK, x, plot.bottom(), x, plot.bottom() + 3);
            String at = Words.fine(Quantity.station(section.station()), units);
            turned(pen, at, x, top + ROW - 3, true);
            turned(pen, shown(ground(section)), x, top + 2 * ROW - 3, false);
            turned(pen, shown(section.profileHeight()), x, bottom - 3, false);
        }
    }

    private String shown(double height) {
        return Words.number(Quantity.height(height), units);
    }

    private static void turned(Pen pen, String words, double x, double foot, boolean bold) {
        pen.words(Role.TEXT, words, x + NOTE * 0.35, foot, NOTE, bold, Anchor.START, -90);
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
