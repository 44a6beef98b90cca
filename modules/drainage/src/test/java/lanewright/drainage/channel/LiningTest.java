package lanewright.drainage.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class LiningTest {

    private static final double FT = 0.3048;
    private static final double CFS = FT * FT * FT;
    private static final double PSF = 47.88025898;
    private static final ChannelShape DITCH = ChannelShape.triangle(3);

    @Test
    @Tag("outside")
    @DisplayName(
            "Permissible shear of grass, nets, gravel and riprap, every row | FHWA HEC-15, 1988 and"
                    + " 2005, table 2 | from memory")
    void shear() {
        String[] names = {
            "grass class A", "grass class B", "grass class C", "grass class D", "grass class E",
            "jute net", "straw with net", "curled wood mat", "synthetic mat", "gravel of 1 in",
            "gravel of 2 in", "riprap of 6 in", "riprap of 12 in"
        };
        double[] printed = {
            3.70, 2.10, 1.00, 0.60, 0.35, 0.45, 1.45, 1.55, 2.00, 0.33, 0.67, 2.00, 4.00
        };
        for (int i = 0; i < names.length; i++) {
            assertEquals(
                    printed[i], Lining.named(names[i]).shear().orElseThrow() / PSF, 1e-6, names[i]);
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Permissible velocity of bare soils, every row | Fortier and Scobey, 1926, after Chow,"
                    + " table 7-3 | from memory")
    void velocity() {
        String[] names = {
            "fine sand",
            "sandy loam",
            "silt loam",
            "firm loam",
            "stiff clay",
            "shale or hardpan",
            "fine gravel bed",
            "graded loam to cobbles",
            "coarse gravel bed",
            "cobbles"
        };
        double[] printed = {1.5, 1.75, 2.0, 2.5, 3.75, 6.0, 2.5, 3.75, 4.0, 5.0};
        for (int i = 0; i < names.length; i++) {
            assertEquals(
                    printed[i],
                    Lining.named(names[i]).velocity().orElseThrow() / FT,
                    1e-9,
                    names[i]);
        }
    }

    @Test
    void bareSoilStaysWhereItHolds() {
        Lining.Flow flow = Lining.least(DITCH, 0.5 * CFS, 0.003, "firm loam").orElseThrow();
        assertEquals("firm loam", flow.lining().name());
        assertEquals(0.020, flow.n());
    }

    @Test
    void moreWaterTakesMoreLiningAndNeverLess() {
        int last = 0;
        for (double flow = 0.25; flow < 40; flow *= 1.5) {
            Lining.Flow held = Lining.least(DITCH, flow * CFS, 0.03, "silt loam").orElseThrow();
            assertTrue(held.holds());
            assertTrue(held.lining().effort() >= last, flow + " cfs: " + held);
            last = held.lining().effort();
        }
        assertTrue(last >= 6, "last effort " + last);
    }

    @Test
    void whatIsProposedIsInEquilibrium() {
        Lining.Flow flow = Lining.named("grass class C").flow(DITCH, 3 * CFS, 0.04);
        assertEquals(3 * CFS, Manning.discharge(DITCH, flow.depth(), flow.n(), 0.04), 1e-9 * CFS);
        assertEquals(flow.velocity() * DITCH.area(flow.depth()), 3 * CFS, 1e-12);
    }

    @Test
    void nothingInTheTableHoldsATorrent() {
        assertTrue(Lining.least(DITCH, 500 * CFS, 0.3, "firm loam").isEmpty());
    }

    @Test
    void tallGrassIsNotPromised() {
        assertFalse(Lining.named("grass class A").proposed());
        assertFalse(Lining.named("grass class B").proposed());
    }

    private static void refused(String words, Runnable what) {
        String said = assertThrows(IllegalArgumentException.class, what::run).getMessage();
        assertTrue(said.contains(words), said);
    }

    @Test
    void badInputIsRefusedInWordsThatHelp() {
        refused("is a lining and no soil", () -> Lining.least(DITCH, 1, 0.01, "jute net"));
        refused("nearest is", () -> Lining.named("sandy lome"));
        refused("discharge", () -> Lining.named("firm loam").flow(DITCH, 0, 0.01));
        refused("level or rising", () -> Manning.velocity(DITCH, 1, 0.03, 0));
        refused("write 2 percent as 0.02", () -> Manning.velocity(DITCH, 1, 0.03, 2));
        refused("Manning's n", () -> Manning.velocity(DITCH, 1, -0.03, 0.01));
        refused("Manning's n", () -> Manning.velocity(DITCH, 1, 24, 0.01));
        refused("depth, m,", () -> DITCH.area(-0.1));
        refused("depth, m,", () -> Critical.froude(DITCH, 0, 1));
        refused("discharge", () -> Critical.depth(DITCH, Double.NaN));
        refused("give a bottom width", () -> new ChannelShape(0, 0, 0));
        refused("left side slope", () -> new ChannelShape(1, -1, 0));
        refused("leave them out", () -> CheckDams.of(1, 0.02, 0.05));
        refused("height of a check dam", () -> CheckDams.of(0, 0.05, 0.02));
        refused("factor of safety", () -> Shear.stone(1, 0.05, 0.5, 0.047, 2.6));
        refused("Shields", () -> Shear.stone(1, 0.05, 1, 1, 2.6));
        refused("specific gravity", () -> Shear.stone(1, 0.05, 1, 0.047, 1));
        refused("lay the outlet lower", () -> Shear.onBed(1, -0.01));
    }
}
