package lanewright.sheets.figure;

import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;

/** Stations along the lane on a map. */
final class LandStations {

    private static final double NOTE = Type.NOTE;

    private final Land land;
    private final LandView view;
    private final Places places;

    LandStations(Land land, LandView view, Places places) {
        this.land = land;
        this.view = view;
        this.places = places;
    }

    /** A tick across the lane at every round station, and its words at one end of the tick. */
    void draw(Pen pen) {
        for (Land.Station station : land.stations()) {
            double east = StrictMath.sin(station.heading());
            double north = -StrictMath.cos(station.heading());
            double half = station.halfWidth();
            Outline tick =
                    Outline.open(
                            view.x(station.x() - east * half),
                            view.y(station.y() - north * half),
                            view.x(station.x() + east * half),
                            view.y(station.y() + north * half));
            pen.line(Role.TICK, tick);
            places.keepOff(tick);
        }
        for (Land.Station station : land.stations()) {
            stationWords(pen, station);
        }
    }

    private void stationWords(Pen pen, Land.Station station) {
        double across = StrictMath.sin(station.heading());
        double down = StrictMath.cos(station.heading());
        double wide = Face.of(true).width(station.words(), NOTE) / 2 + 2;
        double least =
                station.halfWidth() * view.scale().points()
                        + Math.abs(across) * wide
                        + Math.abs(down) * (NOTE / 2 + 2)
                        + 1.5;
        for (double more : new double[] {0, 3, 7, 12, 18, 26, 36}) {
            for (int side : new int[] {1, -1}) {
                double reach = side * (least + more);
                double x = view.x(station.x()) + across * reach;
                double y = view.y(station.y()) + down * reach;
                var words =
                        new Mark.Words(
                                Role.TEXT,
                                station.words(),
                                x,
                                y + NOTE * 0.28,
                                NOTE,
                                true,
                                Anchor.MIDDLE,
                                0,
                                Gauge.of(Gauge.Use.STATION, station.words(), station.at()));
                if (places.take(words)) {
                    if (more > 7) {
                        double end = side * station.halfWidth() * view.scale().points();
                        places.lead(
                                pen,
                                view.x(station.x()) + across * end,
                                view.y(station.y()) + down * end,
                                Places.box(words));
                    }
                    Places.plate(pen, words);
                    pen.add(words);
                    return;
                }
            }
        }
    }
}
