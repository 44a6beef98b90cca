package lanewright.survey.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class FieldsTest {

    private static List<String> cut(char separator, String line) {
        var fields = new Fields(separator);
        assertTrue(fields.cut(line), line);
        return fields.all();
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Fields in quotes, quotes doubled inside | RFC 4180, section 2, rules 5 to 7 | read")
    void fieldsInQuotes() {
        assertEquals(List.of("aaa", "b,bb", "ccc"), cut(',', "\"aaa\",\"b,bb\",\"ccc\""));
        assertEquals(List.of("aaa", "b\"bb", "ccc"), cut(',', "\"aaa\",\"b\"\"bb\",\"ccc\""));
    }

    @Test
    void blanksAroundFieldsDoNotCount() {
        assertEquals(List.of("1", "2 a", "", "3"), cut(',', " 1 ,\t2 a , ,3\t"));
        assertEquals(List.of("1", "2", ""), cut('\t', " 1\t2 \t"));
        assertEquals(List.of(""), cut(',', ""));
    }

    @Test
    void runsOfBlanksSeparateOnce() {
        assertEquals(List.of("1", "2", "3"), cut(' ', "  1   2\t3  "));
        assertEquals(List.of("1", "big oak", "3"), cut(' ', "1 \"big oak\" 3"));
        assertEquals(List.of(), cut(' ', "   "));
    }

    @Test
    void restOfTheLineKeepsItsSeparators() {
        var fields = new Fields(',');
        fields.cut("1,2,edge, left, by the oak ");
        assertEquals("edge, left, by the oak", fields.textFrom(2));
        assertEquals("6\" pipe", cut(',', "1,6\" pipe").get(1));
    }

    @Test
    void brokenQuotesCannotBeCut() {
        assertFalse(new Fields(',').cut("1,\"open"));
        assertFalse(new Fields(',').cut("1,\"closed\"more,2"));
        assertFalse(new Fields(',').cut(",".repeat(64)));
    }
}
