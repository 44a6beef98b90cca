package lanewright.desktop.lane;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.along.CulvertLine;
import lanewright.measure.Progress;
import lanewright.planner.document.PlanFile;
import lanewright.planner.run.Draft;
import lanewright.planner.run.Outcome;
import lanewright.planner.run.PipeOffer;
import lanewright.planner.run.Run;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import org.junit.jupiter.api.Test;

/** Pipes of the plan in the picture of the lane unrolled. */
class PipesInProfileTest {

    private static final Path AT = Path.of("..", "..", "sample-surveys", "marrow-fold");

    private static List<Mark> flat(List<Mark> marks) {
        List<Mark> all = new ArrayList<>();
        for (Mark mark : marks) {
            if (mark instanceof Mark.Framed framed) {
                all.addAll(flat(framed.marks()));
            } else {
                all.add(mark);
            }
        }
        return all;
    }

    @Test
    void aPipeStandsWhereItPassesUnderTheLane() throws Exception {
        PlanFile file = PlanFile.read("plan.json", Files.readAllBytes(AT.resolve("plan.json")));
        var run = new Run(AT);
        Outcome before = run.outcome(file, Progress.NONE);
        CulvertLine pipe = PipeOffer.fitting(before);
        assertNotNull(pipe);
        PlanFile taken = file.with(PipeOffer.taken(file.plan(), before, pipe));
        Draft draft = run.draft(taken, Progress.NONE);
        Outcome after = run.settled(draft, Progress.NONE);
        Frame frame = Unrolled.fitted(draft, 1600, 500);
        var pen = new Pen();
        new Unrolled(frame, draft, after, taken.plan().units()).draw(pen, 0, null, -1, false);
        List<Mark> marks = flat(pen.marks());
        List<Outline> barrels =
                marks.stream()
                        .filter(Mark.Line.class::isInstance)
                        .map(Mark.Line.class::cast)
                        .filter(line -> line.role() == Role.BARREL)
                        .map(Mark.Line::path)
                        .toList();
        assertEquals(1, barrels.size());
        Outline barrel = barrels.get(0);
        double x = 0;
        double foot = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < barrel.size(); i++) {
            x += barrel.x(i) / barrel.size();
            foot = Math.max(foot, barrel.y(i));
        }
        // It enters 4.62 m left at 98.73 m and leaves 4.94 m right at 97.54 m.
        assertEquals(98.73 - (98.73 - 97.54) * 4.62 / (4.62 + 4.94), frame.along(x), 0.05);
        assertEquals(pipe.outlet().height(), frame.height(foot), 0.01);
        assertTrue(
                marks.stream()
                        .anyMatch(
                                mark ->
                                        mark instanceof Mark.Words words
                                                && words.text().endsWith(", to lay")));
    }
}
