package lanewright.sheets.set;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewright.measure.Listing;
import lanewright.measure.Progress;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PlanFile;
import lanewright.planner.run.Outcome;
import lanewright.planner.run.OutcomeJson;
import lanewright.planner.run.Run;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.folder.CsvTable;
import lanewright.sheets.folder.PlanFolder;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.LayoutCheck;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Type;
import lanewright.sheets.paint.PdfBook;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** The sheets of the samples, as an owner would get them. */
class SamplePlansTest {

    private static final List<String> SAMPLES = List.of("marrow-fold", "wickle-bank");

    /** A station, or a number with commas and decimals. */
    private static final Pattern NUMBER =
            Pattern.compile("\\d+\\+\\d+(?:\\.\\d+)?|\\d[\\d,]*(?:\\.\\d+)?");

    private static final TreeMap<String, Outcome> OUTCOMES = new TreeMap<>();

    private static Outcome outcome(String sample) throws Exception {
        Outcome known = OUTCOMES.get(sample);
        if (known == null) {
            Path folder = top().resolve("sample-surveys").resolve(sample);
            byte[] plan = Files.readAllBytes(folder.resolve("plan.json"));
            known = new Run(folder).outcome(PlanFile.read("plan.json", plan), Progress.NONE);
            OUTCOMES.put(sample, known);
        }
        return known;
    }

    private static Path top() {
        Path here = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(here.resolve("sample-surveys"))) {
            here = here.getParent();
        }
        return here;
    }

    @Test
    void noWordOverlapsAnotherOrIsCutOffOnAnyPageOfAnySample() throws Exception {
        for (String sample : SAMPLES) {
            List<PdfBook.Leaf> leaves = PlanSet.of(outcome(sample));
            for (int i = 0; i < leaves.size(); i++) {
                assertEquals(
                        List.of(),
                        LayoutCheck.of(leaves.get(i).drawing()),
                        sample + ", page " + (i + 1));
            }
        }
    }

    @Test
    void everyFigureOnASheetIsInTheOutcome() throws Exception {
        for (String sample : SAMPLES) {
            Outcome outcome = outcome(sample);
            Set<String> known = new TreeSet<>();
            for (PlanFolder.Entry entry : PlanFiles.of(outcome)) {
                if (entry.name().equals("outcome.json")) {
                    var bytes = new ByteArrayOutputStream();
                    entry.content().write(bytes);
                    known = numbersIn(bytes.toByteArray());
                }
            }
            var missing = new ArrayList<String>();
            List<PdfBook.Leaf> leaves = PlanSet.of(outcome);
            for (int i = 0; i < leaves.size(); i++) {
                for (Mark.Words words : figures(leaves.get(i).drawing().marks())) {
                    for (String number : numbers(words.text())) {
                        if (!known.contains(number)) {
                            missing.add("page " + (i + 1) + ": " + number + " in " + words.text());
                        }
                    }
                }
            }
            assertEquals(List.of(), missing, sample);
        }
    }

    /** All words but those that only say how a thing is drawn: axes, contours, scales, pages. */
    private static List<Mark.Words> figures(List<Mark> marks) {
        var words = new ArrayList<Mark.Words>();
        for (Mark mark : marks) {
            if (mark instanceof Mark.Words said && said.role() != Role.RULER) {
                words.add(said);
            } else if (mark instanceof Mark.Framed framed) {
                words.addAll(figures(framed.marks()));
            }
        }
        return words;
    }

    private static Set<String> numbersIn(byte[] json) throws Exception {
        var known = new TreeSet<String>();
        try (JsonParser parser = new JsonFactory().createParser(json)) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token == JsonToken.VALUE_STRING) {
                    known.addAll(numbers(parser.getText()));
                }
            }
        }
        return known;
    }

    private static List<String> numbers(String text) {
        var numbers = new ArrayList<String>();
        Matcher matcher = NUMBER.matcher(text);
        while (matcher.find()) {
            numbers.add(matcher.group());
        }
        return numbers;
    }

    /** Tall enough for any table, so that heads come once. */
    private static final Paper SCROLL = new Paper(1200, 100_000);

    @Test
    void everyTableHasEachCellUnderTheHeadOfItsOwnColumn() throws Exception {
        for (String sample : SAMPLES) {
            Outcome outcome = outcome(sample);
            UnitSystem units = outcome.plan().units();
            for (Listing listing : OutcomeJson.listings(outcome)) {
                Set<String> columns = columns(listing, units);
                var flow = new Flow(SCROLL, units, "table", "", "").table(listing);
                for (String shown : shown(flow.sheet().pages().get(0))) {
                    assertTrue(
                            columns.contains(shown), sample + ", " + listing.name() + ": " + shown);
                }
                assertCsv(listing, units, columns);
            }
        }
    }

    /** Head, unit and cells of every column, without blanks. */
    private static Set<String> columns(Listing listing, UnitSystem units) {
        var columns = new TreeSet<String>();
        for (int c = 0; c < listing.columns().size(); c++) {
            Listing.Column column = listing.columns().get(c);
            var all = new StringBuilder(column.head()).append(column.unit(units));
            for (var row : listing.rows()) {
                all.append(column.shown(row.get(c), units));
            }
            columns.add(all.toString().replaceAll("[\\s()]", ""));
        }
        return columns;
    }

    /** What stands below one another in a drawn table, without blanks. */
    private static List<String> shown(List<Mark> marks) {
        var columns = new TreeMap<Double, String>();
        for (Mark mark : marks) {
            if (mark instanceof Mark.Words words && words.size() == Type.TABLE) {
                // An eighth of a point tells a column from the next and not from itself.
                double x = Math.rint(words.x() * 8) + words.anchor().part() / 2;
                columns.merge(x, words.text(), (above, below) -> above + below);
            }
        }
        return columns.values().stream().map(text -> text.replaceAll("[\\s()]", "")).toList();
    }

    private static void assertCsv(Listing listing, UnitSystem units, Set<String> columns)
            throws Exception {
        try (CSVParser parser = CSVParser.parse(CsvTable.of(listing, units), CSVFormat.RFC4180)) {
            List<CSVRecord> records = parser.getRecords();
            for (int c = 0; c < listing.columns().size(); c++) {
                var all = new StringBuilder();
                for (CSVRecord record : records) {
                    all.append(record.get(c));
                }
                String text = all.toString().replaceAll("[\\s()]", "");
                assertTrue(
                        columns.stream().anyMatch(column -> sameButCommas(column, text)),
                        listing.name() + ".csv: " + text);
            }
        }
    }

    /** Files have no commas in numbers, and nothing where a number is not known. */
    private static boolean sameButCommas(String column, String text) {
        return column.replaceAll("[,–']", "").equals(text.replaceAll("[,–']", ""));
    }

    @Test
    void theFolderHoldsSheetsTablesAndMaps() throws Exception {
        var names = new TreeSet<String>();
        for (PlanFolder.Entry entry : PlanFiles.of(outcome("marrow-fold"))) {
            assertTrue(names.add(entry.name()), entry.name() + " twice");
        }
        assertTrue(
                names.containsAll(
                        List.of(
                                "outcome.json",
                                "sheets.pdf",
                                "pictures/plan.svg",
                                "tables/areas.csv",
                                "tables/volumes.csv",
                                "tables/stakes.csv",
                                "tables/lane-stakes.csv",
                                "tables/load-marks.csv",
                                "tables/loads.csv",
                                "tables/findings.csv",
                                "maps/lane.geojson",
                                "maps/limits.geojson",
                                "maps/catch-lines.geojson",
                                "maps/low-spots.geojson",
                                "maps/heaps.geojson",
                                "tables/heap-places.csv",
                                "maps/stakes.geojson")),
                names.toString());
    }
}
