package lanewright.planner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.CulvertLine;
import lanewright.measure.Assumption;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Listing;
import lanewright.measure.Progress;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.document.PlanFile;
import lanewright.planner.listing.WaterListings;
import lanewright.planner.work.HeapPlace;
import lanewright.planner.work.WorkStep;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the plans of the samples say about one thing is one thing, wherever they say it. */
class WordsOfSamplesTest {

    private static final Map<String, Outcome> MADE = new ConcurrentHashMap<>();

    /** More words than this in a sentence cannot be read at one go. */
    private static final int WORDS = 32;

    private static Outcome outcome(String sample) throws Exception {
        Outcome made = MADE.get(sample);
        if (made == null) {
            Path at = Path.of("..", "..", "sample-surveys", sample);
            PlanFile file = PlanFile.read("plan.json", Files.readAllBytes(at.resolve("plan.json")));
            made = new Run(at).outcome(file, Progress.NONE);
            MADE.put(sample, made);
        }
        return made;
    }

    @ParameterizedTest
    @ValueSource(strings = {"marrow-fold", "wickle-bank"})
    void everyAnswerToLookAtHasAFindingThatSaysWhatToLookAt(String sample) throws Exception {
        Outcome outcome = outcome(sample);
        for (Answer answer : outcome.answers()) {
            boolean found =
                    outcome.findings().stream()
                            .anyMatch(
                                    each ->
                                            each.topic() == answer.topic()
                                                    && each.level() != Level.NOTE);
            assertEquals(found, answer.mark() == Answer.Mark.LOOK, answer.question());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"marrow-fold", "wickle-bank"})
    void aSurveyWithoutProbeHolesIsAFindingWithSomethingToDo(String sample) throws Exception {
        Outcome outcome = outcome(sample);
        List<Finding> missing =
                outcome.findings().stream()
                        .filter(each -> each.code().equals("no-probe-holes"))
                        .toList();
        assertEquals(outcome.survey().probes().isEmpty() ? 1 : 0, missing.size());
        for (Finding finding : missing) {
            assertEquals(Topic.GROUND, finding.topic());
            assertEquals(Level.LOOK, finding.level());
            // Wickle Bank is 322.6 m long: holes at 0, 30, ... 300 m.
            assertTrue(
                    finding.remedy().in(UnitSystem.METRIC).startsWith("Dig 11 holes"),
                    finding.remedy().in(UnitSystem.METRIC));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"marrow-fold", "wickle-bank"})
    void whatToDoAtAWetPlaceIsTheSameEverywhereAndItsPipeFits(String sample) throws Exception {
        Outcome outcome = outcome(sample);
        UnitSystem units = outcome.plan().units();
        Listing table = WaterListings.places(outcome.water());
        WorkStep step =
                outcome.order().stream()
                        .filter(each -> each.name().equals("water-ways"))
                        .findFirst()
                        .orElseThrow();
        String work =
                String.join(" ", step.amounts().stream().map(each -> each.in(units)).toList());
        String first =
                String.join(
                        " ",
                        FirstLook.of(outcome).stream()
                                .map(each -> each.remedy().in(units))
                                .toList());
        for (int i = 0; i < outcome.water().places().size(); i++) {
            WetPlace place = outcome.water().places().get(i);
            String says = place.brief().in(units);
            List<Saying> row = table.rows().get(i);
            assertEquals(says, row.get(row.size() - 1).in(units));
            assertTrue(work.contains(says), work);
            assertTrue(first.contains("hat to do: " + says + "."), first);
            assertTrue(
                    place.finding().remedy().in(units).contains("What to do: " + says + "."), says);
            CulvertLine pipe = place.cure().pipe();
            if (pipe != null) {
                // 0.5 % (US Army EN5465, chapter 4) and 24 in of room, common practice.
                assertTrue(pipe.fall() >= 0.005 * pipe.length() - 1e-9, place.toString());
                assertTrue(pipe.room() >= 24 * 0.0254 - 1e-9, place.toString());
            }
            for (Saying cell : row) {
                assertFalse(cell.in(units).isEmpty(), "a blank cell without a reason");
            }
        }
        for (List<Saying> row : WaterListings.pipes(outcome.water()).rows()) {
            String fit = row.get(row.size() - 1).in(units);
            assertTrue(fit.startsWith("fits") || fit.startsWith("does not fit: "), fit);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"marrow-fold", "wickle-bank"})
    void theSteepestPlaceIsOneStation(String sample) throws Exception {
        Outcome outcome = outcome(sample);
        UnitSystem units = outcome.plan().units();
        Set<String> stations = new HashSet<>();
        Pattern steepest = Pattern.compile("(?:hill at|Steepest at|at most [^,]*, at) ([0-9+.]+)");
        List<String> said = new ArrayList<>();
        outcome.answers().forEach(each -> said.add(each.says().in(units)));
        outcome.findings().forEach(each -> said.add(each.says().in(units)));
        if (outcome.laid() != null) {
            outcome.laid().reasons().forEach(each -> said.add(each.in(units)));
        }
        for (String words : said) {
            Matcher matcher = steepest.matcher(words);
            while (matcher.find()) {
                stations.add(matcher.group(1).replaceAll("[.,]$", ""));
            }
        }
        assertEquals(1, stations.size(), stations.toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"marrow-fold", "wickle-bank"})
    void noHeapReadsHigherThanItMayBe(String sample) throws Exception {
        Outcome outcome = outcome(sample);
        double limit = 6.5 * 0.3048;
        for (HeapPlace heap : outcome.heaps().heaps()) {
            for (UnitSystem units : UnitSystem.values()) {
                String shown = Words.fine(Quantity.length(heap.form().height()), units);
                String most = Words.fine(Quantity.length(limit), units);
                assertTrue(
                        number(shown) <= number(most) && heap.form().height() <= 2,
                        shown + " over " + most);
            }
        }
    }

    private static double number(String words) {
        return Double.parseDouble(words.substring(0, words.indexOf(' ')));
    }

    @ParameterizedTest
    @ValueSource(strings = {"marrow-fold", "wickle-bank"})
    void noAssumptionIsToldTwice(String sample) throws Exception {
        Set<String> names = new HashSet<>();
        for (Assumption each : outcome(sample).assumptions()) {
            assertTrue(names.add(each.name().toLowerCase(Locale.ROOT)), each.name());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"marrow-fold", "wickle-bank"})
    void noSentenceOfAFindingIsTooLongAndNoneSpeaksOfLinesOfFiles(String sample) throws Exception {
        Outcome outcome = outcome(sample);
        List<Saying> all = new ArrayList<>();
        outcome.findings()
                .forEach(
                        each -> {
                            all.add(each.says());
                            all.add(each.remedy());
                        });
        if (outcome.laid() != null) {
            all.addAll(outcome.laid().reasons());
        }
        for (Saying saying : all) {
            for (UnitSystem units : UnitSystem.values()) {
                String words = saying.in(units);
                assertFalse(words.matches(".*\\.csv, line .*"), words);
                for (String sentence : words.split("(?<=[.:;?])\\s+")) {
                    int count = sentence.split("\\s+").length;
                    assertTrue(count <= WORDS, count + " words: " + sentence);
                }
            }
        }
    }
}
