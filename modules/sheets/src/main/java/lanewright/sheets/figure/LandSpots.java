package lanewright.sheets.figure;

import java.util.Set;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;

/** Single places on a map: shots, probe holes, benchmarks. */
final class LandSpots {

    private final Land land;
    private final LandView view;
    private final Places places;
    private final Set<Role> drawn;

    LandSpots(Land land, LandView view, Places places, Set<Role> drawn) {
        this.land = land;
        this.view = view;
        this.places = places;
        this.drawn = drawn;
    }

    void draw(Pen pen) {
        land.spots().forEach(spot -> spot(pen, spot));
    }

    private void spot(Pen pen, Land.Spot spot) {
        double x = view.x(spot.x());
        double y = view.y(spot.y());
        if (!view.box().holds(x, y)) {
            return;
        }
        drawn.add(spot.role());
        if (spot.role() == Role.SHOT) {
            pen.area(Role.SHOT, Outline.circle(x, y, 0.7, 6));
        } else if (spot.role() == Role.PROBE) {
            Outline ring = Outline.circle(x, y, 2.6, 12);
            pen.area(Role.PROBE, ring).line(Role.PROBE, ring);
            pen.area(Role.TICK, Outline.circle(x, y, 0.9, 8));
            places.keepOff(new Box(x - 3.5, y - 3.5, 7, 7));
        } else if (WaterSigns.isOutlet(spot.role())) {
            WaterSigns.outlet(pen, spot.role(), x, y);
            places.keepOff(new Box(x - 5, y - 5, 10, 10));
        } else {
            pen.area(Role.PLATE, Outline.circle(x, y, 4, 16));
            pen.line(spot.role(), Outline.circle(x, y, 4, 16));
            pen.line(spot.role(), x - 6, y, x + 6, y).line(spot.role(), x, y - 6, x, y + 6);
            places.keepOff(new Box(x - 6, y - 6, 12, 12));
        }
    }
}
