package lanewright.sheets.figure;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionLine;
import lanewright.lane.section.SideResult;
import lanewright.lane.shape.Bed;
import lanewright.lane.shape.Layer;
import lanewright.lane.shape.TypicalSection;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;

/**
 * One cross-section, looking up-station: ground, topsoil, what is dug and built up, the stone layer
 * by layer, the finished line, and water that stands there. Without words, which the sheet puts
 * where there is room.
 */
public final class SectionDrawing {

    private final Section section;
    private final TypicalSection typical;
    private final AtSection at;
    private final Scale scale;
    private final Pen pen = new Pen();
    private final double bottom;
    private final Map<Role, Between.Ring> largest = new EnumMap<>(Role.class);

    private SectionDrawing(
            Section section, TypicalSection typical, AtSection at, Scale scale, Box box) {
        this.section = section;
        this.typical = typical;
        this.at = at;
        this.scale = scale;
        bottom = box.bottom();
    }

    /** Draws the section, without water and pipes, into {@code box} by {@code scale}. */
    public static void draw(
            Section section, TypicalSection typical, Scale scale, Pen pen, Box box) {
        draw(section, typical, AtSection.NOTHING, scale, pen, box);
    }

    /**
     * Draws the section and water that stands in it, without pipes.
     *
     * @param pools each where its water reaches in this section
     */
    public static void draw(
            Section section,
            TypicalSection typical,
            List<StandingWater> pools,
            Scale scale,
            Pen pen,
            Box box) {
        draw(section, typical, new AtSection(pools, List.of(), null), scale, pen, box);
    }

    /**
     * Draws the section into {@code box} by {@code scale}.
     *
     * @param at what else is there
     * @return the largest piece of each kind of area that is to be seen
     */
    static Map<Role, Between.Ring> draw(
            Section section, TypicalSection typical, AtSection at, Scale scale, Pen pen, Box box) {
        var drawing = new SectionDrawing(section, typical, at, scale, box);
        drawing.draw();
        pen.framed(box, drawing.pen);
        return drawing.largest;
    }

    private void draw() {
        earth();
        double left = limit(section.left(), Double.NEGATIVE_INFINITY);
        double right = limit(section.right(), Double.POSITIVE_INFINITY);
        hatch(Role.TOPSOIL, section.ground(), section.stripped(), left, right);
        hatch(Role.CUT, section.stripped(), section.subgrade(), left, right);
        // Built-up earth lies over what is dug out below it, so it is painted after it.
        undercut();
        hatch(Role.FILL, section.subgrade(), section.stripped(), left, right);
        double leftToe = section.left().stoneLow().offset();
        double rightToe = section.right().stoneLow().offset();
        hatch(Role.TOPSOIL_BACK, section.finished(), section.subgrade(), left, leftToe);
        hatch(Role.TOPSOIL_BACK, section.finished(), section.subgrade(), rightToe, right);
        line(Role.STRIPPED_LINE, section.stripped());
        line(Role.GROUND_LINE, section.ground());
        water();
        stone();
        part(Role.SUBGRADE, section.subgrade(), leftToe, rightToe);
        line(Role.FINISHED, section.finished());
        SectionLine ditch = at.ditch();
        if (ditch != null) {
            line(Role.GROUND_LINE, ditch);
        }
        at.pipes().forEach(this::pipe);
    }

    /** A pipe from the side, as long as it is. */
    private void pipe(PipeUnder pipe) {
        double tall = pipe.tall(scale.up());
        double x1 = scale.x(pipe.inlet().offset());
        double x2 = scale.x(pipe.outlet().offset());
        double y1 = scale.y(pipe.inlet().height());
        double y2 = scale.y(pipe.outlet().height());
        Outline barrel = Outline.closed(x1, y1 - tall, x2, y2 - tall, x2, y2, x1, y1);
        pen.area(Role.BARREL, barrel).line(Role.BARREL, barrel);
    }

    /** Water up to its level: over the finished land, and over the ground beyond it. */
    private void water() {
        SectionLine finished = section.finished();
        if (finished.size() < 2) {
            return;
        }
        double from = finished.offset(0);
        double to = finished.offset(finished.size() - 1);
        for (StandingWater pool : at.pools()) {
            if (!(pool.leftmost() < pool.rightmost())) {
                continue;
            }
            SectionLine level =
                    SectionLine.of(
                            new double[] {pool.leftmost(), pool.rightmost()},
                            new double[] {pool.level(), pool.level()});
            hatch(Role.WATER, level, finished, from, to);
            hatch(Role.WATER, level, section.ground(), pool.leftmost(), from);
            hatch(Role.WATER, level, section.ground(), to, pool.rightmost());
        }
    }

    private static double limit(SideResult side, double otherwise) {
        return side.catchPoint() == null ? otherwise : side.limit();
    }

    private void earth() {
        SectionLine ground = section.ground();
        if (ground.size() < 2) {
            return;
        }
        var ring = new Outline.Builder();
        for (int i = 0; i < ground.size(); i++) {
            ring.to(scale.x(ground.offset(i)), scale.y(ground.height(i)));
        }
        ring.to(scale.x(ground.offset(ground.size() - 1)), bottom);
        ring.to(scale.x(ground.offset(0)), bottom);
        pen.area(Role.EARTH, ring.closed());
    }

    private void hatch(Role role, SectionLine upper, SectionLine lower, double from, double to) {
        List<Between.Ring> rings = from < to ? Between.of(upper, lower, from, to) : List.of();
        for (Between.Ring ring : rings) {
            pen.area(role, scale.ring(ring));
            Between.Ring other = largest.get(role);
            if (other == null || ring.area() > other.area()) {
                largest.put(role, ring);
            }
        }
    }

    private void undercut() {
        SectionLine bearing = section.bearing();
        if (bearing != null && section.areas().undercut().area() > 0) {
            hatch(
                    Role.UNDERCUT,
                    section.subgrade(),
                    bearing,
                    section.left().hinge().offset(),
                    section.right().hinge().offset());
            part(
                    Role.BEARING_LINE,
                    bearing,
                    section.left().hinge().offset(),
                    section.right().hinge().offset());
        }
    }

    private void part(Role role, SectionLine line, double from, double to) {
        SectionLine part = Clipped.of(line, from, to);
        if (part != null) {
            line(role, part);
        }
    }

    private void line(Role role, SectionLine line) {
        if (line.size() > 1) {
            var path = new Outline.Builder();
            for (int i = 0; i < line.size(); i++) {
                path.to(scale.x(line.offset(i)), scale.y(line.height(i)));
            }
            pen.line(role, path.open());
        }
    }

    /** The stone from the top down: each layer between its own two planes. */
    private void stone() {
        List<Layer> layers = typical.layers();
        double depth = 0;
        double out = 0;
        for (int i = 0; i < layers.size(); i++) {
            Layer layer = layers.get(i);
            double foot = depth + layer.thickness();
            double wider =
                    out + (typical.bed() == Bed.ON_TOP ? layer.thickness() * layer.edgeSlope() : 0);
            boolean lowest = i == layers.size() - 1;
            var ring = new Outline.Builder();
            corner(ring, section.left(), out, depth);
            ring.to(scale.x(0), scale.y(section.profileHeight() - depth));
            corner(ring, section.right(), out, depth);
            if (lowest) {
                under(ring);
            } else {
                corner(ring, section.right(), wider, foot);
                ring.to(scale.x(0), scale.y(section.profileHeight() - foot));
                corner(ring, section.left(), wider, foot);
            }
            pen.area(role(i, layers.size()), ring.closed());
            depth = foot;
            out = wider;
        }
    }

    /**
     * A point {@code out} m beyond the edge of the travelled way, {@code depth} m under its plane.
     */
    private void corner(Outline.Builder ring, SideResult side, double out, double depth) {
        Corner edge = side.edge();
        double slope = (edge.height() - section.profileHeight()) / edge.offset();
        double offset = edge.offset() + Math.signum(edge.offset()) * out;
        ring.to(scale.x(offset), scale.y(section.profileHeight() + slope * offset - depth));
    }

    /** The underside of the lowest layer, from right to left along the subgrade. */
    private void under(Outline.Builder ring) {
        double from = section.left().stoneLow().offset();
        double to = section.right().stoneLow().offset();
        SectionLine subgrade = section.subgrade();
        ring.to(scale.x(to), scale.y(section.right().stoneLow().height()));
        for (int i = subgrade.size() - 1; i >= 0; i--) {
            if (subgrade.offset(i) > from && subgrade.offset(i) < to) {
                ring.to(scale.x(subgrade.offset(i)), scale.y(subgrade.height(i)));
            }
        }
        ring.to(scale.x(from), scale.y(section.left().stoneLow().height()));
    }

    /** Finest at the top, coarsest at the bottom. */
    static Role role(int layer, int of) {
        if (layer == of - 1) {
            return Role.STONE_COARSE;
        }
        return layer == 0 ? Role.STONE_FINE : Role.STONE_MIDDLE;
    }
}
