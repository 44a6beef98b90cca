package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import lanewright.drainage.culvert.Apron;
import lanewright.drainage.culvert.Blocked;
import lanewright.drainage.culvert.Inlet;
import lanewright.drainage.storm.Sized;
import lanewright.measure.LengthUnit;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.pipes.Laid;
import lanewright.planner.pipes.PipeCover;
import lanewright.planner.pipes.PipeJob;
import lanewright.planner.pipes.PipeWay;
import lanewright.planner.pipes.PipeWay.Stand;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;
import org.jspecify.annotations.Nullable;

/**
 * A pipe under the lane, cut along its barrel: the ground, what is dug, bedded and built up, the
 * barrel with its walls, water before it in the storm, and the stone below it.
 */
public final class PipeDrawing {

    private static final double NOTE = Type.NOTE;

    /** How far words may stand from what they speak of, pt. */
    private static final double FARTHEST = 170;

    /** Room for words above and below what is drawn, pt. */
    private static final double ROOM = 58;

    /** Heights are drawn no more than so many times larger than lengths. */
    private static final double MOST_STRETCH = 2;

    /** What is drawn is wished to be at least so tall, pt. */
    private static final double WISHED = 150;

    /** A headwall is drawn so thick, and so far below the bed, m. Common practice. */
    private static final double THICK = 0.25;

    private static final double FOOTING = 0.3;

    /** It is drawn no taller than this, pt. */
    private static final double TALLEST = 300;

    private final PipeJob job;
    private final UnitSystem units;
    private final double bed;
    private final double low;
    private final double high;
    private final double from;
    private final double to;

    /**
     * A pipe to be drawn.
     *
     * @param bed packed thickness of the bed under it, m
     */
    public PipeDrawing(PipeJob job, double bed, UnitSystem units) {
        this.job = job;
        this.units = units;
        this.bed = bed;
        List<Stand> stands = job.around().stands();
        from = stands.get(0).along();
        to = stands.get(stands.size() - 1).along();
        double top = Double.NEGATIVE_INFINITY;
        double bottom = Double.POSITIVE_INFINITY;
        for (Stand stand : stands) {
            top = Math.max(top, Math.max(stand.ground(), stand.finished()));
            bottom = Math.min(bottom, Math.min(stand.ground(), stand.finished()));
        }
        double under = job.laid().barrel().wall() + bed;
        bottom = Math.min(bottom, job.way().invert(end()) - under);
        bottom = Math.min(bottom, job.way().invert(begin()) - under);
        double level = level();
        double wall = job.way().invert(begin()) + job.wall();
        high = Math.max(wall, Double.isNaN(level) ? top : Math.max(top, level));
        double below = job.wall() > 0 ? FOOTING : 0;
        low = bottom - Math.max(below, job.apron().map(Apron.Bed::depth).orElse(0.0));
    }

    private double begin() {
        return -job.length().atInlet() / job.way().slant();
    }

    private double end() {
        return job.way().plan() + job.length().after() / job.way().slant();
    }

    /** Height of the water before the inlet in the storm, m; NaN without one. */
    private double level() {
        return job.headwater() == null
                ? Double.NaN
                : job.line().inlet().height() + job.headwater().depth();
    }

    /** How many times larger heights are drawn than lengths on paper so wide, pt. */
    public double stretch(double width) {
        double across = across(width);
        return Math.max(1, Math.min(MOST_STRETCH, Math.floor(WISHED / ((high - low) * across))));
    }

    private double across(double width) {
        double fits = width / (to - from);
        return Math.min(fits, (TALLEST - 2 * ROOM) / (high - low));
    }

    /** Height of the drawing on paper so wide, pt. */
    public double height(double width) {
        return (high - low) * across(width) * stretch(width) + 2 * ROOM;
    }

    /** Draws it into a box of the height that was asked for. */
    public void draw(Pen pen, Box box) {
        double across = across(box.width());
        double up = across * stretch(box.width());
        double spare = box.width() / across - (to - from);
        Scale scale = Scale.in(box, from - spare / 2, low - ROOM / up, across, up);
        var inside = new Pen();
        var places = new Places(box.inset(2));
        areas(inside, scale, box);
        lines(inside, scale, places);
        bar(inside, box, across, places);
        var labels = new Labels(places, FARTHEST);
        measures(inside, scale, places, labels);
        words(inside, scale, places, labels);
        labels.draw(inside);
        pen.framed(box, inside);
        pen.frame(Role.FRAME, box);
    }

    private void areas(Pen pen, Scale scale, Box box) {
        List<Stand> stands = job.around().stands();
        var earth = new Outline.Builder();
        for (Stand stand : stands) {
            earth.to(scale.x(stand.along()), scale.y(stand.ground()));
        }
        earth.to(scale.x(to), box.bottom());
        earth.to(scale.x(from), box.bottom());
        pen.area(Role.EARTH, earth.closed());
        between(pen, scale, stands, Role.FILL, Stand::subgrade, Stand::stripped, s -> true);
        // Stone lies where the finished surface stands over the subgrade under the travelled way.
        between(
                pen,
                scale,
                stands,
                Role.STONE_MIDDLE,
                Stand::finished,
                Stand::subgrade,
                Stand::driven);
        List<Stand> over = job.way().stands();
        double wall = job.laid().barrel().wall();
        between(
                pen,
                scale,
                over,
                Role.CUT,
                s -> Math.min(s.stripped(), s.subgrade()),
                s -> job.way().invert(s.along()) - wall - bed,
                s -> true);
        water(pen, scale, stands);
        apron(pen, scale);
        double b = begin();
        double e = end();
        double ib = job.way().invert(b);
        double ie = job.way().invert(e);
        if (bed > 0) {
            pen.area(
                    Role.STONE_COARSE,
                    ring(
                            scale,
                            b,
                            ib - wall,
                            e,
                            ie - wall,
                            e,
                            ie - wall - bed,
                            b,
                            ib - wall - bed));
        }
        double tall = job.laid().rise();
        Outline outer = barrel(scale, tall + wall, -wall);
        Outline inner = barrel(scale, tall, 0);
        pen.area(Role.BAND, outer).line(Role.BARREL, outer);
        pen.area(Role.BARREL, inner).line(Role.LEADER, inner);
        if (job.wall() > 0) {
            headwall(pen, scale, b, b + THICK);
            headwall(pen, scale, e - THICK, e);
        }
    }

    /** The barrel between two heights over its invert; its ends lie in the slope where so cut. */
    private Outline barrel(Scale scale, double top, double foot) {
        double b = begin();
        double e = end();
        double bTop = b;
        double eTop = e;
        if (job.ends() == Inlet.End.MITRED) {
            double in = job.way().reaches(top, true);
            double out = job.way().reaches(top, false);
            bTop += Double.isNaN(in) ? 0 : in;
            eTop -= Double.isNaN(out) ? 0 : out;
        }
        return ring(
                scale,
                bTop,
                job.way().invert(bTop) + top,
                eTop,
                job.way().invert(eTop) + top,
                e,
                job.way().invert(e) + foot,
                b,
                job.way().invert(b) + foot);
    }

    private void headwall(Pen pen, Scale scale, double from, double to) {
        double invert = job.way().invert((from + to) / 2);
        double top = invert + job.wall();
        double foot = invert - job.laid().barrel().wall() - bed - FOOTING;
        double crown = invert + job.laid().rise();
        // In two parts, so that the bore stays open in it.
        for (double[] part : new double[][] {{crown, top}, {foot, invert}}) {
            Outline wall = ring(scale, from, part[1], to, part[1], to, part[0], from, part[0]);
            pen.area(Role.BAND, wall).line(Role.FINISHED, wall);
        }
    }

    private static Outline ring(Scale scale, double... xy) {
        double[] on = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            on[i] = scale.x(xy[i]);
            on[i + 1] = scale.y(xy[i + 1]);
        }
        return Outline.closed(on);
    }

    private interface Whether {
        boolean holds(Stand stand);
    }

    /** The area between two heights, piece by piece, where the upper one lies higher. */
    private static void between(
            Pen pen,
            Scale scale,
            List<Stand> stands,
            Role role,
            ToDoubleFunction<Stand> upper,
            ToDoubleFunction<Stand> lower,
            Whether here) {
        var xs = new ArrayList<Double>();
        var tops = new ArrayList<Double>();
        var feet = new ArrayList<Double>();
        for (int i = 0; i <= stands.size(); i++) {
            boolean in =
                    i < stands.size()
                            && here.holds(stands.get(i))
                            && upper.applyAsDouble(stands.get(i))
                                    > lower.applyAsDouble(stands.get(i)) + 1e-4;
            if (in) {
                xs.add(stands.get(i).along());
                tops.add(upper.applyAsDouble(stands.get(i)));
                feet.add(lower.applyAsDouble(stands.get(i)));
            } else if (!xs.isEmpty()) {
                if (xs.size() > 1) {
                    var ring = new Outline.Builder();
                    for (int k = 0; k < xs.size(); k++) {
                        ring.to(scale.x(xs.get(k)), scale.y(tops.get(k)));
                    }
                    for (int k = xs.size() - 1; k >= 0; k--) {
                        ring.to(scale.x(xs.get(k)), scale.y(feet.get(k)));
                    }
                    pen.area(role, ring.closed());
                }
                xs.clear();
                tops.clear();
                feet.clear();
            }
        }
    }

    /** Water before the inlet in the storm, out to where the slope rises from it. */
    private void water(Pen pen, Scale scale, List<Stand> stands) {
        double level = level();
        if (Double.isNaN(level)) {
            return;
        }
        List<Stand> before = new ArrayList<>();
        for (Stand stand : stands) {
            if (stand.along() > 0 && stand.finished() > level) {
                before.add(stand);
                break;
            }
            before.add(stand);
        }
        between(pen, scale, before, Role.WATER, s -> level, Stand::finished, s -> true);
        Stand last = before.get(before.size() - 1);
        pen.line(Role.FLOW, scale.x(from), scale.y(level), scale.x(last.along()), scale.y(level));
    }

    private void apron(Pen pen, Scale scale) {
        Apron.Bed stone = job.apron().orElse(null);
        if (stone == null) {
            return;
        }
        double e = end();
        double ie = job.way().invert(e) - job.laid().barrel().wall();
        double far = Math.min(to, e + stone.length());
        pen.area(
                Role.STONE_COARSE,
                ring(scale, e, ie, far, ie, far, ie - stone.depth(), e, ie - stone.depth()));
    }

    private void lines(Pen pen, Scale scale, Places places) {
        List<Stand> stands = job.around().stands();
        line(pen, scale, places, Role.STRIPPED_LINE, stands, Stand::stripped);
        line(pen, scale, places, Role.GROUND_LINE, stands, Stand::ground);
        line(pen, scale, places, Role.SUBGRADE, stands, Stand::subgrade);
        line(pen, scale, places, Role.FINISHED, stands, Stand::finished);
        double b = begin();
        double e = end();
        double wall = job.laid().barrel().wall();
        double top = job.laid().rise() + wall;
        places.keepOff(
                ring(
                        scale,
                        b,
                        job.way().invert(b) + top,
                        e,
                        job.way().invert(e) + top,
                        e,
                        job.way().invert(e) - wall - bed,
                        b,
                        job.way().invert(b) - wall - bed));
    }

    private static void line(
            Pen pen,
            Scale scale,
            Places places,
            Role role,
            List<Stand> stands,
            ToDoubleFunction<Stand> height) {
        var path = new Outline.Builder();
        for (Stand stand : stands) {
            path.to(scale.x(stand.along()), scale.y(height.applyAsDouble(stand)));
        }
        Outline open = path.open();
        pen.line(role, open);
        places.keepOff(open);
    }

    /** The length to order below the barrel, and the least cover over it. */
    private void measures(Pen pen, Scale scale, Places places, Labels labels) {
        double b = scale.x(begin());
        double e = scale.x(end());
        double y =
                scale.y(Math.min(job.way().invert(begin()), job.way().invert(end())) - bed)
                        + scale.up() * job.laid().barrel().wall()
                        + 16;
        pen.line(Role.LEADER, b, scale.y(job.way().invert(begin())) + 1, b, y + 4);
        pen.line(Role.LEADER, e, scale.y(job.way().invert(end())) + 1, e, y + 4);
        Measures.arrow(pen, b, y, e, y);
        places.keepOff(new Box(Math.min(b, e), y - 2, Math.abs(e - b), 4));
        String order =
                (job.laid().count() == 1 ? "order " : "order " + job.laid().count() + " of ")
                        + Quantity.length(job.length().ordered()).in(units)
                        + " of "
                        + job.laid().each().in(units);
        labels.say(order, (b + e) / 2, y, true);
        cover(pen, scale, places, labels, job.finished(), true);
        cover(pen, scale, places, labels, job.building(), false);
    }

    private void cover(
            Pen pen, Scale scale, Places places, Labels labels, PipeCover cover, boolean built) {
        if (Double.isNaN(cover.least())) {
            return;
        }
        Stand at = null;
        for (Stand stand : job.way().stands()) {
            boolean here = stand.driven() && stand.offset() == cover.offset();
            at = here && at == null ? stand : at;
        }
        if (at == null) {
            return;
        }
        // Both covers may be least at one place: the one before the stone stands a little aside.
        double x = scale.x(at.along()) + (built ? 0 : at.offset() > 0 ? -9 : 9);
        double top = job.way().invert(at.along()) + job.laid().rise() + job.laid().barrel().wall();
        Measures.arrow(pen, x, scale.y(top), x, scale.y(top + cover.least()));
        places.keepOff(Outline.open(x, scale.y(top), x, scale.y(top + cover.least())));
        String words =
                (built ? "cover " : "while building ")
                        + Quantity.depth(cover.least()).in(units)
                        + (Double.isNaN(cover.needed())
                                ? ""
                                : ", needs " + Quantity.depth(cover.needed()).in(units));
        labels.say(words, x, scale.y(top + cover.least() * 0.5), built);
    }

    private void words(Pen pen, Scale scale, Places places, Labels labels) {
        PipeWay way = job.way();
        say(labels, scale, "inlet invert " + told(job.line().inlet().height()), 0, way.invert(0));
        say(
                labels,
                scale,
                "outlet invert " + told(job.line().outlet().height()),
                way.plan(),
                way.invert(way.plan()));
        say(
                labels,
                scale,
                ends(),
                begin(),
                way.invert(begin()) + Math.max(job.laid().rise(), job.wall()));
        say(
                labels,
                scale,
                "falls " + Quantity.grade(job.line().grade()).in(units),
                way.plan() * 0.36,
                way.invert(way.plan() * 0.36) + job.laid().rise() / 2);
        Laid laid = job.laid();
        double b = begin();
        double in = b + (end() - b) * 0.72;
        say(
                labels,
                scale,
                "bed " + Quantity.depth(bed).in(units),
                in,
                way.invert(in) - laid.barrel().wall() - bed / 2);
        water(pen, scale, places, labels);
        Apron.Bed stone = job.apron().orElse(null);
        if (stone != null) {
            double at = Math.min(to, end() + stone.length() * 0.6);
            say(
                    labels,
                    scale,
                    "riprap "
                            + Quantity.depth(stone.stone()).in(units)
                            + ", "
                            + Quantity.length(stone.length()).in(units)
                            + " long, "
                            + Quantity.depth(stone.depth()).in(units)
                            + " deep, on fabric",
                    at,
                    way.invert(end()) - laid.barrel().wall() - stone.depth() / 2);
        }
        named(labels, scale, "finished lane", Stand::finished, 0.5);
        named(labels, scale, "subgrade", Stand::subgrade, 0.62);
        named(labels, scale, "ground as it is", Stand::ground, 0.03);
        named(labels, scale, "ground stripped of topsoil", Stand::stripped, 0.78);
        inside(labels, scale, "stone of the lane", 0.55, Stand::finished, Stand::subgrade);
        inside(labels, scale, "the lane's fill", 0.66, Stand::subgrade, this::over);
        Stand mid = stand(0.3);
        double top = Math.min(mid.stripped(), mid.subgrade());
        double crown = way.invert(mid.along()) + laid.rise() + laid.barrel().wall();
        if (top > crown + 0.05) {
            say(labels, scale, "trench", mid.along(), (top + crown) / 2);
        }
    }

    private String ends() {
        return switch (job.ends()) {
            case PROJECTING -> "end sticks out";
            case MITRED -> "end cut to the slope";
            case HEADWALL -> "headwall " + Quantity.length(job.wall()).in(units) + " high";
            case END_SECTION, OTHER -> job.ends().words();
        };
    }

    private void water(Pen pen, Scale scale, Places places, Labels labels) {
        Sized sized = job.sized();
        if (sized == null || job.headwater() == null) {
            return;
        }
        say(
                labels,
                scale,
                "in the storm "
                        + Quantity.length(job.headwater().depth()).in(units)
                        + " over the invert",
                from + (0 - from) * 0.5,
                level());
        for (Blocked blocked : sized.blocked()) {
            if (blocked.share() != Blocked.Share.WHOLLY) {
                continue;
            }
            double level = job.line().inlet().height() + blocked.headwater();
            double y = scale.y(level);
            double x2 = scale.x(Math.min(job.way().plan() * 0.25, to));
            pen.line(Role.WATER_BEFORE, scale.x(from), y, x2, y);
            places.keepOff(Outline.open(scale.x(from), y, x2, y));
            say(
                    labels,
                    scale,
                    "inlet blocked: " + Quantity.length(blocked.headwater()).in(units),
                    from + (0 - from) * 0.3,
                    level);
        }
    }

    private void named(
            Labels labels, Scale scale, String words, ToDoubleFunction<Stand> height, double part) {
        List<Stand> stands = job.around().stands();
        double along = from + (to - from) * part;
        Stand nearest = nearest(stands, along);
        say(labels, scale, words, nearest.along(), height.applyAsDouble(nearest));
    }

    /** The top of the pipe, or the stripped ground where that lies higher. */
    private double over(Stand stand) {
        double top =
                job.way().invert(stand.along()) + job.laid().rise() + job.laid().barrel().wall();
        return Math.max(top, stand.stripped());
    }

    /** Words in an area between two heights, if it is there at that place. */
    private void inside(
            Labels labels,
            Scale scale,
            String words,
            double part,
            ToDoubleFunction<Stand> upper,
            ToDoubleFunction<Stand> lower) {
        Stand stand = stand(part);
        double high = upper.applyAsDouble(stand);
        double low = lower.applyAsDouble(stand);
        if (high > low + 0.05) {
            say(labels, scale, words, stand.along(), (high + low) / 2);
        }
    }

    private Stand stand(double part) {
        return nearest(job.way().stands(), job.way().plan() * part);
    }

    private static Stand nearest(List<Stand> stands, double along) {
        Stand nearest = stands.get(0);
        for (Stand stand : stands) {
            if (Math.abs(stand.along() - along) < Math.abs(nearest.along() - along)) {
                nearest = stand;
            }
        }
        return nearest;
    }

    private String told(double metres) {
        // As finely as the schedule has it.
        return Words.fine(Quantity.height(metres), units);
    }

    private static void say(Labels labels, Scale scale, String words, double along, double height) {
        labels.say(words, scale.x(along), scale.y(height), false);
    }

    private void bar(Pen pen, Box box, double across, Places places) {
        double unit = units == UnitSystem.US ? 5 * LengthUnit.FOOT.metres() : 2;
        double wide = unit * across;
        double y = box.bottom() - 9;
        double x = box.right() - 14 - wide;
        pen.line(Role.TICK, x, y - 3, x, y, x + wide, y, x + wide, y - 3);
        String words = Words.fine(Quantity.length(unit), units);
        pen.gauge(
                Gauge.of(Gauge.Use.SCALE_BAR, words, unit),
                x + wide / 2,
                y - 3,
                NOTE,
                false,
                Anchor.MIDDLE);
        places.keepOff(new Box(x - 2, y - 14, wide + 4, 18));
    }

    /** The place along the barrel at which its trench is drawn across: nearest to mid-lane. */
    @Nullable Stand across() {
        Stand best = null;
        for (Stand stand : job.way().stands()) {
            if (stand.driven()
                    && (best == null || Math.abs(stand.offset()) < Math.abs(best.offset()))) {
                best = stand;
            }
        }
        return best;
    }
}
