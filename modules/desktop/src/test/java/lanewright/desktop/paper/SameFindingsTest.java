package lanewright.desktop.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import org.junit.jupiter.api.Test;

/** Findings of two plans are the same by what they are about, not by their words. */
class SameFindingsTest {

    @Test
    void anotherNumberIsNoOtherFinding() {
        Finding then = finding("pool", Where.stretch(100, 120), "31 in deep");
        Finding now = finding("pool", Where.stretch(102, 121), "29 in deep");
        SameFindings same = SameFindings.of(List.of(then), List.of(now));
        assertEquals(List.of(), same.gone());
        assertEquals(List.of(), same.come());
        assertEquals(List.of(new SameFindings.Pair(then, now)), same.both());
    }

    @Test
    void anotherPlaceSideOrCodeIsAnother() {
        Finding here = finding("pool", Where.beside(100, -3), "a");
        for (Finding other :
                List.of(
                        finding("pool", Where.beside(150, -3), "a"),
                        finding("pool", Where.beside(100, 14), "a"),
                        finding("steep", Where.beside(100, -3), "a"),
                        finding("pool", Where.ANYWHERE, "a"))) {
            SameFindings same = SameFindings.of(List.of(here), List.of(other));
            assertEquals(List.of(here), same.gone());
            assertEquals(List.of(other), same.come());
        }
    }

    @Test
    void eachIsTakenOnceAndTheNearestFirst() {
        Finding first = finding("stake", Where.station(10), "a");
        Finding second = finding("stake", Where.station(14), "b");
        Finding now = finding("stake", Where.station(13), "c");
        SameFindings same = SameFindings.of(List.of(first, second), List.of(now));
        assertEquals(List.of(first), same.gone());
        assertEquals(List.of(new SameFindings.Pair(second, now)), same.both());
    }

    @Test
    void thePlanAsAWholeIsOnePlace() {
        Finding then = finding("no-benchmark", Where.ANYWHERE, "a");
        Finding now = finding("no-benchmark", Where.ANYWHERE, "b");
        assertEquals(1, SameFindings.of(List.of(then), List.of(now)).both().size());
    }

    @Test
    void stoneThatRunsOutElsewhereIsTheSameMatter() {
        Finding then = stone(123, "The base stone in hand, 200 tons, runs out at 4+05.1.");
        Finding now = stone(230, "The base stone in hand, 126 tons, runs out at 7+55.");
        SameFindings same = SameFindings.of(List.of(then), List.of(now));
        assertEquals(List.of(new SameFindings.Pair(then, now)), same.both());
        Finding other = stone(230, "The surface stone in hand, 126 tons, runs out at 7+55.");
        assertEquals(List.of(), SameFindings.of(List.of(then), List.of(other)).both());
    }

    @Test
    void aLeftDitchIsNoRightOne() {
        Finding left = finding("lining", Where.stretch(100, 110), "2 ft/s down the left ditch");
        Finding right = finding("lining", Where.stretch(100, 110), "2 ft/s down the right ditch");
        Finding now = finding("lining", Where.stretch(101, 112), "3 ft/s down the left ditch");
        SameFindings same = SameFindings.of(List.of(right, left), List.of(now));
        assertEquals(List.of(new SameFindings.Pair(left, now)), same.both());
        assertEquals(List.of(right), same.gone());
        assertEquals(List.of(), SameFindings.of(List.of(right), List.of(now)).both());
    }

    private static Finding stone(double station, String says) {
        return Finding.of(
                "stone-short",
                Level.LOOK,
                Topic.STONE,
                Where.station(station),
                Saying.plain(says),
                Saying.plain("order more"));
    }

    private static Finding finding(String code, Where where, String says) {
        return Finding.of(
                code, Level.LOOK, Topic.WATER, where, Saying.plain(says), Saying.plain("look"));
    }
}
