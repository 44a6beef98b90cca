package lanewright.drainage.storm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewright.drainage.DitchWater;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Side;
import lanewright.drainage.channel.ChannelShape;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.runoff.Cover;
import lanewright.drainage.runoff.DesignRain;
import lanewright.drainage.runoff.GraphicalPeak;
import lanewright.drainage.runoff.SoilGroup;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A storm led down ditches, reach by reach. */
class DitchStormTest {

    private static final double INCH = 0.0254;
    private static final Cover PASTURE = new Cover("pasture, fair", SoilGroup.C);

    private static final DesignRain TABLE =
            DesignRain.ofIntensities(
                    List.of(300.0, 600.0, 3600.0),
                    List.of(10.0),
                    List.of(
                            List.of(7.14 * INCH / 3600),
                            List.of(5.71 * INCH / 3600),
                            List.of(2.27 * INCH / 3600)));

    private static StormAsked table(String soil) {
        return new StormAsked(
                Double.NaN,
                10,
                GraphicalPeak.Storm.II,
                List.of(new StormAsked.Land(PASTURE, 1)),
                soil,
                Optional.of(TABLE));
    }

    private static DitchWater.Piece piece(
            double from, double to, double grade, double lane, double land) {
        return new DitchWater.Piece(
                from,
                to,
                to - from,
                grade,
                lane,
                0,
                land,
                false,
                new FlowGrid.Way(20, 1),
                ChannelShape.triangle(2),
                0.4,
                Double.NaN);
    }

    private static DitchWater ditch(
            List<Double> lows, List<DitchWater.Onward> onward, DitchWater.Piece... pieces) {
        List<DitchReach.Point> points = new ArrayList<>();
        double height = 50;
        points.add(new DitchReach.Point(pieces[0].from(), pieces[0].from(), 0, height, 0.1));
        for (DitchWater.Piece piece : pieces) {
            height += piece.grade() * piece.length();
            points.add(new DitchReach.Point(piece.to(), piece.to(), 0, height, 0.1));
        }
        List<DitchReach.Outlet> outlets =
                lows.stream()
                        .map(at -> new DitchReach.Outlet(at, at, 0, 0, DitchReach.Kind.DAYLIGHT))
                        .toList();
        return new DitchWater(new DitchReach(Side.LEFT, points, outlets), List.of(pieces), onward);
    }

    private static List<SizedDitch> storm(StormAsked asked, DitchWater... ditches) {
        return StormReport.of(asked, List.of(), List.of(ditches)).ditches();
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "flow off a gravel lane and pasture by C·i·A, parts added | rational method, split area"
                    + " (sum of C·A), with the intensity of 5 minutes | derived")
    void aReachCarriesWhatDrainsThroughItsFoot() {
        List<SizedReach> reaches =
                storm(
                                table("stiff clay"),
                                ditch(
                                        List.of(30.0),
                                        List.of(),
                                        piece(0, 10, -0.01, 30, 0),
                                        piece(10, 20, -0.01, 30, 0),
                                        piece(20, 30, -0.05, 30, 400)))
                        .get(0)
                        .reaches();
        assertEquals(2, reaches.size(), "parted at the grade break");
        SizedReach upper = reaches.get(0);
        assertEquals(0, upper.top());
        assertEquals(20, upper.foot());
        double hard = 7.14 * INCH / 3600;
        // Water of so small a place gathers in under five minutes, and down the ditch in a bit
        // more.
        assertEquals(0.70 * hard * 60, upper.flow(), 0.08 * 0.70 * hard * 60);
        assertEquals(60, upper.drained(), 1e-9);
        SizedReach lower = reaches.get(1);
        double wanted = (0.70 * 90 + 0.30 * 400) * hard;
        assertEquals(wanted, lower.flow(), 0.08 * wanted);
        assertTrue(lower.flow() > upper.flow());
        assertTrue(lower.time() >= upper.time());
    }

    @Test
    void waterPartsAtAHighPointAndMeetsAtALowOne() {
        SizedDitch sized =
                storm(
                                table("firm loam"),
                                ditch(
                                        List.of(0.0, 30.0),
                                        List.of(),
                                        piece(0, 10, 0.02, 20, 100),
                                        piece(10, 20, -0.02, 20, 100),
                                        piece(20, 30, -0.02, 20, 100),
                                        piece(30, 40, 0.02, 20, 100)))
                        .get(0);
        assertEquals(
                List.of(10.0, 10.0, 40.0), sized.reaches().stream().map(SizedReach::top).toList());
        assertEquals(
                List.of(0.0, 30.0, 30.0), sized.reaches().stream().map(SizedReach::foot).toList());
        assertEquals(120, sized.ends().get(0).drained(), 1e-9);
        assertEquals(360, sized.ends().get(1).drained(), 1e-9);
    }

    @Test
    void waterGoesOnIntoTheNextDitch() {
        DitchWater upper =
                ditch(
                        List.of(10.0),
                        List.of(new DitchWater.Onward(0, 1, 0)),
                        piece(0, 10, -0.02, 20, 1000));
        DitchWater lower = ditch(List.of(10.0), List.of(), piece(0, 10, -0.02, 20, 0));
        List<SizedDitch> both = storm(table("firm loam"), upper, lower);
        assertEquals(1040, both.get(1).ends().get(0).drained(), 1e-9);
        assertTrue(both.get(1).ends().get(0).flow() > both.get(0).ends().get(0).flow());
        // Two that lead into each other are cut where they meet, and end.
        DitchWater circle =
                ditch(
                        List.of(10.0),
                        List.of(new DitchWater.Onward(0, 0, 0)),
                        piece(0, 10, -0.02, 20, 1000));
        assertEquals(1020, storm(table("firm loam"), circle).get(0).ends().get(0).drained(), 1e-9);
    }

    @Test
    void aLongDitchIsTakenInReaches() {
        DitchWater.Piece[] pieces = new DitchWater.Piece[40];
        for (int i = 0; i < 40; i++) {
            pieces[i] = piece(5 * i, 5 * i + 5, -0.03, 9, 50);
        }
        List<SizedReach> reaches =
                storm(table("silt loam"), ditch(List.of(200.0), List.of(), pieces))
                        .get(0)
                        .reaches();
        assertEquals(4, reaches.size());
        for (int i = 1; i < reaches.size(); i++) {
            assertTrue(reaches.get(i).flow() > reaches.get(i - 1).flow());
            assertTrue(reaches.get(i).deep() > 0);
            assertEquals(0.4 - reaches.get(i).deep(), reaches.get(i).left(), 1e-12);
        }
        assertTrue(reaches.get(3).wantsLining());
    }

    @Test
    void damsKeepTheBareSoilBetweenThem() {
        SizedReach reach =
                storm(
                                table("firm loam"),
                                ditch(List.of(60.0), List.of(), piece(0, 60, -0.014, 60, 200)))
                        .get(0)
                        .reaches()
                        .get(0);
        assertTrue(reach.wantsLining());
        SizedReach.Dams dams = reach.dams().orElseThrow();
        assertEquals(
                dams.height() / (0.014 - dams.wanted()), dams.spacing().spacing(), 1e-9, "H/(A-B)");
        assertTrue(dams.wanted() < 0.014);
        assertFalse(dams.spacing().tooClose());
    }

    @Test
    void aLevelDitchCarriesNothingOn() {
        SizedReach reach =
                storm(table("firm loam"), ditch(List.of(10.0), List.of(), piece(0, 10, 0, 60, 200)))
                        .get(0)
                        .reaches()
                        .get(0);
        assertFalse(reach.runs());
        assertFalse(reach.washes());
        assertTrue(Double.isNaN(reach.left()));
    }

    @Test
    void landsAreWeightedByTheirShares() {
        var woods = new Cover("woods, good", SoilGroup.A);
        var mixed =
                new StormAsked(
                        0.1,
                        25,
                        GraphicalPeak.Storm.II,
                        List.of(new StormAsked.Land(PASTURE, 0.7), new StormAsked.Land(woods, 0.3)),
                        "silt loam",
                        Optional.empty());
        assertEquals(0.7 * 79 + 0.3 * 30, mixed.curveNumber(), 1e-9);
        assertEquals(PASTURE, mixed.cover());
        assertThrows(
                IllegalArgumentException.class,
                () ->
                        new StormAsked(
                                0.1,
                                25,
                                GraphicalPeak.Storm.II,
                                List.of(new StormAsked.Land(PASTURE, 0.7)),
                                "silt loam",
                                Optional.empty()));
    }

    @Test
    void aRareStormRunsOffMore() {
        var rare =
                new StormAsked(
                        Double.NaN,
                        25,
                        GraphicalPeak.Storm.II,
                        List.of(new StormAsked.Land(PASTURE, 1)),
                        "silt loam",
                        Optional.of(
                                new DesignRain(
                                        List.of(300.0, 3600.0),
                                        List.of(25.0),
                                        List.of(List.of(0.015), List.of(0.06)))));
        assertEquals(1.1 * 0.30, rare.coefficient(0.03), 1e-9);
        assertThrows(
                IllegalArgumentException.class,
                () ->
                        new StormAsked(
                                Double.NaN,
                                50,
                                GraphicalPeak.Storm.II,
                                List.of(new StormAsked.Land(PASTURE, 1)),
                                "silt loam",
                                Optional.of(TABLE)));
    }
}
