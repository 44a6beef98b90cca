package lanewright.earthwork;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lanewright.lane.volume.State;
import lanewright.measure.Assumption;
import lanewright.measure.Saying;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Bank, loose and compacted, against handbooks. */
class EarthStatesTest {

    private static Soil soil(double loose, double compacted) {
        return new Soil(
                "test soil",
                loose,
                compacted,
                Double.NaN,
                new Assumption("test", Saying.plain("test"), Assumption.Mark.YOURS, "test"));
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Bank, loose and compacted volumes close on each other for sand, loam, clay and blasted"
                    + " rock (A5) | US Army, FM 5-434, Earthmoving Operations, ch. 1, 2000 | from"
                    + " memory")
    void armyConversionFactorsClose() {
        // as printed, two decimals: from each state to bank, loose, compacted
        double[][][] printed = {
            {{1.00, 1.11, 0.95}, {0.90, 1.00, 0.86}, {1.05, 1.17, 1.00}},
            {{1.00, 1.25, 0.90}, {0.80, 1.00, 0.72}, {1.11, 1.39, 1.00}},
            {{1.00, 1.43, 0.90}, {0.70, 1.00, 0.63}, {1.11, 1.59, 1.00}},
            {{1.00, 1.50, 1.30}, {0.67, 1.00, 0.87}, {0.77, 1.15, 1.00}},
        };
        String[] names = {
            "sand, army figures",
            "loam, army figures",
            "clay, army figures",
            "blasted rock, army figures"
        };
        State[] states = {State.BANK, State.LOOSE, State.COMPACTED};
        for (int s = 0; s < names.length; s++) {
            Soil soil = Soil.published(names[s]);
            for (int from = 0; from < 3; from++) {
                for (int to = 0; to < 3; to++) {
                    assertEquals(
                            printed[s][from][to],
                            soil.convert(1, states[from], states[to]),
                            0.006,
                            names[s] + " " + states[from] + " to " + states[to]);
                }
            }
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Load factor, shrinkage factor, bank and compacted volume of 776,000 loose yd³ (EW-P4) |"
                    + " S. W. Nunnally, Construction Methods and Management, ch. 2 | from memory")
    void loadAndShrinkageFactors() {
        double loadFactor = 1960.0 / 2800;
        double shrinkageFactor = 2800.0 / 3500;
        Soil soil = soil(1 / loadFactor, shrinkageFactor);
        assertEquals(543_200, soil.convert(776_000, State.LOOSE, State.BANK), 1);
        assertEquals(434_560, soil.convert(776_000, State.LOOSE, State.COMPACTED), 1);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Swell and shrinkage of clay, common earth, blasted rock, sand and gravel from their"
                    + " unit weights (A5) | S. W. Nunnally, Construction Methods and Management,"
                    + " table of soil weights | from memory")
    void factorsFollowFromUnitWeights() {
        Object[][] weights = { // lb/yd³ loose, bank, compacted
            {"clay", 2310, 3000, 3750},
            {"common earth", 2480, 3100, 3450},
            {"blasted rock", 3060, 4600, 3550},
            {"sand and gravel", 2860, 3200, 3650},
        };
        for (Object[] row : weights) {
            Soil soil = Soil.published((String) row[0]);
            double loose = (int) row[1];
            double bank = (int) row[2];
            double compacted = (int) row[3];
            assertEquals(bank / loose, soil.loosePerBank(), 0.006, soil.name());
            assertEquals(bank / compacted, soil.compactedPerBank(), 0.006, soil.name());
        }
    }

    @Test
    void balanceIsKeptInTheBank() {
        Soil earth = Soil.published("common earth");
        Balance balance = Balance.of(100, 45, earth, Double.NaN);
        assertEquals(50, balance.fillBank(), 1e-12); // 45 / 0.90
        assertEquals(50, balance.over(), 1e-12);
        assertEquals(62.5, balance.haulAway().loose(), 1e-12); // 50 × 1.25
        assertEquals(-1, balance.haulAway().loads());
        assertEquals(Hauled.NONE, balance.bringIn());
        Balance shortOf = Balance.of(10, 45, earth, 10_000);
        assertEquals(-40, shortOf.over(), 1e-12);
        assertEquals(36, shortOf.bringIn().compacted(), 1e-12);
        // 40 × 1.25 loose m³ × 2480 lb/yd³ (1471 kg/m³) over 10 t
        assertEquals(8, shortOf.bringIn().loads());
    }

    @Test
    void unknownSoilNamesTheNearest() {
        var refusal =
                assertThrows(IllegalArgumentException.class, () -> Soil.published("comon earth"));
        assertTrue(refusal.getMessage().contains("common earth"), refusal.getMessage());
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Common earth lies in the general range: loose 1.10 to 1.30, packed 0.85 to 0.95 of bank"
                    + " (A5) | thesurveyschool.com, FS 5-H, volume | read")
    void commonEarthLiesInTheGeneralRange() {
        Soil earth = Soil.published("common earth");
        double loose = earth.convert(1, State.BANK, State.LOOSE);
        double packed = earth.convert(1, State.BANK, State.COMPACTED);
        assertTrue(loose >= 1.10 && loose <= 1.30, "loose " + loose);
        assertTrue(packed >= 0.85 && packed <= 0.95, "packed " + packed);
    }
}
