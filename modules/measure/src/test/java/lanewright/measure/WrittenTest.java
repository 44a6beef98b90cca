package lanewright.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class WrittenTest {

    /** Stations are kept to a hundredth of a micrometre. */
    private static final double STATION = 1e-8;

    @RepeatedTest(50)
    void whatIsWrittenIsReadAgain(RepetitionInfo run) throws QuantityException {
        int seed = run.getCurrentRepetition();
        var random = new SplittableRandom(seed);
        for (Kind kind : Kind.values()) {
            double value = random.nextDouble() * Math.pow(10, random.nextInt(-3, 4));
            for (UnitSystem units : UnitSystem.values()) {
                String written = Written.exactly(new Quantity(value, kind), units);
                double read = Parse.of(kind, written, units).value();
                double off = kind == Kind.STATION ? STATION : 2 * Math.ulp(value);
                assertEquals(value, read, off, "seed " + seed + ": " + kind + " " + written);
            }
        }
    }

    @Test
    void roundValuesStayShort() {
        assertEquals("12 ft", Written.exactly(Quantity.length(12 * 0.3048), UnitSystem.US));
        assertEquals("7.5 in", Written.exactly(Quantity.depth(7.5 * 0.0254), UnitSystem.US));
        assertEquals("450 mm", Written.exactly(Quantity.depth(0.45), UnitSystem.METRIC));
        assertEquals("12+50", Written.exactly(Quantity.station(381), UnitSystem.US));
        assertEquals("0+094.5", Written.exactly(Quantity.station(94.5), UnitSystem.METRIC));
        assertEquals("3:1", Written.exactly(Quantity.sideSlope(3), UnitSystem.US));
        assertEquals("8 %", Written.exactly(Quantity.grade(0.08), UnitSystem.US));
        assertEquals("24 per ton", Written.price(new Price(24, "ton", Kind.MASS, 907.18474)));
        assertEquals("-86.5°", Written.exactly(Quantity.angle(-86.5), UnitSystem.METRIC));
    }

    @Test
    void whatIsNotFiniteIsNotWritten() {
        assertThrows(IllegalArgumentException.class, () -> Written.number(Double.NaN));
        assertThrows(
                IllegalArgumentException.class,
                () -> Written.exactly(Quantity.length(Double.POSITIVE_INFINITY), UnitSystem.US));
    }

    @Test
    void theMachinesLanguageDoesNotMatter() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG"));
            assertEquals("1234.5 ft", Written.exactly(Quantity.length(376.2756), UnitSystem.US));
        } finally {
            Locale.setDefault(before);
        }
    }
}
