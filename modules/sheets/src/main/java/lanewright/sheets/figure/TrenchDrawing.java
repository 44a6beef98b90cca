package lanewright.sheets.figure;

import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.planner.pipes.Laid;
import lanewright.planner.pipes.PipeJob;
import lanewright.planner.pipes.PipeWay.Stand;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import org.jspecify.annotations.Nullable;

/** The trench of a pipe, cut square across under the middle of the lane, true to scale. */
public final class TrenchDrawing {

    private static final double FARTHEST = 120;

    /** Chords of a pipe that is drawn from its end. */
    private static final int CHORDS = 48;

    private final PipeJob job;
    private final UnitSystem units;
    private final double bed;
    private final double room;
    private final @Nullable Stand at;

    /**
     * A trench to be drawn.
     *
     * @param bed packed thickness of the bed, m
     * @param room in the trench on each side of the pipe, m
     */
    public TrenchDrawing(PipeJob job, double bed, double room, UnitSystem units) {
        this.job = job;
        this.units = units;
        this.bed = bed;
        this.room = room;
        this.at = new PipeDrawing(job, bed, units).across();
    }

    /** Whether the pipe passes under the travelled way, so that there is something to draw. */
    public boolean isThere() {
        return at != null;
    }

    /** Draws it into a box. */
    public void draw(Pen pen, Box box) {
        Stand stand = at;
        if (stand == null) {
            return;
        }
        Laid laid = job.laid();
        double wall = laid.barrel().wall();
        double invert = job.way().invert(stand.along());
        double under = invert - wall;
        double floor = under - bed;
        double top = Math.min(stand.stripped(), stand.subgrade());
        double half = job.trench().width() / 2;
        double high = Math.max(stand.finished(), Math.max(top, invert + laid.rise()));
        double margin = 46;
        double wide = 2 * half + 1.2;
        double one =
                Math.min((box.width() - 150) / wide, (box.height() - 2 * margin) / (high - floor));
        Scale scale = Scale.in(box, -box.width() / 2 / one, floor - margin / one, one, one);
        double left = -half - 0.6;
        double right = half + 0.6;
        var inside = new Pen();
        var places = new Places(box.inset(2));
        // Undisturbed earth to both sides, up to the stripped ground or the subgrade.
        rect(inside, scale, Role.EARTH, left, floor - 0.12, right, Math.max(top, floor));
        if (stand.subgrade() > top) {
            rect(inside, scale, Role.FILL, left, top, right, stand.subgrade());
        }
        rect(inside, scale, Role.STONE_MIDDLE, left, stand.subgrade(), right, stand.finished());
        if (top > floor) {
            rect(inside, scale, Role.UNDERCUT, -half, floor, half, top);
            outline(inside, scale, places, -half, floor, half, top);
        }
        rect(inside, scale, Role.STONE_COARSE, -half, floor, half, under);
        double step = laid.outsideWidth() + laid.between();
        for (int i = 0; i < laid.count(); i++) {
            double middle = (i - (laid.count() - 1) / 2.0) * step;
            Outline outer =
                    ellipse(
                            scale,
                            middle,
                            under + laid.outsideHeight() / 2,
                            laid.outsideWidth() / 2,
                            laid.outsideHeight() / 2);
            Outline inner =
                    ellipse(
                            scale,
                            middle,
                            invert + laid.rise() / 2,
                            laid.span() / 2,
                            laid.rise() / 2);
            inside.area(Role.BAND, outer).line(Role.BARREL, outer);
            inside.area(Role.BARREL, inner).line(Role.LEADER, inner);
            places.keepOff(outer);
        }
        level(inside, scale, places, Role.SUBGRADE, left, right, stand.subgrade());
        level(inside, scale, places, Role.FINISHED, left, right, stand.finished());
        if (stand.stripped() < stand.subgrade()) {
            level(inside, scale, places, Role.STRIPPED_LINE, left, right, stand.stripped());
        }
        measures(inside, scale, places, stand, floor, half);
        pen.framed(box, inside);
        pen.frame(Role.FRAME, box);
    }

    private void measures(
            Pen pen, Scale scale, Places places, Stand stand, double floor, double half) {
        Laid laid = job.laid();
        var labels = new Labels(places, FARTHEST);
        boolean dug = Math.min(stand.stripped(), stand.subgrade()) > floor;
        double y = scale.y(floor) + 20;
        double x1 = scale.x(-half);
        double x2 = scale.x(half);
        pen.line(Role.LEADER, x1, scale.y(floor), x1, y + 4);
        pen.line(Role.LEADER, x2, scale.y(floor), x2, y + 4);
        Measures.arrow(pen, x1, y, x2, y);
        places.keepOff(new Box(x1, y - 2, x2 - x1, 4));
        labels.say(
                (dug ? "trench " : "bed ")
                        + Quantity.length(job.trench().width()).in(units)
                        + " wide",
                (x1 + x2) / 2,
                y,
                false);
        double under = floor + bed;
        double axis = under + laid.outsideHeight() / 2;
        double side = scale.x(half - room);
        Measures.arrow(pen, side, scale.y(axis), x2, scale.y(axis));
        places.keepOff(Outline.open(side, scale.y(axis), x2, scale.y(axis)));
        labels.say(
                Quantity.depth(room).in(units) + " beside the pipe",
                (side + x2) / 2,
                scale.y(axis),
                false);
        labels.say(
                "bed " + Quantity.depth(bed).in(units) + " of stone",
                scale.x(-half * 0.7),
                scale.y(floor + bed / 2),
                false);
        labels.say(laid.name().in(units), scale.x(0), scale.y(axis), false);
        double top = Math.min(stand.stripped(), stand.subgrade());
        if (top > under + laid.outsideHeight() * 0.5) {
            labels.say(
                    "backfill, packed in lifts on both sides",
                    scale.x(-half + room / 2),
                    scale.y(under + Math.min(top - under, laid.outsideHeight()) * 0.75),
                    false);
        }
        if (stand.subgrade() > top + 0.03) {
            labels.say(
                    "the lane's own fill",
                    scale.x(half + 0.3),
                    scale.y((top + stand.subgrade()) / 2),
                    false);
        }
        if (stand.finished() > stand.subgrade() + 0.03) {
            labels.say(
                    "stone of the lane",
                    scale.x(half * 0.4),
                    scale.y((stand.subgrade() + stand.finished()) / 2),
                    false);
        }
        labels.draw(pen);
    }

    private static void level(
            Pen pen,
            Scale scale,
            Places places,
            Role role,
            double left,
            double right,
            double height) {
        Outline line =
                Outline.open(scale.x(left), scale.y(height), scale.x(right), scale.y(height));
        pen.line(role, line);
        places.keepOff(line);
    }

    private static void rect(
            Pen pen, Scale scale, Role role, double left, double low, double right, double high) {
        if (high > low) {
            pen.fill(
                    role,
                    new Box(
                            scale.x(left),
                            scale.y(high),
                            scale.x(right) - scale.x(left),
                            scale.y(low) - scale.y(high)));
        }
    }

    private static void outline(
            Pen pen,
            Scale scale,
            Places places,
            double left,
            double low,
            double right,
            double high) {
        Outline walls =
                Outline.open(
                        scale.x(left),
                        scale.y(high),
                        scale.x(left),
                        scale.y(low),
                        scale.x(right),
                        scale.y(low),
                        scale.x(right),
                        scale.y(high));
        pen.line(Role.TICK, walls);
        places.keepOff(walls);
    }

    private static Outline ellipse(
            Scale scale, double a, double b, double halfWidth, double halfHeight) {
        double[] xy = new double[2 * CHORDS];
        for (int i = 0; i < CHORDS; i++) {
            double turn = 2 * Math.PI * i / CHORDS;
            xy[2 * i] = scale.x(a + halfWidth * StrictMath.cos(turn));
            xy[2 * i + 1] = scale.y(b + halfHeight * StrictMath.sin(turn));
        }
        return Outline.closed(xy);
    }
}
