package lanewright.measure;

import static lanewright.measure.UnitSystem.METRIC;
import static lanewright.measure.UnitSystem.US;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class ParseTest {

    /** Sums of feet and inches are made in decimals, so nothing is lost but the last rounding. */
    private static final double EXACT = 0;

    private static QuantityException refusal(Kind kind, String text, UnitSystem units) {
        return assertThrows(
                QuantityException.class, () -> Parse.of(kind, text, units), kind + " " + text);
    }

    private static void refused(Kind kind, String text, String what, String remedy) {
        QuantityException refusal = refusal(kind, text, US);
        assertEquals(what, refusal.what());
        assertEquals(remedy, refusal.remedy());
        assertEquals(what + ". " + remedy + ".", refusal.getMessage());
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "lengths as people write them: 14 ft is 4.2672 m, 6 ft 3 in is 1.905 m, 7 in is 0.1778 m"
                    + " | NIST SP 811 (2008), appendix B.8, by hand | derived")
    void lengthsInFeetInchesAndMetres() throws QuantityException {
        assertEquals(4.2672, Parse.length("14 ft"), EXACT);
        assertEquals(4.2672, Parse.length("14ft"), EXACT);
        assertEquals(4.2672, Parse.length(" 14 feet "), EXACT);
        assertEquals(0.1778, Parse.depth("7 in"), EXACT);
        for (String same :
                List.of("6 ft 3 in", "6'3\"", "6' 3\"", "6'-3\"", "6ft-3in", "6 feet 3 inches")) {
            assertEquals(1.905, Parse.length(same), EXACT, same);
        }
        assertEquals(1.905, Parse.length("6′ 3″"), EXACT);
        assertEquals(1.905, Parse.length("6’ 3”"), EXACT);
        assertEquals(1.905, Parse.length("75''"), EXACT);
        assertEquals(0.1905, Parse.length("7 1/2 in"), EXACT);
        assertEquals(0.1905, Parse.length("7-1/2 in"), EXACT);
        assertEquals(0.1905, Parse.length("7½ in"), EXACT);
        assertEquals(0.0127, Parse.length(".5 in"), EXACT);
        assertEquals(0.0127, Parse.length("1/2\""), EXACT);
        assertEquals(1.9177, Parse.length("6 ft 3 1/2 in"), EXACT);
        assertEquals(4.5, Parse.length("4.5 m"), EXACT);
        assertEquals(0.45, Parse.length("450 mm"), EXACT);
        assertEquals(0.12, Parse.length("12 cm"), EXACT);
        assertEquals(381, Parse.length("1,250 ft"), EXACT);
        assertEquals(1200, Parse.length("3937 ftUS"), EXACT);
        assertEquals(1200, Parse.length("3937 sft"), EXACT);
        assertEquals(1200, Parse.length("3,937 US survey feet"), EXACT);
        assertEquals(4.5, Parse.length("4.5\u00a0m"), EXACT);
    }

    @Test
    void heightsOffsetsAndGradesMayBeBelowZero() throws QuantityException {
        assertEquals(-0.3048, Parse.height("-1 ft"), EXACT);
        assertEquals(-1.905, Parse.height("-6 ft 3 in"), EXACT);
        assertEquals(-0.3048, Parse.height("\u22121 ft"), EXACT);
        assertEquals(-0.08, Parse.grade("-8 %"), EXACT);
        assertEquals(3.048, Parse.offset("10 ft right"), EXACT);
        assertEquals(-3.048, Parse.offset("10 ft LEFT"), EXACT);
        assertEquals(-3.048, Parse.offset("-10 ft"), EXACT);
        assertEquals(0.0, Parse.offset("0 ft left"));
        refused(
                Kind.LENGTH,
                "-14 ft",
                "\"-14 ft\" is below zero",
                "Write it without the minus if it was meant");
        refused(
                Kind.OFFSET,
                "-10 ft left",
                "\"-10 ft left\" has a sign and a side",
                "Write one of the two");
    }

    @Test
    void stationsBelongToADeclaredSystem() throws QuantityException {
        assertEquals(381, Parse.station("12+50", US), EXACT);
        assertEquals(12_050, Parse.station("12+050", METRIC), EXACT);
        assertEquals(1.524, Parse.station("0+05", US), EXACT);
        assertEquals(94.6404, Parse.station("3+10.5", US), EXACT);
        assertEquals(94.5, Parse.station("0+094.5", METRIC), EXACT);
        assertEquals(381, Parse.station("1250 ft", METRIC), EXACT);
        assertEquals(
                "\"12+50\" has 2 digits after the plus, and in metres a station has 3",
                refusal(Kind.STATION, "12+50", METRIC).what());
        assertEquals(
                "\"12+050\" has 3 digits after the plus, and in feet a station has 2",
                refusal(Kind.STATION, "12+050", US).what());
        for (String bad : List.of("-1+00", "1+-5", "1+2 3", "1+00+00", "1+00.", "1234567+00")) {
            assertEquals(
                    "Write it as 12+50 for 1,250 ft, zero or more",
                    refusal(Kind.STATION, bad, US).remedy());
        }
        refused(
                Kind.STATION,
                "1250",
                "\"1250\" is not a station",
                "Write it as 12+50 for 1,250 ft, or as a length with its unit");
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "grades and cross slopes: 1/2 in per ft is 4.1667 %, 8 % is 0.08"
                    + " | ratio by hand | derived")
    void gradesArePercentsOrRisePerRun() throws QuantityException {
        for (String same : List.of("8 %", "8%", "8 percent", "80 mm/m", "0.08 m/m", "0.08 ft/ft")) {
            assertEquals(0.08, Parse.grade(same), EXACT, same);
        }
        assertEquals(1.0 / 24, Parse.crossSlope("1/2 in/ft"), EXACT);
        assertEquals(1.0 / 24, Parse.crossSlope("½ in per ft"), EXACT);
        for (String twoWays : List.of("1:12", "1 in 12")) {
            assertEquals(
                    "\"" + twoWays + "\" can be read as rise to run or as run to rise",
                    refusal(Kind.GRADE, twoWays, US).what());
        }
        refused(Kind.GRADE, "0.08", "0.08 has no unit", "Write 0.08 %, whichever it is");
    }

    @Test
    void sideSlopesAreAcrossToUp() throws QuantityException {
        assertEquals(3, Parse.sideSlope("3:1"), EXACT);
        assertEquals(1.5, Parse.sideSlope("1.5 : 1"), EXACT);
        assertEquals(0.5, Parse.sideSlope("1/2:1"), EXACT);
        for (String unclear : List.of("1:3", "0:1", "-3:1", "3:2")) {
            assertTrue(
                    refusal(Kind.SIDE_SLOPE, unclear, US).what().contains("across and which is up"),
                    unclear);
        }
        for (String bad : List.of("3", "3:1:1", "3 ft:1", ":1", "3:")) {
            refusal(Kind.SIDE_SLOPE, bad, US);
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "areas, volumes, masses and densities: a ton is 907.18474 kg, 140 lb/ft³ is 2,242.6 kg/m³"
                    + " | NIST SP 811 (2008), appendix B.8 | from memory")
    void areasVolumesMassesAndDensities() throws QuantityException {
        assertEquals(0.09290304, Parse.area("1 ft2"), EXACT);
        assertEquals(4046.8564224, Parse.area("1 acre"), EXACT);
        assertEquals(1700, Parse.area("0.17 ha"), EXACT);
        assertEquals(0.764554857984, Parse.volume("1 yd³"), EXACT);
        assertEquals(0.764554857984, Parse.volume("27 cu. ft."), EXACT);
        assertEquals(19_958.06428, Parse.mass("22 tons"), EXACT);
        assertEquals(20_000, Parse.mass("20 t"), EXACT);
        assertEquals(20_000, Parse.mass("20 metric tons"), EXACT);
        assertEquals(4.5359237, Parse.mass("10 lb"), EXACT);
        assertEquals(16.01846 * 140, Parse.density("140 lb/ft3"), 140 * 5e-6);
        assertEquals(2240, Parse.density("2240 kg/m3"), EXACT);
        assertEquals(2240, Parse.density("2,240 kg/m³"), EXACT);
        assertEquals(1186.553 * 1.4, Parse.density("1.4 tons/yd3"), 1.4 * 5e-4);
        assertEquals(0.1, Parse.share("10 %"), EXACT);
        assertEquals(1.5, Parse.hours("90 min"), EXACT);
        assertEquals(37.5, Parse.angle("37.5°"), EXACT);
        assertEquals(16, Parse.count("16"), EXACT);
    }

    @Test
    void moneyIsInThePlansOwnCurrency() throws QuantityException {
        assertEquals(36, Parse.money("36.00", "USD"), EXACT);
        assertEquals(1236.5, Parse.money("1,236.50 USD", "USD"), EXACT);
        assertEquals(36, Parse.money("$36", "$"), EXACT);
        assertEquals(36, Parse.money("36", ""), EXACT);
        for (String other : List.of("36 EUR", "€36", "36 $ USD", "thirty", "-36", "36,5", "")) {
            assertThrows(QuantityException.class, () -> Parse.money(other, "USD"), other);
        }
    }

    @Test
    void pricesNameWhatTheyAreFor() throws QuantityException {
        Price ton = Parse.price("36 per ton", "USD");
        assertEquals(new Price(36, "ton", Kind.MASS, 907.18474), ton);
        assertEquals(360, ton.of(9071.8474), 1e-12);
        assertEquals("36.00 USD per ton", ton.inWords("USD"));
        assertEquals(Kind.MASS, Parse.price("18 EUR/t", "EUR").kind());
        assertEquals(Kind.AREA, Parse.price("$2.50 per yd2", "$").kind());
        assertEquals(Kind.HOURS, Parse.price("95 per hour", "").kind());
        assertEquals(Kind.COUNT, Parse.price("400 per load", "").kind());
        assertEquals(Kind.VOLUME, Parse.price("30/cu yd", "").kind());
        for (String bad :
                List.of("36", "36 per", "per ton", "36 per %", "36 per bucket", "36 EUR/t")) {
            assertThrows(QuantityException.class, () -> Parse.price(bad, "USD"), bad);
        }
    }

    @Test
    void aNumberWithoutAUnitIsRefusedWithTheUnitsToChooseFrom() {
        refused(Kind.LENGTH, "14", "14 has no unit", "Write 14 ft or 14 m, whichever it is");
        refused(Kind.DEPTH, "7", "7 has no unit", "Write 7 in or 7 mm, whichever it is");
        refused(
                Kind.DENSITY,
                "140",
                "140 has no unit",
                "Write 140 lb/ft3 or 140 kg/m3, whichever it is");
        refused(Kind.MASS, "22", "22 has no unit", "Write 22 tons or 22 t, whichever it is");
    }

    @Test
    void unknownUnitsOfferTheNearestAndOtherMeasuresAreNamed() {
        refused(
                Kind.LENGTH,
                "14 feets",
                "\"feets\" is not a unit known here",
                "Nearest known is feet; otherwise write 14 ft or 4.3 m");
        refused(
                Kind.VOLUME,
                "14 buckets",
                "\"buckets\" is not a unit known here",
                "Write 212 yd3 or 162 m3");
        refused(Kind.LENGTH, "14 lb", "\"lb\" is a mass, not a length", "Write 14 ft or 4.3 m");
        refused(Kind.SHARE, "1 in/ft", "\"in/ft\" is a slope, not a share", "Write 10 %");
    }

    @Test
    void commasThatCouldBeDecimalSignsAreRefused() throws QuantityException {
        refused(
                Kind.LENGTH,
                "4,5 m",
                "\"4,5\" has a comma where no thousands end",
                "Write decimals with a point, as in 4.5, and leave commas out");
        refused(
                Kind.LENGTH,
                "1,250 m",
                "The comma in 1,250 may end thousands or begin decimals",
                "Write 1250 m or 1.250 m");
        for (String bad :
                List.of("1.250,5 m", "1.250.000 m", "0,450 m", "12,34,567 ft", "4, m", ",5 m")) {
            refusal(Kind.LENGTH, bad, METRIC);
        }
        assertEquals(1250.5, Parse.length("1,250.5 m"), EXACT);
        assertEquals(1_250_000, Parse.area("1,250,000 m2"), EXACT);
    }

    @Test
    void whatIsNoQuantityIsRefusedAndNeverGuessed() {
        List<String> bad =
                List.of(
                        "",
                        "   ",
                        "ft",
                        "abc",
                        "NaN",
                        "NaN ft",
                        "Infinity m",
                        "1e5 m",
                        "0x10 ft",
                        "1/0 in",
                        "1//2 in",
                        "1/1000 in",
                        "--5 ft",
                        "+-5 ft",
                        "5 ft 13 in",
                        "5.5 ft 3 in",
                        "5 m 20 cm",
                        "3 in 5 ft",
                        "5 ft 3 in 2 in",
                        "6 ft -3 in",
                        "12-14 ft",
                        "14 ft x",
                        "14 ft;",
                        "14\nft",
                        "14 \u0000ft",
                        "١٤ ft",
                        "\ud83d\ude9c ft",
                        "..5 ft",
                        "5 ft 3",
                        "1000000000000000 ft",
                        "m 5");
        for (String text : bad) {
            QuantityException refusal = refusal(Kind.LENGTH, text, US);
            assertTrue(!refusal.what().isBlank() && !refusal.remedy().isBlank(), text);
        }
        String long_ = "9".repeat(1_000_000) + " ft";
        assertTrue(refusal(Kind.LENGTH, long_, US).what().contains("too long"));
    }

    /** Texts from a small alphabet of trouble: every one is read or refused, none escapes. */
    @RepeatedTest(20)
    void noTextBreaksTheReader(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        var random = new SplittableRandom(seed);
        String alphabet = "0123456789  ..,,//--+':\"%°²³½ftinmlbyd$€\u00a0\u2032eE";
        for (int i = 0; i < 250; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(14); n >= 0; n--) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            for (Kind kind : Kind.values()) {
                try {
                    double value = Parse.of(kind, text.toString(), US).value();
                    assertTrue(Double.isFinite(value), "seed " + seed + ": " + text);
                } catch (QuantityException refused) {
                    assertTrue(!refused.remedy().isBlank(), "seed " + seed + ": " + text);
                }
            }
        }
    }

    /** What is written is read back to within half of the last figure that was written. */
    @RepeatedTest(100)
    void whatIsWrittenIsReadBack(RepetitionInfo run) throws QuantityException {
        int seed = run.getCurrentRepetition();
        var random = new SplittableRandom(seed);
        for (Kind kind : Kind.values()) {
            for (UnitSystem units : UnitSystem.values()) {
                double size = Math.pow(10, random.nextDouble(-2, 4));
                double value = kind == Kind.GRADE ? random.nextDouble(-0.3, 0.3) : size;
                if (kind == Kind.OFFSET || kind == Kind.HEIGHT) {
                    value *= random.nextBoolean() ? 1 : -1;
                }
                Quantity quantity = new Quantity(value, kind);
                boolean shownAsZero = value < 0.005 && kind == Kind.SIDE_SLOPE;
                if (!shownAsZero) {
                    checkReadBack(quantity, Words.of(quantity, units), units, seed);
                    checkReadBack(quantity, Words.fine(quantity, units), units, seed);
                }
            }
        }
    }

    private static void checkReadBack(Quantity quantity, String words, UnitSystem units, int seed)
            throws QuantityException {
        // A lone comma before three digits is refused with metric units: see the test above.
        boolean lone = words.matches("-?[0-9]{1,3},[0-9]{3}[^0-9.,+].*");
        String text = lone ? words.replace(",", "") : words;
        double read = Parse.of(quantity.kind(), text, units).value();
        String number = text.replaceAll(":1$", "").replaceAll("[^0-9.+]", "");
        int point = number.indexOf('.');
        int decimals = point < 0 ? 0 : number.length() - point - 1;
        // Zeros left out at the end of a sentence's number only make this looser.
        double last = Math.pow(10, -decimals) * unitSize(quantity, words, units);
        assertEquals(
                quantity.value(),
                read,
                0.5001 * last,
                "seed " + seed + ": " + words + " " + quantity);
    }

    private static double unitSize(Quantity quantity, String words, UnitSystem units) {
        boolean us = units == UnitSystem.US;
        return switch (quantity.kind()) {
            case LENGTH, HEIGHT, OFFSET, STATION -> us ? 0.3048 : 1;
            case DEPTH ->
                    words.endsWith("in")
                            ? 0.0254
                            : words.endsWith("ft") ? 0.3048 : words.endsWith("mm") ? 0.001 : 1;
            case AREA -> us ? 0.09290304 : 1;
            case LAND -> us ? 4046.8564224 : 10_000;
            case VOLUME -> us ? 0.764554857984 : 1;
            case GRADE, SHARE -> 0.01;
            case MASS -> us ? 907.18474 : 1000;
            case DENSITY -> us ? 16.018463 : 1;
            case SIDE_SLOPE, ANGLE, COUNT, MONEY, HOURS -> 1;
            case FLOW -> us ? 0.028316846592 : 1;
            case SPEED -> us ? 0.3048 : 1;
            case SHEAR -> us ? 47.88025898 : 1;
        };
    }

    @Test
    void theMachinesLocaleChangesNothing() throws QuantityException {
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("tr-TR", "ar-EG-u-nu-arab", "de-DE", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertEquals(0.0762, Parse.length("3 INCHES"), EXACT, tag);
                assertEquals(4.5, Parse.length("4.5 m"), EXACT, tag);
                assertEquals(381, Parse.station("12+50", US), EXACT, tag);
                assertEquals(
                        "There is a character no quantity has (U+0664)",
                        refusal(Kind.LENGTH, "\u0664 m", US).what());
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
