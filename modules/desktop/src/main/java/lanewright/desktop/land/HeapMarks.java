package lanewright.desktop.land;

import java.util.List;
import lanewright.desktop.look.Type;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.work.HeapPlace;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Role;

/** Puts the heaps of topsoil on the board. */
final class HeapMarks {

    private final Plates plates;
    private final View view;
    private final UnitSystem units;

    HeapMarks(Plates plates, View view, UnitSystem units) {
        this.plates = plates;
        this.view = view;
        this.units = units;
    }

    /** Draws heaps, with their volume. */
    void heaps(List<HeapPlace> heaps) {
        for (HeapPlace heap : heaps) {
            double[][] outline = heap.outline();
            double[] xy = new double[2 * outline[0].length];
            for (int i = 0; i < outline[0].length; i++) {
                xy[2 * i] = view.px(outline[0][i]);
                xy[2 * i + 1] = view.py(outline[1][i]);
            }
            plates.area(Role.HEAP, xy);
            plates.lines(Role.HEAP, Plates.closed(xy));
        }
        for (HeapPlace heap : heaps) {
            heapWords(heap);
        }
    }

    /** A heap's number and volume: on it, else beside it, else its number alone. */
    private void heapWords(HeapPlace heap) {
        double x = view.px(heap.x());
        double y = view.py(heap.y());
        if (!view.sees(heap.x(), heap.y())) {
            return;
        }
        String number = "heap " + heap.number();
        String whole =
                number + ": " + Words.of(Quantity.volume(heap.form().volume()), units) + " loose";
        double out = heap.reach() * view.scale() + 12;
        for (String words : List.of(whole, number)) {
            double half = Face.of(false).width(words, Type.NOTE) / 2 + 3;
            if (plates.plate(Role.TEXT, words, x, y + 4, false) != null) {
                return;
            }
            for (double away = out; away < out + 80; away += 13) {
                double[][] tries = {
                    {0, -away},
                    {0, away},
                    {half, -away},
                    {-half, -away},
                    {half, away},
                    {-half, away}
                };
                for (double[] by : tries) {
                    if (plates.plate(Role.TEXT, words, x + by[0], y + by[1] + 4, false) != null) {
                        plates.shapes()
                                .line(Role.TICK, x, y, x + by[0], y + by[1] + (by[1] < 0 ? 8 : -8));
                        return;
                    }
                }
            }
        }
    }
}
