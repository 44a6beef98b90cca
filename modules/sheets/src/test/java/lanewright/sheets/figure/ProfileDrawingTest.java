package lanewright.sheets.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import lanewright.lane.section.Section;
import lanewright.measure.UnitSystem;
import lanewright.sheets.ToyPlan;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import org.junit.jupiter.api.Test;

class ProfileDrawingTest {

    /** Words that stand upright, by their place across the page, from the top down. */
    private static NavigableMap<Double, List<Mark.Words>> columns(Pen pen) {
        var columns = new TreeMap<Double, List<Mark.Words>>();
        for (Mark mark : pen.marks()) {
            if (mark instanceof Mark.Words words
                    && words.turn() == -90
                    && words.anchor() == Anchor.START) {
                columns.computeIfAbsent(words.x(), x -> new ArrayList<>()).add(words);
            }
        }
        return columns;
    }

    @Test
    void everyColumnOfFiguresHasItsOwnStationAndTheHeightsOfThatStation() throws Exception {
        var toy = new ToyPlan();
        List<Section> sections = toy.sections.sections();
        double length = sections.get(sections.size() - 1).station();
        var pen = new Pen();
        new ProfileDrawing(
                        new Unrolled(
                                sections,
                                toy.design.profile().points(),
                                List.of(),
                                List.of(),
                                null,
                                UnitSystem.METRIC),
                        0,
                        length)
                .draw(pen, new Box(0, 0, 700, 400));
        NavigableMap<Double, List<Mark.Words>> columns = columns(pen);
        assertTrue(columns.size() > 5, columns.keySet().toString());
        double lastX = columns.lastKey();
        double firstX = columns.firstKey();
        columns.forEach(
                (x, words) -> {
                    assertEquals(3, words.size());
                    double station = Double.parseDouble(words.get(0).text().replace("+", ""));
                    assertEquals(length * (x - firstX) / (lastX - firstX), station, 0.06);
                    double finished = Double.parseDouble(words.get(2).text().replace(",", ""));
                    assertEquals(
                            toy.design.profile().height(Math.min(station, length)), finished, 0.02);
                });
    }

    @Test
    void wordsFindAPlaceThatHidesNoLineAndNoOtherWords() {
        var places = new Places(new Box(0, 0, 200, 200));
        places.keepOff(Outline.open(0, 100, 200, 100));
        var pen = new Pen();
        assertTrue(places.put(pen, Role.TEXT, "one", 100, 100, 8, false, 60));
        assertTrue(places.put(pen, Role.TEXT, "two", 100, 100, 8, false, 60));
        var boxes = new ArrayList<Box>();
        for (Mark mark : pen.marks()) {
            if (mark instanceof Mark.Words words) {
                Box box = Places.box(words);
                assertFalse(box.y() < 100 && box.bottom() > 100, words.toString());
                boxes.add(box);
            }
        }
        Box a = boxes.get(0);
        Box b = boxes.get(1);
        assertTrue(
                a.right() <= b.x()
                        || b.right() <= a.x()
                        || a.bottom() <= b.y()
                        || b.bottom() <= a.y());
    }

    @Test
    void wordsWithoutRoomAreNotDrawn() {
        var places = new Places(new Box(0, 0, 20, 20));
        var pen = new Pen();
        assertFalse(places.put(pen, Role.TEXT, "far too long for this", 10, 10, 8, false, 60));
        assertEquals(List.of(), pen.marks());
    }
}
