package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;

/** The lane as a strip, layer under layer, cut where one truck load stops and the next starts. */
public final class LoadStrip {

    private static final double NOTE = Type.NOTE;
    private static final double BAR = 20;
    private static final double STATIONS = 38;
    private static final double LINE = NOTE * Type.LEAD;

    /** Height of the band over a bar in which stretches are marked, pt. */
    private static final double BAND = 7;

    private static final double ROW = 2 * LINE + BAND + BAR + STATIONS + 10;

    /**
     * Something along the lane that whoever spreads the loads must know of.
     *
     * @param from station, m
     * @param to station, m; equal to {@code from} for a single place
     * @param words what it is
     * @param danger whether nothing may be tipped there
     */
    public record Note(double from, double to, String words, boolean danger) {}

    /**
     * One layer of the strip.
     *
     * @param words what it is: role, thickness, tons, loads
     * @param stops stations where loads start and stop, m, one more than there are loads
     * @param runsOut station where the stone in hand runs out, m, or NaN
     */
    public record Layer(String words, List<Double> stops, double runsOut) {
        /** Copies the list. */
        public Layer {
            stops = List.copyOf(stops);
        }
    }

    /** Least distance between two stations under a bar, pt. */
    private static final double APART = NOTE * 1.3;

    private LoadStrip() {}

    /** Height that so many layers take, pt. */
    public static double height(int layers) {
        return layers * ROW;
    }

    /**
     * Where the bar of a layer lies, its band of marks above it included.
     *
     * @param box the same as for drawing
     * @param layer counted from 0, in the order of laying
     */
    public static Box bar(Box box, int layer) {
        double top = box.y() + layer * ROW + 2 * LINE + 2;
        return new Box(box.x() + 6, top, box.width() - 12, BAND + BAR);
    }

    /**
     * Draws the strip.
     *
     * @param layers in the order of laying, lowest first
     * @param notes what stands over every bar, the most important first
     * @param length of the lane, m
     */
    public static void draw(
            List<Layer> layers,
            List<Note> notes,
            double length,
            UnitSystem units,
            Pen pen,
            Box box) {
        for (int i = 0; i < layers.size(); i++) {
            Box row = new Box(box.x() + 6, box.y() + i * ROW, box.width() - 12, ROW);
            // Laid from the bottom up: the coarsest comes first.
            Role role = SectionDrawing.role(layers.size() - 1 - i, layers.size());
            layer(layers.get(i), notes, role, length, units, pen, row);
        }
    }

    private static void layer(
            Layer layer,
            List<Note> notes,
            Role role,
            double length,
            UnitSystem units,
            Pen pen,
            Box row) {
        pen.bold(Role.TEXT, layer.words(), row.x() - 6, row.y() + NOTE, NOTE, Anchor.START);
        double top = row.y() + 2 * LINE + BAND + 2;
        Scale scale = Scale.in(row, 0, 0, row.width() / length, 1);
        List<Double> stops = layer.stops();
        for (int k = 0; k + 1 < stops.size(); k++) {
            double from = scale.x(stops.get(k));
            double to = scale.x(stops.get(k + 1));
            Box load = new Box(from, top, Math.max(0, to - from), BAR);
            pen.fill(k % 2 == 0 ? role : Role.PLATE, load).frame(Role.TICK, load);
            number(pen, k + 1, load);
        }
        stations(pen, stops, scale, new Box(row.x() - 2, top + BAR, row.width() + 4, 0), units);
        var places = new Places(new Box(row.x() - 6, row.y(), row.width() + 12, ROW));
        if (Double.isFinite(layer.runsOut())) {
            double x = scale.x(layer.runsOut());
            pen.line(Role.MARKER, x, top - BAND, x, top + BAR + 3);
            say(pen, places, "stone in hand ends", x, x, row, top);
        }
        for (Note note : notes) {
            note(pen, places, note, scale, row, top);
        }
    }

    /**
     * The station of every stop, moved apart where stops stand closer than words can. Where there
     * are more than find room, those of every second, third or later one, and of the last.
     */
    private static void stations(
            Pen pen, List<Double> stops, Scale scale, Box foot, UnitSystem units) {
        int every = (int) Math.ceil((stops.size() + 1) * APART / foot.width());
        var said = new ArrayList<Double>();
        for (int k = 0; k < stops.size(); k++) {
            if (k % every == 0 || k == stops.size() - 1) {
                said.add(stops.get(k));
            }
        }
        double[] at =
                Apart.spread(said.stream().map(scale::x).toList(), APART, foot.x(), foot.right());
        for (int k = 0; k < at.length; k++) {
            double x = scale.x(said.get(k));
            pen.line(Role.TICK, x, foot.y(), x, foot.y() + 2);
            pen.line(Role.TICK, x, foot.y() + 2, at[k], foot.y() + 5);
            pen.words(
                    Role.TEXT,
                    Quantity.station(said.get(k)).in(units),
                    at[k] + NOTE * 0.36,
                    foot.y() + 7,
                    NOTE,
                    false,
                    Anchor.END,
                    -90);
        }
    }

    private static void note(Pen pen, Places places, Note note, Scale scale, Box row, double top) {
        double from = scale.x(note.from());
        double to = scale.x(note.to());
        if (to - from > 1) {
            Box band = new Box(from, top - BAND, to - from, BAND - 1);
            Role role = note.danger() ? Role.HAZARD : Role.CUT;
            pen.fill(role, band).frame(role, band);
        } else {
            pen.line(Role.TICK, from, top - BAND, from, top);
        }
        say(pen, places, note.words(), from, to, row, top);
    }

    /** Words over the middle of a stretch, moved along a little where others stand there. */
    private static void say(
            Pen pen, Places places, String text, double from, double to, Box row, double top) {
        double half = Face.of(false).width(text, NOTE) / 2 + 2;
        double middle = (from + to) / 2;
        for (double by : new double[] {0, half - 4, 4 - half}) {
            double x = Math.max(row.x() - 4 + half, Math.min(row.right() + 4 - half, middle + by));
            var words =
                    new Mark.Words(
                            Role.TEXT, text, x, top - BAND - 3, NOTE, false, Anchor.MIDDLE, 0);
            if (places.take(words)) {
                pen.add(words);
                return;
            }
        }
    }

    private static void number(Pen pen, int number, Box load) {
        String words = Words.fixed(number, 0);
        double half = Face.of(true).width(words, NOTE) / 2 + 2;
        double middle = load.y() + BAR / 2;
        if (2 * half + 2 <= load.width()) {
            pen.area(Role.PLATE, Outline.circle(load.middle(), middle, half + 1, 16));
        } else if (2 * half - 5 <= load.width()) {
            pen.fill(
                    Role.PLATE,
                    new Box(load.x() + 0.4, middle - 5, Math.max(0, load.width() - 0.8), 10));
        } else {
            return;
        }
        pen.bold(Role.TEXT, words, load.middle(), middle + 3, NOTE, Anchor.MIDDLE);
    }
}
