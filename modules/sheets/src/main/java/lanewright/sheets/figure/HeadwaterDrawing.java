package lanewright.sheets.figure;

import java.util.Arrays;
import lanewright.drainage.Overflow;
import lanewright.drainage.culvert.Blocked;
import lanewright.drainage.culvert.Headwater;
import lanewright.drainage.culvert.Performance;
import lanewright.drainage.storm.Sized;
import lanewright.measure.Kind;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.pipes.Laid;
import lanewright.planner.pipes.PipeJob;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;
import org.jspecify.annotations.Nullable;

/**
 * The performance curve of a pipe: how deep water stands over its inlet's invert, over how much
 * comes, with the storm, what is allowed, and the next smaller and larger size beside it.
 */
public final class HeadwaterDrawing {

    /** Straight pieces of a curve. */
    private static final int PIECES = 60;

    /** How far the axes go beyond what must be on them. */
    private static final double BEYOND = 1.35;

    /** Least distance of marks on the axes, pt. */
    private static final double ALONG = 42;

    private static final double UP = 20;

    /** Room for the figures of the axes, pt. */
    private static final double LEFT = 40;

    private static final double BELOW = 28;

    private static final double FARTHEST = 90;

    private final PipeJob job;
    private final UnitSystem units;

    /** A pipe whose curve is to be drawn. */
    public HeadwaterDrawing(PipeJob job, UnitSystem units) {
        this.job = job;
        this.units = units;
    }

    /** Whether a storm brings water there, so that there is something to draw. */
    public boolean isThere() {
        Sized sized = job.sized();
        return sized != null && !sized.isDry() && job.headwater() != null && job.allowed() > 0;
    }

    /** Draws it into a box. */
    public void draw(Pen pen, Box box) {
        Sized sized = job.sized();
        Headwater storm = job.headwater();
        if (sized == null || storm == null || !isThere()) {
            return;
        }
        double comes = sized.peak().discharge();
        Out out = out(sized);
        double most = BEYOND * comes;
        double high = Math.max(job.allowed(), storm.depth());
        high = BEYOND * (out == null ? high : Math.max(high, Math.min(out.depth, 2 * high)));
        Box plot =
                new Box(
                        box.x() + LEFT,
                        box.y() + 4,
                        box.width() - LEFT - 8,
                        box.height() - BELOW - 4);
        Scale scale = Scale.in(plot, 0, 0, plot.width() / most, plot.height() / high);
        var inside = new Pen();
        var places = new Places(plot.inset(2));
        axes(inside, plot, scale, most, high);
        var labels = new Labels(places, FARTHEST);
        double x = scale.x(comes);
        inside.line(Role.WATER_BEFORE, x, plot.y(), x, plot.bottom());
        places.keepOff(Outline.open(x, plot.y(), x, plot.bottom()));
        labels.say("the storm, " + Quantity.flow(comes).in(units), x, plot.bottom() - 9, false);
        level(inside, plot, scale, places, Role.LIMIT, job.allowed());
        labels.say(
                "allowed, " + Quantity.length(job.allowed()).in(units),
                plot.x() + plot.width() * 0.12,
                scale.y(job.allowed()),
                false);
        if (out != null && out.depth < high) {
            level(inside, plot, scale, places, Role.LIMIT, out.depth);
            labels.say(
                    "from here water runs " + out.words.in(units),
                    plot.x() + plot.width() * 0.3,
                    scale.y(out.depth),
                    false);
        }
        for (PipeJob.Other other : job.others()) {
            curve(inside, scale, places, labels, other.laid(), sized.tail(), most, high, false);
        }
        curve(inside, scale, places, labels, job.laid(), sized.tail(), most, high, true);
        labels.say(
                Quantity.length(storm.depth()).in(units)
                        + ", set by the "
                        + (storm.control() == Headwater.Control.INLET ? "inlet" : "outlet"),
                x,
                scale.y(Math.min(storm.depth(), high)),
                true);
        labels.draw(inside);
        pen.framed(plot, inside);
        pen.frame(Role.FRAME, plot);
        figures(pen, plot, scale, most, high);
    }

    /** The lowest way out besides the pipe: how high, m over the inlet's invert, and where. */
    private record Out(double depth, Saying words) {}

    private static @Nullable Out out(Sized sized) {
        for (Blocked blocked : sized.blocked()) {
            Overflow other = sized.crossing().overflow();
            if (blocked.share() != Blocked.Share.WHOLLY) {
                continue;
            }
            if (!blocked.elsewhere()) {
                return new Out(
                        blocked.headwater() - blocked.overDepth(),
                        Saying.of("over the lane at {}", Quantity.station(blocked.overAt())));
            }
            if (other != null) {
                return new Out(other.depth(), other.spill().words());
            }
        }
        return null;
    }

    private Rule flows(Scale scale) {
        return Rule.of(Kind.FLOW, units, ALONG / scale.across());
    }

    private Rule depths(Scale scale) {
        return Rule.of(units, UP / scale.up());
    }

    private void axes(Pen pen, Box plot, Scale scale, double most, double high) {
        for (Rule.Tick tick : flows(scale).ticks(0, most)) {
            pen.line(Role.GRID, scale.x(tick.at()), plot.y(), scale.x(tick.at()), plot.bottom());
        }
        for (Rule.Tick tick : depths(scale).ticks(0, high)) {
            pen.line(Role.GRID, plot.x(), scale.y(tick.at()), plot.right(), scale.y(tick.at()));
        }
    }

    private void figures(Pen pen, Box plot, Scale scale, double most, double high) {
        for (Rule.Tick tick : flows(scale).ticks(0, most)) {
            double at = scale.x(tick.at());
            if (at < plot.right() - 60) {
                pen.gauge(
                        Gauge.of(Gauge.Use.FLOW, tick.words(), tick.at()),
                        at,
                        plot.bottom() + 10,
                        Type.NOTE,
                        false,
                        Anchor.MIDDLE);
            }
        }
        for (Rule.Tick tick : depths(scale).ticks(0, high)) {
            double at = scale.y(tick.at());
            if (at > plot.y() + 12 && tick.at() > 0) {
                pen.gauge(
                        Gauge.of(Gauge.Use.DEPTH, tick.words(), tick.at()),
                        plot.x() - 5,
                        at + 3,
                        Type.NOTE,
                        false,
                        Anchor.END);
            }
        }
        String flow = Words.unit(Kind.FLOW, units);
        pen.words(Role.NOTE, flow, plot.right(), plot.bottom() + 10, Type.NOTE, Anchor.END);
        String depth = Words.unit(Kind.LENGTH, units);
        pen.words(Role.NOTE, depth, plot.x() - 5, plot.y() + 7, Type.NOTE, Anchor.END);
    }

    private static void level(
            Pen pen, Box plot, Scale scale, Places places, Role role, double depth) {
        double y = scale.y(depth);
        pen.line(role, plot.x(), y, plot.right(), y);
        places.keepOff(Outline.open(plot.x(), y, plot.right(), y));
    }

    private void curve(
            Pen pen,
            Scale scale,
            Places places,
            Labels labels,
            Laid laid,
            double tail,
            double most,
            double high,
            boolean ours) {
        var performance = new Performance(job.culvert(laid), tail);
        double[] xy = new double[2 * (PIECES + 1)];
        int count = 0;
        for (int i = 0; i <= PIECES; i++) {
            double flow = most * i / PIECES;
            double depth = performance.depth(flow);
            xy[2 * i] = scale.x(flow);
            xy[2 * i + 1] = scale.y(depth);
            count = i + 1;
            if (depth > high) {
                break;
            }
        }
        Outline line = Outline.open(Arrays.copyOf(xy, 2 * count));
        pen.line(ours ? Role.FINISHED : Role.FLOW, line);
        places.keepOff(line);
        int at = Math.max(1, (int) (count * (ours ? 0.42 : 0.6)));
        labels.say(name(laid), xy[2 * at], xy[2 * at + 1], ours);
    }

    private String name(Laid laid) {
        return (laid.count() == 1 ? "" : laid.count() + " of ") + laid.each().in(units);
    }
}
