package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.Layer;
import lanewright.lane.shape.SideShape;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;
import org.jspecify.annotations.Nullable;

/** The measures of a section drawn true to scale, each with a line to what it measures. */
final class Measures {

    /** What each area is called, in the order in which they are named. */
    static final Map<Role, String> NAMES = new EnumMap<>(Role.class);

    static {
        NAMES.put(Role.CUT, "cut");
        NAMES.put(Role.FILL, "fill");
        NAMES.put(Role.TOPSOIL, "topsoil off");
        NAMES.put(Role.TOPSOIL_BACK, "topsoil back");
        NAMES.put(Role.UNDERCUT, "too soft: dig out, refill");
        NAMES.put(Role.WATER, "standing water");
    }

    private static final double NOTE = Type.NOTE;

    /** How far words may stand from what they speak of, pt. */
    private static final double FARTHEST = 150;

    /** Half the size of a dot on what is spoken of, pt. */
    private static final double DOT = 1;

    private final Section section;
    private final TypicalSection shape;
    private final UnitSystem units;
    private final Scale scale;
    private final Box frame;
    private final Places places;
    private final List<Said> said = new ArrayList<>();

    /** Words about a place, pt. */
    private record Said(String words, double x, double y) {}

    Measures(Section section, TypicalSection shape, UnitSystem units, Scale scale, Box frame) {
        this.section = section;
        this.shape = shape;
        this.units = units;
        this.scale = scale;
        this.frame = frame;
        places = new Places(frame.inset(2));
    }

    /**
     * Draws the width and the depths first, then the names of the areas, then all other measures.
     */
    void draw(Pen pen, Map<Role, Between.Ring> areas) {
        var inside = new Pen();
        keepOff();
        width(inside);
        depth(inside, section.left(), shape.left());
        depth(inside, section.right(), shape.right());
        for (Map.Entry<Role, String> name : NAMES.entrySet()) {
            Between.Ring ring = areas.get(name.getKey());
            if (ring != null) {
                double[] at = ring.inside();
                say(name.getValue(), at[0], at[1]);
            }
        }
        fall(section.left(), shape.leftFall());
        fall(section.right(), shape.rightFall());
        layers();
        side(section.left(), shape.left());
        side(section.right(), shape.right());
        said(inside);
        pen.framed(frame, inside);
    }

    /** Words stand clear of everything between the ground, the finished lane and the subgrade. */
    private void keepOff() {
        for (var line :
                new lanewright.lane.section.SectionLine[] {
                    section.ground(), section.stripped(), section.finished(), section.subgrade()
                }) {
            if (line.size() > 1) {
                var path = new Outline.Builder();
                for (int i = 0; i < line.size(); i++) {
                    path.to(scale.x(line.offset(i)), scale.y(line.height(i)));
                }
                places.keepOff(path.open());
            }
        }
    }

    private void width(Pen pen) {
        Corner left = section.left().edge();
        Corner right = section.right().edge();
        double y = Math.min(scale.y(left.height()), scale.y(right.height()));
        y = Math.min(y, scale.y(section.profileHeight())) - 28;
        double x1 = scale.x(left.offset());
        double x2 = scale.x(right.offset());
        pen.line(Role.LEADER, x1, y - 3, x1, scale.y(left.height()) - 1);
        pen.line(Role.LEADER, x2, y - 3, x2, scale.y(right.height()) - 1);
        arrow(pen, x1, y, x2, y);
        places.keepOff(new Box(x1, y - 2, x2 - x1, 4));
        String words = Quantity.length(shape.width()).in(units) + " driven";
        places.put(pen, Role.TEXT, words, (x1 + x2) / 2, y - 2, NOTE, true, FARTHEST);
    }

    private void fall(SideResult side, double fall) {
        Corner edge = side.edge();
        say(
                (fall < 0 ? "rises " : "falls ") + Quantity.grade(Math.abs(fall)).in(units),
                edge.offset() * 0.55,
                section.profileHeight() + (edge.height() - section.profileHeight()) * 0.55);
    }

    private void side(SideResult side, SideShape like) {
        Corner edge = side.edge();
        if (like.shoulder() > 0) {
            Corner toe = shape.bed() == Bed.ON_TOP ? side.stoneLow() : edge;
            middle(Quantity.length(like.shoulder()).in(units) + " shoulder", toe, side.hinge());
        }
        Corner foot = side.ditchInner() == null ? side.catchPoint() : side.ditchInner();
        boolean cut = side.kind() == SideResult.Kind.CUT;
        if (foot != null) {
            double slope = cut ? like.cutSlope() : like.foreslope();
            middle(slope(slope) + " slope", side.hinge(), foot);
        }
        ditch(side, like);
    }

    /** How deep the ditch lies under the hinge, beside the upright arrow that shows it. */
    private void depth(Pen pen, SideResult side, SideShape like) {
        Corner inner = side.ditchInner();
        Corner outer = side.ditchOuter();
        if (inner == null || outer == null) {
            return;
        }
        Corner hinge = side.hinge();
        double deep = hinge.height() - inner.height();
        if (Math.abs(deep - like.ditch().depth()) >= 0.01) {
            return;
        }
        double offset = (inner.offset() + outer.offset()) / 2;
        double x = scale.x(offset);
        double top = scale.y(hinge.height());
        pen.line(Role.LEADER, scale.x(hinge.offset()), top, x, top);
        places.keepOff(Outline.open(scale.x(hinge.offset()), top, x, top));
        arrow(pen, x, top, x, scale.y(inner.height()));
        places.keepOff(Outline.open(x, top, x, scale.y(inner.height())));
        say(
                "ditch " + Quantity.depth(like.ditch().depth()).in(units) + " deep",
                offset,
                inner.height() + deep * 0.7);
    }

    private void ditch(SideResult side, SideShape like) {
        @Nullable Corner inner = side.ditchInner();
        @Nullable Corner outer = side.ditchOuter();
        if (inner == null || outer == null) {
            return;
        }
        double offset = (inner.offset() + outer.offset()) / 2;
        if (like.ditch().bottom() > 0) {
            say(
                    Quantity.length(like.ditch().bottom()).in(units) + " flat bottom",
                    offset,
                    inner.height());
        }
        @Nullable Corner end = side.catchPoint();
        if (end != null) {
            middle(slope(like.backslope()) + " slope", outer, end);
        }
    }

    private String slope(double runOverRise) {
        return Quantity.sideSlope(runOverRise).in(units);
    }

    private void layers() {
        double depth = 0;
        double part = 0.3;
        for (Layer layer : shape.layers()) {
            Corner edge = section.right().edge();
            double offset = edge.offset() * part;
            double surface =
                    section.profileHeight() + (edge.height() - section.profileHeight()) * part;
            say(
                    Quantity.depth(layer.thickness()).in(units) + " " + layer.role(),
                    offset,
                    surface - depth - layer.thickness() / 2);
            depth += layer.thickness();
            part -= 0.5;
        }
    }

    private void middle(String words, Corner a, Corner b) {
        say(words, (a.offset() + b.offset()) / 2, (a.height() + b.height()) / 2);
    }

    private void say(String words, double offset, double height) {
        double x = scale.x(offset);
        double y = scale.y(height);
        if (frame.holds(x, y)) {
            said.add(new Said(words, x, y));
        }
    }

    /** A dot on every place that is spoken of, all of them kept free, and then the words. */
    private void said(Pen pen) {
        for (Said one : said) {
            pen.area(Role.TICK, Outline.circle(one.x(), one.y(), DOT, 8));
            places.keepOff(new Box(one.x() - DOT, one.y() - DOT, 2 * DOT, 2 * DOT));
        }
        for (Said one : said) {
            places.put(pen, Role.TEXT, one.words(), one.x(), one.y(), NOTE, false, FARTHEST);
        }
    }

    /** A line with a head at each end. */
    static void arrow(Pen pen, double x1, double y1, double x2, double y2) {
        pen.line(Role.LEADER, x1, y1, x2, y2);
        double length = Math.max(1e-9, Math.hypot(x2 - x1, y2 - y1));
        double size = Math.min(4, length / 3);
        double ux = (x2 - x1) / length * size;
        double uy = (y2 - y1) / length * size;
        head(pen, x1, y1, ux, uy);
        head(pen, x2, y2, -ux, -uy);
    }

    private static void head(Pen pen, double x, double y, double ux, double uy) {
        pen.area(
                Role.TICK,
                Outline.closed(
                        x,
                        y,
                        x + ux + uy * 0.35,
                        y + uy - ux * 0.35,
                        x + ux - uy * 0.35,
                        y + uy + ux * 0.35));
    }
}
