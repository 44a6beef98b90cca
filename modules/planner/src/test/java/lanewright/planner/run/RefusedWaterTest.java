package lanewright.planner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lanewright.lane.line.DesignRefused;
import lanewright.measure.Finding;
import lanewright.measure.Progress;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PlanException;
import lanewright.planner.document.PlanFile;
import lanewright.survey.SurveyException;
import org.junit.jupiter.api.Test;

/**
 * Bad and impossible things about water, each put into the plan of the first sample, and what is
 * said of them. The page {@code docs/refused-water.md} shows them all; {@code -Dregenerate=true}
 * writes it anew.
 */
class RefusedWaterTest {

    private static final Path TOP = Path.of("..", "..");
    private static final Path AT = TOP.resolve("sample-surveys/marrow-fold");

    private static final String RAIN =
            """
            { "day": "4.2 in", "years": "25", "type": "type ii", "land": "pasture, fair", "soil": "c" }\
            """;

    /** A pipe under the lane where it crosses the draw. */
    private static final String PIPE =
            """
            { "name": "draw", "diameter": "18 in", "state": "to lay",
              "inlet": { "east": "5314 ft", "north": "2029.5 ft", "invert": "402.5 ft" },
              "outlet": { "east": "5320 ft", "north": "1999 ft", "invert": "401.9 ft" } }\
            """;

    /**
     * Something that cannot be.
     *
     * @param asked in words
     * @param water what stands in the plan under water, without its braces
     * @param said what must be said of it
     */
    private record Row(String asked, String water, String said) {}

    private static List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        rain(rows, "no rain at all", "\"4.2 in\"", "\"0 in\"", "over 0");
        rain(rows, "less than no rain", "\"4.2 in\"", "\"-4 in\"", "below zero");
        rain(rows, "a day's rain of 100 in", "\"4.2 in\"", "\"100 in\"", "at most 78 in");
        rain(rows, "rain without a unit", "\"4.2 in\"", "\"4.2\"", "has no unit");
        rain(rows, "rain in pounds", "\"4.2 in\"", "\"4.2 lb\"", "a mass, not a length");
        rain(rows, "rain in words", "\"4.2 in\"", "\"much\"", "begin with a number");
        rain(rows, "a storm of one year in minus 5", "\"25\"", "\"-5\"", "below zero");
        rain(rows, "a storm of one year in 5,000", "\"25\"", "\"5000\"", "1 to 1,000");
        rain(rows, "a type of storm that is none", "\"type ii\"", "\"type v\"", "type iii");
        rain(rows, "land of no table", "\"pasture, fair\"", "\"pasture, fine\"", "There are:");
        rain(rows, "a soil group E", "\"c\"", "\"e\"", "a, b, c, d");
        rain(rows, "a word that rain does not know", "\"soil\"", "\"sole\"", "no such field");
        pipe(rows, "a pipe of no width", "\"18 in\"", "\"0 in\"", "over 0");
        pipe(rows, "a pipe of less than no width", "\"18 in\"", "\"-18 in\"", "below zero");
        pipe(rows, "a pipe as wide as a house", "\"18 in\"", "\"30 ft\"", "at most 16 ft");
        pipe(rows, "a pipe without an outlet", "\"outlet\"", "\"outfall\"", "incomplete");
        pipe(rows, "a pipe neither there nor to lay", "\"to lay\"", "\"maybe\"", "there, to lay");
        pipe(rows, "a height in words", "\"402.5 ft\"", "\"low\"", "begin with a number");
        pipe(rows, "a height without a unit", "\"402.5 ft\"", "\"402.5\"", "has no unit");
        pipe(rows, "a pipe higher than the lane", "402.5", "412", "under the lane's edge");
        pipe(rows, "a pipe that runs uphill", "401.9", "403.5", "no lower than its inlet");
        pipe(rows, "a pipe that lies level", "401.9", "402.5", "no lower than its inlet");
        pipe(rows, "an inlet under the earth", "402.5", "395", "no water is taken to pass");
        pipe(rows, "an outlet under the earth", "401.9", "392", "no water is taken to pass");
        pipe(rows, "an inlet off the survey", "2029.5", "2500", "outside the survey");
        pipe(rows, "a pipe that ends under the lane", "1999 ft", "2014 ft", "outlet");
        pipe(rows, "a pipe beside the lane", "1999 ft", "2050 ft", "does not pass under");
        rows.add(
                new Row(
                        "two pipes of one name",
                        "\"pipes\": [" + PIPE + "," + PIPE + "]",
                        "two pipes are called"));
        rows.add(
                new Row(
                        "ways of water that drain nothing",
                        "\"flowArea\": \"0 ft2\"",
                        "the area must be"));
        rows.add(new Row("low spots above the ground", "\"spotDepth\": \"-1 in\"", "below zero"));
        rows.add(
                new Row(
                        "low spots of a square mile",
                        "\"spotArea\": \"30000000 ft2\"",
                        "2.4 acres"));
        return rows;
    }

    private static void rain(List<Row> rows, String asked, String was, String now, String said) {
        rows.add(new Row(asked, "\"rain\": " + changed(RAIN, was, now), said));
    }

    private static void pipe(List<Row> rows, String asked, String was, String now, String said) {
        rows.add(new Row(asked, "\"pipes\": [" + changed(PIPE, was, now) + "]", said));
    }

    private static String changed(String text, String was, String now) {
        assertTrue(text.contains(was), was);
        return text.replace(was, now);
    }

    @Test
    void everythingImpossibleIsAnsweredInWords() throws Exception {
        String plan = Files.readString(AT.resolve("plan.json"));
        int from = plan.indexOf("\"water\": {");
        int to = plan.indexOf("\"work\":");
        var run = new Run(AT);
        List<Finding> usual =
                run.outcome(PlanFile.read("plan.json", bytes(plan)), Progress.NONE).findings();
        var page = new StringBuilder(HEAD);
        for (Row row : rows()) {
            String text =
                    plan.substring(0, from)
                            + "\"water\": { "
                            + row.water()
                            + " },\n  "
                            + plan.substring(to);
            String answer = answer(run, text, usual);
            assertTrue(answer.contains(row.said()), row.asked() + ": " + answer);
            page.append("| ").append(row.asked()).append(" | ").append(answer).append(" |\n");
        }
        Path file = TOP.resolve("docs/refused-water.md");
        if (Boolean.getBoolean("regenerate")) {
            Files.writeString(file, page);
        }
        assertEquals(
                Files.readString(file).replace("\r\n", "\n"),
                page.toString(),
                "docs/refused-water.md is not what is said: run this test with -Dregenerate=true");
    }

    private static final String HEAD =
            """
            # What is said of water that cannot be

            Each of these was put into the plan of the first sample. What cannot be read is refused, with its field and what to do, and nothing is worked out; what can be read but not built is answered among the findings. Written by `RefusedWaterTest`.

            | In the plan | Answer |
            | --- | --- |
            """;

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String answer(Run run, String text, List<Finding> usual)
            throws SurveyException, DesignRefused {
        try {
            Outcome outcome = run.outcome(PlanFile.read("plan.json", bytes(text)), Progress.NONE);
            return outcome.findings().stream()
                    .filter(finding -> finding.code().startsWith("pipe-"))
                    .filter(finding -> usual.stream().noneMatch(finding::equals))
                    .map(RefusedWaterTest::words)
                    .collect(Collectors.joining(" "));
        } catch (PlanException e) {
            return e.troubles().stream()
                    .map(each -> "`" + each.field() + "`: " + each.what() + ". " + each.remedy())
                    .collect(Collectors.joining(" "));
        }
    }

    private static String words(Finding finding) {
        return finding.says().in(UnitSystem.US) + " " + finding.remedy().in(UnitSystem.US);
    }
}
