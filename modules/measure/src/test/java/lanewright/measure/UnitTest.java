package lanewright.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Sizes of units against the tables of the standards bodies. */
class UnitTest {

    /** SP 811 prints seven figures, so half a unit in the seventh may differ. */
    private static final double SEVEN_FIGURES = 5.1e-7;

    private static void printed(double expected, Unit unit) {
        assertEquals(expected, unit.si(), SEVEN_FIGURES * expected, unit.toString());
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "foot, inch, yard, mile, pound: exact factors"
                    + " | NIST SP 811 (2008), appendix B.8 | from memory")
    void exactFactorsAreExact() {
        assertEquals(0.3048, Unit.FOOT.si());
        assertEquals(0.0254, Unit.INCH.si());
        assertEquals(0.9144, Unit.YARD.si());
        assertEquals(1609.344, Unit.MILE.si());
        assertEquals(0.45359237, Unit.POUND.si());
        assertEquals(907.18474, Unit.SHORT_TON.si());
        assertEquals(1000, Unit.TONNE.si());
        assertEquals(10_000, Unit.HECTARE.si());
        assertEquals(60, Unit.HOUR.si() / Unit.MINUTE.si(), 1e-12);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "square foot, cubic foot, cubic yard, short ton, lb/ft³, lb/yd³: printed factors"
                    + " | NIST SP 811 (2008), appendix B.8 | from memory")
    void productsAgreeWithThePrintedFactors() {
        printed(9.290304e-2, Unit.SQUARE_FOOT);
        printed(8.361274e-1, Unit.SQUARE_YARD);
        printed(2.831685e-2, Unit.CUBIC_FOOT);
        printed(7.645549e-1, Unit.CUBIC_YARD);
        printed(9.071847e2, Unit.SHORT_TON);
        printed(1.601846e1, Unit.POUND_PER_CUBIC_FOOT);
        printed(5.932764e-1, Unit.POUND_PER_CUBIC_YARD);
        printed(1.186553e3, Unit.TON_PER_CUBIC_YARD);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "square yard, cubic yard, cubic foot, ton, pound, lb/ft³, ton/yd³ to six figures"
                    + " | US naval facilities handbook 1004/6, appendix B, as quoted on"
                    + " navalfacilities.tpub.com"
                    + " | read")
    void productsAgreeWithAnEngineersHandbook() {
        assertEquals(0.836127, Unit.SQUARE_YARD.si(), 5e-7);
        assertEquals(0.764555, Unit.CUBIC_YARD.si(), 5e-7);
        assertEquals(0.028317, Unit.CUBIC_FOOT.si(), 5e-7);
        assertEquals(907.185, Unit.SHORT_TON.si(), 5e-4);
        assertEquals(0.453592, Unit.POUND.si(), 5e-7);
        assertEquals(16.0185, Unit.POUND_PER_CUBIC_FOOT.si(), 5e-5);
        assertEquals(1186.55, Unit.TON_PER_CUBIC_YARD.si(), 5e-3);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "the foot is 0.3048 m exactly, the US survey foot 1200/3937 m exactly, about 0.3048006 m"
                    + " | NIST and NGS, 85 FR 62698 (5 October 2020), and NIST, U.S. survey foot"
                    + " (page on nist.gov/pml)"
                    + " | read")
    void theTwoFeetAreToldApart() {
        assertEquals(1200.0 / 3937.0, Unit.SURVEY_FOOT.si());
        assertEquals(0.3048006, Unit.SURVEY_FOOT.si(), 5e-8);
        assertEquals(0.3048, Unit.FOOT.si());
        assertEquals(2e-6, Unit.SURVEY_FOOT.si() / Unit.FOOT.si() - 1, 1e-11);
        // 3,937 survey feet are 1,200 m to the last bit, as no chain of doubles would give it.
        assertEquals(1200, Unit.SURVEY_FOOT.toSi(BigDecimal.valueOf(3937)));
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "an acre is 43,560 square feet, a cubic yard 27 cubic feet, a short ton 2,000 pounds"
                    + " | National Bureau of Standards Circular 570, p. 18; US Statistical"
                    + " Abstract 1999, appendix IV; dictionary tables of weights and measures"
                    + " | read")
    void tablesOfCustomaryUnitsHold() {
        BigDecimal acre = Unit.SQUARE_FOOT.exact(BigDecimal.valueOf(43_560));
        assertEquals(0, acre.compareTo(Unit.ACRE.exact(BigDecimal.ONE)));
        BigDecimal yard = Unit.CUBIC_FOOT.exact(BigDecimal.valueOf(27));
        assertEquals(0, yard.compareTo(Unit.CUBIC_YARD.exact(BigDecimal.ONE)));
        BigDecimal ton = Unit.POUND.exact(BigDecimal.valueOf(2000));
        assertEquals(0, ton.compareTo(Unit.SHORT_TON.exact(BigDecimal.ONE)));
        BigDecimal square = new BigDecimal("0.3048").pow(2);
        assertEquals(0, square.compareTo(Unit.SQUARE_FOOT.exact(BigDecimal.ONE)));
        BigDecimal cube = new BigDecimal("0.3048").pow(3);
        assertEquals(0, cube.compareTo(Unit.CUBIC_FOOT.exact(BigDecimal.ONE)));
    }

    @Test
    void unitsAreKnownByEveryUsualSpelling() {
        for (String name : new String[] {"yd3", "yd³", "YD^3", "cu. yd.", "cu yd", "Cubic Yards"}) {
            assertEquals(Unit.CUBIC_YARD, Unit.named(name), name);
        }
        for (String name : new String[] {"lb/ft3", "lb per cu. ft.", "LB/FT³", "pcf"}) {
            assertEquals(Unit.POUND_PER_CUBIC_FOOT, Unit.named(name), name);
        }
        for (String name : new String[] {"ftUS", "sft", "US survey foot", "us survey feet"}) {
            assertEquals(Unit.SURVEY_FOOT, Unit.named(name), name);
        }
        assertEquals(null, Unit.named("cubit"));
    }

    @Test
    void coordinatesComeInThreeUnitsOnly() throws QuantityException {
        assertEquals(LengthUnit.METRE, LengthUnit.named("m"));
        assertEquals(LengthUnit.FOOT, LengthUnit.named("Feet"));
        assertEquals(LengthUnit.SURVEY_FOOT, LengthUnit.named("US survey foot"));
        assertThrows(QuantityException.class, () -> LengthUnit.named("in"));
        assertThrows(QuantityException.class, () -> LengthUnit.named("chain"));
        for (LengthUnit unit : LengthUnit.values()) {
            assertEquals(unit, LengthUnit.named(unit.symbol()));
        }
    }
}
