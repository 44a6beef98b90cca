package lanewright.sheets.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import org.junit.jupiter.api.Test;

class LandLabelsTest {

    /** A strip so low that words find room below each other only. */
    private static final Box STRIP = new Box(0, 0, 150, 100);

    @Test
    void aLineBackToItsPlaceRunsThroughNoOtherWordsWhereAnotherOrderHelps() {
        var free = new Places(STRIP);
        // Nothing may stand to the right of the places and above them.
        free.keepOff(new Box(0, 0, 150, 30));
        var labels = new LandLabels(free);
        labels.ask(Role.TEXT, "water in the ditch, deep", 4, 30, true);
        labels.ask(Role.TEXT, "pipe, lane raised first", 24, 30, true);
        var pen = new Pen();
        labels.draw(pen);
        List<Mark.Words> words = words(pen);
        assertEquals(2, words.size());
        for (Mark mark : pen.marks()) {
            if (mark instanceof Mark.Line line && line.role() == Role.LEADER) {
                for (Mark.Words one : words) {
                    assertFalse(
                            crosses(line.path(), Places.box(one).inset(0.1)),
                            "a line runs through \"" + one.text() + "\"");
                }
            }
        }
    }

    @Test
    void aLineToWordsAboutAnAreaBeginsAtItsRim() {
        var free = new Places(new Box(0, 0, 300, 200));
        Outline heap = Outline.box(60, 90, 60, 20);
        free.keepOffArea(heap);
        // No room close to the heap.
        free.keepOff(new Box(20, 60, 140, 28));
        free.keepOff(new Box(20, 112, 140, 28));
        free.keepOff(new Box(10, 88, 46, 24));
        free.keepOff(new Box(124, 88, 46, 24));
        var labels = new LandLabels(free);
        labels.ask(Role.TEXT, "heap 1", 90, 100, true);
        var pen = new Pen();
        labels.draw(pen);
        List<Outline> lines =
                pen.marks().stream()
                        .filter(mark -> mark instanceof Mark.Line)
                        .map(mark -> ((Mark.Line) mark).path())
                        .toList();
        assertEquals(1, lines.size());
        assertFalse(crosses(lines.get(0), new Box(60, 90, 60, 20).inset(0.1)));
        assertTrue(new Box(60, 90, 60, 20).inset(-0.1).holds(lines.get(0).x(0), lines.get(0).y(0)));
    }

    private static List<Mark.Words> words(Pen pen) {
        return pen.marks().stream()
                .filter(mark -> mark instanceof Mark.Words)
                .map(mark -> (Mark.Words) mark)
                .toList();
    }

    /** Whether any of many points of a straight line lies in a box. */
    private static boolean crosses(Outline line, Box box) {
        for (int i = 0; i <= 1000; i++) {
            double part = i / 1000.0;
            if (box.holds(
                    line.x(0) + part * (line.x(1) - line.x(0)),
                    line.y(0) + part * (line.y(1) - line.y(0)))) {
                return true;
            }
        }
        return false;
    }
}
