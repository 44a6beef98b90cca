package lanewright.sheets.set;

import java.util.List;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.measure.Finding;
import lanewright.measure.Where;
import lanewright.measure.Words;
import lanewright.planner.run.Numbered;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.figure.Land;

/** Things that the plan names on the land, and warnings by their numbers. */
final class LandThings {

    private final Land land;
    private final Alignment line;

    LandThings(Land land, Alignment line) {
        this.land = land;
        this.line = line;
    }

    void thing(LandSheet.Thing thing, double[] seen) {
        int n = thing.x().length;
        if (n > 1) {
            if (thing.closed()) {
                land.area(thing.role(), thing.x(), thing.y());
                land.ring(thing.role(), thing.x(), thing.y());
            } else {
                land.line(thing.role(), thing.x(), thing.y());
            }
        } else {
            land.spot(thing.role(), thing.x()[0], thing.y()[0]);
        }
        for (int i = 0; i < n; i++) {
            double x = thing.x()[i];
            double y = thing.y()[i];
            if (x > seen[0] && x < seen[2] && y > seen[1] && y < seen[3]) {
                land.label(thing.words(), x, y, Role.TEXT, false, 2);
                return;
            }
        }
        if (n > 1) {
            double x = (thing.x()[0] + thing.x()[1]) / 2;
            double y = (thing.y()[0] + thing.y()[1]) / 2;
            land.label(thing.words(), x, y, Role.TEXT, false, 2);
        }
    }

    /** A numbered triangle at every place that must be settled or looked at. */
    void warnings(List<Finding> findings) {
        List<Finding> numbered = Numbered.of(findings);
        for (int i = 0; i < numbered.size(); i++) {
            Where where = numbered.get(i).where();
            String number = Words.fixed(i + 1, 0);
            Double x = where.x();
            Double y = where.y();
            Double from = where.from();
            Double to = where.to();
            if (x != null && y != null) {
                land.look(x, y, number);
            } else if (from != null && to != null) {
                double station = Math.max(0, Math.min(line.length(), (from + to) / 2));
                Double offset = where.offset();
                var place = new Place(station, offset == null ? 0 : offset);
                land.look(line.x(place), line.y(place), number);
            }
        }
    }
}
