package lanewright.sheets.figure;

import java.util.List;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;

/** The lane as a strip, layer under layer, cut where one truck load stops and the next starts. */
public final class LoadStrip {

    private static final double NOTE = Type.NOTE;
    private static final double BAR = 20;
    private static final double STATIONS = 34;
    private static final double ROW = NOTE * Type.LEAD + BAR + STATIONS + 8;

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

    private LoadStrip() {}

    /** Height that so many layers take, pt. */
    public static double height(int layers) {
        return layers * ROW;
    }

    /**
     * Draws the strip.
     *
     * @param layers in the order of laying, lowest first
     * @param length of the lane, m
     */
    public static void draw(List<Layer> layers, double length, UnitSystem units, Pen pen, Box box) {
        for (int i = 0; i < layers.size(); i++) {
            Box row = new Box(box.x() + 6, box.y() + i * ROW, box.width() - 12, ROW);
            // Laid from the bottom up: the coarsest comes first.
            Role role = SectionDrawing.role(layers.size() - 1 - i, layers.size());
            layer(layers.get(i), role, length, units, pen, row);
        }
    }

    private static void layer(
            Layer layer, Role role, double length, UnitSystem units, Pen pen, Box row) {
        pen.bold(Role.TEXT, layer.words(), row.x() - 6, row.y() + NOTE, NOTE, Anchor.START);
        double top = row.y() + NOTE * Type.LEAD + 2;
        Scale scale = Scale.in(row, 0, 0, row.width() / length, 1);
        List<Double> stops = layer.stops();
        double lastWords = Double.NEGATIVE_INFINITY;
        for (int k = 0; k + 1 < stops.size(); k++) {
            double from = scale.x(stops.get(k));
            double to = scale.x(stops.get(k + 1));
            Box load = new Box(from, top, Math.max(0, to - from), BAR);
            pen.fill(k % 2 == 0 ? role : Role.PLATE, load).frame(Role.TICK, load);
            number(pen, k + 1, load);
        }
        for (int k = 0; k < stops.size(); k++) {
            double x = scale.x(stops.get(k));
            pen.line(Role.TICK, x, top + BAR, x, top + BAR + 3);
            boolean last = k == stops.size() - 1;
            double endX = scale.x(stops.get(stops.size() - 1));
            boolean keepsEnd = last || x + NOTE * 1.1 <= endX;
            if (x >= lastWords + NOTE * 1.1 && keepsEnd) {
                pen.words(
                        Role.NOTE,
                        Quantity.station(stops.get(k)).in(units),
                        x + NOTE * 0.36,
                        top + BAR + 5,
                        NOTE,
                        false,
                        Anchor.END,
                        -90);
                lastWords = x;
            }
        }
        if (Double.isFinite(layer.runsOut())) {
            double x = scale.x(layer.runsOut());
            pen.line(Role.TICK, x, top - 2, x, top + BAR + 3);
            pen.look(x, top + BAR / 2, 10);
        }
    }

    private static void number(Pen pen, int number, Box load) {
        String words = Words.fixed(number, 0);
        double half = Face.of(true).width(words, NOTE) / 2 + 2;
        if (2 * half + 2 <= load.width()) {
            double middle = load.y() + BAR / 2;
            pen.area(Role.PLATE, Outline.circle(load.middle(), middle, half + 1, 16));
            pen.bold(Role.TEXT, words, load.middle(), middle + 3, NOTE, Anchor.MIDDLE);
        }
    }
}
