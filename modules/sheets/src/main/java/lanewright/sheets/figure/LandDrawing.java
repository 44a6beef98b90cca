package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
import lanewright.sheets.page.Type;
import org.jspecify.annotations.Nullable;

/** The land from above, north up, with shading, contours, the lane and its water. */
public final class LandDrawing {

    private static final double NOTE = Type.NOTE;
    private static final double PIXEL = 2.4;
    private static final double RIM = 8;

    /** Warnings nearer to each other than this share a triangle, pt. */
    private static final double SAME_PLACE = 14;

    /** Blanks as wide as a triangle. */
    private static final String TRIANGLE_ROOM = "     ";

    /** Roles of lines and outlines that words must not hide. */
    private static final Set<Role> PLAIN_TO_SEE =
            EnumSet.of(
                    Role.LANE_EDGE,
                    Role.CENTRE,
                    Role.LIMIT,
                    Role.WATER,
                    Role.WATER_BEFORE,
                    Role.FLOW,
                    Role.PIPE,
                    Role.HEAP,
                    Role.HAZARD,
                    Role.WIRE,
                    Role.BURIED);

    /** How far words may stand from what they speak of, pt. */
    private static final double FARTHEST = 170;

    private final Land land;
    private final Land.Heights heights;
    private final MapScale scale;
    private final Box box;
    private final double midX;
    private final double midY;
    private final Places places;
    private final Set<Role> drawn = EnumSet.noneOf(Role.class);

    private LandDrawing(
            Land land, Land.Heights heights, MapScale scale, Box box, double midX, double midY) {
        this.land = land;
        this.heights = heights;
        this.scale = scale;
        this.box = box;
        this.midX = midX;
        this.midY = midY;
        places = new Places(box.inset(1.5));
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

    /**
     * Draws the land into a box at the given scale.
     *
     * @return what is drawn, for a legend
     */
    public static Set<Role> draw(
            Land land, Land.Heights heights, MapScale scale, Pen pen, Box box) {
        double x = (land.left() + land.right()) / 2;
        double y = (land.low() + land.high()) / 2;
        var drawing = new LandDrawing(land, heights, scale, box, x, y);
        drawing.draw(pen);
        return drawing.drawn;
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
                Outline ring = outline(feature);
                inside.area(feature.role(), ring);
                saw(feature.role(), ring);
            }
        }
        for (Land.Contour contour : land.contours()) {
            inside.line(
                    contour.heavy() ? Role.CONTOUR_HEAVY : Role.CONTOUR,
                    outline(contour.x(), contour.y(), false));
        }
        lines(inside);
        land.spots().forEach(spot -> spot(inside, spot));
        letters(inside);
        ticks(inside);
        labels(inside, 0, 0);
        looks(inside);
        labels(inside, 1, Integer.MAX_VALUE);
        contourWords(inside);
        furniture.marks().forEach(inside::add);
        pen.framed(box, inside);
        pen.frame(Role.FRAME, box);
    }

    /** Remembers that a role is to be seen, if any of the line lies in the box. */
    private void saw(Role role, Outline line) {
        for (int i = 0; i < line.size(); i++) {
            if (box.holds(line.x(i), line.y(i))) {
                drawn.add(role);
                return;
            }
        }
    }

    private void lines(Pen pen) {
        for (Land.Feature feature : land.features()) {
            // A way of water that rises and ends in one cell has no length to draw.
            if (feature.filled() || feature.x().length < 2) {
                continue;
            }
            Outline line = outline(feature);
            if (feature.role() == Role.PIPE) {
                pipe(pen, line);
            } else {
                pen.line(feature.role(), line);
            }
            if (feature.role() == Role.FLOW) {
                arrows(pen, line);
            }
            if (PLAIN_TO_SEE.contains(feature.role()) && !isLettered(feature)) {
                places.keepOff(line);
            }
            saw(feature.role(), line);
        }
    }

    /** Two walls with a hollow between them, so that it looks like no other line. */
    private static void pipe(Pen pen, Outline line) {
        pen.line(Role.PIPE, line).line(Role.PIPE_CORE, line);
        for (int end : new int[] {0, line.size() - 1}) {
            int next = end == 0 ? 1 : end - 1;
            double dx = line.x(end) - line.x(next);
            double dy = line.y(end) - line.y(next);
            double length = Math.max(1e-9, Math.hypot(dx, dy));
            double ux = -dy / length * 3.4;
            double uy = dx / length * 3.4;
            pen.line(
                    Role.TICK,
                    line.x(end) - ux,
                    line.y(end) - uy,
                    line.x(end) + ux,
                    line.y(end) + uy);
        }
    }

    /** Crosses along a wire and letters along wires and buried lines: they read without colour. */
    private void letters(Pen pen) {
        for (Land.Feature feature : land.features()) {
            if (isLettered(feature)) {
                boolean wire = feature.role() == Role.WIRE;
                Outline line = outline(feature);
                if (wire) {
                    along(line, 7, 14, (x, y) -> cross(pen, x, y));
                }
                along(line, 14, 42, (x, y) -> letter(pen, wire ? "W" : "B", x, y));
                places.keepOff(line);
            }
        }
    }

    private static boolean isLettered(Land.Feature feature) {
        return feature.role() == Role.WIRE || feature.role() == Role.BURIED;
    }

    private void letter(Pen pen, String text, double x, double y) {
        var words =
                new Mark.Words(Role.TEXT, text, x, y + NOTE * 0.3, NOTE, true, Anchor.MIDDLE, 0);
        if (box.inset(2).holds(x, y) && places.take(words)) {
            Places.plate(pen, words);
            pen.add(words);
        }
    }

    private static void cross(Pen pen, double x, double y) {
        pen.line(Role.WIRE, x - 2.2, y - 2.2, x + 2.2, y + 2.2);
        pen.line(Role.WIRE, x - 2.2, y + 2.2, x + 2.2, y - 2.2);
    }

    @FunctionalInterface
    private interface At {
        void place(double x, double y);
    }

    /** Places along a line, the first after some length and then at equal distances, pt. */
    private static void along(Outline line, double first, double step, At at) {
        double next = first;
        double gone = 0;
        for (int i = 1; i < line.size(); i++) {
            double dx = line.x(i) - line.x(i - 1);
            double dy = line.y(i) - line.y(i - 1);
            double length = Math.hypot(dx, dy);
            while (length > 0 && next <= gone + length) {
                double part = (next - gone) / length;
                at.place(line.x(i - 1) + part * dx, line.y(i - 1) + part * dy);
                next += step;
            }
            gone += length;
        }
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

    /**
     * Arrows down a way of water, in the direction that it takes over some length, so that a small
     * step of it does not turn them.
     */
    private void arrows(Pen pen, Outline line) {
        double length = 0;
        for (int i = 1; i < line.size(); i++) {
            length += Math.hypot(line.x(i) - line.x(i - 1), line.y(i) - line.y(i - 1));
        }
        if (length < 16) {
            return;
        }
        int count = (int) Math.max(1, Math.round(length / 90));
        for (int k = 0; k < count; k++) {
            double middle = length * (k + 0.6) / count;
            double[] from = at(line, middle - 7);
            double[] to = at(line, middle + 7);
            double dx = to[0] - from[0];
            double dy = to[1] - from[1];
            double chord = Math.hypot(dx, dy);
            if (chord < 9) {
                continue;
            }
            double[] tip = at(line, middle + 3.5);
            double ux = dx / chord * 7;
            double uy = dy / chord * 7;
            pen.area(
                    Role.FLOW,
                    Outline.closed(
                            tip[0],
                            tip[1],
                            tip[0] - ux + uy * 0.42,
                            tip[1] - uy - ux * 0.42,
                            tip[0] - ux - uy * 0.42,
                            tip[1] - uy + ux * 0.42));
        }
    }

    /** The place so far along a line, held to its ends. */
    private static double[] at(Outline line, double length) {
        double left = length;
        for (int i = 1; i < line.size(); i++) {
            double dx = line.x(i) - line.x(i - 1);
            double dy = line.y(i) - line.y(i - 1);
            double piece = Math.hypot(dx, dy);
            if (left <= piece || i == line.size() - 1) {
                double part = piece > 0 ? Math.max(0, Math.min(1, left / piece)) : 0;
                return new double[] {line.x(i - 1) + part * dx, line.y(i - 1) + part * dy};
            }
            left -= piece;
        }
        return new double[] {line.x(0), line.y(0)};
    }

    private void spot(Pen pen, Land.Spot spot) {
        double x = x(spot.x());
        double y = y(spot.y());
        if (!box.holds(x, y)) {
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
        } else {
            pen.area(Role.PLATE, Outline.circle(x, y, 4, 16));
            pen.line(spot.role(), Outline.circle(x, y, 4, 16));
            pen.line(spot.role(), x - 6, y, x + 6, y).line(spot.role(), x, y - 6, x, y + 6);
            places.keepOff(new Box(x - 6, y - 6, 12, 12));
        }
    }

    /** A tick across the lane at every round station, and its words at one end of the tick. */
    private void ticks(Pen pen) {
        for (Land.Station station : land.stations()) {
            double east = StrictMath.sin(station.heading());
            double north = -StrictMath.cos(station.heading());
            double half = station.halfWidth();
            Outline tick =
                    Outline.open(
                            x(station.x() - east * half),
                            y(station.y() - north * half),
                            x(station.x() + east * half),
                            y(station.y() + north * half));
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
                station.halfWidth() * scale.points()
                        + Math.abs(across) * wide
                        + Math.abs(down) * (NOTE / 2 + 2)
                        + 1.5;
        for (double more : new double[] {0, 3, 7, 12, 18, 26, 36}) {
            for (int side : new int[] {1, -1}) {
                double reach = side * (least + more);
                double x = x(station.x()) + across * reach;
                double y = y(station.y()) + down * reach;
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
                        double end = side * station.halfWidth() * scale.points();
                        places.lead(
                                pen,
                                x(station.x()) + across * end,
                                y(station.y()) + down * end,
                                Places.box(words));
                    }
                    Places.plate(pen, words);
                    pen.add(words);
                    return;
                }
            }
        }
    }

    /**
     * Warning triangles with the numbers of their findings: beside the place, not on it. Those of
     * one place share a triangle.
     */
    private void looks(Pen pen) {
        var left = new ArrayList<>(land.looks());
        while (!left.isEmpty()) {
            Land.Look first = left.remove(0);
            double x = x(first.x());
            double y = y(first.y());
            var numbers = new StringBuilder(first.words());
            for (var it = left.iterator(); it.hasNext(); ) {
                Land.Look other = it.next();
                if (Math.hypot(x(other.x()) - x, y(other.y()) - y) < SAME_PLACE) {
                    if (!other.words().isBlank()) {
                        numbers.append(numbers.isEmpty() ? "" : " · ").append(other.words());
                    }
                    it.remove();
                }
            }
            if (box.holds(x, y)) {
                look(pen, x, y, numbers.toString());
            }
        }
    }

    private void look(Pen pen, double x, double y, String numbers) {
        Mark.Words words =
                places.find(
                        Role.TEXT,
                        TRIANGLE_ROOM + (numbers.isBlank() ? " " : numbers).strip() + " ",
                        x,
                        y,
                        NOTE,
                        true,
                        FARTHEST);
        drawn.add(Role.LOOK);
        if (words == null) {
            pen.look(x, y, 9);
            return;
        }
        Box plate = Places.box(words);
        places.lead(pen, x, y, plate);
        pen.area(Role.TICK, Outline.circle(x, y, 1.4, 8));
        Places.plate(pen, words);
        pen.look(words.start() + 5, words.y() - NOTE * 0.3, 9);
        pen.bold(
                Role.TEXT,
                numbers,
                words.start() + Face.of(true).width(TRIANGLE_ROOM, NOTE),
                words.y(),
                NOTE,
                Anchor.START);
    }

    /** Labels of some ranks, in their order. */
    private void labels(Pen pen, int first, int last) {
        var ordered = new ArrayList<Land.Label>();
        for (Land.Label label : land.labels()) {
            if (label.rank() >= first && label.rank() <= last) {
                ordered.add(label);
            }
        }
        ordered.sort(Comparator.comparingInt(Land.Label::rank));
        for (Land.Label label : ordered) {
            double x = x(label.x());
            double y = y(label.y());
            if (box.holds(x, y)) {
                places.put(pen, label.role(), label.words(), x, y, NOTE, label.bold(), FARTHEST);
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
        if (text.isBlank() || !places.take(words)) {
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
        double words = Face.of(false).width(scale.words(), NOTE);
        double wide = Math.max(bar + Face.of(false).width(scale.barWords(), NOTE) / 2, words) + 18;
        Box plate = corner(wide, 40, false);
        double left = plate.x() + 8;
        pen.fill(Role.PLATE, plate).frame(Role.FRAME, plate);
        put(
                pen,
                Gauge.of(Gauge.Use.SCALE, scale.words(), scale.one()),
                left,
                plate.y() + 11,
                Anchor.START);
        double base = plate.bottom() - 5;
        pen.line(Role.TICK, left, base, left + bar, base);
        for (int i = 0; i <= 2; i++) {
            pen.line(Role.TICK, left + bar * i / 2, base - 4, left + bar * i / 2, base);
        }
        put(pen, Gauge.of(Gauge.Use.SCALE_BAR, "0", 0), left, base - 7, Anchor.START);
        put(
                pen,
                Gauge.of(Gauge.Use.SCALE_BAR, scale.barWords(), scale.bar()),
                left + bar,
                base - 7,
                Anchor.MIDDLE);
        Box north = corner(24, 44, true);
        double x = north.middle();
        double y = north.y() + 8;
        pen.fill(Role.PLATE, north).frame(Role.FRAME, north);
        pen.line(Role.TICK, x, y, x, y + 20);
        pen.area(Role.TICK, Outline.closed(x, y - 4, x + 4, y + 7, x - 4, y + 7));
        pen.words(Role.NOTE, "N", x, y + 31, NOTE, Anchor.MIDDLE);
        places.keepOff(plate);
        places.keepOff(north);
        return pen;
    }

    /** The corner in which a box hides least of what is to be seen. */
    private Box corner(double wide, double tall, boolean up) {
        double gap = 5;
        double left = box.x() + gap;
        double right = box.right() - gap - wide;
        double top = box.y() + gap;
        double bottom = box.bottom() - gap - tall;
        Box[] corners =
                up
                        ? new Box[] {
                            new Box(right, top, wide, tall), new Box(left, top, wide, tall)
                        }
                        : new Box[] {
                            new Box(left, bottom, wide, tall), new Box(right, bottom, wide, tall)
                        };
        return hidden(corners[1]) < hidden(corners[0]) ? corners[1] : corners[0];
    }

    private int hidden(Box plate) {
        int hidden = 0;
        for (Land.Feature feature : land.features()) {
            if (PLAIN_TO_SEE.contains(feature.role())) {
                for (int i = 0; i < feature.x().length; i++) {
                    hidden += plate.inset(-4).holds(x(feature.x()[i]), y(feature.y()[i])) ? 1 : 0;
                }
            }
        }
        return hidden;
    }

    private static void put(Pen pen, Gauge gauge, double x, double y, Anchor anchor) {
        pen.gauge(gauge, x, y, NOTE, false, anchor);
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
        double middle = y + NOTE * 0.6;
        Box area = new Box(x, y + 1, 20, NOTE);
        switch (role) {
            case CUT, FILL, WATER, TOPSOIL, HEAP, STONE_FINE, STONE_MIDDLE, STONE_COARSE, LANE ->
                    pen.fill(role, area).frame(Role.HAIRLINE, area);
            case HAZARD -> pen.fill(role, area).frame(role, area);
            case LOOK -> pen.look(x + 10, middle, 9);
            case PIPE -> pipe(pen, Outline.open(x + 1, middle, x + 19, middle));
            case FLOW ->
                    pen.line(role, x, middle, x + 20, middle)
                            .area(
                                    role,
                                    Outline.closed(
                                            x + 15, middle, x + 8, middle - 3, x + 8, middle + 3));
            case WIRE, BURIED -> {
                pen.line(role, x, middle, x + 20, middle);
                if (role == Role.WIRE) {
                    cross(pen, x + 3, middle);
                    cross(pen, x + 17, middle);
                }
                var words =
                        new Mark.Words(
                                Role.TEXT,
                                role == Role.WIRE ? "W" : "B",
                                x + 10,
                                y + NOTE,
                                NOTE,
                                true,
                                Anchor.MIDDLE,
                                0);
                pen.fill(Role.PLATE, Places.box(words)).add(words);
            }
            case PROBE -> {
                Outline ring = Outline.circle(x + 10, middle, 2.6, 12);
                pen.area(role, ring).line(role, ring);
                pen.area(Role.TICK, Outline.circle(x + 10, middle, 0.9, 8));
            }
            default -> pen.line(role, x, middle, x + 20, middle);
        }
    }

    private static Map<Role, String> meanings() {
        Map<Role, String> meaning = new EnumMap<>(Role.class);
        meaning.put(Role.FINISHED, "finished lane");
        meaning.put(Role.GROUND_LINE, "ground as it is");
        meaning.put(Role.SUBGRADE, "earth as shaped");
        meaning.put(Role.DITCH_LEFT, "left ditch bottom");
        meaning.put(Role.DITCH_BOTH, "bottom of both ditches, equally high");
        meaning.put(Role.STRIPPED_LINE, "ground with topsoil off");
        meaning.put(Role.DITCH_RIGHT, "right ditch bottom");
        meaning.put(Role.CUT, "cut (dig)");
        meaning.put(Role.FILL, "fill (build up)");
        meaning.put(Role.HEAP, "heap of topsoil");
        meaning.put(Role.WATER, "standing water, depth written beside it");
        meaning.put(Role.WATER_BEFORE, "wet place before the lane");
        meaning.put(Role.FLOW, "way of water");
        meaning.put(Role.PIPE, "pipe");
        meaning.put(Role.CENTRE, "lane's line");
        meaning.put(Role.LANE_EDGE, "edge of travelled way");
        meaning.put(Role.CATCH, "slope meets ground");
        meaning.put(Role.LIMIT, "limit of work");
        meaning.put(Role.BOUNDARY, "edge of survey");
        meaning.put(Role.HAZARD, "keep off");
        meaning.put(Role.WIRE, "overhead wire");
        meaning.put(Role.BURIED, "buried line");
        meaning.put(Role.PROBE, "probe hole");
        meaning.put(Role.LOOK, "danger or look here, with the finding's number");
        return meaning;
    }
}
