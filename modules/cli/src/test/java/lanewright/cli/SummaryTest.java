package lanewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class SummaryTest {

    @Test
    void whatTheListLeavesOutIsCountedWithoutNoughts() {
        assertEquals("and 17 notes, all in the findings sheet", Summary.rest(0, 17));
        assertEquals("and 3 more to look at, all in the findings sheet", Summary.rest(3, 0));
        assertEquals(
                "and 3 more to look at and 1 note, all in the findings sheet", Summary.rest(3, 1));
        assertEquals("", Summary.rest(0, 0));
    }
}
