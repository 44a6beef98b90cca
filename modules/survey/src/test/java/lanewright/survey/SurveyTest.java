package lanewright.survey;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class SurveyTest {

    private static final double[] SQUARE_X = {0, 10, 10, 0};
    private static final double[] SQUARE_Y = {0, 0, 10, 10};

    @Test
    void plainLocalCoordinatesKeepTheirOwnZero() {
        Survey survey =
                Survey.builder().point(5000.25, 4000.5, 101.75).point(-3, 7, 99, "edge").build();
        assertEquals(0, survey.originX());
        assertEquals(5000.25, survey.x(0));
        assertEquals(4000.5, survey.y(0));
        assertEquals(101.75, survey.z(0));
        assertEquals("", survey.code(0));
        assertEquals("edge", survey.code(1));
        assertEquals(Source.NOWHERE, survey.source(1));
    }

    @Test
    void farCoordinatesGetALocalZeroInWholeThousands() {
        Survey survey =
                Survey.builder()
                        .point(543173.836, 4339090.244, 200)
                        .probe(new Probe("P1", 543200, 4339100, 0.2, true, Double.NaN, false, ""))
                        .boundary(
                                new Boundary(
                                        new Ring(
                                                new double[] {543000, 544000, 544000},
                                                new double[] {4339000, 4339000, 4340000})))
                        .build();
        assertEquals(543000, survey.originX());
        assertEquals(4339000, survey.originY());
        assertEquals(173.836, survey.x(0), 1e-9);
        assertEquals(90.244, survey.y(0), 1e-9);
        assertEquals(200, survey.probes().get(0).x(), 1e-9);
        assertEquals(1000, survey.boundary().outer().x(1), 1e-9);
    }

    @Test
    void eachPointKnowsItsFileAndLine() {
        Survey survey =
                Survey.builder()
                        .file("empty.csv")
                        .file("a.csv")
                        .point(0, 0, 1, "", 2)
                        .point(1, 0, 1, "", 5)
                        .file("nothing.csv")
                        .file("b.csv")
                        .point(2, 0, 1, "", 1)
                        .build();
        assertEquals(new Source("a.csv", 2), survey.source(0));
        assertEquals("a.csv, line 5", survey.source(1).toString());
        assertEquals(new Source("b.csv", 1), survey.source(2));
        assertThrows(IndexOutOfBoundsException.class, () -> survey.source(3));
    }

    @Test
    void linesRunThroughPointsThatExist() {
        SurveyBuilder builder = Survey.builder().points(SQUARE_X, SQUARE_Y, new double[4]);
        assertThrows(IllegalArgumentException.class, () -> builder.breakline("edge", 0, 4));
        assertThrows(IllegalArgumentException.class, () -> builder.breakline("edge", 0));
        assertThrows(IllegalArgumentException.class, () -> builder.breakline("edge", 0, 0));
        Survey survey = builder.breakline("edge", 0, 1, 2).contour("0", 0, 1, 2, 3, 0).build();
        assertFalse(survey.lines().get(0).closed());
        assertTrue(survey.lines().get(1).closed());
        assertArrayEquals(new int[] {0, 1, 2}, survey.lines().get(0).points());
    }

    @Test
    void copiesCannotChangeTheSurvey() {
        Survey survey = Survey.builder().points(SQUARE_X, SQUARE_Y, new double[4]).build();
        survey.copyX()[1] = 99;
        assertEquals(10, survey.x(1));
        assertArrayEquals(SQUARE_Y, survey.copyY());
        assertNull(survey.boundary());
    }

    @Test
    void roomMadeInAdvanceLeavesNothingBehind() {
        Survey survey = Survey.builder().expect(1000).point(1, 2, 3).expect(2).build();
        assertEquals(1, survey.size());
        assertEquals(1, survey.copyZ().length);
    }

    @Test
    void pointsThatAreNotFiniteAreRefused() {
        SurveyBuilder builder = Survey.builder();
        assertThrows(IllegalArgumentException.class, () -> builder.point(Double.NaN, 0, 0));
        assertThrows(
                IllegalArgumentException.class,
                () -> builder.point(0, 0, Double.POSITIVE_INFINITY));
    }

    @Test
    void ringKnowsItsInsideAndArea() {
        Ring square = new Ring(SQUARE_X, SQUARE_Y);
        assertEquals(100, square.area(), 1e-12);
        assertTrue(square.contains(5, 5));
        assertFalse(square.contains(15, 5));
        Ring closed = new Ring(new double[] {0, 10, 10, 0, 0}, new double[] {0, 0, 10, 10, 0});
        assertEquals(square, closed);
        Ring hole = new Ring(new double[] {4, 6, 6, 4}, new double[] {4, 4, 6, 6});
        Boundary boundary = new Boundary(square, java.util.List.of(hole));
        assertFalse(boundary.contains(5, 5));
        assertTrue(boundary.contains(1, 5));
        assertNotNull(boundary.toString());
    }
}
