package lanewright.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Areas of boundaries from traverse computations. */
class RingTest {

    /** The ring that courses run round, each north and then east. */
    private static Ring round(double[][] courses) {
        double[] x = new double[courses.length];
        double[] y = new double[courses.length];
        for (int i = 1; i < courses.length; i++) {
            x[i] = x[i - 1] + courses[i - 1][1];
            y[i] = y[i - 1] + courses[i - 1][0];
        }
        return new Ring(x, y);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Area of a boundary of six balanced courses, 1,715,250.0494 (EW-H7) | sample traverse"
                    + " computation, scribd.com/doc/279716815 | read")
    void areaOfABalancedTraverse() {
        double[][] courses = { // latitude, departure
            {491.8995, 45.7328},
            {587.6733, 609.1538},
            {-328.4036, 788.0003},
            {-1000.4252, 215.8168},
            {-125.7134, -1114.6225},
            {374.9694, -544.0812}
        };
        // four decimals in each of a dozen legs of about a thousand
        assertEquals(1_715_250.0494, round(courses).area(), 0.5);
        // The first two courses the other way about: the area has no sign.
        double[][] back = new double[courses.length][];
        for (int i = 0; i < courses.length; i++) {
            double[] course = courses[courses.length - 1 - i];
            back[i] = new double[] {-course[0], -course[1]};
        }
        assertEquals(round(courses).area(), round(back).area(), 1);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Area of a boundary by double meridian distances, 72,106 ft² (EW-H8) | T. G. Hicks"
                    + " (ed.), Handbook of Civil Engineering Calculations, sec. 5 (inputs) |"
                    + " derived")
    void areaByDoubleMeridianDistances() {
        double[][] courses = {
            {-132.3, -135.6},
            {9.6, -77.5},
            {97.9, -198.5},
            {161.9, 143.6},
            {-35.3, 246.7},
            {-101.8, 21.3}
        };
        double sum = 0;
        double distance = 0; // twice the way of a course's middle from the meridian
        for (int i = 0; i < courses.length; i++) {
            distance += courses[i][1] + (i == 0 ? 0 : courses[i - 1][1]);
            sum += distance * courses[i][0];
        }
        assertEquals(72_106.2, Math.abs(sum) / 2, 0.05);
        assertEquals(Math.abs(sum) / 2, round(courses).area(), 1e-6);
    }
}
