package lanewright.planner.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import lanewright.measure.UnitSystem;
import org.junit.jupiter.api.Test;

/** What an edit writes into the owner's document, and what it leaves alone. */
class EditTest {

    private static final String OWNERS =
            """
            {
              "version": 1,
              "name": "Hen lane",
              "units": "us",
              "survey": {"frame": "local", "files": [{"path": "a.csv", "holds": "points", "unit": "ft"}]},
              "line": {"points": [
                {"name": "road", "east": "0 ft", "north": "0 ft"},
                {"name": "oak", "east": "100 ft", "north": "20 ft", "radius": "60 ft"},
                {"name": "barn", "east": "200 ft", "north": "0 ft"}
              ]},
              "grade": {"steepest": "12 %", "why": {"steepest": "loaded trucks"}},
              "shapes": [{"name": "lane", "width": "12 ft",
                "layers": [{"role": "base", "thickness": "6 in"}]}],
              "along": [{"from": "start", "to": "end", "shape": "lane"}],
              "stone": {"payload": "15 tons", "materials": [{"role": "base", "kind": "crushed surfacing, top course"}]}
            }
            """;

    private static PlanFile owners() throws PlanException {
        return PlanFile.read("plan.json", OWNERS.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void anEditOfNothingLeavesTheText() throws PlanException {
        PlanFile file = owners();
        assertEquals(file.text(), file.with(file.plan()).text());
    }

    @Test
    void whatWasNotSaidStaysUnsaid() throws PlanException {
        PlanFile file = owners();
        PlanFile edited = file.with(file.plan().called("Cock lane"));
        assertEquals(file.text().replace("Hen lane", "Cock lane"), edited.text());
        assertEquals(file.assumed(), edited.assumed());
    }

    @Test
    void oneOfAListIsEditedAndTheOthersStay() throws PlanException {
        PlanFile file = owners();
        LinePart line = file.plan().line();
        LinePart.Point oak = line.points().get(1);
        var moved =
                new LinePart(
                        List.of(
                                line.points().get(0),
                                new LinePart.Point(oak.name(), oak.spot(), 80 * 0.3048),
                                line.points().get(2)));
        PlanFile edited = file.with(file.plan().with(moved));
        assertEquals(file.text().replace("60 ft", "80 ft"), edited.text());
        assertEquals(80 * 0.3048, edited.plan().line().points().get(1).radius(), 1e-12);
    }

    @Test
    void aPointPutInOrTakenOutLeavesTheOthers() throws PlanException {
        PlanFile file = owners();
        LinePart line = file.plan().line();
        var without = new LinePart(List.of(line.points().get(0), line.points().get(2)));
        PlanFile edited = file.with(file.plan().with(without));
        assertFalse(edited.text().contains("oak"));
        assertTrue(edited.text().contains("barn"));
        PlanFile back = edited.with(edited.plan().with(line));
        assertEquals(file.plan(), back.plan());
    }

    @Test
    void theOwnersReasonGoesWithTheValueItWasFor() throws PlanException {
        PlanFile file = owners();
        GradePart grade = file.plan().grade();
        var steeper =
                new GradePart(
                        0.1,
                        grade.flattest(),
                        grade.edgeAboveGround(),
                        grade.curvePerPercent(),
                        grade.through(),
                        grade.sagOutlets(),
                        grade.points(),
                        grade.reasons());
        PlanFile edited = file.with(file.plan().with(steeper));
        assertTrue(edited.text().contains("\"10 %\""), edited.text());
        assertFalse(edited.text().contains("loaded trucks"), edited.text());
    }

    @Test
    void otherUnitsWriteTheWholePlanAnew() throws PlanException {
        PlanFile metric = owners().with(owners().plan().with(UnitSystem.METRIC));
        assertEquals(UnitSystem.METRIC, metric.plan().units());
        assertEquals(30.48, metric.plan().line().points().get(1).spot().across(), 1e-3);
        assertFalse(metric.text().contains(" ft\""), metric.text());
    }

    @Test
    void aPlanThatCannotStandIsRefusedByItsField() throws PlanException {
        PlanFile file = owners();
        StonePart stone = file.plan().stone();
        var none =
                new StonePart(
                        stone.loss(),
                        stone.payload(),
                        stone.raisedBed(),
                        List.of(),
                        stone.fabric());
        assertThrows(PlanException.class, () -> file.with(file.plan().with(none)));
    }
}
