package lanewright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The table of outside checks in the documents is the one that the tests give. */
class OutsideChecksTest {

    /** In the order in which figures flow. */
    private static final List<String> MODULES =
            List.of(
                    "measure",
                    "survey",
                    "ground",
                    "lane",
                    "earthwork",
                    "drainage",
                    "stone",
                    "planner",
                    "sheets",
                    "desktop",
                    "cli",
                    "bench");

    private static final String COMMAND =
            "mvn -o -q -Dquick -pl modules/cli -am test -Dtest=OutsideChecksTest"
                    + " -Dsurefire.failIfNoSpecifiedTests=false -Dregenerate=true";

    private static final Path TOP =
            Path.of(System.getProperty("basedir", "modules/cli"))
                    .toAbsolutePath()
                    .resolve("../..")
                    .normalize();

    private static OutsideChecks checks;

    @BeforeAll
    static void readTheTests() throws IOException {
        checks = OutsideChecks.read(TOP, MODULES);
    }

    @Test
    void everyOutsideCheckNamesItsSource() {
        assertEquals(
                List.of(),
                checks.faults(),
                "these carry @Tag(\"outside\") and want a @DisplayName, written out, of the form"
                        + " \"what is checked | source, edition, section | read\", the last being"
                        + " read, from memory, derived or common practice");
    }

    @Test
    void theTableInTheDocumentsIsTheOneTheTestsGive() throws IOException {
        Path file = TOP.resolve("docs/outside-checks.md");
        String table = table(checks.checks());
        if (Boolean.getBoolean("regenerate")) {
            Files.writeString(file, table);
        }
        String written = Files.exists(file) ? Files.readString(file) : "";
        assertTrue(
                written.replace("\r\n", "\n").equals(table),
                "docs/outside-checks.md is not what the tests give; write it anew with: "
                        + COMMAND);
    }

    @Test
    void aCheckThatDoesNotNameItsSourceIsFound(@TempDir Path top) throws IOException {
        Path tests = Files.createDirectories(top.resolve("modules/some/src/test/java"));
        Files.writeString(
                tests.resolve("SomeTest.java"),
                """
                class SomeTest {
                    @Test @Tag("outside") @DisplayName("two" + " and two | (" + ("sums)") + " | read")
                    void good() {}
                    @Test @Tag("outside") @DisplayName("two parts | read")
                    void brief() {}
                    @Test @Tag("outside") @DisplayName("what | source | sure")
                    void sure() {}
                    @Test @Tag("outside") @DisplayName("what | | read")
                    void sourceless() {}
                    @Test @Tag("outside") @DisplayName(ELSEWHERE)
                    void elsewhere() {}
                    @Test @Tag("outside")
                    void silent() {}
                    @Test @DisplayName("inside")
                    void inside() {}
                    @Tag("outside") @DisplayName("what | who | derived")
                    class Whole {}
                }
                """);
        OutsideChecks read = OutsideChecks.read(top, List.of("none", "some"));
        String file = "modules/some/src/test/java/SomeTest.java";
        assertEquals(
                List.of(
                        new OutsideChecks.Check(
                                "some", file, "SomeTest.good", "two and two", "(sums)", "read"),
                        new OutsideChecks.Check("some", file, "Whole", "what", "who", "derived")),
                read.checks());
        assertEquals(
                List.of(
                        file + ": SomeTest.brief",
                        file + ": SomeTest.sure",
                        file + ": SomeTest.sourceless",
                        file + ": SomeTest.elsewhere",
                        file + ": SomeTest.silent"),
                read.faults());
    }

    private static String table(List<OutsideChecks.Check> checks) {
        var text = new StringBuilder();
        text.append("# Checked against the outside\n\n")
                .append("What the program is held against that is not of its own making. ")
                .append("Gathered from the tests, one row for each test that carries ")
                .append("`@Tag(\"outside\")`; a test fails if this page is not what they give. ")
                .append("To write it anew:\n\n```\n")
                .append(COMMAND)
                .append("\n```\n\n")
                .append("How the expected value was come by: *read* in the source or on a page ")
                .append("that quotes it; *from memory*, published but not read again; ")
                .append("*derived* by hand from a formula that is older than the program; ")
                .append("*common practice* in the trade, no source.\n\n");
        count(text, checks);
        for (String module : MODULES) {
            List<OutsideChecks.Check> here =
                    checks.stream().filter(check -> check.module().equals(module)).toList();
            if (!here.isEmpty()) {
                text.append("\n## ").append(module).append("\n\n");
                text.append("| what is checked | source | expected value | test |\n");
                text.append("| --- | --- | --- | --- |\n");
                here.forEach(check -> row(text, check));
            }
        }
        return text.toString();
    }

    private static void count(StringBuilder text, List<OutsideChecks.Check> checks) {
        Map<String, Integer> marks = new LinkedHashMap<>();
        for (String mark : List.of("read", "from memory", "derived", "common practice")) {
            marks.put(mark, 0);
        }
        checks.forEach(check -> marks.merge(check.mark(), 1, Integer::sum));
        text.append("| expected value | checks |\n| --- | --- |\n");
        marks.forEach(
                (mark, number) ->
                        text.append("| ").append(mark).append(" | ").append(number).append(" |\n"));
        text.append("| together | ").append(checks.size()).append(" |\n");
    }

    private static void row(StringBuilder text, OutsideChecks.Check check) {
        text.append("| ")
                .append(plain(check.what()))
                .append(" | ")
                .append(plain(check.source()))
                .append(" | ")
                .append(check.mark())
                .append(" | [")
                .append(check.test())
                .append("](../")
                .append(check.file())
                .append(") |\n");
    }

    /** Without what Markdown would take for a sign of its own. */
    private static String plain(String words) {
        return words.replace("*", "\\*").replace("<", "&lt;").replace("_", "\\_");
    }
}
