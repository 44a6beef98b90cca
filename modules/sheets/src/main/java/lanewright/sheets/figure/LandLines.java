package lanewright.sheets.figure;

import java.util.EnumSet;
import java.util.Set;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;

/** Areas, contours and lines of a map, from the ground up. */
final class LandLines {

    /** Roles of lines and outlines that words must not hide. */
    private static final Set<Role> PLAIN_TO_SEE =
            EnumSet.of(
                    Role.LANE_EDGE,
                    Role.CENTRE,
                    Role.LIMIT,
                    Role.WATER,
                    Role.WATER_BEFORE,
                    Role.FLOW,
                    Role.DIP,
                    Role.WATER_BAR,
                    Role.TURN_OUT,
                    Role.RELIEF_PIPE,
                    Role.PIPE,
                    Role.HEAP,
                    Role.HAZARD,
                    Role.WIRE,
                    Role.BURIED);

    private final Land land;
    private final LandView view;
    private final Places places;
    private final Set<Role> drawn;

    LandLines(Land land, LandView view, Places places, Set<Role> drawn) {
        this.land = land;
        this.view = view;
        this.places = places;
        this.drawn = drawn;
    }

    /** Whether words must not hide what is drawn in a role. */
    static boolean isPlainToSee(Role role) {
        return PLAIN_TO_SEE.contains(role);
    }

    void draw(Pen pen) {
        patches(pen);
        areas(pen);
        contours(pen);
        lines(pen);
    }

    private void patches(Pen pen) {
        for (Land.Patch patch : land.patches()) {
            Outline[] rings = new Outline[patch.east().size()];
            for (int i = 0; i < rings.length; i++) {
                rings[i] = view.outline(patch.east().get(i), patch.north().get(i), true);
                saw(patch.role(), rings[i]);
            }
            pen.area(patch.role(), rings);
        }
    }

    private void areas(Pen pen) {
        for (Land.Feature feature : land.features()) {
            if (feature.filled()) {
                Outline ring = view.outline(feature);
                pen.area(feature.role(), ring);
                saw(feature.role(), ring);
                if (feature.role() == Role.HEAP && ring.size() > 3) {
                    places.keepOffArea(ring);
                    // Words that lay wholly in a heap would cross no side of it.
                    int across = ring.size() / 2;
                    places.keepOff(
                            Outline.open(ring.x(0), ring.y(0), ring.x(across), ring.y(across)));
                }
            }
        }
    }

    private void contours(Pen pen) {
        for (Land.Contour contour : land.contours()) {
            pen.line(
                    contour.heavy() ? Role.CONTOUR_HEAVY : Role.CONTOUR,
                    view.outline(contour.x(), contour.y(), false));
        }
    }

    private void lines(Pen pen) {
        for (Land.Feature feature : land.features()) {
            // A way of water that rises and ends in one cell has no length to draw.
            if (feature.filled() || feature.x().length < 2) {
                continue;
            }
            Outline line = view.outline(feature);
            if (feature.role() == Role.PIPE) {
                PipeSign.draw(pen, line);
            } else if (WaterSigns.isAlong(feature.role())) {
                WaterSigns.along(pen, feature.role(), line);
            } else {
                pen.line(feature.role(), line);
            }
            if (feature.role() == Role.FLOW) {
                FlowArrows.draw(pen, line);
            }
            if (PLAIN_TO_SEE.contains(feature.role()) && !HazardLine.isLettered(feature.role())) {
                places.keepOff(line);
            }
            saw(feature.role(), line);
        }
    }

    /** Remembers that a role is to be seen, if any of the line lies in the box. */
    private void saw(Role role, Outline line) {
        if (view.shows(line)) {
            drawn.add(role);
        }
    }
}
