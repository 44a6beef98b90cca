package lanewright.survey.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Nearest;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.survey.SurveyBuilder;

/** Joins points that follow each other with the same breakline code into lines. */
final class CodedLines {

    /**
     * What a code means.
     *
     * @param breaklines the breakline codes in it
     * @param starts true if it begins a new line
     * @param ends true if it ends a line
     * @param notGround true if the shot does not lie on the ground
     */
    record Meaning(Set<String> breaklines, boolean starts, boolean ends, boolean notGround) {}

    /** So many points alone are told one by one. */
    private static final int TOLD = 20;

    private final LineCodes codes;
    private final CodeTree declared;
    private final Map<String, Meaning> meanings = new HashMap<>();
    private final Set<String> met = new LinkedHashSet<>();
    private final Map<String, Integer> slips = new TreeMap<>();
    private final Map<String, String> meant = new HashMap<>();
    private final Map<String, OpenLine> open = new LinkedHashMap<>();
    private final List<Finding> findings = new ArrayList<>();
    private int alone;
    private int made;

    CodedLines(LineCodes codes) {
        this.codes = codes;
        this.declared = codes.tree();
    }

    /** What a code means; the same object for the same words. */
    Meaning meaning(String code) {
        Meaning known = meanings.get(code);
        if (known == null) {
            known = read(code);
            meanings.put(code, known);
        }
        return known;
    }

    private Meaning read(String code) {
        Set<String> breaklines = new LinkedHashSet<>();
        boolean starts = false;
        boolean ends = false;
        boolean notGround = false;
        for (String each : declared.in(LineCodes.words(code))) {
            if (codes.breaklines().contains(each)) {
                breaklines.add(each);
            }
            starts |= each.equals(codes.startWord());
            ends |= each.equals(codes.endWord());
            notGround |= codes.notGround().contains(each);
        }
        return new Meaning(breaklines, starts, ends, notGround);
    }

    /** Takes the next point of the file, which is number {@code point} of the survey. */
    void next(int point, String code, Meaning meaning, SurveyBuilder survey) {
        if (!code.isEmpty()) {
            noteWords(code, meaning);
        }
        if (!open.isEmpty()) {
            for (String word : List.copyOf(open.keySet())) {
                if (!meaning.breaklines().contains(word) || meaning.starts()) {
                    finish(word, survey);
                }
            }
        }
        for (String word : meaning.breaklines()) {
            open.computeIfAbsent(word, w -> new OpenLine()).add(point);
            if (meaning.ends()) {
                finish(word, survey);
            }
        }
    }

    /** Ends what is open: lines do not run from one file into another. */
    void endOfFile(SurveyBuilder survey) {
        for (String word : List.copyOf(open.keySet())) {
            finish(word, survey);
        }
    }

    /** How many lines were made so far. */
    int made() {
        return made;
    }

    private void finish(String word, SurveyBuilder survey) {
        OpenLine line = open.remove(word);
        if (line == null) {
            return;
        }
        if (line.size < 2) {
            int only = line.points[0];
            alone++;
            if (alone > TOLD) {
                return;
            }
            findings.add(
                    Finding.of(
                            "line-of-one-point",
                            Level.LOOK,
                            Topic.GROUND,
                            Where.map(survey.x(only), survey.y(only)),
                            Saying.plain(
                                    "One point alone is coded '"
                                            + word
                                            + "', so it makes no breakline"),
                            Saying.plain(
                                    "Shoot the line with two points or more, one after the other,"
                                            + " or mend the code")));
            return;
        }
        survey.breakline(word, Arrays.copyOf(line.points, line.size));
        made++;
    }

    private void noteWords(String code, Meaning meaning) {
        if (codes.breaklines().isEmpty()) {
            return;
        }
        if (!meaning.breaklines().isEmpty()) {
            met.addAll(meaning.breaklines());
            return;
        }
        String nearly = meant.computeIfAbsent(code, this::slip);
        if (!nearly.isEmpty()) {
            slips.merge(code, 1, Integer::sum);
        }
    }

    /**
     * The declared code that a point's code nearly is, as a whole or in one of its words; empty if
     * none, or if it is so long that it is a remark.
     */
    private String slip(String code) {
        if (code.length() > LineCodes.LONGEST) {
            return "";
        }
        List<String> longer = codes.breaklines().stream().filter(w -> w.length() >= 4).toList();
        List<String> words = LineCodes.words(code);
        List<String> looks = new ArrayList<>(List.of(String.join(" ", words)));
        looks.addAll(words);
        for (String look : looks) {
            Optional<String> near = Nearest.to(look, longer);
            if (near.isPresent()) {
                return near.get();
            }
        }
        return "";
    }

    /** What deserves a look, after the last file. Places are frame metres. */
    List<Finding> findings(boolean anyPoints) {
        List<Finding> all = new ArrayList<>(findings);
        if (alone > TOLD) {
            all.add(
                    Finding.of(
                            "line-of-one-point",
                            Level.LOOK,
                            Topic.GROUND,
                            Where.ANYWHERE,
                            Saying.of(
                                    "{} points stand alone with a breakline word; the first {} are"
                                            + " told one by one",
                                    Quantity.count(alone),
                                    Quantity.count(TOLD)),
                            Saying.plain(
                                    "Points of a line follow each other in the file: sort it by"
                                            + " code, or mend the codes")));
        }
        for (Map.Entry<String, Integer> slip : slips.entrySet()) {
            all.add(
                    Finding.of(
                            "code-nearly-known",
                            Level.NOTE,
                            Topic.GROUND,
                            Where.ANYWHERE,
                            new Saying(
                                    "Code '"
                                            + Gathering.inSaying(slip.getKey())
                                            + "' looks like '"
                                            + Gathering.inSaying(
                                                    meant.getOrDefault(slip.getKey(), ""))
                                            + "' but is not declared, so it makes no breakline;"
                                            + " points so coded: {}",
                                    List.of(Quantity.count(slip.getValue()))),
                            Saying.plain("Mend the code in the file, or declare it in the plan")));
        }
        if (anyPoints) {
            for (String word : codes.breaklines()) {
                if (!met.contains(word)) {
                    all.add(
                            Finding.of(
                                    "code-never-met",
                                    Level.LOOK,
                                    Topic.GROUND,
                                    Where.ANYWHERE,
                                    Saying.plain(
                                            "The plan makes breaklines of points coded '"
                                                    + word
                                                    + "', and no point is"),
                                    Saying.plain(
                                            "Check the spelling, in the plan and in the field"
                                                    + " notes")));
                }
            }
        }
        return all;
    }

    /** Points of a line that is not finished. */
    private static final class OpenLine {
        private int[] points = new int[16];
        private int size;

        void add(int point) {
            if (size == points.length) {
                points = Arrays.copyOf(points, 2 * size);
            }
            points[size++] = point;
        }
    }
}
