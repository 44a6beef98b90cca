package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.lane.section.Section;

/**
 * Lines that run beside the lane at offsets known at its sections, as they lie on the map: straight
 * from section to section in offset, and bent with the lane.
 */
final class Beside {

    /** Longest piece of a bent line, m: on any lane's curve it cannot be told from the arc. */
    private static final double PIECE = 1.5;

    private final Alignment alignment;
    private final List<Section> sections;

    Beside(Alignment alignment, List<Section> sections) {
        this.alignment = alignment;
        this.sections = List.copyOf(sections);
    }

    /** A line on the map: eastings and northings, local m. */
    @SuppressWarnings("ArrayRecordComponent") // made here, drawn at once, never kept
    record Path(double[] x, double[] y) {

        /** This line and another one walked back, as one ring. */
        Path ringWith(Path other) {
            int n = x.length;
            int m = other.x.length;
            double[] rx = new double[n + m];
            double[] ry = new double[n + m];
            System.arraycopy(x, 0, rx, 0, n);
            System.arraycopy(y, 0, ry, 0, n);
            for (int i = 0; i < m; i++) {
                rx[n + i] = other.x[m - 1 - i];
                ry[n + i] = other.y[m - 1 - i];
            }
            return new Path(rx, ry);
        }
    }

    /** The line all along the lane. */
    Path all(ToDoubleFunction<Section> offset) {
        return between(0, sections.size() - 1, offset);
    }

    /** The line from one section to another, by their numbers. */
    Path between(int first, int last, ToDoubleFunction<Section> offset) {
        var places = new ArrayList<Place>();
        for (int i = first; i <= last; i++) {
            Section section = sections.get(i);
            if (i > first) {
                bend(places, sections.get(i - 1), section, offset);
            }
            places.add(new Place(section.station(), offset.applyAsDouble(section)));
        }
        double[] x = new double[places.size()];
        double[] y = new double[places.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = alignment.x(places.get(i));
            y[i] = alignment.y(places.get(i));
        }
        return new Path(x, y);
    }

    private void bend(List<Place> places, Section a, Section b, ToDoubleFunction<Section> offset) {
        double length = b.station() - a.station();
        double middle = (a.station() + b.station()) / 2;
        if (length <= PIECE || alignment.curvature(middle) == 0) {
            return;
        }
        int pieces = (int) Math.ceil(length / PIECE);
        double from = offset.applyAsDouble(a);
        double to = offset.applyAsDouble(b);
        for (int k = 1; k < pieces; k++) {
            double part = (double) k / pieces;
            places.add(new Place(a.station() + part * length, from + part * (to - from)));
        }
    }

    Alignment alignment() {
        return alignment;
    }

    List<Section> sections() {
        return sections;
    }
}
