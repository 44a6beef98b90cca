package lanewright.lane.line;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class ProfileTest {

    private static VerticalPoint at(double station, double height, double curve) {
        return new VerticalPoint(station, height, curve);
    }

    @Test
    void aBreakHasTwoGrades() throws DesignRefused {
        Profile profile = Profile.of(List.of(at(0, 10, 0), at(50, 15, 0), at(100, 5, 0)));
        assertEquals(0.1, profile.gradeBefore(50), 1e-12);
        assertEquals(-0.2, profile.grade(50), 1e-12);
        assertEquals(0.1, profile.gradeBefore(0), 1e-12);
        assertEquals(-0.2, profile.grade(100), 1e-12);
        assertArrayEquals(new double[] {50}, profile.joins(), 0);
        assertEquals(List.of(new TurningPoint(50, 50, 15, false)), profile.turningPoints());
    }

    @Test
    void aLevelStretchBetweenFallAndRiseIsOneLowPlace() throws DesignRefused {
        Profile profile =
                Profile.of(List.of(at(0, 10, 0), at(40, 6, 0), at(60, 6, 10), at(100, 9, 0)));
        assertEquals(1, profile.turningPoints().size());
        TurningPoint low = profile.turningPoints().get(0);
        assertEquals(40, low.from(), 1e-12);
        assertEquals(55, low.to(), 1e-12);
        assertEquals(6, low.height(), 1e-12);
        assertEquals(true, low.sag());
    }

    @Test
    void aStepDownStairsTurnsNowhere() throws DesignRefused {
        Profile profile =
                Profile.of(List.of(at(0, 10, 0), at(40, 6, 0), at(60, 6, 0), at(100, 2, 0)));
        assertEquals(List.of(), profile.turningPoints());
    }

    @Test
    void curvesMayTouchButNotOverlap() throws DesignRefused {
        Profile touching =
                Profile.of(List.of(at(0, 0, 0), at(30, 3, 60), at(70, 1, 20), at(100, 4, 0)));
        assertArrayEquals(new double[] {60, 80}, touching.joins(), 1e-9);
        DesignRefused refused =
                assertThrows(
                        DesignRefused.class,
                        () ->
                                Profile.of(
                                        List.of(
                                                at(0, 0, 0),
                                                at(30, 3, 60),
                                                at(70, 1, 30),
                                                at(100, 4, 0))));
        assertEquals("grade-curves-overlap", refused.findings().get(0).code());
        assertThrows(
                DesignRefused.class,
                () -> Profile.of(List.of(at(0, 0, 0), at(30, 3, 61), at(70, 1, 0))));
    }

    @Test
    void pointsOutOfOrderAreRefused() {
        DesignRefused refused =
                assertThrows(
                        DesignRefused.class,
                        () -> Profile.of(List.of(at(0, 0, 0), at(50, 1, 0), at(50, 2, 0))));
        assertEquals("grade-points-out-of-order", refused.findings().get(0).code());
    }

    @Test
    void nothingIsSaidBeyondTheEnds() throws DesignRefused {
        Profile profile = Profile.of(List.of(at(0, 10, 0), at(50, 15, 0)));
        assertThrows(IllegalArgumentException.class, () -> profile.height(50.01));
        assertThrows(IllegalArgumentException.class, () -> profile.grade(-0.01));
        assertEquals(15.0004, profile.height(50.004), 1e-9, "room for a rounded station");
    }
}
