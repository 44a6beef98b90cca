package lanewright.drainage.culvert;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Sizes, cover, length, apron and the choice of a pipe. */
class PipeChoiceTest {

    private static final double FT = 0.3048;
    private static final double IN = FT / 12;
    private static final double CFS = FT * FT * FT;

    private static PipeChoice.Wanted wanted(double discharge, double headwater, double room) {
        return new PipeChoice.Wanted(
                discharge, headwater, 0, 0.02, 10, room, Load.ROAD, Inlet.End.PROJECTING);
    }

    private static Size size(Material material, String name) {
        return Size.sold(material).stream()
                .filter(size -> size.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Length of a culvert through a fill | US Army subcourse EN5465, Drainage, chapter 5,"
                    + " airfield example | read")
    void lengthThroughAFill() {
        FillLength found =
                FillLength.of(607.00 * FT, 600.80 * FT, 599.62 * FT, 100 * FT, 10, 2 * FT);
        assertEquals(62, found.inletRun() / FT, 1e-6);
        assertEquals(73.8, found.outletRun() / FT, 1e-6);
        assertEquals(237.8, found.length() / FT, 1e-6);
        assertEquals(238, found.sold(2 * FT) / FT, 1e-6);
        // The fill over the middle of the first slope's foot: F1 6.2, with the pipe's fall 6.51.
        assertEquals(6.51, (607.00 - 600.80) + found.inletRun() / FT * 0.005, 1e-6);
        assertEquals(0.005, (600.80 - 599.62) / (found.length() / FT - 2), 0.00005);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Riprap apron at a 60-inch culvert | FHWA HEC-14, 2006, section 10.2, design example |"
                    + " from memory")
    void apron() {
        Apron apron = Apron.of(85 * CFS, 5 * FT, OptionalDouble.of(2 * FT), OptionalDouble.empty());
        assertEquals(0.43, apron.needed() / FT, 0.005);
        assertEquals(5.18, apron.needed() / IN, 0.1);
        Apron.Bed bed = apron.bed().orElseThrow();
        assertEquals(6, bed.stone() / IN, 1e-9);
        assertEquals(20, bed.length() / FT, 1e-9);
        assertEquals(28, bed.endWidth() / FT, 0.5);
        assertEquals(3.3 * 0.5, bed.depth() / FT, 1e-9);
    }

    @Test
    void tailwaterOfAnApronIsKeptWithinItsLimits() {
        OptionalDouble none = OptionalDouble.empty();
        double low = Apron.of(1, 1, OptionalDouble.of(0), none).needed();
        assertEquals(Apron.of(1, 1, OptionalDouble.of(0.4), none).needed(), low);
        assertEquals(Apron.of(1, 1, none, none).needed(), low);
        double high = Apron.of(1, 1, OptionalDouble.of(5), none).needed();
        assertEquals(Apron.of(1, 1, OptionalDouble.of(1), none).needed(), high);
        assertEquals(2.5 * high, low, 1e-12);
    }

    @Test
    void shootingFlowTakesLargerStone() {
        OptionalDouble none = OptionalDouble.empty();
        assertTrue(
                Apron.of(0.5, 1, none, OptionalDouble.of(0.3)).needed()
                        > Apron.of(0.5, 1, none, none).needed());
        assertTrue(Apron.of(30, 1, none, none).bed().isEmpty(), "a basin and no apron");
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Apron length and depth by class, every row | FHWA HEC-14, 2006, section 10.2 | from"
                    + " memory")
    void apronClasses() {
        double[][] rows = {
            {5, 4, 3.5}, {6, 4, 3.3}, {10, 5, 2.4}, {14, 6, 2.2}, {20, 7, 2.0}, {22, 8, 2.0}
        };
        double across = 2;
        for (double[] row : rows) {
            // The flow that needs just under this class, by the formula turned round.
            double stone = row[0] * IN * 0.999;
            double flow =
                    Math.pow(stone / (0.2 * across), 0.75)
                            * Math.sqrt(9.80665)
                            * Math.pow(across, 2.5);
            Apron.Bed bed =
                    Apron.of(flow, across, OptionalDouble.of(across), OptionalDouble.empty())
                            .bed()
                            .orElseThrow();
            assertEquals(row[0], bed.stone() / IN, 1e-9);
            assertEquals(row[1], bed.length() / across, 1e-9);
            assertEquals(row[2], bed.depth() / bed.stone(), 1e-9);
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Cover over metal pipe under construction axles | National Corrugated Steel Pipe"
                    + " Association, minimum cover requirements | read")
    void coverWhileBuilding() {
        Load[] loads = {Load.AXLE_50, Load.AXLE_75, Load.AXLE_110, Load.AXLE_150};
        double[] small = {2.0, 2.5, 3.0, 3.0};
        double[] large = {3.0, 3.0, 3.5, 4.0};
        for (int i = 0; i < loads.length; i++) {
            for (String name : new String[] {"12 in", "42 in"}) {
                assertEquals(
                        small[i], size(Material.METAL, name).cover(loads[i]).least() / FT, 1e-9);
            }
            for (String name : new String[] {"48 in", "72 in"}) {
                assertEquals(
                        large[i], size(Material.METAL, name).cover(loads[i]).least() / FT, 1e-9);
            }
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Cover under a road: metal 12 in or span/8, plastic 12 in, over 48-in pipe 24 in | common"
                    + " rules for highway loads | from memory")
    void coverUnderARoad() {
        assertEquals(12, size(Material.METAL, "24 in").cover(Load.ROAD).least() / IN, 1e-9);
        for (Size size : Size.sold(Material.METAL)) {
            double span = size.barrel().inside().span() / IN;
            assertEquals(Math.max(12, span / 8), size.cover(Load.ROAD).least() / IN, 1e-9);
        }
        assertEquals(12, size(Material.PLASTIC, "48 in").cover(Load.ROAD).least() / IN, 1e-9);
        assertEquals(24, size(Material.PLASTIC, "60 in").cover(Load.ROAD).least() / IN, 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Pipe-arches have the sold area of their equal round pipe, within a tenth | corrugated"
                    + " steel pipe-arch table | from memory")
    void pipeArches() {
        int[] round = {15, 18, 21, 24, 30, 36, 42, 48};
        List<Size> arches =
                Size.sold(Material.METAL).stream()
                        .filter(size -> size.shape() == Inlet.Shape.ARCH)
                        .toList();
        assertEquals(round.length, arches.size());
        for (int i = 0; i < round.length; i++) {
            double circle = Math.PI / 4 * Math.pow(round[i] * IN, 2);
            assertEquals(
                    1,
                    arches.get(i).barrel().inside().fullArea() / circle,
                    0.12,
                    arches.get(i).name());
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Inlet constants of pipe-arches and of boxes of charts 9 and 10 | FHWA HDS-5, 2001,"
                    + " appendix, table of inlet constants | from memory")
    void constantsFromMemory() {
        Object[][] rows = {
            {"box, wings at 45 degrees, top bevelled", 0.510, 0.667, 0.0309, 0.80},
            {"box, headwall at 90 degrees, chamfer of 3/4 in", 0.515, 0.667, 0.0375, 0.79},
            {"pipe-arch in headwall", 0.0083, 2.00, 0.0379, 0.69},
            {"pipe-arch, mitred to slope", 0.0300, 1.00, 0.0463, 0.75},
            {"pipe-arch, projecting", 0.0340, 1.50, 0.0496, 0.57}
        };
        for (Object[] row : rows) {
            Inlet inlet = Inlet.named((String) row[0]);
            assertEquals(row[1], inlet.k(), inlet.name());
            assertEquals(row[2], inlet.m(), inlet.name());
            assertEquals(row[3], inlet.c(), inlet.name());
            assertEquals(row[4], inlet.y(), inlet.name());
        }
    }

    @Test
    void theLeastThatCarriesIsChosenAndTheNextSmallerDoesNot() {
        for (Material material : Material.values()) {
            PipeChoice choice = PipeChoice.of(wanted(0.35, 0.9, 3), material);
            PipeChoice.Option chosen = choice.chosen().orElseThrow();
            assertTrue(chosen.does());
            assertEquals(1, chosen.barrels());
            assertTrue(choice.refusal().isEmpty());
            PipeChoice.Option smaller = choice.smaller().orElseThrow();
            PipeChoice.Option larger = choice.larger().orElseThrow();
            assertFalse(smaller.carries());
            assertTrue(larger.headwater().depth() < chosen.headwater().depth());
            double area = chosen.size().barrel().inside().fullArea();
            assertTrue(smaller.size().barrel().inside().fullArea() < area);
            assertTrue(larger.size().barrel().inside().fullArea() > area);
        }
    }

    @Test
    void underLittleCoverAPipeArchThenMoreBarrels() {
        // 30 in round needs 30.6 + 12 in; an arch of 35 by 24 in needs 36.6 in.
        PipeChoice arch = PipeChoice.of(wanted(0.55, 0.85, 37 * IN), Material.METAL);
        assertEquals("35 by 24 in", arch.chosen().orElseThrow().size().name());
        assertFalse(arch.larger().orElseThrow().fits());
        PipeChoice many = PipeChoice.of(wanted(0.9, 0.75, 37 * IN), Material.METAL);
        assertTrue(many.chosen().orElseThrow().barrels() > 1);
        assertTrue(many.chosen().orElseThrow().barrels() <= 3);
    }

    @Test
    void refusalsSayWhy() {
        PipeChoice shallow = PipeChoice.of(wanted(0.1, 0.5, 0.5), Material.METAL);
        assertTrue(shallow.chosen().isEmpty());
        Saying cover = shallow.refusal().orElseThrow();
        assertTrue(cover.pattern().startsWith("cover is too small"), cover.pattern());
        // 12 in of pipe, 0.564 in of wall and 12 in of cover.
        assertEquals(24.564 * IN, cover.quantities().get(0).value(), 1e-9);
        assertEquals(Quantity.height(0.5), cover.quantities().get(1));
        PipeChoice low = PipeChoice.of(wanted(2, 0.2, 2), Material.METAL);
        assertTrue(low.chosen().isEmpty());
        Saying headwater = low.refusal().orElseThrow();
        assertTrue(headwater.pattern().startsWith("headwater is too low"), headwater.pattern());
        assertEquals(Quantity.height(0.2), headwater.quantities().get(1));
    }

    @Test
    void oneAnswerForEachMaterial() {
        List<PipeChoice> choices =
                PipeChoice.of(wanted(0.2, 0.8, 2), List.of(Material.PLASTIC, Material.CONCRETE));
        assertEquals(Material.PLASTIC, choices.get(0).material());
        assertEquals(Material.CONCRETE, choices.get(1).material());
    }
}
