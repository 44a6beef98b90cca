package lanewright.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class TablesTest {

    private static final String HEAD = "name,width_ft,source,edition,mark\n";

    private static Table table(String text) {
        return Tables.parse("widths", text.getBytes(StandardCharsets.UTF_8));
    }

    private static String refusal(String text) {
        return assertThrows(IllegalStateException.class, () -> table(text)).getMessage();
    }

    @Test
    void everyTableInTheProjectIsPackedAndReadable() throws IOException {
        Path shared = Path.of(System.getProperty("basedir", ".")).resolve("../../shared");
        try (var files = Files.list(shared)) {
            List<String> names =
                    files.map(file -> file.getFileName().toString())
                            .filter(name -> name.endsWith(".csv"))
                            .map(name -> name.substring(0, name.length() - 4))
                            .sorted()
                            .toList();
            assertFalse(names.isEmpty());
            for (String name : names) {
                assertFalse(Tables.read(name).rows().isEmpty(), name);
            }
        }
    }

    @Test
    void aRowGivesWordsNumbersAndItsSource() {
        Row row = table(HEAD + "narrow,10.5,\"Title, table 3\",2015,published\n").rows().get(0);
        assertEquals("narrow", row.text("name"));
        assertEquals(10.5, row.number("width_ft"));
        assertEquals("Title, table 3", row.source());
        assertEquals("Title, table 3, 2015", row.citation());
        assertEquals(2, row.line());
    }

    @Test
    void aRowFromMemorySaysSoWhereverItIsCited() {
        Row row = table(HEAD + "narrow,10,Title,2015,from-memory\n").rows().get(0);
        assertEquals("Title, 2015 (from memory)", row.citation());
        Assumption assumed = row.assumption("width", Saying.of("{}", Quantity.length(3)));
        assertEquals(Assumption.Mark.PUBLISHED, assumed.mark());
        assertEquals("Title, 2015 (from memory)", assumed.source());
    }

    @Test
    void commonPracticeWithoutAnEditionIsCitedWithoutOne() {
        Row row =
                table(HEAD + "narrow,10,\"Common practice, no source\",none,common-practice\n")
                        .rows()
                        .get(0);
        assertEquals("Common practice, no source", row.citation());
        assertEquals(
                Assumption.Mark.COMMON_PRACTICE, row.assumption("width", Saying.plain("")).mark());
    }

    @Test
    void rowsWithoutSourceEditionOrMarkAreRefusedByTableAndLine() {
        String good = "a,1,Title,2015,published\n";
        assertEquals(
                "table widths, line 3: nothing under source",
                refusal(HEAD + good + "b,2, ,2015,published\n"));
        assertEquals(
                "table widths, line 2: nothing under edition",
                refusal(HEAD + "b,2,Title,,published\n"));
        assertEquals(
                "table widths, line 2: mark is \"sure\", must be published, from-memory or"
                        + " common-practice",
                refusal(HEAD + "b,2,Title,2015,sure\n"));
    }

    @Test
    void brokenFormsAreRefusedByTableAndLine() {
        assertEquals("table widths has no rows", refusal(HEAD));
        assertEquals("table widths has no rows", refusal(""));
        assertEquals("table widths has no column mark", refusal("a,source,edition\nb,c,d\n"));
        assertTrue(refusal("a,a,source,edition,mark\n1,2,3,4,5\n").contains("twice"));
        assertTrue(refusal("a, b,source,edition,mark\n1,2,3,4,5\n").contains("padded"));
        assertEquals(
                "table widths, line 2: 4 fields under 5 heads",
                refusal(HEAD + "b,2,Title,published\n"));
        assertEquals(
                "table widths, line 2: a quote that is never closed",
                refusal(HEAD + "\"b,2,Title,2015,published\n"));
        assertEquals(
                "table widths, line 2: a quote inside a field that does not begin with one",
                refusal(HEAD + "b\",2,Title,2015,published\n"));
        assertTrue(refusal(HEAD + "\"b\"x,2,T,2015,published\n").contains("after a closing quote"));
        byte[] latin = (HEAD + "é,2,T,2015,published\n").getBytes(StandardCharsets.ISO_8859_1);
        assertEquals(
                "table widths is not UTF-8",
                assertThrows(IllegalStateException.class, () -> Tables.parse("widths", latin))
                        .getMessage());
    }

    @Test
    void aFigureThatIsNoPlainNumberIsRefusedByTableLineAndColumn() {
        for (String bad : List.of("x", "", "1e3", "NaN", "1.2.3", "-", ".", "0x10", "1d", "+1")) {
            Row row = table(HEAD + "a," + bad + ",T,2015,published\n").rows().get(0);
            assertEquals(
                    "table widths, line 2: under width_ft stands \"" + bad + "\", not a number",
                    assertThrows(IllegalStateException.class, () -> row.number("width_ft"))
                            .getMessage());
        }
        Row half = table(HEAD + "a,1.5,T,2015,published\n").rows().get(0);
        assertThrows(IllegalStateException.class, () -> half.whole("width_ft"));
        Row minus = table(HEAD + "a,-12,T,2015,published\n").rows().get(0);
        assertEquals(-12, minus.whole("width_ft"));
    }

    @Test
    void unknownTablesColumnsAndRowsAreTheCallersMistake() {
        assertThrows(IllegalArgumentException.class, () -> Tables.read("no-such-table"));
        assertThrows(IllegalArgumentException.class, () -> Tables.read("../secret"));
        Table table =
                table(
                        HEAD
                                + "narrow,1,T,2015,published\nwide,2,T,2015,published\nwide,3,T,1,published");
        assertEquals(1, table.row("name", "narrow").number("width_ft"));
        assertThrows(IllegalArgumentException.class, () -> table.rows().get(0).text("depth"));
        assertEquals(
                "table widths has no name \"narow\", nearest is narrow",
                assertThrows(IllegalArgumentException.class, () -> table.row("name", "narow"))
                        .getMessage());
        assertThrows(IllegalArgumentException.class, () -> table.row("name", "wide"));
    }

    /** The examples of section 2, rules 1 to 7, with the field values that they stand for. */
    @Test
    @Tag("outside")
    @DisplayName("comma separated text | RFC 4180 (October 2005), section 2 | read")
    void readsTheExamplesOfTheStandard() {
        assertEquals(List.of(List.of("aaa", "bbb", "ccc")), fields("aaa,bbb,ccc\r\n"));
        assertEquals(
                List.of(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx")),
                fields("aaa,bbb,ccc\r\nzzz,yyy,xxx"));
        assertEquals(
                List.of(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx")),
                fields("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx"));
        assertEquals(
                List.of(List.of("aaa", "b\r\nbb", "ccc"), List.of("zzz", "yyy", "xxx")),
                fields("\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx"));
        assertEquals(
                List.of(List.of("aaa", "b\"bb", "ccc")), fields("\"aaa\",\"b\"\"bb\",\"ccc\""));
        assertEquals(List.of(List.of(" a ", "", "")), fields(" a ,,"));
    }

    private static List<List<String>> fields(String text) {
        return Csv.lines("example", text).stream().map(Csv.Line::fields).toList();
    }

    @Test
    void linesAreCountedAcrossQuotedBreaksAndBlankLines() {
        List<Csv.Line> lines = Csv.lines("example", "a,b\n\n\"c\nd\",e\nf,g\n");
        assertEquals(List.of(1, 3, 5), lines.stream().map(Csv.Line::line).toList());
    }
}
