package lanewright.sheets.set;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.Overflow;
import lanewright.drainage.Pool;
import lanewright.drainage.along.CulvertLine;
import lanewright.measure.Progress;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.PlanFile;
import lanewright.planner.run.Outcome;
import lanewright.planner.run.PipeOffer;
import lanewright.planner.run.Run;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.figure.HeadwaterDrawing;
import lanewright.sheets.paint.PdfBook;
import lanewright.sheets.paint.PngPicture;
import org.junit.jupiter.api.Test;

/**
 * A hollow that the lane dams, the pipe that is offered taken into the plan, and what the sheets
 * then show: on a sample and on open terrain. Leaves the pages in {@code target/water}.
 */
class DammedHollowTest {

    private static final Path PICTURES = Path.of("target", "water");

    /** A draw of nine acres between two spurs, crossed by a lane of 1,466 ft. */
    private static final String OPEN =
            """
            {
              "version": 1, "name": "Lane over open terrain", "units": "us",
              "survey": {
                "frame": "EPSG:26916", "corridor": "300 m",
                "files": [ { "path": "jacksboro-fault.tif", "holds": "grid", "unit": "m" } ] },
              "line": { "points": [
                { "longitude": "-84.156667°", "latitude": "36.714167°" },
                { "longitude": "-84.151667°", "latitude": "36.714167°" } ] },
              "grade": { "points": [
                { "station": "start", "height": "594.4 m" },
                { "station": "225 m", "height": "591.2 m", "curve": "40 m" },
                { "station": "end", "height": "598.4 m" } ] },
              "shapes": [ { "name": "lane", "width": "12 ft", "crossSlope": "4 %",
                "layers": [ { "role": "base", "thickness": "8 in" } ] } ],
              "along": [ { "from": "start", "to": "end", "shape": "lane" } ],
              "stone": { "payload": "18 tons", "materials": [
                { "role": "base", "kind": "crushed surfacing, base course" } ] },
              "water": { "rain": { "day": "5.0 in", "years": "25", "type": "type ii",
                "land": "woods, fair", "soil": "b" } },
              "work": { "interval": "25 ft" }
            }
            """;

    @Test
    void theSamplesDammedHollowRunsOffThroughThePipe() throws Exception {
        Path at = Path.of("..", "..", "sample-surveys", "marrow-fold");
        drained(
                at,
                PlanFile.read("plan.json", Files.readAllBytes(at.resolve("plan.json"))),
                "sample");
    }

    @Test
    void aDammedDrawOfOpenTerrainRunsOffThroughThePipe() throws Exception {
        Path at = Path.of("..", "survey", "src", "test", "resources", "open-data");
        drained(at, PlanFile.read("plan.json", OPEN.getBytes(StandardCharsets.UTF_8)), "open");
    }

    private static void drained(Path at, PlanFile file, String name) throws Exception {
        var run = new Run(at);
        Outcome before = run.outcome(file, Progress.NONE);
        CulvertLine offered = PipeOffer.fitting(before);
        assertNotNull(offered);
        Pool dammed = deepest(before.water().made());
        assertTrue(dammed.spot().depth() > 0.9, "a lane that dams: " + dammed.spot().depth());

        PlanFile taken = file.with(PipeOffer.taken(file.plan(), before, offered));
        Outcome after = run.outcome(taken, Progress.NONE);
        double inlet = taken.plan().water().pipes().get(0).inlet().invert();
        // What is left stands no higher than the pipe's inlet.
        for (Pool pool : after.water().after()) {
            if (pool.spot().covers(dammed.spot().x(), dammed.spot().y())) {
                assertEquals(inlet, pool.spot().level(), 0.02);
            }
        }
        // Should it take nothing, the pool is there again: found on cells, and before on triangles.
        Overflow way = after.water().crossings().get(0).overflow();
        assertNotNull(way);
        assertEquals(dammed.spot().level(), inlet + way.depth(), 0.1);
        assertEquals(dammed.spill().way(), way.spill().way());
        assertTrue(
                curve(after).stream()
                        .anyMatch(
                                each -> each.startsWith("from here water runs over the lane at ")),
                curve(after).toString());
        List<PdfBook.Leaf> leaves = PlanSet.of(after);
        Files.createDirectories(PICTURES);
        pictures(PlanSet.of(before), "Water before and after", name + "-dammed");
        pictures(leaves, "Water before and after", name + "-drained");
        pictures(leaves, "Culverts", name + "-culvert");
    }

    /** All words of the performance curve of the first pipe. */
    private static List<String> curve(Outcome outcome) {
        var pen = new Pen();
        new HeadwaterDrawing(outcome.pipes().get(0), UnitSystem.US)
                .draw(pen, new Box(0, 0, 640, 180));
        List<String> words = new ArrayList<>();
        words(pen.marks(), words);
        return words;
    }

    private static void words(List<Mark> marks, List<String> found) {
        for (Mark mark : marks) {
            if (mark instanceof Mark.Words words) {
                found.add(words.text());
            } else if (mark instanceof Mark.Framed framed) {
                words(framed.marks(), found);
            }
        }
    }

    private static Pool deepest(List<Pool> pools) {
        return pools.stream()
                .max((a, b) -> Double.compare(a.spot().depth(), b.spot().depth()))
                .orElseThrow();
    }

    private static void pictures(List<PdfBook.Leaf> leaves, String sheet, String name)
            throws IOException {
        int count = 0;
        for (PdfBook.Leaf leaf : leaves) {
            if (leaf.names().contains(sheet)) {
                Files.write(
                        PICTURES.resolve(name + (count == 0 ? "" : "-" + (count + 1)) + ".png"),
                        PngPicture.of(leaf.drawing(), 90));
                count++;
            }
        }
        assertTrue(count > 0, "no sheet is called " + sheet);
    }
}
