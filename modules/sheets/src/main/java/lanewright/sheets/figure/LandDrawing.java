package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import lanewright.measure.UnitSystem;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.drawing.Shade;
import lanewright.sheets.page.LayoutCheck;
import lanewright.sheets.page.Type;
import org.jspecify.annotations.Nullable;

/** The land from above, north up, with shading, contours, the lane and its water. */
public final class LandDrawing {

    private static final double NOTE = Type.NOTE;
    private static final double PIXEL = 2.4;
    private static final double RIM = 8;

    private final Land land;
    private final Land.Heights heights;
    private final MapScale scale;
    private final Box box;
    private final double midX;
    private final double midY;
    private final LayoutCheck.Room room;

    private LandDrawing(Land land, Land.Heights heights, MapScale scale, Box box) {
        this.land = land;
        this.heights = heights;
        this.scale = scale;
        this.box = box;
        midX = (land.left() + land.right()) / 2;
        midY = (land.low() + land.high()) / 2;
        room = new LayoutCheck.Room(box.inset(1.5));
    }

    /** The scale at which the land fits into a box. */
    public static MapScale scale(Land land, UnitSystem units, double width, double height) {
        double wide = land.right() - land.left();
        double tall = land.high() - land.low();
        MapScale byWidth = MapScale.fitting(units, wide, width - 2 * RIM);
        MapScale byHeight = MapScale.fitting(units, tall, height - 2 * RIM);
        return byWidth.points() < byHeight.points() ? byWidth : byHeight;
    }

    /** What is seen of the land in a box of this size: left, low, right and high, local metres. */
    public static double[] seen(Land land, MapScale scale, double width, double height) {
        double x = (land.left() + land.right()) / 2;
        double y = (land.low() + land.high()) / 2;
        double dx = width / 2 / scale.points();
        double dy = height / 2 / scale.points();
        return new double[] {x - dx, y - dy, x + dx, y + dy};
    }

    /** Draws the land into a box at the given scale. */
    public static void draw(Land land, Land.Heights heights, MapScale scale, Pen pen, Box box) {
        new LandDrawing(land, heights, scale, box).draw(pen);
    }

    private double x(double east) {
        return box.middle() + (east - midX) * scale.points();
    }

    private double y(double north) {
        return box.y() + box.height() / 2 - (north - midY) * scale.points();
    }

    private void draw(Pen pen) {
        var inside = new Pen();
        shade(inside);
        Pen furniture = furniture();
        for (Land.Feature feature : land.features()) {
            if (feature.filled()) {
                inside.area(feature.role(), outline(feature));
            }
        }
        for (Land.Contour contour : land.contours()) {
            inside.line(
                    contour.heavy() ? Role.CONTOUR_HEAVY : Role.CONTOUR,
                    outline(contour.x(), contour.y(), false));
        }
        for (Land.Feature feature : land.features()) {
            // A way of water that rises and ends in one cell has no length to draw.
            if (!feature.filled() && feature.x().length > 1) {
                inside.line(feature.role(), outline(feature));
                if (feature.role() == Role.FLOW) {
                    arrow(inside, feature);
                }
            }
        }
        land.spots().forEach(spot -> spot(inside, spot));
        ticks(inside);
        for (Land.Look look : land.looks()) {
            inside.look(x(look.x()), y(look.y()), 9);
            room.block(new Box(x(look.x()) - 6, y(look.y()) - 6, 12, 12));
        }
        labels(inside);
        contourWords(inside);
        furniture.marks().forEach(inside::add);
        pen.framed(box, inside);
        pen.frame(Role.FRAME, box);
    }

    private Outline outline(Land.Feature feature) {
        return outline(feature.x(), feature.y(), feature.closed());
    }

    private Outline outline(double[] east, double[] north, boolean closed) {
        double[] xy = new double[2 * east.length];
        for (int i = 0; i < east.length; i++) {
            xy[2 * i] = x(east[i]);
            xy[2 * i + 1] = y(north[i]);
        }
        return closed ? Outline.closed(xy) : Outline.open(xy);
    }

    /**
     * Light from the north-west, 45 degrees high (the custom of printed maps), pale enough that
     * lines and words stand out.
     */
    private void shade(Pen pen) {
        int columns = (int) Math.max(2, Math.round(box.width() / PIXEL));
        int rows = (int) Math.max(2, Math.round(box.height() / PIXEL));
        double step = box.width() / columns / scale.points();
        double stepY = box.height() / rows / scale.points();
        double[] z = new double[(columns + 1) * (rows + 1)];
        for (int row = 0; row <= rows; row++) {
            for (int column = 0; column <= columns; column++) {
                z[row * (columns + 1) + column] =
                        heights.at(
                                midX + (column - columns / 2.0) * step,
                                midY - (row - rows / 2.0) * stepY);
            }
        }
        byte[] greys = new byte[columns * rows];
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                int at = row * (columns + 1) + column;
                double east = (z[at + 1] - z[at]) / step;
                double north = (z[at] - z[at + columns + 1]) / stepY;
                greys[row * columns + column] = (byte) grey(east, north);
            }
        }
        pen.add(new Mark.Picture(box, columns, rows, new Shade(greys)));
    }

    private static int grey(double slopeEast, double slopeNorth) {
        if (Double.isNaN(slopeEast) || Double.isNaN(slopeNorth)) {
            return 255;
        }
        double exaggerated = 2.5;
        double east = slopeEast * exaggerated;
        double north = slopeNorth * exaggerated;
        double light =
                (east - north + Math.sqrt(2)) / (2 * Math.sqrt(1 + east * east + north * north));
        return (int) Math.max(205, Math.min(252, Math.round(190 + 72 * light)));
    }

    private void arrow(Pen pen, Land.Feature flow) {
        int n = flow.x().length;
        for (int k = 1; k <= 2; k++) {
            int i = Math.max(1, n * k / 2 - 1);
            double x1 = x(flow.x()[i]);
            double y1 = y(flow.y()[i]);
            double dx = x1 - x(flow.x()[i - 1]);
            double dy = y1 - y(flow.y()[i - 1]);
            double length = Math.hypot(dx, dy);
            if (length > 0) {
                double ux = dx / length * 6;
                double uy = dy / length * 6;
                pen.area(
                        Role.FLOW,
                        Outline.closed(
                                x1,
                                y1,
                                x1 - ux + uy * 0.45,
                                y1 - uy - ux * 0.45,
                                x1 - ux - uy * 0.45,
                                y1 - uy + ux * 0.45));
            }
        }
    }

    private void spot(Pen pen, Land.Spot spot) {
        double x = x(spot.x());
        double y = y(spot.y());
        if (!box.holds(x, y)) {
            return;
        }
        if (spot.role() == Role.SHOT) {
            pen.area(Role.SHOT, Outline.circle(x, y, 0.7, 6));
        } else {
            pen.area(Role.PLATE, Outline.circle(x, y, 4, 16));
            pen.line(spot.role(), Outline.circle(x, y, 4, 16));
            pen.line(spot.role(), x - 6, y, x + 6, y).line(spot.role(), x, y - 6, x, y + 6);
        }
    }

    private void ticks(Pen pen) {
        for (Land.Station station : land.stations()) {
            double east = StrictMath.sin(station.heading());
            double north = -StrictMath.cos(station.heading());
            double half = station.halfWidth();
            pen.line(
                    Role.TICK,
                    x(station.x() - east * half),
                    y(station.y() - north * half),
                    x(station.x() + east * half),
                    y(station.y() + north * half));
            double wide = Face.of(true).width(station.words(), NOTE) / 2 + 4;
            for (double away : new double[] {1.2, -1.2, 1.8, -1.8, 2.6, -2.6}) {
                double reach = Math.signum(away) * (Math.abs(away) * half + wide / scale.points());
                if (word(
                        pen,
                        Role.NOTE,
                        Gauge.of(Gauge.Use.STATION, station.words(), station.at()),
                        station.words(),
                        x(station.x() + east * reach),
                        y(station.y() + north * reach) + 3,
                        true,
                        0)) {
                    break;
                }
            }
        }
    }

    private void labels(Pen pen) {
        List<Land.Label> ordered = new ArrayList<>(land.labels());
        ordered.sort(Comparator.comparingInt(Land.Label::rank));
        for (Land.Label label : ordered) {
            double half = Face.of(label.bold()).width(label.words(), NOTE) / 2 + 6;
            double x = x(label.x());
            double y = y(label.y());
            if (!box.holds(x, y)) {
                continue;
            }
            double[][] tries = {
                {0, 3},
                {half, -6},
                {-half, -6},
                {half, 12},
                {-half, 12},
                {0, 16},
                {0, -12},
                {half + 12, 3},
                {-half - 12, 3},
                {0, 28},
                {0, -26},
                {half + 24, -20},
                {-half - 24, 24},
                {half + 24, 28},
                {-half - 24, -20},
                {0, 46},
                {0, -44}
            };
            for (double[] by : tries) {
                if (word(
                        pen,
                        label.role(),
                        null,
                        label.words(),
                        x + by[0],
                        y + by[1],
                        label.bold(),
                        0)) {
                    if (Math.hypot(by[0], by[1]) > half + 14) {
                        pen.line(Role.TICK, x, y, x + by[0], y + by[1] + (by[1] < 0 ? 3 : -9));
                    }
                    break;
                }
            }
        }
    }

    /** Puts words on white, in the middle of a place, if there is room. */
    private boolean word(
            Pen pen,
            Role role,
            @Nullable Gauge gauge,
            String text,
            double x,
            double y,
            boolean bold,
            double turn) {
        var words = new Mark.Words(role, text, x, y, NOTE, bold, Anchor.MIDDLE, turn, gauge);
        if (text.isBlank() || !room.take(words)) {
            return false;
        }
        double half = words.width() / 2 + 1.5;
        double cos = StrictMath.cos(StrictMath.toRadians(turn));
        double sin = StrictMath.sin(StrictMath.toRadians(turn));
        double[] dx = {-half, half, half, -half};
        double[] dy = {-NOTE * 0.78, -NOTE * 0.78, NOTE * 0.22, NOTE * 0.22};
        double[] xy = new double[8];
        for (int i = 0; i < 4; i++) {
            xy[2 * i] = x + dx[i] * cos - dy[i] * sin;
            xy[2 * i + 1] = y + dx[i] * sin + dy[i] * cos;
        }
        pen.area(Role.PLATE, Outline.closed(xy)).add(words);
        return true;
    }

    /** Heights along the heavy contours, where the line runs straight enough, heads up. */
    private void contourWords(Pen pen) {
        Map<String, Integer> placed = new java.util.TreeMap<>();
        for (Land.Contour contour : land.contours()) {
            int n = contour.x().length;
            if (!contour.heavy() || n < 3 || placed.getOrDefault(contour.words(), 0) >= 3) {
                continue;
            }
            for (int k : new int[] {n / 2, n / 4, 3 * n / 4, n / 3, 2 * n / 3, n / 8, 7 * n / 8}) {
                int i = Math.max(1, Math.min(n - 2, k));
                double dx = x(contour.x()[i + 1]) - x(contour.x()[i - 1]);
                double dy = y(contour.y()[i + 1]) - y(contour.y()[i - 1]);
                double turn = StrictMath.toDegrees(StrictMath.atan2(dy, dx));
                turn = turn > 90 ? turn - 180 : turn < -90 ? turn + 180 : turn;
                double sin = StrictMath.sin(StrictMath.toRadians(turn));
                double cos = StrictMath.cos(StrictMath.toRadians(turn));
                double x = x(contour.x()[i]) - 3 * sin;
                double y = y(contour.y()[i]) + 3 * cos;
                if (word(
                        pen,
                        Role.NOTE,
                        Gauge.of(Gauge.Use.CONTOUR, contour.words(), contour.height()),
                        contour.words(),
                        x,
                        y,
                        false,
                        turn)) {
                    placed.merge(contour.words(), 1, Integer::sum);
                    break;
                }
            }
        }
    }

    /** Scale bar and north arrow: drawn last, but first to take their room. */
    private Pen furniture() {
        var pen = new Pen();
        double bar = scale.bar() * scale.points();
        double left = box.x() + 12;
        double base = box.bottom() - 12;
        double wide = Math.max(bar + 8, Face.of(false).width(scale.words(), NOTE)) + 34;
        Box plate = new Box(left - 8, base - 32, wide, 40);
        pen.fill(Role.PLATE, plate).frame(Role.HAIRLINE, plate);
        pen.line(Role.TICK, left, base - 4, left + bar, base - 4);
        for (int i = 0; i <= 2; i++) {
            pen.line(Role.TICK, left + bar * i / 2, base - 8, left + bar * i / 2, base - 4);
        }
        put(pen, Gauge.of(Gauge.Use.SCALE_BAR, "0", 0), left, base - 11, Anchor.START);
        put(
                pen,
                Gauge.of(Gauge.Use.SCALE_BAR, scale.barWords(), scale.bar()),
                left + bar,
                base - 11,
                Anchor.MIDDLE);
        put(
                pen,
                Gauge.of(Gauge.Use.SCALE, scale.words(), scale.one()),
                left,
                base + 5,
                Anchor.START);
        double x = box.right() - 20;
        double y = box.y() + 14;
        Box north = new Box(x - 12, y - 8, 24, 46);
        pen.fill(Role.PLATE, north).frame(Role.HAIRLINE, north);
        pen.line(Role.TICK, x, y, x, y + 22);
        pen.area(Role.TICK, Outline.closed(x, y - 4, x + 4, y + 7, x - 4, y + 7));
        put(pen, new Mark.Words(Role.NOTE, "N", x, y + 33, NOTE, false, Anchor.MIDDLE, 0));
        room.block(plate);
        room.block(north);
        return pen;
    }

    private void put(Pen pen, Gauge gauge, double x, double y, Anchor anchor) {
        put(pen, new Mark.Words(Role.NOTE, gauge.words(), x, y, NOTE, false, anchor, 0, gauge));
    }

    private void put(Pen pen, Mark.Words words) {
        room.take(words);
        pen.add(words);
    }

    /**
     * A row of samples with their meaning, for below the map.
     *
     * @return height used, pt
     */
    public static double legend(Pen pen, double left, double top, double width, List<Role> roles) {
        Map<Role, String> meaning = meanings();
        double x = left;
        double y = top;
        for (Role role : roles) {
            String words = meaning.get(role);
            if (words == null) {
                continue;
            }
            double wide = 24 + Face.of(false).width(words, NOTE) + 12;
            if (x + wide > left + width) {
                x = left;
                y += NOTE * 1.6;
            }
            sample(pen, role, x, y);
            pen.words(Role.TEXT, words, x + 24, y + NOTE, NOTE, Anchor.START);
            x += wide;
        }
        return y + NOTE * 1.6 - top;
    }

    private static void sample(Pen pen, Role role, double x, double y) {
        switch (role) {
            case CUT, FILL, WATER, TOPSOIL, HEAP, STONE_FINE, STONE_MIDDLE, STONE_COARSE, LANE ->
                    pen.fill(role, new Box(x, y + 1, 20, NOTE))
                            .frame(Role.HAIRLINE, new Box(x, y + 1, 20, NOTE));
            case LOOK -> pen.look(x + 10, y + NOTE * 0.6, 9);
            default -> pen.line(role, x, y + NOTE * 0.6, x + 20, y + NOTE * 0.6);
        }
    }

    private static Map<Role, String> meanings() {
        Map<Role, String> meaning = new EnumMap<>(Role.class);
        meaning.put(Role.FINISHED, "finished lane");
        meaning.put(Role.GROUND_LINE, "ground as it is");
        meaning.put(Role.SUBGRADE, "earth as shaped");
        meaning.put(Role.DITCH_LEFT, "left ditch bottom");
        meaning.put(Role.DITCH_RIGHT, "right ditch bottom");
        meaning.put(Role.CUT, "cut (dig)");
        meaning.put(Role.FILL, "fill (build up)");
        meaning.put(Role.HEAP, "heap of topsoil");
        meaning.put(Role.WATER, "water sits, depth written on it");
        meaning.put(Role.WATER_BEFORE, "wet place before the lane");
        meaning.put(Role.FLOW, "way of water");
        meaning.put(Role.PIPE, "pipe");
        meaning.put(Role.CENTRE, "lane's line");
        meaning.put(Role.LANE_EDGE, "edge of travelled way");
        meaning.put(Role.CATCH, "slope meets ground");
        meaning.put(Role.LIMIT, "limit of work");
        meaning.put(Role.BOUNDARY, "edge of survey");
        meaning.put(Role.HAZARD, "keep off, or mind");
        meaning.put(Role.LOOK, "look here");
        return meaning;
    }
}
