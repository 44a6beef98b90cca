package lanewright.sheets.drawing;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A finished drawing, of one page or less.
 *
 * @param width pt
 * @param height pt
 * @param marks in the order in which they are painted
 */
public record Drawing(double width, double height, List<Mark> marks) {
    /** Checks the size and copies the list. */
    public Drawing {
        if (!(width > 0 && width <= 5000 && height > 0 && height <= 5000)) {
            throw new IllegalArgumentException(
                    "a drawing is 1 to 5000 pt wide and high, was " + width + " by " + height);
        }
        marks = List.copyOf(marks);
    }

    /** What its words say about how it is drawn, each once, in the order of painting. */
    public List<Gauge> gauges() {
        var gauges = new LinkedHashSet<Gauge>();
        gather(marks, gauges);
        return List.copyOf(gauges);
    }

    private static void gather(List<Mark> marks, Set<Gauge> gauges) {
        for (Mark mark : marks) {
            if (mark instanceof Mark.Words words) {
                Gauge gauge = words.gauge();
                if (gauge != null) {
                    gauges.add(gauge);
                }
            } else if (mark instanceof Mark.Framed framed) {
                gather(framed.marks(), gauges);
            }
        }
    }
}
