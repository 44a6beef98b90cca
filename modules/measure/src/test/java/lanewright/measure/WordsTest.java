package lanewright.measure;

import static lanewright.measure.UnitSystem.METRIC;
import static lanewright.measure.UnitSystem.US;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class WordsTest {

    private static final double FOOT = 0.3048;
    private static final double TON = 907.18474;

    private static void said(String us, String metric, Quantity quantity) {
        assertEquals(us, quantity.in(US));
        assertEquals(metric, quantity.in(METRIC));
    }

    @Test
    void everyKindIsSaidInBothSystems() {
        said("684 ft", "208 m", Quantity.length(684 * FOOT));
        said("14 ft", "4.27 m", Quantity.length(14 * FOOT));
        said("7 in", "178 mm", Quantity.depth(7 * FOOT / 12));
        said("7.1 in", "180 mm", Quantity.depth(0.18));
        said("412.50 ft", "125.73 m", Quantity.height(412.5 * FOOT));
        said("12+50", "0+381.0", Quantity.station(1250 * FOOT));
        said("-12.5 ft", "-3.81 m", Quantity.offset(-12.5 * FOOT));
        said("212 yd³", "162 m³", Quantity.volume(212 * 0.764554857984));
        said("59.2 ft²", "5.5 m²", Quantity.area(5.5));
        said("0.42 acres", "0.17 ha", Quantity.land(0.42 * 4046.8564224));
        said("11.2 %", "11.2 %", Quantity.grade(0.112));
        said("8 %", "8 %", Quantity.grade(0.08));
        said("-0.48 %", "-0.48 %", Quantity.grade(-0.0048));
        said("3:1", "3:1", Quantity.sideSlope(3));
        said("1.75:1", "1.75:1", Quantity.sideSlope(1.75));
        // 338 × 0.90718474 is 306.628.
        said("338 tons", "306.6 t", Quantity.mass(338 * TON));
        said("140 lb/ft³", "2,240 kg/m³", Quantity.density(2240));
        said("37°", "37°", Quantity.angle(37));
        said("10 %", "10 %", Quantity.share(0.1));
        said("62 %", "62 %", Quantity.share(0.62));
        said("16", "16", Quantity.count(16));
        said("1,236.50", "1,236.50", Quantity.money(1236.5));
        said("6.5 h", "6.5 h", Quantity.hours(6.5));
    }

    @Test
    void oneIsSingular() {
        assertEquals("1 ton", Quantity.mass(TON).in(US));
        assertEquals("1 acre", Quantity.land(4046.8564224).in(US));
        assertEquals("1 t", Quantity.mass(1000).in(METRIC));
    }

    @Test
    void greatDepthsAreToldAsLengths() {
        said("35 in", "889 mm", Quantity.depth(35 * 0.0254));
        said("4.5 ft", "1.37 m", Quantity.depth(4.5 * FOOT));
    }

    @Test
    void smallQuantitiesAreNotSaidToBeNothing() {
        said("0.04 in", "1 mm", Quantity.depth(0.001));
        said("0.08 ft", "0.03 m", Quantity.length(0.025));
        said("0.05 yd³", "0.04 m³", Quantity.volume(0.04));
        said("0.02 tons", "0.02 t", Quantity.mass(18));
        said("0.05 %", "0.05 %", Quantity.grade(0.0005));
    }

    @Test
    void stationsCarryTheirPlusAndRoundAcrossTheHundred() {
        said("0+00", "0+000.0", Quantity.station(0));
        said("3+10", "0+094.5", Quantity.station(310 * FOOT));
        said("3+10.5", "0+094.6", Quantity.station(310.5 * FOOT));
        said("1+00", "0+030.5", Quantity.station(99.96 * FOOT));
        said("0+05.3", "0+001.6", Quantity.station(5.25 * FOOT));
        assertEquals("1+250.0", Quantity.station(1250).in(METRIC));
        assertEquals("1+000.0", Quantity.station(999.96).in(METRIC));
        assertEquals("-0+05", Quantity.station(-5 * FOOT).in(US));
        assertEquals("0+00", Quantity.station(-0.001).in(US));
    }

    /** Halves away from zero, also where the double of the half lies below it. */
    @Test
    @Tag("outside")
    @DisplayName(
            "halves are rounded away from zero"
                    + " | school arithmetic: 0.5 to 1, 2.675 to 2.68, 1.005 to 1.01 | derived")
    void halvesGoAwayFromZeroInTheDecimalSense() {
        assertEquals("1", Words.fixed(0.5, 0));
        assertEquals("2", Words.fixed(1.5, 0));
        assertEquals("3", Words.fixed(2.5, 0));
        assertEquals("-3", Words.fixed(-2.5, 0));
        assertEquals("2.68", Words.fixed(2.675, 2));
        assertEquals("1.01", Words.fixed(1.005, 2));
        assertEquals("7.3 in", Quantity.depth(7.25 * 0.0254).in(US));
        for (int quarter = 1; quarter < 400; quarter += 4) {
            double inches = quarter / 4.0; // n + 0.25
            assertEquals(
                    (quarter / 4) + ".3",
                    Words.number(Quantity.depth(inches * 0.0254), US),
                    "quarters of an inch: " + quarter);
        }
    }

    @Test
    void zeroHasNoMinus() {
        assertEquals("0", Words.fixed(-0.0, 0));
        assertEquals("0.00", Words.fixed(-0.004, 2));
        said("0 ft", "0 m", Quantity.length(-0.0));
        said("0.00 ft", "0.00 m", Quantity.height(-1e-9));
    }

    @Test
    void thousandsAreMarkedInTextAndNotInFiles() {
        assertEquals("1,234,567.9", Words.fixed(1_234_567.89, 1));
        assertEquals("-123,456", Words.fixed(-123_456, 0));
        assertEquals("-123", Words.fixed(-123, 0));
        assertEquals("999", Words.fixed(999, 0));
        assertEquals("1234567.9", Words.ungrouped(1_234_567.89, 1));
    }

    @Test
    void whatIsNotKnownIsSaidSo() {
        for (double unknown : new double[] {Double.NaN, Double.POSITIVE_INFINITY}) {
            for (Kind kind : Kind.values()) {
                Quantity quantity = new Quantity(unknown, kind);
                assertEquals("not known", quantity.in(US));
                assertEquals("not known", Words.fine(quantity, US));
                assertEquals("–", Words.number(quantity, METRIC));
            }
        }
    }

    @Test
    void columnsHaveOneCountOfDecimalsAndTheUnitInTheHead() {
        assertEquals("14.0", Words.number(Quantity.length(14 * FOOT), US));
        assertEquals("684.0", Words.number(Quantity.length(684 * FOOT), US));
        assertEquals("125.730", Words.number(Quantity.height(125.73), METRIC));
        assertEquals("412.50", Words.number(Quantity.height(412.5 * FOOT), US));
        assertEquals("125.730 m", Words.fine(Quantity.height(125.73), METRIC));
        assertEquals("8.00", Words.number(Quantity.grade(0.08), US));
        assertEquals("3", Words.number(Quantity.sideSlope(3), US));
        assertEquals("54.0", Words.number(Quantity.depth(4.5 * FOOT), US));
        assertEquals("ft", Words.unit(Kind.LENGTH, US));
        assertEquals("in", Words.unit(Kind.DEPTH, US));
        assertEquals("m³", Words.unit(Kind.VOLUME, METRIC));
        assertEquals("t", Words.unit(Kind.MASS, METRIC));
        assertEquals("", Words.unit(Kind.STATION, US));
        assertEquals("", Words.unit(Kind.MONEY, US));
        assertEquals(":1", Words.unit(Kind.SIDE_SLOPE, US));
    }

    @Test
    void aSayingFillsItsGapsInOrder() {
        Saying saying = Saying.of("{} of cut by {}", Quantity.volume(162), Quantity.station(381));
        assertEquals("212 yd³ of cut by 12+50", saying.in(US));
        assertEquals("162 m³ of cut by 0+381.0", saying.in(METRIC));
    }

    @Test
    void theMachinesLocaleChangesNothing() {
        List<String> here = everything();
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertEquals(here, everything(), tag);
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    private static List<String> everything() {
        List<String> words = new ArrayList<>();
        for (UnitSystem units : UnitSystem.values()) {
            for (Kind kind : Kind.values()) {
                words.add(Words.unit(kind, units));
                for (double value : new double[] {-1234.5678, -0.05, 0, 0.5, 12.345, 1e6 / 7}) {
                    Quantity quantity = new Quantity(value, kind);
                    words.add(Words.of(quantity, units));
                    words.add(Words.fine(quantity, units));
                    words.add(Words.number(quantity, units));
                }
            }
        }
        return words;
    }

    @Test
    void aRuleOfThumbIsRoundInEitherSystem() {
        Saying says =
                Saying.of(
                        "{~}, {~}, {~}, {~}, {}",
                        Quantity.depth(0.15),
                        Quantity.depth(18 * 0.0254),
                        Quantity.length(10 * 0.3048),
                        Quantity.length(25),
                        Quantity.depth(0.15));
        assertEquals("6 in, 18 in, 10 ft, 80 ft, 5.9 in", says.in(US));
        assertEquals("150 mm, 450 mm, 3 m, 25 m, 150 mm", says.in(METRIC));
    }

    @Test
    void aChangeIsTheDifferenceOfWhatIsTold() {
        double yard = 0.9144 * 0.9144 * 0.9144;
        // 96.4 and 45.6 are told as 96 and 46: a reader who subtracts finds 50, not 50.8.
        assertEquals(
                "-50 yd³",
                Words.change(
                        Quantity.volume(96.4 * yard), Quantity.volume(45.6 * yard), UnitSystem.US));
        assertEquals(
                "",
                Words.change(
                        Quantity.volume(96.4 * yard), Quantity.volume(95.6 * yard), UnitSystem.US));
        assertEquals(
                "+3", Words.change(Quantity.count(4.0), Quantity.count(7.0), UnitSystem.METRIC));
    }
}
