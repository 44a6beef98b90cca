package lanewright.survey.read;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.survey.Survey;
import lanewright.survey.SurveyLine;

/**
 * Looks over all points together: two at one place, one far from all others, one whose height does
 * not fit those around it. Only says so; every point stays in the survey.
 *
 * <p>Costs about a tenth of a microsecond a point: points are put into cells of about two points
 * each, and each is held against those of the cells around its own.
 */
final class PointChecks {

    /**
     * Two shots closer than this in plan stand at one place, m: well under what a staff can tell.
     */
    private static final double SAME_PLACE = 0.001;

    /** Heights closer than this are the same, m. */
    private static final double SAME_HEIGHT = 0.001;

    /** A point is far from the rest beyond so many times the width of the middle of the survey. */
    private static final double FAR_TIMES = 5;

    /** So many findings of a kind are told one by one. */
    private static final int TOLD = 20;

    private final Survey survey;
    private final List<Finding> findings = new ArrayList<>();
    private final Cells cells;

    private PointChecks(Survey survey) {
        this.survey = survey;
        this.cells = new Cells(survey);
    }

    /** What deserves a look. */
    static List<Finding> of(Survey survey) {
        if (survey.size() < 2) {
            return List.of();
        }
        var checks = new PointChecks(survey);
        checks.twice();
        checks.farAway();
        checks.blunders();
        checks.noHeights();
        return checks.findings;
    }

    private void twice() {
        BitSet inLine = new BitSet(survey.size());
        for (SurveyLine line : survey.lines()) {
            for (int k = 0; k < line.size(); k++) {
                inLine.set(line.point(k));
            }
        }
        var same = new Told();
        var other = new Told();
        for (long pair : Twins.of(cells, SAME_PLACE)) {
            int first = Twins.first(pair);
            int second = Twins.second(pair);
            double apart = Math.abs(survey.z(first) - survey.z(second));
            if (apart >= SAME_HEIGHT) {
                other.add(first, second);
            } else if (!inLine.get(first) || !inLine.get(second)) {
                // Lines that meet share a point; that is no blemish.
                same.add(first, second);
            }
        }
        other.tell(
                "same-place-other-height",
                Level.LOOK,
                pair ->
                        Saying.of(
                                "Two shots stand at one place, {} high ("
                                        + source(pair[0])
                                        + ") and {} high ("
                                        + source(pair[1])
                                        + ")",
                                Quantity.height(survey.z(pair[0])),
                                Quantity.height(survey.z(pair[1]))),
                "pairs of shots stand at one place with different heights",
                "Find out which is right and take the other out of the file");
        same.tell(
                "same-place-twice",
                Level.NOTE,
                pair ->
                        Saying.of(
                                "One place was shot twice with the same height"
                                        + coded(pair[0], pair[1])
                                        + ", {} east and {} north",
                                Quantity.length(survey.x(pair[0]) + survey.originX()),
                                Quantity.length(survey.y(pair[0]) + survey.originY())),
                "places were shot twice with the same height",
                "Nothing to do: they count as one");
    }

    private void farAway() {
        double reach = FAR_TIMES * Math.max(cells.width(), cells.height());
        if (!(reach > 0)) {
            return;
        }
        var far = new Told();
        for (int i = 0; i < survey.size(); i++) {
            if (cells.outsideMiddle(survey.x(i), survey.y(i)) > reach) {
                far.add(i);
            }
        }
        far.tell(
                "point-far-away",
                Level.LOOK,
                point ->
                        Saying.of(
                                "The shot from "
                                        + source(point[0])
                                        + " lies {} away from the middle of the survey",
                                Quantity.length(
                                        cells.outsideMiddle(
                                                survey.x(point[0]), survey.y(point[0])))),
                "shots lie far away from the rest of the survey",
                "Check its coordinates for a wrong digit; triangles that reach out to it are no"
                        + " ground");
    }

    private void blunders() {
        var odd = new Told();
        var around = new Around(cells);
        Map<Integer, Double> off = around.odd();
        off.keySet().forEach(odd::add);
        odd.tell(
                "height-does-not-fit",
                Level.LOOK,
                point -> {
                    double above = off.getOrDefault(point[0], 0.0);
                    return Saying.of(
                            "The shot from "
                                    + source(point[0])
                                    + " is {} high, {} "
                                    + (above > 0 ? "above" : "below")
                                    + " what those around it say",
                            Quantity.height(survey.z(point[0])),
                            Quantity.height(Math.abs(above)));
                },
                "shots do not fit the heights around them",
                "Check the rod reading and the rod height; if the ground is so, leave it");
    }

    private void noHeights() {
        for (int i = 0; i < survey.size(); i++) {
            if (survey.z(i) != 0) {
                return;
            }
        }
        findings.add(
                Finding.of(
                        "all-heights-zero",
                        Level.LOOK,
                        Topic.GROUND,
                        Where.ANYWHERE,
                        Saying.plain("Every height in the survey is 0"),
                        Saying.plain("Check that heights were exported and are in their column")));
    }

    /** What the crew wrote beside two points. */
    private String coded(int one, int other) {
        String first = survey.code(one);
        String second = survey.code(other);
        String both = first.equals(second) || second.isEmpty() ? first : first + ", " + second;
        return both.isEmpty() ? "" : " (" + Gathering.inSaying(both) + ")";
    }

    private String source(int point) {
        return Gathering.inSaying(survey.source(point).toString());
    }

    /** What one point says. */
    private interface Words {
        Saying of(int[] points);
    }

    /** Findings of one kind: the first few one by one, the rest as a count. */
    private final class Told {
        private final List<int[]> first = new ArrayList<>();
        private int count;

        void add(int... points) {
            if (first.size() < TOLD) {
                first.add(points);
            }
            count++;
        }

        void tell(String code, Level level, Words words, String together, String remedy) {
            for (int[] points : first) {
                findings.add(
                        Finding.of(
                                code,
                                level,
                                Topic.GROUND,
                                Where.map(survey.x(points[0]), survey.y(points[0])),
                                words.of(points),
                                Saying.plain(remedy)));
            }
            if (count > first.size()) {
                findings.add(
                        Finding.of(
                                code,
                                level,
                                Topic.GROUND,
                                Where.ANYWHERE,
                                Saying.of(
                                        "{} " + together + "; the first {} are told one by one",
                                        Quantity.count(count),
                                        Quantity.count(first.size())),
                                Saying.plain(remedy)));
            }
        }
    }
}
