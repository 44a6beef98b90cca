package lanewright.sheets.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class FaceTest {

    @Test
    void allFiguresAreEquallyWideSoThatColumnsLineUp() {
        for (boolean bold : new boolean[] {false, true}) {
            for (char figure = '0'; figure <= '9'; figure++) {
                assertEquals(
                        Face.of(bold).advance('0'), Face.of(bold).advance(figure), "" + figure);
            }
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Widths of Noto Sans letters | advance widths in the font's own hmtx table, Noto Sans"
                    + " 2.x: 0 is 572, H is 741 of 1000 | from memory")
    void widthsAreThoseOfTheFont() {
        assertEquals(0.572, Face.of(false).advance('0'), 1e-9);
        assertEquals(0.741, Face.of(false).advance('H'), 1e-9);
        assertEquals((0.572 + 0.741) * 10, Face.of(false).width("0H", 10), 1e-9);
    }

    @Test
    void everySignThatSheetsUseIsInTheFont() {
        for (int sign : "²³°·–—…×±½′″−•".codePoints().toArray()) {
            assertTrue(
                    Face.of(false).shows(sign) && Face.of(true).shows(sign),
                    Character.toString(sign));
        }
    }

    @Test
    void whatTheFontDoesNotHoldBecomesAQuestionMark() {
        assertEquals("<= 3", Face.of(true).shown("≤ 3"));
        assertEquals("a?b c", Face.of(false).shown("a\uD83D\uDE80b\tc"));
    }
}
