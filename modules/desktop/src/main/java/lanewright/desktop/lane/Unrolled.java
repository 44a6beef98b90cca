package lanewright.desktop.lane;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import lanewright.desktop.look.Type;
import lanewright.drainage.PipeCourse;
import lanewright.drainage.Pool;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.CulvertLine;
import lanewright.lane.line.Profile;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.run.Draft;
import lanewright.planner.run.Outcome;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import org.jspecify.annotations.Nullable;

/**
 * The picture of a lane unrolled: ground, grade, earth as shaped, ditches, what is dug and built
 * up, and where water sits.
 *
 * @param f where it is drawn
 * @param draft the lane
 * @param outcome its water, or null while that is not known
 * @param units the owner's units
 */
record Unrolled(Frame f, Draft draft, @Nullable Outcome outcome, UnitSystem units) {

    /** A bore is drawn at least so wide and tall, px. */
    private static final double LEAST_BORE = 5;

    /** The picture of a lane on a board of a size. */
    static Frame fitted(Draft draft, double width, double height) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        Profile profile = draft.design().profile();
        for (Section section : draft.sections().sections()) {
            for (double z :
                    new double[] {
                        section.ground().at(0),
                        profile.height(section.station()),
                        section.subgrade().at(0),
                        ditch(section.left().ditchInner()),
                        ditch(section.right().ditchInner())
                    }) {
                if (Double.isFinite(z)) {
                    low = Math.min(low, z);
                    high = Math.max(high, z);
                }
            }
        }
        double room = Math.max(0.6, (high - low) * 0.12);
        Box box = new Box(52, 26, Math.max(40, width - 66), Math.max(30, height - 48));
        return new Frame(box, 0, draft.design().length(), low - room, high + room);
    }

    private static double ditch(@Nullable Corner bottom) {
        return bottom == null ? Double.NaN : bottom.height();
    }

    /**
     * Draws the lane.
     *
     * @param marker station of the place marker, m
     * @param ghost a proposal whose grade is drawn beside, or null
     * @param chosen number of the point between grades that is chosen, or -1
     * @param editing whether points between grades can be taken hold of
     */
    void draw(Pen pen, double marker, @Nullable Draft ghost, int chosen, boolean editing) {
        f.heights(pen, units);
        f.stations(pen, units);
        Pen inside = new Pen();
        Frame.Room room = new Frame.Room(f.box().inset(1));
        List<Section> sections = draft.sections().sections();
        Profile profile = draft.design().profile();
        between(inside, f, sections, profile);
        if (outcome != null) {
            water(inside, f, sections, outcome);
        }
        along(inside, f, Role.GROUND_LINE, sections, s -> s.ground().at(0));
        along(inside, f, Role.SUBGRADE, sections, s -> s.subgrade().at(0));
        along(inside, f, Role.DITCH_LEFT, sections, s -> ditch(s.left().ditchInner()));
        along(inside, f, Role.DITCH_RIGHT, sections, s -> ditch(s.right().ditchInner()));
        if (outcome != null) {
            barrels(inside, outcome, room);
        }
        inside.line(Role.FINISHED, f.line(sampled(f, profile)));
        if (ghost != null) {
            inside.line(Role.ACCENT, f.line(sampled(f, ghost.design().profile())));
        }
        marker(inside, marker);
        if (editing) {
            handles(inside, profile, room, chosen);
        }
        grades(inside, profile, room);
        if (outcome != null) {
            depths(inside, outcome, room);
            pipeNames(inside, outcome, room);
        }
        pen.framed(f.box(), inside);
        pen.frame(Role.FRAME, f.box());
        String title =
                "the lane unrolled · heights in "
                        + (units == UnitSystem.US ? "ft" : "m")
                        + " · "
                        + f.stretchWords();
        pen.words(
                Role.NOTE,
                Frame.fitting(title, false, Type.NOTE, f.box().width() - 4),
                f.box().x() + 2,
                16,
                Type.NOTE,
                Anchor.START);
    }

    private static List<double[]> sampled(Frame f, Profile profile) {
        List<double[]> places = new ArrayList<>();
        double to = Math.min(profile.to(), f.a1());
        int n = (int) Math.max(2, f.box().width() / 3);
        for (int i = 0; i <= n; i++) {
            double s = profile.from() + (to - profile.from()) * i / n;
            places.add(new double[] {s, profile.height(s)});
        }
        return places;
    }

    /** Runs of places where a height is known. */
    private static void along(
            Pen pen, Frame f, Role role, List<Section> sections, ToDoubleFunction<Section> height) {
        List<double[]> run = new ArrayList<>();
        for (Section section : sections) {
            double z = height.applyAsDouble(section);
            if (Double.isFinite(z)) {
                run.add(new double[] {section.station(), z});
            }
            if (!Double.isFinite(z) && !run.isEmpty()) {
                flush(pen, f, role, run);
            }
        }
        flush(pen, f, role, run);
    }

    private static void flush(Pen pen, Frame f, Role role, List<double[]> run) {
        if (run.size() > 1) {
            pen.line(role, f.line(run));
        }
        run.clear();
    }

    /** What is dug and built up at the middle, piece by piece between sections. */
    private static void between(Pen pen, Frame f, List<Section> sections, Profile profile) {
        List<double[]> over = new ArrayList<>();
        int sign = 0;
        double lastS = Double.NaN;
        double lastGround = Double.NaN;
        double lastGrade = Double.NaN;
        for (Section section : sections) {
            double s = section.station();
            double ground = section.ground().at(0);
            double grade = profile.height(s);
            if (!Double.isFinite(ground)) {
                fill(pen, f, over, sign);
                sign = 0;
                lastS = Double.NaN;
                continue;
            }
            int now = grade >= ground ? 1 : -1;
            if (sign != 0 && now != sign && s > lastS) {
                double a = lastGrade - lastGround;
                double b = grade - ground;
                double cross = lastS + (s - lastS) * a / (a - b);
                double z = lastGround + (ground - lastGround) * a / (a - b);
                over.add(new double[] {cross, z, z});
                fill(pen, f, over, sign);
                over.add(new double[] {cross, z, z});
            }
            sign = now;
            over.add(new double[] {s, ground, grade});
            lastS = s;
            lastGround = ground;
            lastGrade = grade;
        }
        fill(pen, f, over, sign);
    }

    private static void fill(Pen pen, Frame f, List<double[]> pieces, int sign) {
        int n = pieces.size();
        if (n > 1 && sign != 0) {
            double[] xy = new double[4 * n];
            for (int i = 0; i < n; i++) {
                xy[2 * i] = f.x(pieces.get(i)[0]);
                xy[2 * i + 1] = f.y(pieces.get(i)[1]);
                int back = 2 * n - 1 - i;
                xy[2 * back] = f.x(pieces.get(i)[0]);
                xy[2 * back + 1] = f.y(pieces.get(i)[2]);
            }
            pen.area(sign > 0 ? Role.FILL : Role.CUT, Outline.closed(xy));
        }
        pieces.clear();
    }

    /** Water over the ground at the middle, or a line at its level where it sits beside. */
    private static void water(Pen pen, Frame f, List<Section> sections, Outcome outcome) {
        for (Pool pool : outcome.water().after()) {
            Pool.Beside beside = pool.beside();
            if (beside == null || !beside.inLimits()) {
                continue;
            }
            double level = pool.spot().level();
            List<double[]> wet = new ArrayList<>();
            for (Section section : sections) {
                double ground = section.ground().at(0);
                if (section.station() >= beside.from()
                        && section.station() <= beside.to()
                        && ground < level) {
                    wet.add(new double[] {section.station(), level, ground});
                }
            }
            if (wet.size() > 1) {
                int n = wet.size();
                double[] xy = new double[4 * n];
                for (int i = 0; i < n; i++) {
                    xy[2 * i] = f.x(wet.get(i)[0]);
                    xy[2 * i + 1] = f.y(level);
                    int back = 2 * n - 1 - i;
                    xy[2 * back] = f.x(wet.get(i)[0]);
                    xy[2 * back + 1] = f.y(wet.get(i)[2]);
                }
                pen.area(Role.WATER, Outline.closed(xy));
            } else {
                double from = f.x(beside.from());
                double to = Math.max(from + 6, f.x(beside.to()));
                pen.line(Role.WATER, from, f.y(level), to, f.y(level));
            }
        }
    }

    /** Wet places by name, and water that stands, with its depth. */
    private void depths(Pen pen, Outcome whole, Frame.Room room) {
        for (WetPlace place : whole.water().places()) {
            Pool pool = place.pool();
            Pool.Beside beside = pool == null ? null : pool.beside();
            if (pool != null && beside != null && beside.inLimits()) {
                String deep = Words.of(Quantity.depth(place.depth()), units) + " deep";
                name(pen, room, place.name() + ": " + deep, beside.station(), pool.spot().level());
            } else if (!Double.isNaN(place.station())) {
                Profile profile = draft.design().profile();
                double height = profile.height(bounded(profile, place.station()));
                name(pen, room, place.name(), place.station(), height);
            }
        }
    }

    /** Pipes of the plan that pass under the lane, seen along their bore. */
    private void barrels(Pen pen, Outcome whole, Frame.Room room) {
        for (PipeCourse course : whole.water().pipes()) {
            CulvertLine under = course.under();
            if (under != null) {
                Box box = bore(course, under);
                Outline barrel = oval(box);
                pen.area(Role.BARREL, barrel).line(Role.BARREL, barrel);
                room.block(box);
            }
        }
    }

    private void pipeNames(Pen pen, Outcome whole, Frame.Room room) {
        for (PipeCourse course : whole.water().pipes()) {
            CulvertLine under = course.under();
            if (under != null) {
                Box box = bore(course, under);
                String words = course.pipe().name() + (course.isToLay() ? ", to lay" : "");
                for (double y : new double[] {box.bottom() + 14, box.bottom() + 30, box.y() - 5}) {
                    if (room.put(pen, Role.TEXT, words, box.x() + box.width() / 2, y, false)) {
                        break;
                    }
                }
            }
        }
    }

    /** From the bottom of the lower end to the top of the higher; never too small to be seen. */
    private Box bore(PipeCourse course, CulvertLine under) {
        double wide = course.pipe().diameter();
        double high = Math.max(under.inlet().height(), under.outlet().height()) + wide;
        double low = Math.min(under.inlet().height(), under.outlet().height());
        double across = Math.max(LEAST_BORE, f.x(wide) - f.x(0));
        double tall = Math.max(LEAST_BORE, f.y(low) - f.y(high));
        return new Box(f.x(under.crossing()) - across / 2, f.y(low) - tall, across, tall);
    }

    private static Outline oval(Box box) {
        int corners = 24;
        double[] xy = new double[2 * corners];
        for (int i = 0; i < corners; i++) {
            double turn = 2 * Math.PI * i / corners;
            xy[2 * i] = box.x() + box.width() / 2 * (1 + Math.cos(turn));
            xy[2 * i + 1] = box.y() + box.height() / 2 * (1 + Math.sin(turn));
        }
        return Outline.closed(xy);
    }

    private void name(Pen pen, Frame.Room room, String words, double station, double height) {
        for (double by : new double[] {18, 34, -8, -24}) {
            if (room.put(pen, Role.WATER_TEXT, words, f.x(station), f.y(height) + by, true)) {
                return;
            }
        }
    }

    private void grades(Pen pen, Profile profile, Frame.Room room) {
        List<VerticalPoint> points = profile.points();
        for (int i = 1; i < points.size(); i++) {
            VerticalPoint a = points.get(i - 1);
            VerticalPoint b = points.get(i);
            double wide = f.x(b.station()) - f.x(a.station());
            if (wide < 44) {
                continue;
            }
            double grade = (b.height() - a.height()) / (b.station() - a.station());
            double middle = (a.station() + b.station()) / 2;
            String words = Words.fine(Quantity.grade(grade), units);
            double y = f.y(profile.height(Math.min(profile.to(), middle)));
            for (double by : new double[] {-10, 22, -26, 38}) {
                if (room.put(pen, Role.TEXT, words, f.x(middle), y + by, true)) {
                    break;
                }
            }
        }
    }

    private void handles(Pen pen, Profile profile, Frame.Room room, int chosen) {
        List<VerticalPoint> points = profile.points();
        for (int i = 0; i < points.size(); i++) {
            VerticalPoint point = points.get(i);
            double x = f.x(point.station());
            double y = f.y(point.height());
            double r = i == chosen ? 9 : 7;
            Outline diamond = Outline.closed(x, y - r, x + r, y, x, y + r, x - r, y);
            pen.area(Role.MARKER, diamond).line(i == chosen ? Role.ACCENT : Role.PLACE, diamond);
            room.block(new Box(x - r, y - r, 2 * r, 2 * r));
            if (point.curve() > 0) {
                for (double end : new double[] {-0.5, 0.5}) {
                    double s = point.station() + end * point.curve();
                    double ex = f.x(s);
                    double ey = f.y(profile.height(bounded(profile, s)));
                    Outline dot = Outline.circle(ex, ey, 4, 14);
                    pen.area(Role.MARKER, dot).line(Role.PLACE, dot);
                }
            }
        }
    }

    static double bounded(Profile profile, double s) {
        return Math.max(profile.from(), Math.min(profile.to(), s));
    }

    private void marker(Pen pen, double marker) {
        double s = Math.max(0, Math.min(draft.design().length(), marker));
        double x = f.x(s);
        pen.line(Role.PLATE_LINE, x, f.box().y(), x, f.box().bottom());
        pen.line(Role.PLACE, x, f.box().y(), x, f.box().bottom());
        double y = f.y(draft.design().profile().height(s));
        pen.area(Role.MARKER, Outline.circle(x, y, 5, 20));
        pen.line(Role.PLACE, Outline.circle(x, y, 5, 20));
    }
}
