package lanewright.planner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
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

    private static final String TABLE =
            """
            { "years": "10", "periods": [ "2", "10" ],
              "table": [
                { "lasts": "5 min", "rain": [ "5.18 in/h", "7.14 in/h" ] },
                { "lasts": "10 min", "rain": [ "4.15 in/h", "5.71 in/h" ] },
                { "lasts": "60 min", "rain": [ "1.51 in/h", "2.27 in/h" ] } ],
              "lands": [
                { "land": "pasture, fair", "soil": "c", "share": "70 %" },
                { "land": "woods, good", "soil": "b", "share": "30 %" } ] }\
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
        pipe(
                rows,
                "ends that nobody makes",
                "\"to lay\"",
                "\"to lay\", \"ends\": \"open\"",
                "projecting, mitred, headwall");
        pipe(
                rows,
                "a concrete pipe cut to the slope",
                "\"to lay\"",
                "\"to lay\", \"material\": \"concrete\", \"ends\": \"mitred\"",
                "no published figures");
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
        table(rows, "a table with no rain in it", "5.18 in/h", "0 in/h", "over zero");
        table(rows, "a table with less than no rain", "5.18 in/h", "-5 in/h", "below zero");
        table(
                rows,
                "a longer rain that is harder",
                "1.51 in/h",
                "6.51 in/h",
                "a longer rain is harder");
        table(rows, "a rarer rain that is less", "7.14 in/h", "4.14 in/h", "less deep");
        table(rows, "lengths of rain that do not rise", "10 min", "4 min", "put them in order");
        table(rows, "a length of rain without a unit", "10 min", "10", "has no unit");
        table(rows, "shares of land that make 110 %", "70 %", "80 %", "make 110 %");
        table(rows, "a share of less than nothing", "30 %", "-30 %", "below zero");
        table(
                rows,
                "a year that is no column of the table",
                "\"years\": \"10\"",
                "\"years\": \"50\"",
                "it has 2 and 10");
        table(rows, "rain given twice", "\"years\"", "\"day\": \"4 in\", \"years\"", "given twice");
        water(
                rows,
                "ground that takes in less than nothing",
                "\"soaksIn\": \"-1 in per hour\"",
                "below zero");
        water(
                rows,
                "ground that takes in a lake in an hour",
                "\"soaksIn\": \"200 in per hour\"",
                "2 m of water an hour");
        rain(
                rows,
                "a step of rain that takes no time",
                "\"c\"",
                "\"c\", \"steps\": [ { \"name\": \"a\", \"rain\": \"1 in\", \"hours\": \"0\" } ]",
                "over 0 to 1,000 hours");
        rain(
                rows,
                "a step of less than no rain",
                "\"c\"",
                "\"c\", \"steps\": [ { \"name\": \"a\", \"rain\": \"-1 in\", \"hours\": \"2\" } ]",
                "below zero");
        water(
                rows,
                "an outlet that lies nowhere",
                "\"outlets\": [ { \"name\": \"gully\" } ]",
                "does not say where");
        water(
                rows,
                "an outlet past the lane's end",
                "\"outlets\": [ { \"name\": \"gully\", \"station\": \"99+00\" } ]",
                "No ditch ends within");
        water(
                rows,
                "a berm that ends before it begins",
                "\"berms\": [ { \"from\": \"3+00\", \"to\": \"2+00\", \"side\": \"left\", \"height\": \"6 in\" } ]",
                "ends after it begins");
        pipe(
                rows,
                "water below that stands less than nothing deep",
                "\"to lay\"",
                "\"to lay\", \"tailwater\": \"-1 ft\"",
                "below zero");
        water(
                rows,
                "a pipe's price by the ton",
                "\"pipeWork\": { \"prices\": [ { \"size\": \"18 in\", \"material\": \"metal\", \"price\": \"20 per ton\" } ] }",
                "priced by its length");
        return rows;
    }

    private static void table(List<Row> rows, String asked, String was, String now, String said) {
        rows.add(new Row(asked, "\"rain\": " + changed(TABLE, was, now), said));
    }

    private static void water(List<Row> rows, String asked, String water, String said) {
        rows.add(new Row(asked, water, said));
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

    /** Findings about what was put in, not about the lane that goes without it. */
    private static final Pattern PUT_IN =
            Pattern.compile("pipe-.*|outlet-not-reached|outlet-without-place");

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static String answer(Run run, String text, List<Finding> usual)
            throws SurveyException, DesignRefused {
        try {
            Outcome outcome = run.outcome(PlanFile.read("plan.json", bytes(text)), Progress.NONE);
            return outcome.findings().stream()
                    .filter(finding -> PUT_IN.matcher(finding.code()).matches())
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
