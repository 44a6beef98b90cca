package lanewright.drainage.storm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lanewright.drainage.Crossing;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.Side;
import lanewright.drainage.culvert.Overtopping;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.runoff.Cover;
import lanewright.drainage.runoff.GraphicalPeak;
import lanewright.drainage.runoff.SoilGroup;
import lanewright.lane.section.Corner;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class FordTest {

    private static final double FOOT = 0.3048;

    @Test
    @Tag("outside")
    @DisplayName(
            "water on a ford | FHWA HDS-5, 2001, chapter III, broad weir in level slices, worked"
                    + " apart | derived")
    void waterOnAFordIsThatOverAWeirInLevelSlices() {
        Ford ford = Ford.of(0.5, 3, 8, 0.4);
        double cd = 2.70 * 0.552;
        double sum = 0;
        int slices = 200_000;
        double run = ford.depth() / 0.1;
        for (int i = 0; i < slices; i++) {
            double head = ford.depth() * (i + 0.5) / slices;
            sum += 2 * cd * Math.pow(head, 1.5) * run / slices;
        }
        sum += cd * 3 * Math.pow(ford.depth(), 1.5);
        assertEquals(0.4, sum, 0.4 * 2e-3);
        // Critical depth of two thirds of the head: v = sqrt(g * 2/3 * head).
        assertEquals(Math.sqrt(9.81 * ford.depth() * 2 / 3), ford.speed(), 0.02);
    }

    @Test
    @Tag("outside")
    @DisplayName("rock of a ford | FHWA HEC-14, 2006, appendix D: D50 = 0.0126 V^2 in feet | read")
    void rockIsSizedByTheSpeed() {
        Ford ford = Ford.of(0.5, 3, 8, 2);
        double feet = ford.speed() / FOOT;
        assertEquals(0.0126 * feet * feet, ford.stone() / FOOT, 1e-9);
        assertEquals(Math.max(FOOT, 2 * ford.stone()), ford.thickness(), 1e-9);
        double wide = 3 + 2 * ford.depth() / 0.1;
        assertEquals(wide * ford.thickness() * (8 + ford.thickness()), ford.volume(), 1e-9);
    }

    private static Optional<Ford> at(double acres, double over, double discharge) {
        var line =
                new CulvertLine(
                        100, 100, Side.LEFT, new Corner(-5, 50), new Corner(5, 49.9), 10, over);
        return Ford.at(
                new Crossing(
                        "dip",
                        line,
                        Double.NaN,
                        null,
                        true,
                        0,
                        acres * 4046.8564224,
                        false,
                        new FlowGrid.Way(150, 10),
                        List.of(40.0, 100.0, 160.0),
                        List.of(over + 0.6, over, over + 0.6),
                        Crossing.Tailwater.FREE),
                discharge);
    }

    @Test
    void theNarrowestBottomThatKeepsWaterShallowIsTaken() {
        assertEquals(3, at(2, 0.3, 0.1).orElseThrow().bottom());
        Ford wider = at(2, 0.3, 0.6).orElseThrow();
        assertTrue(wider.bottom() > 3 && wider.depth() <= Ford.KNOCKS, wider.toString());
        assertEquals(12, at(2, 0.3, 5).orElseThrow().bottom());
    }

    @Test
    void noneIsOfferedWhereMuchLandDrainsOrTheLaneLiesHigh() {
        assertTrue(at(60, 0.3, 0.1).isEmpty());
        assertTrue(at(2, 1.6, 0.1).isEmpty());
    }

    @Test
    void aLaneThatMustBeRaisedMuchIsOfferedAFord() {
        var storm =
                new StormAsked(
                        4.2 * 0.0254,
                        25,
                        GraphicalPeak.Storm.II,
                        new Cover("pasture, fair", SoilGroup.C),
                        "silt loam");
        assertTrue(sized(storm, 0).ford().isEmpty(), "a pipe does as the lane is drawn");
        assertTrue(sized(storm, Ford.HIGH + 0.1).ford().isPresent());
    }

    private static Sized sized(StormAsked storm, double raise) {
        var line =
                new CulvertLine(
                        100, 100, Side.LEFT, new Corner(-5, 50), new Corner(5, 49.9), 10, 1);
        var crossing =
                new Crossing(
                        "dip",
                        line,
                        Double.NaN,
                        null,
                        true,
                        raise,
                        2 * 4046.8564224,
                        false,
                        new FlowGrid.Way(150, 10),
                        List.of(40.0, 100.0, 160.0),
                        List.of(1.3, 0.7, 1.3),
                        Crossing.Tailwater.FREE);
        return StormReport.of(storm, List.of(crossing), List.of()).sized().get(0);
    }

    @Test
    void theWeirTakesTheCoefficientOfGravel() {
        assertEquals(2.70 * 0.552, Overtopping.gravel(0.15), 0.01);
    }
}
