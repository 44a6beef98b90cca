package lanewright.sheets.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionLine;
import lanewright.measure.UnitSystem;
import lanewright.sheets.ToyPlan;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import org.junit.jupiter.api.Test;

class ProfilePipesTest {

    /** Every mark, those in frames too. */
    private static List<Mark> marks(List<Mark> marks) {
        var all = new ArrayList<Mark>();
        for (Mark mark : marks) {
            if (mark instanceof Mark.Framed framed) {
                all.addAll(marks(framed.marks()));
            } else {
                all.add(mark);
            }
        }
        return all;
    }

    private static List<String> words(Pen pen) {
        return marks(pen.marks()).stream()
                .filter(Mark.Words.class::isInstance)
                .map(mark -> ((Mark.Words) mark).text())
                .toList();
    }

    /** The outlines of one role's lines. */
    private static List<Outline> lines(Pen pen, Role role) {
        return marks(pen.marks()).stream()
                .filter(mark -> mark instanceof Mark.Line line && line.role() == role)
                .map(mark -> ((Mark.Line) mark).path())
                .toList();
    }

    @Test
    void aPipeStandsAtItsStationFromItsLowerInvertUpByItsBore() throws Exception {
        var toy = new ToyPlan();
        List<Section> sections = toy.sections.sections();
        double length = sections.get(sections.size() - 1).station();
        double station = length / 2;
        double invert = sections.get(0).profileHeight() - 1;
        var pipe =
                new PipeUnder(
                        "stone pipe",
                        station,
                        new Corner(-4, invert + 0.2),
                        new Corner(4, invert),
                        0.6);
        var ditch =
                new RoadDitch(
                        2,
                        SectionLine.of(
                                new double[] {0, 2, 4},
                                new double[] {invert + 1, invert + 0.5, invert + 1}),
                        SectionLine.of(new double[0], new double[0]));
        var lane =
                new Unrolled(
                        sections,
                        toy.design.profile().points(),
                        List.of(),
                        List.of(pipe),
                        ditch,
                        UnitSystem.METRIC);
        var pen = new Pen();
        var drawing = new ProfileDrawing(lane, 0, length);
        var box = new Box(0, 0, 700, 500);
        assertTrue(drawing.draw(pen, box).contains(Role.BARREL));
        assertTrue(words(pen).containsAll(List.of("stone pipe", "road ditch")));
        // 50 pt for figures at the left, a rim of 9 pt on both sides, 4 pt over.
        double across = (700 - 50 - 18 - 4) / length;
        double up = across * drawing.stretch(700, 500);
        Outline barrel = lines(pen, Role.BARREL).get(0);
        double top = Double.POSITIVE_INFINITY;
        double foot = Double.NEGATIVE_INFINITY;
        double left = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < barrel.size(); i++) {
            top = Math.min(top, barrel.y(i));
            foot = Math.max(foot, barrel.y(i));
            left = Math.min(left, barrel.x(i));
            right = Math.max(right, barrel.x(i));
        }
        assertEquals(50 + 9 + station * across, (left + right) / 2, 1e-6);
        assertEquals((0.2 + 0.6) * up, foot - top, 1e-6);
    }

    @Test
    void aLineIsNamedOnTheSideWhereNoOtherLineLies() {
        var places = new Places(new Box(0, 0, 300, 200));
        Outline upper = Outline.open(0, 80, 300, 80);
        Outline lower = Outline.open(0, 110, 300, 110);
        places.keepOff(upper);
        places.keepOff(lower);
        var pen = new Pen();
        LineNames.draw(
                pen,
                places,
                List.of(
                        new LineNames.Named("upper", List.of(upper)),
                        new LineNames.Named("lower", List.of(lower))),
                new Box(0, 0, 300, 200),
                60);
        for (Mark mark : pen.marks()) {
            if (mark instanceof Mark.Words words) {
                assertEquals(words.text().equals("upper"), words.y() < 80, words.toString());
                assertEquals(words.text().equals("lower"), words.y() > 110, words.toString());
            }
        }
        assertEquals(List.of("upper", "lower"), words(pen));
    }
}
