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
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanewright.drainage.Pool;
import lanewright.drainage.WetPlace;
import lanewright.drainage.storm.Ford;
import lanewright.drainage.storm.Sized;
import lanewright.lane.section.Section;
import lanewright.measure.Finding;
import lanewright.measure.Listing;
import lanewright.measure.Progress;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PlanFile;
import lanewright.planner.run.Outcome;
import lanewright.planner.run.OutcomeJson;
import lanewright.planner.run.Run;
import lanewright.sheets.drawing.Mark;
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
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/** The sheets of the samples, as an owner would get them. */
class SamplePlansTest {

    private static final String FORD = "marrow-fold/plan-with-ford.json";

    private static final List<String> SAMPLES =
            List.of(
                    "marrow-fold/plan.json",
                    "wickle-bank/plan.json",
                    "marrow-fold/plan-with-pipe.json",
                    FORD);

    /** A station, or a number with commas and decimals. */
    private static final Pattern NUMBER =
            Pattern.compile("\\d+\\+\\d+(?:\\.\\d+)?|\\d[\\d,]*(?:\\.\\d+)?");

    private static final TreeMap<String, Made> MADE = new TreeMap<>();

    /** What a sample comes to: worked out once, looked at by every test. */
    private record Made(Outcome outcome, List<PdfBook.Leaf> leaves, List<PlanFolder.Entry> files) {

        static Made of(String sample) throws Exception {
            Path at = top().resolve("sample-surveys").resolve(sample);
            Outcome outcome =
                    new Run(at.getParent())
                            .outcome(
                                    PlanFile.read("plan.json", Files.readAllBytes(at)),
                                    Progress.NONE);
            return new Made(outcome, PlanSet.of(outcome), PlanFiles.of(outcome));
        }
    }

    private static Made made(String sample) throws Exception {
        Made known = MADE.get(sample);
        if (known == null) {
            known = Made.of(sample);
            MADE.put(sample, known);
        }
        return known;
    }

    private static Outcome outcome(String sample) throws Exception {
        return made(sample).outcome();
    }

    private static List<PdfBook.Leaf> leaves(String sample) throws Exception {
        return made(sample).leaves();
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
            List<PdfBook.Leaf> leaves = leaves(sample);
            for (int i = 0; i < leaves.size(); i++) {
                assertEquals(
                        List.of(),
                        LayoutCheck.of(leaves.get(i).drawing()),
                        sample + ", page " + (i + 1));
            }
        }
    }

    @Test
    void theCoverIsOnePageWithTheListOfSheets() throws Exception {
        for (String sample : SAMPLES) {
            List<PdfBook.Leaf> leaves = leaves(sample);
            assertEquals(List.of("Plan"), leaves.get(1).names(), sample);
            String cover =
                    words(leaves.get(0).drawing().marks()).stream()
                            .map(Mark.Words::text)
                            .collect(Collectors.joining(" "));
            for (PdfBook.Leaf leaf : leaves.subList(1, leaves.size())) {
                for (String name : leaf.names()) {
                    assertTrue(cover.contains(name), sample + ": " + name);
                }
            }
        }
    }

    /**
     * Every number of every page, none excused: either the outcome has it anywhere in its answers,
     * findings, assumptions and tables, or in what it says of that very page.
     */
    @Test
    void everyNumberOfEveryPageIsInTheOutcome() throws Exception {
        for (String sample : SAMPLES) {
            var told = Told.of(made(sample).files());
            List<PdfBook.Leaf> leaves = leaves(sample);
            assertEquals(leaves.size(), told.pages.size());
            var missing = new ArrayList<String>();
            for (int i = 0; i < leaves.size(); i++) {
                Set<String> ofPage = new TreeSet<>();
                told.pages.get(i).forEach(said -> ofPage.addAll(numbers(said.words)));
                for (Mark.Words words : words(leaves.get(i).drawing().marks())) {
                    for (String number : numbers(words.text())) {
                        if (!told.numbers.contains(number) && !ofPage.contains(number)) {
                            missing.add("page " + (i + 1) + ": " + number + " in " + words.text());
                        }
                    }
                }
            }
            assertEquals(List.of(), missing, sample);
        }
    }

    /** The last sample lies low over a draw: its water sheet says the ford, and what it can do. */
    @Test
    void theWaterSheetSaysAFordAndItsCaution() throws Exception {
        Outcome outcome = outcome(FORD);
        Sized crossing =
                outcome.storm().sized().stream()
                        .filter(each -> each.ford().isPresent())
                        .findFirst()
                        .orElseThrow();
        double more = crossing.raised().map(Sized.Raised::by).orElse(0.0);
        double raise = crossing.crossing().raise() + more;
        assertTrue(raise > Ford.HIGH, "by more than a foot: " + raise);
        String sheet =
                leaves(FORD).stream()
                        .map(
                                leaf ->
                                        words(leaf.drawing().marks()).stream()
                                                .map(Mark.Words::text)
                                                .collect(Collectors.joining(" ")))
                        .filter(page -> page.contains("A ford of rock instead"))
                        .findFirst()
                        .orElse("");
        assertTrue(sheet.contains("Water"), sheet);
        assertTrue(sheet.contains(crossing.crossing().name()), sheet);
        // US National Weather Service: 6 in knocks people off their feet, 12 in floats a car.
        assertTrue(
                sheet.contains("Never drive or walk through moving water: 6 in knocks people off"),
                sheet);
        assertTrue(sheet.contains("12 in floats a car"), sheet);
        assertTrue(sheet.contains("US National Weather Service"), sheet);
    }

    /** The PDF itself: what a reader of text finds on its pages has no other number in it. */
    @Test
    void theNumbersOfThePdfAreThoseOfTheDrawings() throws Exception {
        for (String sample : SAMPLES) {
            List<PdfBook.Leaf> leaves = leaves(sample);
            try (var document = Loader.loadPDF(SetPrinter.pdf(leaves))) {
                for (int i = 0; i < leaves.size(); i++) {
                    var stripper = new PDFTextStripper();
                    stripper.setStartPage(i + 1);
                    stripper.setEndPage(i + 1);
                    assertEquals(
                            digits(
                                    words(leaves.get(i).drawing().marks()).stream()
                                            .map(Mark.Words::text)
                                            .collect(Collectors.joining())),
                            digits(stripper.getText(document)),
                            sample + ", page " + (i + 1));
                }
            }
        }
    }

    /** How often each digit stands in a text. */
    private static List<Long> digits(String text) {
        return IntStream.range(0, 10)
                .mapToObj(digit -> text.chars().filter(c -> c == '0' + digit).count())
                .toList();
    }

    /** What is said of a drawing in SI is what its words say, by the definition of the foot. */
    @Test
    void figuresOfTheDrawingsMeanWhatTheirWordsSay() throws Exception {
        for (String sample : SAMPLES) {
            Outcome outcome = outcome(sample);
            double unit = outcome.plan().units() == UnitSystem.US ? 0.3048 : 1;
            var seen = new TreeSet<String>();
            List<List<Said>> pages = Told.of(made(sample).files()).pages;
            for (int i = 0; i < pages.size(); i++) {
                for (Said said : pages.get(i)) {
                    seen.add(said.what);
                    List<Double> shown = new ArrayList<>();
                    numbers(said.words).forEach(number -> shown.add(plain(number)));
                    double last = shown.get(shown.size() - 1);
                    double value = said.values.get(said.values.size() - 1);
                    String words = sample + ": " + said;
                    switch (said.what) {
                        case "sheet" -> {
                            assertEquals(List.of(i + 1.0, (double) pages.size()), said.values);
                            assertTrue(
                                    said.words.endsWith("sheet " + (i + 1) + " of " + pages.size()),
                                    words);
                        }
                        case "contents" -> assertEquals(shown, said.values);
                        // Either 1 : 500, or 1 in = 20 ft, with 12 inches in a foot.
                        case "scale" -> assertEquals(unit == 1 ? last : 12 * last, value, 1e-9);
                        case "stretch" -> assertEquals(last, value, 0.05 + 1e-9, words);
                        case "contour", "contour step", "height", "depth", "scale bar" ->
                                assertEquals(last * unit, value, 1e-6, words);
                        case "flow" ->
                                assertEquals(
                                        last * (unit == 1 ? 1 : 0.028316846592),
                                        value,
                                        1e-9,
                                        words);
                        case "station" -> assertEquals(last * unit, value, 0.051 * unit, words);
                        default -> throw new AssertionError(words);
                    }
                }
            }
            assertTrue(seen.size() == 11, seen.toString());
        }
    }

    /** A number as shown; stations count hundreds of feet, or thousands of metres. */
    private static double plain(String number) {
        return Double.parseDouble(number.replace(",", "").replace("+", ""));
    }

    /** One thing that the outcome says of a page. */
    private record Said(String what, String words, List<Double> values) {}

    /**
     * What the outcome tells.
     *
     * @param numbers those in words anywhere but in what is said of pages
     * @param pages what is said of each
     */
    private record Told(Set<String> numbers, List<List<Said>> pages) {

        static Told of(List<PlanFolder.Entry> files) throws Exception {
            var bytes = new ByteArrayOutputStream();
            for (PlanFolder.Entry entry : files) {
                if (entry.name().equals("outcome.json")) {
                    entry.content().write(bytes);
                }
            }
            var told = new Told(new TreeSet<>(), new ArrayList<>());
            try (JsonParser parser = new JsonFactory().createParser(bytes.toByteArray())) {
                boolean sheets = false;
                String what = "";
                String words = "";
                for (JsonToken token = parser.nextToken();
                        token != null;
                        token = parser.nextToken()) {
                    String name = String.valueOf(parser.currentName());
                    if (name.equals("sheets") && token == JsonToken.START_ARRAY) {
                        sheets = true;
                    } else if (!sheets && token == JsonToken.VALUE_STRING) {
                        told.numbers.addAll(SamplePlansTest.numbers(parser.getText()));
                    } else if (sheets && token == JsonToken.START_ARRAY && name.equals("drawn")) {
                        told.pages.add(new ArrayList<>());
                    } else if (token == JsonToken.VALUE_STRING && name.equals("what")) {
                        what = parser.getText();
                    } else if (token == JsonToken.VALUE_STRING && name.equals("words")) {
                        words = parser.getText();
                    } else if (sheets && token == JsonToken.START_ARRAY && name.equals("values")) {
                        var values = new ArrayList<Double>();
                        while (parser.nextToken() != JsonToken.END_ARRAY) {
                            values.add(parser.getDoubleValue());
                        }
                        told.pages.get(told.pages.size() - 1).add(new Said(what, words, values));
                    }
                }
            }
            return told;
        }
    }

    private static List<Mark.Words> words(List<Mark> marks) {
        var words = new ArrayList<Mark.Words>();
        for (Mark mark : marks) {
            if (mark instanceof Mark.Words said) {
                words.add(said);
            } else if (mark instanceof Mark.Framed framed) {
                words.addAll(words(framed.marks()));
            }
        }
        return words;
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
                for (String shown : shown(flow.sheet().pages().get(0), heads(listing, units))) {
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
            for (int row = 0; row < listing.rows().size(); row++) {
                all.append(listing.shown(row, c, units));
            }
            columns.add(all.toString().replaceAll("[\\s()]", ""));
        }
        return columns;
    }

    /** Head and unit of every column, without blanks. */
    private static List<String> heads(Listing listing, UnitSystem units) {
        return listing.columns().stream()
                .map(column -> (column.head() + column.unit(units)).replaceAll("[\\s()]", ""))
                .toList();
    }

    /**
     * What stands below one another in a drawn table, without blanks. A long table stands in
     * several columns side by side, and goes on under the same head further right.
     */
    private static List<String> shown(List<Mark> marks, List<String> heads) {
        var columns = new TreeMap<Double, String>();
        for (Mark mark : marks) {
            if (mark instanceof Mark.Words words && words.size() == Type.TABLE) {
                // An eighth of a point tells a column from the next and not from itself.
                double x = Math.rint(words.x() * 8) + words.anchor().part() / 2;
                columns.merge(x, words.text(), (above, below) -> above + below);
            }
        }
        var whole = new TreeMap<String, String>();
        for (String column : columns.values()) {
            String text = column.replaceAll("[\\s()]", "");
            String head =
                    heads.stream()
                            .filter(text::startsWith)
                            .max(Comparator.comparingInt(String::length))
                            .orElse("");
            String below = text.substring(head.length());
            whole.merge(head, text, (before, now) -> before + below);
        }
        return List.copyOf(whole.values());
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
        for (PlanFolder.Entry entry : made("marrow-fold/plan.json").files()) {
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
                                "maps/wet-places.geojson",
                                "maps/heaps.geojson",
                                "tables/heap-places.csv",
                                "maps/stakes.geojson")),
                names.toString());
    }

    @Test
    void eachWetPlaceOfASampleIsToldOnce() throws Exception {
        for (String sample : SAMPLES) {
            Outcome outcome = outcome(sample);
            List<WetPlace> places = outcome.water().places();
            assertTrue(places.size() >= 2, sample);
            for (Pool pool : outcome.water().made()) {
                assertEquals(
                        1,
                        places.stream().filter(place -> pool.equals(place.pool())).count(),
                        sample);
            }
            for (int i = 0; i < places.size(); i++) {
                WetPlace place = places.get(i);
                for (WetPlace other : places.subList(i + 1, places.size())) {
                    boolean apart =
                            place.to() < other.from()
                                    || other.to() < place.from()
                                    || place.side() != other.side();
                    assertTrue(apart, sample + ": " + place.name() + ", " + other.name());
                }
                Pool pool = place.pool();
                if (pool != null) {
                    String says = place.finding().says().in(outcome.plan().units());
                    assertEquals(place.runsOverLane(), says.contains("runs over the lane"), says);
                }
            }
        }
    }

    @Test
    void theSamplesWetPlacesAreWhatTheirGroundMakes() throws Exception {
        Outcome fold = outcome("marrow-fold/plan.json");
        assertEquals("lane-is-a-dam", fold.findings().get(0).code());
        assertEquals(Finding.Level.STOP, fold.findings().get(0).level());
        WetPlace dam =
                fold.water().places().stream().filter(WetPlace::isDam).findFirst().orElseThrow();
        // It fills until it stands level with the lowest place of the lane's middle.
        double lowest =
                fold.sections().sections().stream()
                        .mapToDouble(Section::profileHeight)
                        .min()
                        .orElseThrow();
        assertTrue(dam.runsOverLane());
        assertEquals(lowest, dam.pool().spot().level(), 0.05);
        // The lane's summit has no ditch that cannot run out, level though it is there.
        Outcome bank = outcome("wickle-bank/plan.json");
        assertTrue(
                bank.water().places().stream()
                        .noneMatch(place -> place.kind() == WetPlace.Kind.LEVEL_DITCH));
    }
}
