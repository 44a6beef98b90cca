package lanewright.sheets.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import org.junit.jupiter.api.Test;

class LayoutCheckTest {

    private static List<String> wrongWith(Pen pen) {
        return LayoutCheck.of(pen.drawing(300, 200));
    }

    @Test
    void wordsApartAreFine() {
        var pen = new Pen();
        pen.words(Role.TEXT, "left", 30, 50, 10, Anchor.START);
        pen.words(Role.TEXT, "right", 270, 50, 10, Anchor.END);
        pen.words(Role.TEXT, "below", 30, 61, 10, Anchor.START);
        assertEquals(List.of(), wrongWith(pen));
    }

    @Test
    void wordsOnWordsAreFound() {
        var pen = new Pen();
        pen.words(Role.TEXT, "under", 50, 50, 10, Anchor.START);
        pen.words(Role.TEXT, "over", 60, 53, 10, Anchor.START);
        assertEquals(1, wrongWith(pen).size());
    }

    @Test
    void turnedWordsAreHeldAgainstTheirOwnBoxAndNotAnUprightOne() {
        var crossing = new Pen();
        crossing.words(Role.TEXT, "a level line of words", 50, 100, 10, Anchor.START);
        crossing.words(Role.TEXT, "standing", 100, 130, 10, false, Anchor.START, -90);
        assertEquals(1, wrongWith(crossing).size());
        var slanting = new Pen();
        slanting.words(Role.TEXT, "one slanting line", 50, 150, 10, false, Anchor.START, -45);
        slanting.words(Role.TEXT, "another beside it", 70, 150, 10, false, Anchor.START, -45);
        assertEquals(List.of(), wrongWith(slanting));
    }

    @Test
    void wordsThatLeaveThePageAreFound() {
        var pen = new Pen();
        pen.words(Role.TEXT, "too far to the right", 250, 50, 10, Anchor.START);
        assertTrue(wrongWith(pen).get(0).contains("leaves its frame"));
    }

    @Test
    void wordsThatAFrameWouldCutAreFound() {
        var inside = new Pen();
        inside.words(Role.TEXT, "cut off by the frame", 60, 50, 10, Anchor.START);
        var pen = new Pen().framed(new Box(50, 30, 60, 40), inside);
        assertTrue(wrongWith(pen).get(0).contains("leaves its frame"));
    }

    @Test
    void aRoomTakesNoWordsTwice() {
        var room = new LayoutCheck.Room(new Box(0, 0, 100, 100));
        var pen = new Pen();
        pen.words(Role.TEXT, "here", 20, 50, 10, Anchor.START);
        var words = (lanewright.sheets.drawing.Mark.Words) pen.marks().get(0);
        assertTrue(room.take(words));
        assertEquals(false, room.take(words));
    }
}
