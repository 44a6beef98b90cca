package lanewright.planner.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanFileTest {

    /** Fourteen digits are kept. */
    private static final double KEPT = 1e-12;

    @Test
    void thePlanSaysWhatItsOwnerWrote() throws PlanException {
        Plan plan = Samples.read(Samples.MOST).plan();
        assertEquals(14 * 0.3048, plan.shapes().get(0).width(), KEPT);
        assertEquals(1.0 / 24, plan.shapes().get(0).crossSlope(), KEPT);
        assertEquals(6.5 * 0.0254, plan.shapes().get(0).layers().get(1).thickness(), KEPT);
        assertEquals(1.5 * 0.3048, plan.shapes().get(0).left().shoulder(), KEPT);
        assertEquals(150.5 * 0.3048, plan.grade().sagOutlets().get(0).station(), KEPT);
        assertEquals(Double.POSITIVE_INFINITY, plan.along().get(1).to());
        assertTrue(plan.line().points().get(1).spot().degrees());
        assertEquals(20_000, plan.stone().payload(), 1e-9);
    }

    @Test
    void whatIsLeftOutIsAssumedWithASource() throws PlanException {
        PlanFile file = Samples.read(Samples.LEAST);
        assertEquals(12 * 0.3048, file.plan().shapes().get(0).width(), KEPT);
        assertTrue(
                file.assumed().stream()
                        .anyMatch(
                                each ->
                                        each.name().equals("travelled width")
                                                && each.source().contains("Wildland")));
        assertTrue(file.assumed().stream().noneMatch(each -> each.source().isBlank()));
    }

    @Test
    void aPipeIsThereUnlessItIsSaidThatItIsToLay() throws PlanException {
        Plan plan = Samples.read(Samples.MOST).plan();
        assertEquals(WaterPart.PipeState.THERE, plan.water().pipes().get(0).state());
        assertEquals(WaterPart.PipeState.TO_LAY, plan.water().pipes().get(1).state());
        Plan again = Samples.read(PlanFile.write(plan, false)).plan();
        assertEquals(
                WaterPart.PipeState.THERE, again.water().pipes().get(0).state(), "as it was read");
        assertEquals(WaterPart.PipeState.TO_LAY, again.water().pipes().get(1).state());
        assertEquals(
                List.of("new one"),
                plan.water().without(0).pipes().stream().map(WaterPart.Pipe::name).toList());
        String odd = Samples.MOST.replace("\"to lay\"", "\"someday\"");
        assertThrows(PlanException.class, () -> Samples.read(odd));
    }

    @Test
    void everythingWrittenOutReadsBackAsTheSamePlan() throws PlanException {
        for (String json : List.of(Samples.LEAST, Samples.MOST)) {
            Plan plan = Samples.read(json).plan();
            String written = PlanFile.write(plan, true);
            PlanFile again = Samples.read(written);
            assertEquals(PlanFile.write(again.plan(), true), written);
            assertEquals(plan.grade(), again.plan().grade());
            assertEquals(plan.hazards(), again.plan().hazards());
            assertTrue(again.assumed().isEmpty(), () -> again.assumed().toString());
        }
    }

    @Test
    void everyDefaultWrittenOutIsExplainedBesideIt() throws PlanException {
        String written = PlanFile.write(Samples.read(Samples.LEAST).plan(), true);
        assertTrue(written.contains("\"crossSlope\": \"4 %\""), written);
        assertTrue(written.contains("Half an inch in a foot"), written);
        assertTrue(written.contains("FHWA, Gravel Roads"), written);
    }

    @Test
    void aGradeIsWrittenInWithoutTouchingTheRest() throws PlanException {
        PlanFile file = Samples.read(Samples.MOST);
        GradePart laid =
                file.plan()
                        .grade()
                        .laid(
                                List.of(
                                        new GradePart.Point(0, 125, 0),
                                        new GradePart.Point(Double.POSITIVE_INFINITY, 130, 0)),
                                List.of("lies higher"));
        String text = file.textWith(laid);
        Plan again = Samples.read(text).plan();
        assertEquals(file.plan().with(laid), again);
        assertTrue(text.contains("\"1/2 in/ft\""), "the owner's own words stay");
        assertTrue(text.contains("the neighbour's baler"), "reasons stay");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    "width": "14 ft"            | "widht": "14 ft"              | Did you mean width?
                    "width": "14 ft"            | "width": "14"                 | 14 has no unit
                    "width": "14 ft"            | "width": 14                   | in quotes with its unit
                    "width": "14 ft"            | "width": null                 | null says nothing
                    "width": "14 ft"            | "width": "14 feets"           | not a unit known here
                    "width": "14 ft"            | "width": "14 lb"              | is a mass
                    "width": "14 ft"            | "width": "1400 ft"            | 1.5 to 30 m
                    "width": "14 ft"            | "width": "NaN"                | does not begin with a number
                    "width": "14 ft"            | "width": "4,5 m"              | comma
                    "bed": "boxed"              | "bed": "boxd"                  | Did you mean boxed?
                    "strip": false              | "strip": "no"                 | true or false
                    "foreslope": "4:1"          | "foreslope": "1:4"            | across
                    "crossSlope": "2 % right"   | "crossSlope": "2 %"           | to which side it falls
                    "units": "us"               | "units": "imperial"           | in which units
                    "version": 1                | "version": 7                  | newer than this program
                    "version": 1                | "version": "1"                | does not say its version
                    "shape": "lane" }           | "shape": "lanes" }            | Did you mean lane?
                    "to": "3+00"                | "to": "2+00"                  | begin where the one before ends
                    "path": "points.csv"        | "path": "/home/points.csv"    | relative
                    "frame": "EPSG:26916"       | "frame": "UTM 16"             | no frame known here
                    "price": "26.50 per ton"    | "price": "26.50"              | price of
                    "price": "26.50 per ton"    | "price": "26.50 per yd3"      | by its mass or by the load
                    "epsg": 2965                | "epsg": 29.65                 | whole number
                    "breaklines": ["edge", "ditch"] | "breaklines": "edge"      | a list between
                    "width": "the               | "wide": "the                  | to give a reason for
                    "radius": "80 ft"           | "east": "80 ft"               | two kinds of place
                    "latitude": "39.2° N"       | "latitude": "139.2° N"        | changed places
                    "topsoil": "from probes"    | "topsoil": "from the holes"   | not understood
                    "role": "surface", "density" | "role": "top", "density"     | nothing is said of the stone
                    "name": "Test lane",        | "name": "Test lane", "name": "x", | given twice
                    "steepest": "12 %"          | "steepest": "1:12"            | percent
                    "holds": "probes"           | "holds": "probs"              | Did you mean probes?
                    """)
    void aMistakeIsNamedWithItsPlaceAndItsRemedy(String good, String bad, String says) {
        assertTrue(Samples.MOST.contains(good), good);
        String json =
                Samples.MOST.replaceFirst(
                        java.util.regex.Pattern.quote(good),
                        java.util.regex.Matcher.quoteReplacement(bad));
        var refusal = assertThrows(PlanException.class, () -> Samples.read(json));
        assertTrue(
                refusal.getMessage().contains(says),
                () -> "expected \"" + says + "\" in: " + refusal.getMessage());
        assertTrue(refusal.getMessage().startsWith("plan.json"), refusal.getMessage());
        assertFalse(refusal.getMessage().contains("Exception"), refusal.getMessage());
    }

    @Test
    void theLineOfAMistakeIsTold() {
        var refusal =
                assertThrows(
                        PlanException.class,
                        () -> Samples.read(Samples.LEAST.replace("200 ft\" },", "200\" },")));
        assertEquals(8, refusal.troubles().get(0).line());
        assertEquals("line.points[0].north", refusal.troubles().get(0).field());
    }

    @Test
    void allMistakesAreToldAtOnce() {
        String json =
                Samples.MOST
                        .replace("\"14 ft\"", "\"14\"")
                        .replace("\"12 %\"", "\"12\"")
                        .replace("\"4:1\"", "\"four\"");
        var refusal = assertThrows(PlanException.class, () -> Samples.read(json));
        assertEquals(3, refusal.troubles().size(), refusal.getMessage());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            textBlock =
                    """
                    []          | a plan is a JSON object
                    {           | not JSON
                    {} {}       | something follows
                    "plan"      | a plan is a JSON object
                    {'a': 1}    | not JSON
                    """)
    void whatIsNoPlanIsRefused(String text, String says) {
        var refusal = assertThrows(PlanException.class, () -> Samples.read(text));
        assertTrue(refusal.getMessage().contains(says), refusal.getMessage());
    }

    @Test
    void hostileFilesAreRefusedInWords() {
        refused(new byte[JsonTree.LARGEST + 1], "larger than any plan");
        refused(new byte[0], "empty");
        refused(new byte[] {(byte) 0xff, (byte) 0xfe, 0x7b}, "not UTF-8");
        refused(("{\"a\": " + "[".repeat(5000)).getBytes(StandardCharsets.UTF_8), "not JSON");
        refused(
                Samples.MOST.replace("14 ft", "1e400 ft").getBytes(StandardCharsets.UTF_8),
                "shapes[0].width");
    }

    private static void refused(byte[] bytes, String says) {
        var refusal = assertThrows(PlanException.class, () -> PlanFile.read("plan.json", bytes));
        assertTrue(refusal.getMessage().contains(says), refusal.getMessage());
    }

    @Test
    void anOlderPlanIsBroughtUpStepByStep() throws PlanException {
        // Two steps as they could be: a field renamed, then a list put into an object.
        var upgrades =
                new Upgrades(
                        List.of(
                                members -> renamed(members, "title", "name"),
                                members -> {
                                    Map<String, Node> next = new LinkedHashMap<>(members);
                                    Node points = next.get("line");
                                    next.put(
                                            "line",
                                            new Node.Members(
                                                    points.at(), Map.of("points", points)));
                                    return next;
                                }));
        String old =
                Samples.LEAST
                        .replace("\"name\": \"Test lane\"", "\"title\": \"Test lane\"")
                        .replace("\"line\": {\n    \"points\": [", "\"line\": [")
                        .replace("    ]\n  },\n  \"shapes\"", "    ],\n  \"shapes\"");
        PlanFile file = PlanFile.read("plan.json", old.getBytes(StandardCharsets.UTF_8), upgrades);
        assertEquals(1, file.readVersion());
        assertEquals(Samples.read(Samples.LEAST).plan(), file.plan());
        assertTrue(file.text().contains("\"version\": 3"), file.text());
    }

    private static Map<String, Node> renamed(Map<String, Node> members, String from, String to) {
        Map<String, Node> next = new LinkedHashMap<>();
        members.forEach((name, value) -> next.put(name.equals(from) ? to : name, value));
        return next;
    }

    @Test
    void aStormIsWrittenValueByValueIntoAPlanWithoutOne() throws Exception {
        var plan = java.nio.file.Path.of("../../sample-surveys/marrow-fold/plan.json");
        String bare =
                java.nio.file.Files.readString(plan)
                        .replaceAll("(?s)\"rain\": \\{.*?\\]\\s*\\},", "");
        PlanFile file = PlanFile.read("plan.json", bare.getBytes(StandardCharsets.UTF_8));
        assertNull(file.plan().water().rain().asked(EarthPart.Washes.LITTLE));
        PlanFile told =
                file.with("water.rain.day", "3.5 in")
                        .with("water.rain.years", "10")
                        .with("water.rain.land", "woods, good");
        assertNull(told.plan().water().rain().asked(EarthPart.Washes.LITTLE), "soil is not known");
        WaterPart.Rain rain = told.with("water.rain.soil", "b").plan().water().rain();
        assertEquals(10, rain.years());
        assertEquals(55, rain.asked(EarthPart.Washes.LITTLE).cover().curveNumber().value());
        assertEquals("3.5 in", told.said("water.rain.day"));
        for (String[] wrong :
                new String[][] {
                    {"water.rain.day", "0 in"},
                    {"water.rain.day", "-1 in"},
                    {"water.rain.day", "4 m"},
                    {"water.rain.day", "3 in/h"},
                    {"water.rain.years", "-5"},
                    {"water.rain.years", "often"},
                    {"water.rain.years", "5000"},
                    {"water.rain.land", "parking"},
                    {"water.rain.soil", "e"},
                    {"water.rain.type", "type iv"}
                }) {
            PlanException told1 =
                    assertThrows(PlanException.class, () -> file.with(wrong[0], wrong[1]));
            assertFalse(told1.troubles().get(0).remedy().isBlank(), wrong[1]);
        }
    }

    @Test
    void rainInStepsAndWhatSoaksInAreReadAndWritten() throws Exception {
        var plan = java.nio.file.Path.of("../../sample-surveys/marrow-fold/plan.json");
        PlanFile file = PlanFile.read("plan.json", java.nio.file.Files.readAllBytes(plan));
        List<WaterPart.Step> steps = file.plan().water().rain().steps();
        assertEquals(3, steps.size());
        assertEquals(new WaterPart.Step("night between", 0, 12), steps.get(1));
        assertEquals(0.0254, steps.get(0).rain(), 1e-15);
        assertEquals(0.00254 / 3600, file.plan().water().soaksIn(), 1e-18);
        PlanFile slower = file.with("water.soaksIn", "2 mm / h");
        assertEquals(0.002 / 3600, slower.plan().water().soaksIn(), 1e-18);
        PlanFile again = PlanFile.read("plan.json", slower.text().getBytes(StandardCharsets.UTF_8));
        assertEquals(slower.plan(), again.plan());
        for (String[] wrong :
                new String[][] {
                    {"water.soaksIn", "0.1 in"},
                    {"water.soaksIn", "-1 in per hour"},
                    {"water.soaksIn", "fast per hour"},
                    {"water.soaksIn", "9 m per hour"},
                    {"water.rain.steps[0].hours", "0"},
                    {"water.rain.steps[0].hours", "2000"},
                    {"water.rain.steps[0].rain", "-1 in"},
                    {"water.rain.steps[0].rain", "3 m"}
                }) {
            PlanException told =
                    assertThrows(
                            PlanException.class, () -> file.with(wrong[0], wrong[1]), wrong[1]);
            assertFalse(told.troubles().get(0).remedy().isBlank(), wrong[1]);
        }
    }

    @Test
    void aRowOfPricesIsWrittenWholeAndTakenOut() throws Exception {
        var plan = java.nio.file.Path.of("../../sample-surveys/marrow-fold/plan.json");
        PlanFile file = PlanFile.read("plan.json", java.nio.file.Files.readAllBytes(plan));
        String row = "water.pipeWork.prices[0]";
        Map<String, String> values = new LinkedHashMap<>();
        values.put(row + ".size", "18 in");
        values.put(row + ".price", "21.50 per ft");
        PlanFile priced = file.with(values);
        assertEquals(21.5, priced.plan().water().pipeWork().prices().get(0).price().amount());
        assertEquals(0.4572, priced.plan().water().pipeWork().prices().get(0).size(), 1e-12);
        assertEquals(List.of(), priced.with(row, "").plan().water().pipeWork().prices());
        assertThrows(PlanException.class, () -> file.with(row + ".price", "21.50 per ft"));
        assertThrows(
                IllegalArgumentException.class,
                () -> file.with("water.pipeWork.prices[1].price", "21.50 per ft"));
        assertThrows(IllegalArgumentException.class, () -> file.with(row, ""));
    }
}
