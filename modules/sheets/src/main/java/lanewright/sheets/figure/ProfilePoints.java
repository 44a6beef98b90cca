package lanewright.sheets.figure;

import lanewright.lane.line.VerticalPoint;
import lanewright.measure.Words;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;

/** The numbered points between grades in a profile, and the names of its ends. */
final class ProfilePoints {

    private static final double NOTE = Type.NOTE;

    private final Stretch stretch;
    private final Scale scale;
    private final Places places;

    ProfilePoints(Stretch stretch, Scale scale, Places places) {
        this.stretch = stretch;
        this.scale = scale;
        this.places = places;
    }

    /** A diamond on the finished lane for each point between grades, and its number over it. */
    void draw(Pen pen) {
        for (VerticalPoint point : stretch.points()) {
            if (isIn(point.station())) {
                double x = scale.x(point.station());
                double y = scale.y(stretch.finishedAt(point.station(), point.height()));
                Outline diamond = Outline.closed(x, y - 4, x + 4, y, x, y + 4, x - 4, y);
                places.keepOff(new Box(x - 4.5, y - 4.5, 9, 9));
                pen.area(Role.PLATE, diamond).line(Role.MARKER, diamond);
            }
        }
        for (int i = 0; i < stretch.points().size(); i++) {
            double station = stretch.points().get(i).station();
            if (isIn(station)) {
                double x = scale.x(station);
                double y = scale.y(stretch.finishedAt(station, stretch.points().get(i).height()));
                number(pen, Words.fixed(i + 1, 0), x, y);
            }
        }
    }

    private boolean isIn(double station) {
        return station >= stretch.from() && station <= stretch.to();
    }

    /** A number right above its point, as high up as it must stand to hide no line. */
    private void number(Pen pen, String text, double x, double y) {
        for (double above = 8; above < 120; above += 4) {
            for (double beside : new double[] {0, -5, 5}) {
                var words =
                        new Mark.Words(
                                Role.TEXT,
                                text,
                                x + beside,
                                y - above,
                                NOTE,
                                true,
                                Anchor.MIDDLE,
                                0);
                if (places.take(words)) {
                    if (above > 12) {
                        pen.line(Role.LEADER, x + beside, y - above + 2, x, y - 4);
                    }
                    pen.add(words);
                    return;
                }
            }
        }
    }

    /** A drop over the finished lane wherever water is proposed to be led off, and its sign. */
    void reliefs(Pen pen) {
        for (ReliefMark mark : stretch.reliefs()) {
            double x = scale.x(mark.station());
            double y = scale.y(stretch.finishedAt(mark.station(), Double.NaN));
            if (!Double.isFinite(y)) {
                continue;
            }
            Outline drop = Outline.closed(x, y - 1, x + 3.5, y - 8, x - 3.5, y - 8);
            places.keepOff(new Box(x - 4, y - 8.5, 8, 8));
            pen.area(Role.FLOW, drop).line(Role.FLOW, drop);
            sign(pen, mark.words(), x, y - 8);
        }
    }

    private void sign(Pen pen, String text, double x, double y) {
        for (double above = 3; above < 120; above += 4) {
            for (double beside : new double[] {0, -8, 8}) {
                var words =
                        new Mark.Words(
                                Role.WATER_TEXT,
                                text,
                                x + beside,
                                y - above,
                                NOTE,
                                true,
                                Anchor.MIDDLE,
                                0);
                if (places.take(words)) {
                    if (above > 8) {
                        pen.line(Role.LEADER, x + beside, y - above + 2, x, y);
                    }
                    pen.add(words);
                    return;
                }
            }
        }
    }

    /** Which end is which, in the upper corners. */
    void ends(Pen pen, Box plot) {
        if (stretch.from() <= 0) {
            corner(pen, "road", plot.x() + 4, plot, Anchor.START);
        }
        if (stretch.to() >= stretch.points().get(stretch.points().size() - 1).station() - 1e-6) {
            corner(pen, "far end", plot.right() - 4, plot, Anchor.END);
        }
    }

    private void corner(Pen pen, String text, double x, Box plot, Anchor anchor) {
        for (double y : new double[] {plot.y() + 12, plot.bottom() - 5}) {
            var words = new Mark.Words(Role.TEXT, text, x, y, NOTE, true, anchor, 0);
            if (places.take(words)) {
                pen.add(words);
                return;
            }
        }
    }
}
