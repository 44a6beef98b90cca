package lanewright.survey.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NumbersTest {

    @RepeatedTest(20)
    void everyDecimalIsReadToTheLastBitLikeTheLanguageItselfReadsIt(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        var random = new SplittableRandom(seed);
        for (int k = 0; k < 10_000; k++) {
            StringBuilder text = new StringBuilder(random.nextBoolean() ? "-" : "");
            int before = random.nextInt(14);
            int after = random.nextInt(before == 0 ? 1 : 0, 14);
            digits(text, random, before);
            if (after > 0) {
                text.append('.');
                digits(text, random, after);
            }
            if (random.nextInt(8) == 0) {
                text.append(random.nextBoolean() ? 'e' : 'E').append(random.nextInt(-330, 300));
            }
            String written = text.toString();
            if (before + after > 0) {
                double expected = Double.parseDouble(written);
                assertEquals(
                        Double.isInfinite(expected) ? Double.NaN : expected,
                        Numbers.parse(written, '.'),
                        "seed " + seed + ": " + written);
                assertEquals(
                        Numbers.parse(written, '.'), Numbers.parse(written.replace('.', ','), ','));
            }
        }
    }

    private static void digits(StringBuilder text, SplittableRandom random, int count) {
        for (int k = 0; k < count; k++) {
            text.append((char) ('0' + random.nextInt(10)));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                ".",
                "-",
                "+",
                "-.",
                "1.2.3",
                "1,2",
                "0x10",
                "1f",
                "1d",
                "NaN",
                "Infinity",
                "1e",
                "1e+",
                "1e400",
                "1e999999999",
                "--1",
                "1-",
                "1 2",
                "١٢",
                "1_000",
                "e5",
                "1e5.5"
            })
    void nothingElseIsANumber(String text) {
        assertTrue(Double.isNaN(Numbers.parse(text, '.')), text);
    }

    @Test
    void edgesOfWhatANumberIs() {
        assertEquals(5.0, Numbers.parse("5.", '.'));
        assertEquals(0.5, Numbers.parse(".5", '.'));
        assertEquals(5.0, Numbers.parse("+5", '.'));
        assertEquals(-0.0, Numbers.parse("-0", '.'));
        assertEquals(1.0, Numbers.parse("0000000000000000000000001.000", '.'));
        assertEquals(1e-30, Numbers.parse("0.000000000000000000000000000001", '.'));
        assertEquals(1e29, Numbers.parse("1" + "0".repeat(29), '.'));
    }
}
