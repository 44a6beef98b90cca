package lanewright.drainage.storm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanewright.drainage.DitchWater;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.Descents;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Relief;
import lanewright.drainage.along.Side;
import lanewright.drainage.channel.ChannelShape;
import lanewright.drainage.culvert.PipeChoice;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.runoff.Cover;
import lanewright.drainage.runoff.DesignRain;
import lanewright.drainage.runoff.GraphicalPeak;
import lanewright.drainage.runoff.SoilGroup;
import lanewright.lane.section.Corner;
import lanewright.measure.Saying;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A storm at the relief culverts that are proposed for a ditch. */
class ReliefStormTest {

    private static final double INCH = 0.0254;
    private static final double FOOT = 0.3048;

    /** Rain of ten years, m/s, for 5 and 60 minutes. */
    private static final double HARD = 7.14 * INCH / 3600;

    private static final double SOFT = 2.27 * INCH / 3600;

    private static final StormAsked STORM =
            new StormAsked(
                    Double.NaN,
                    10,
                    GraphicalPeak.Storm.II,
                    List.of(new StormAsked.Land(new Cover("pasture, fair", SoilGroup.C), 1)),
                    "stiff clay",
                    Optional.of(
                            DesignRain.ofIntensities(
                                    List.of(300.0, 3600.0),
                                    List.of(10.0),
                                    List.of(List.of(HARD), List.of(SOFT)))));

    /** Pieces of five metres that fall 3 % towards higher stations. */
    private static DitchWater ditch(Side side, double land, double depth) {
        List<DitchReach.Point> points = new ArrayList<>();
        List<DitchWater.Piece> pieces = new ArrayList<>();
        points.add(new DitchReach.Point(0, 0, 0, 50, 0.1));
        for (int i = 0; i < 40; i++) {
            points.add(new DitchReach.Point(5 * i + 5, 5 * i + 5, 0, 49.85 - 0.15 * i, 0.1));
            pieces.add(
                    new DitchWater.Piece(
                            5 * i,
                            5 * i + 5,
                            5,
                            -0.03,
                            9,
                            0,
                            land,
                            false,
                            new FlowGrid.Way(20, 1),
                            ChannelShape.triangle(2),
                            depth,
                            Double.NaN));
        }
        var outlet = new DitchReach.Outlet(200, 200, 0, 44, DitchReach.Kind.DAYLIGHT);
        return new DitchWater(
                new DitchReach(side, points, List.of(outlet)), List.copyOf(pieces), List.of());
    }

    private static Relief pipe(int number, double station, double room) {
        var line =
                new CulvertLine(
                        station,
                        station,
                        Side.LEFT,
                        new Corner(-3, 50),
                        new Corner(4, 49.8),
                        7,
                        room);
        return new Relief(
                Relief.Device.RELIEF_PIPE,
                Descents.Way.LEFT_DITCH,
                station,
                Side.RIGHT,
                0.03,
                75,
                Saying.plain("the ground rises beside it"),
                "a table",
                number,
                line,
                true,
                50,
                List.of(line));
    }

    private static Relief turnOut(double station) {
        return new Relief(
                Relief.Device.TURN_OUT,
                Descents.Way.LEFT_DITCH,
                station,
                Side.LEFT,
                0.03,
                75,
                Saying.plain("lower ground"),
                "a table");
    }

    private static List<SizedRelief> storm(List<DitchWater> ditches, Relief... reliefs) {
        return StormReport.of(STORM, List.of(), ditches, List.of(reliefs)).reliefs();
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "each relief culvert takes C·i·A of what gathers below the one above it | rational"
                    + " method, split area, intensity between two durations along a line in"
                    + " logarithms | derived")
    void eachTakesWhatGathersBelowTheOneAboveIt() {
        List<SizedRelief> found =
                storm(
                        List.of(ditch(Side.LEFT, 50, 0.4)),
                        pipe(1, 60, 0.8),
                        turnOut(110),
                        pipe(2, 150, 0.8));
        assertEquals(2, found.size());
        double[] areas = {12, 8};
        for (int i = 0; i < 2; i++) {
            Sized sized = found.get(i).sized();
            assertEquals(areas[i] * 59, sized.crossing().drained(), 1e-9);
            double minutes = Math.max(5, sized.time() / 60);
            double slope = Math.log(SOFT / HARD) / Math.log(60.0 / 5);
            double hard = HARD * Math.pow(minutes / 5, slope);
            // Gravel 0.70, pasture on soil of group C at 5 % 0.30.
            double wanted = (0.70 * 9 + 0.30 * 50) * areas[i] * hard;
            assertEquals(wanted, sized.peak().discharge(), 0.002 * wanted);
        }
        assertEquals("relief culvert RC2", found.get(1).sized().crossing().name());
        assertFalse(found.get(1).intoDitch());
    }

    @Test
    void theDitchItselfIsToldAsItRunsWithoutThem() {
        DitchWater left = ditch(Side.LEFT, 50, 0.4);
        StormReport with =
                StormReport.of(STORM, List.of(), List.of(left), List.of(pipe(1, 100, 0.8)));
        assertEquals(40 * 59, with.ditches().get(0).ends().get(0).drained(), 1e-9);
        assertEquals(StormReport.of(STORM, List.of(), List.of(left)).ditches(), with.ditches());
        assertTrue(with.at(with.reliefs().get(0).sized().crossing().line()).isPresent());
    }

    @Test
    void whatComesOutInTheDitchAcrossIsCarriedOnThere() {
        var line =
                new CulvertLine(
                        120, 120, Side.RIGHT, new Corner(3, 50), new Corner(-4, 49.8), 7, 0.8);
        Relief back =
                new Relief(
                        Relief.Device.RELIEF_PIPE,
                        Descents.Way.RIGHT_DITCH,
                        120,
                        Side.LEFT,
                        0.03,
                        75,
                        Saying.plain("lower"),
                        "a table",
                        2,
                        line,
                        true,
                        50,
                        List.of(line));
        List<SizedRelief> found =
                storm(
                        List.of(ditch(Side.LEFT, 50, 0.4), ditch(Side.RIGHT, 10, 0.4)),
                        pipe(1, 60, 0.8),
                        back);
        assertTrue(found.get(0).intoDitch());
        assertEquals(12 * 59 + 24 * 19, found.get(1).sized().crossing().drained(), 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "the least relief culvert whose headwater stays in the ditch | FHWA HDS-5, inlet"
                    + " control, projecting thin-walled pipe (K 0.0340, M 1.50), worked anew | read")
    void theLeastPipeIsTheOneWhoseWaterStaysInTheDitch() {
        SizedRelief found = storm(List.of(ditch(Side.LEFT, 260, 0.4)), pipe(1, 150, 0.9)).get(0);
        assertTrue(found.isBrimful());
        assertEquals(0.4, found.sized().allowed(), 1e-12);
        PipeChoice plastic = found.sized().choices().get(0);
        double chosen = plastic.chosen().orElseThrow().size().barrel().inside().span();
        double cfs = found.sized().peak().discharge() / Math.pow(FOOT, 3);
        assertTrue(byInlet(cfs, chosen / FOOT) * FOOT <= 0.4);
        double smaller = plastic.smaller().orElseThrow().size().barrel().inside().span();
        assertTrue(
                byInlet(cfs, smaller / FOOT) * FOOT > 0.4,
                () -> byInlet(cfs, smaller / FOOT) + " ft over " + smaller / FOOT + " ft");
    }

    /** HW = Hc + D (K (Q / A D^0.5)^M - 0.5 S), feet; Hc by bisection for critical flow. */
    private static double byInlet(double cfs, double d) {
        double low = 1e-6;
        double high = d * (1 - 1e-9);
        for (int i = 0; i < 200; i++) {
            double y = (low + high) / 2;
            double a = area(y, d);
            double top = 2 * Math.sqrt(y * (d - y));
            if (cfs * cfs * top > 32.174 * a * a * a) {
                low = y;
            } else {
                high = y;
            }
        }
        double a = area(low, d);
        double critical = low + cfs * cfs / (a * a * 2 * 32.174);
        double full = Math.PI * d * d / 4;
        return critical + d * (0.0340 * Math.pow(cfs / (full * Math.sqrt(d)), 1.5) - 0.5 * 0.2 / 7);
    }

    private static double area(double y, double d) {
        double angle = 2 * Math.acos(1 - 2 * y / d);
        return d * d / 8 * (angle - Math.sin(angle));
    }

    @Test
    void aPipeWithoutRoomStartsInABasinAsDeepAsItNeeds() {
        List<CulvertLine> lines = new ArrayList<>();
        for (int i = 0; i <= 10; i++) {
            double deep = 0.1 * i;
            lines.add(
                    new CulvertLine(
                            150,
                            150,
                            Side.LEFT,
                            new Corner(-3, 50 - deep),
                            new Corner(4 + deep, 49.8 - deep),
                            7 + deep,
                            0.45 + deep));
        }
        Relief relief =
                new Relief(
                        Relief.Device.RELIEF_PIPE,
                        Descents.Way.LEFT_DITCH,
                        150,
                        Side.RIGHT,
                        0.03,
                        75,
                        Saying.plain("rises"),
                        "a table",
                        1,
                        lines.get(2),
                        true,
                        50,
                        lines);
        SizedRelief found = storm(List.of(ditch(Side.LEFT, 20, 0.35)), relief).get(0);
        PipeChoice.Option least = found.sized().least().orElseThrow();
        assertTrue(least.does());
        // 12 in of pipe and 12 in of earth over it, walls besides, take over two feet.
        assertEquals(0.2, found.basin(), 1e-9);
        assertEquals(Math.min(0.35 + 0.2, 0.45 + 0.2 - 0.5 * FOOT), found.sized().allowed(), 1e-9);
    }

    @Test
    void aDitchTooShallowForAnyPipeSaysSo() {
        SizedRelief found = storm(List.of(ditch(Side.LEFT, 2000, 0.15)), pipe(1, 150, 0.9)).get(0);
        assertTrue(found.sized().least().isEmpty());
        assertTrue(found.sized().raised().isEmpty() && found.sized().ford().isEmpty());
        SizedRelief low = storm(List.of(ditch(Side.LEFT, 50, 0.4)), pipe(1, 150, 0.1)).get(0);
        assertTrue(low.sized().allowed() < 0);
        assertTrue(low.sized().least().isEmpty());
        assertFalse(low.isBrimful());
    }

    /** The same rain however long it lasts: flows then add up. */
    private static final StormAsked EVEN =
            new StormAsked(
                    Double.NaN,
                    10,
                    GraphicalPeak.Storm.II,
                    STORM.lands(),
                    "stiff clay",
                    Optional.of(
                            DesignRain.ofIntensities(
                                    List.of(300.0, 86_400.0),
                                    List.of(10.0),
                                    List.of(List.of(HARD), List.of(HARD)))));

    private static Relief pipe(int number, Side from, double station, double outlet) {
        double sign = from == Side.LEFT ? 1 : -1;
        var line =
                new CulvertLine(
                        station,
                        station,
                        from,
                        new Corner(-3 * sign, 50),
                        new Corner(4 * sign, outlet),
                        7,
                        0.8);
        return new Relief(
                Relief.Device.RELIEF_PIPE,
                from == Side.LEFT ? Descents.Way.LEFT_DITCH : Descents.Way.RIGHT_DITCH,
                station,
                from.across(),
                0.03,
                75,
                Saying.plain("lower"),
                "a table",
                number,
                line,
                true,
                50,
                List.of(line));
    }

    private static SizedReach endingAt(SizedDitch ditch, double foot) {
        return ditch.reaches().stream()
                .filter(reach -> Math.abs(reach.foot() - foot) < 1e-9)
                .findFirst()
                .orElseThrow();
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "what comes into both ditches leaves by their outlets, turn-outs and pipes | mass"
                    + " balance, rational method C·i·A under rain of one intensity, worked by hand"
                    + " | derived")
    void whatComesIntoBothDitchesLeavesThem() {
        // A piece of 5 m: 0.70 of 9 m² of gravel and 0.30 of pasture, 50 m² left and 10 m² right.
        double left = 0.70 * 9 + 0.30 * 50;
        double right = 0.70 * 9 + 0.30 * 10;
        StormReport report =
                StormReport.of(
                        EVEN,
                        List.of(),
                        List.of(ditch(Side.LEFT, 50, 0.4), ditch(Side.RIGHT, 10, 0.4)),
                        List.of(
                                pipe(1, Side.LEFT, 60, 49.8),
                                turnOut(110),
                                pipe(2, Side.LEFT, 150, 40),
                                pipe(3, Side.RIGHT, 120, 49.8)));
        List<SizedRelief> pipes = report.reliefs();
        assertTrue(pipes.stream().allMatch(SizedRelief::isBuilt));
        double[] flows = {12 * left, 8 * left + 24 * right + 12 * left, 24 * right + 12 * left};
        for (int i = 0; i < 3; i++) {
            assertEquals(HARD * flows[i], pipes.get(i).sized().peak().discharge(), 1e-9);
        }
        assertTrue(pipes.get(0).intoDitch() && pipes.get(2).intoDitch());
        assertFalse(pipes.get(1).intoDitch(), "it comes out under the bottom of the ditch there");
        TurnedOut turned = report.turnOuts().get(0);
        assertEquals(HARD * 10 * left, turned.flow(), 1e-9);
        SizedDitch.Arriving leftEnd = report.relieved().get(0).ends().get(0);
        SizedDitch.Arriving rightEnd = report.relieved().get(1).ends().get(0);
        assertEquals(HARD * 10 * left, leftEnd.flow(), 1e-9);
        assertEquals(HARD * 16 * right, rightEnd.flow(), 1e-9);
        assertEquals(
                HARD * 40 * (left + right),
                leftEnd.flow()
                        + rightEnd.flow()
                        + turned.flow()
                        + pipes.get(1).sized().peak().discharge(),
                1e-9);
        assertEquals(
                40 * 59 + 40 * 19,
                leftEnd.drained()
                        + rightEnd.drained()
                        + turned.drained()
                        + pipes.get(1).sized().crossing().drained(),
                1e-9);
    }

    @Test
    void theReachBelowTheMouthOfAPipeCarriesItsWaterToTheEnd() {
        DitchWater from = ditch(Side.LEFT, 50, 0.4);
        DitchWater to = ditch(Side.RIGHT, 10, 0.4);
        StormReport report =
                StormReport.of(
                        EVEN, List.of(), List.of(from, to), List.of(pipe(1, Side.LEFT, 60, 49.8)));
        SizedDitch plain = report.ditches().get(1);
        SizedDitch relieved = report.relieved().get(1);
        double more = HARD * 12 * (0.70 * 9 + 0.30 * 50);
        assertEquals(plain.ends().get(0).flow() + more, relieved.ends().get(0).flow(), 1e-9);
        SizedReach above = endingAt(relieved, 55);
        assertEquals(HARD * 11 * (0.70 * 9 + 0.30 * 10), above.flow(), 1e-9);
        SizedReach below = relieved.reaches().get(relieved.reaches().indexOf(above) + 1);
        assertEquals(55, below.top(), 1e-9);
        int pieces = (int) Math.round(below.foot() / 5);
        assertEquals(
                HARD * pieces * (0.70 * 9 + 0.30 * 10) + more, below.flow(), 1e-9, "and its own");
        assertEquals(12 * 59 + pieces * 19, below.drained(), 1e-9);
        assertTrue(report.carriesMore(relieved, below));
        assertFalse(report.carriesMore(relieved, above));
        assertEquals(List.of(relieved), report.receiving());
        assertTrue(report.reliefs().get(0).comesOutIn(relieved, below));
        assertFalse(report.reliefs().get(0).comesOutIn(relieved, above));
        double arrives = report.reliefs().get(0).sized().time();
        assertTrue(below.time() > arrives, "it gathers in the time of the longer way");
        SizedReach cut = endingAt(report.relieved().get(0), 60);
        assertEquals(more, cut.flow(), 1e-9);
        assertEquals(28 * 59, report.relieved().get(0).ends().get(0).drained(), 1e-9);
    }

    @Test
    void aPipeThatNoSizeServesLeavesItsWaterInTheDitch() {
        StormReport report =
                StormReport.of(
                        EVEN,
                        List.of(),
                        List.of(ditch(Side.LEFT, 50, 0.4), ditch(Side.RIGHT, 10, 0.4)),
                        List.of(pipe(1, 60, 0.1), pipe(2, Side.LEFT, 150, 49.8)));
        assertFalse(report.reliefs().get(0).isBuilt());
        assertEquals(30 * 59, report.reliefs().get(1).sized().crossing().drained(), 1e-9);
        assertEquals(10 * 59, report.relieved().get(0).ends().get(0).drained(), 1e-9);
    }

    @Test
    void waterIsNotLedRoundInACircle() {
        StormReport report =
                StormReport.of(
                        EVEN,
                        List.of(),
                        List.of(ditch(Side.LEFT, 50, 0.4), ditch(Side.RIGHT, 10, 0.4)),
                        List.of(pipe(1, Side.LEFT, 60, 49.8), pipe(2, Side.RIGHT, 58, 49.8)));
        assertTrue(report.reliefs().get(0).intoDitch());
        assertFalse(report.reliefs().get(1).intoDitch());
        double ends =
                report.relieved().stream().mapToDouble(each -> each.ends().get(0).drained()).sum();
        assertEquals(
                40 * 59 + 40 * 19,
                ends + report.reliefs().get(1).sized().crossing().drained(),
                1e-9);
    }

    @Test
    void withoutAProposalNothingIsToldAsRelieved() {
        StormReport report =
                StormReport.of(EVEN, List.of(), List.of(ditch(Side.LEFT, 50, 0.4)), List.of());
        assertTrue(report.relieved().isEmpty() && report.turnOuts().isEmpty());
        assertFalse(report.ditches().isEmpty());
    }
}
