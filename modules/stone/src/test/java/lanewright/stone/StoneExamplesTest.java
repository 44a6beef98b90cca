package lanewright.stone;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lanewright.lane.shape.Layer;
import lanewright.measure.Assumption;
import lanewright.measure.Row;
import lanewright.measure.Saying;
import lanewright.measure.Tables;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Worked examples from public pages, in the units of the page. Tolerances are half its last digit.
 */
class StoneExamplesTest {

    private static final Assumption FROM =
            new Assumption(
                    "weight", Saying.plain("the example"), Assumption.Mark.YOURS, "the example");

    private static final double FOOT = 0.3048;
    private static final double INCH = 0.0254;
    private static final double POUND = 0.45359237;
    private static final double TON = 2000 * POUND;
    private static final double CUBIC_YARD = 27 * FOOT * FOOT * FOOT;

    /** A layer of stone whose weight is given in tons per cubic yard. */
    private static Supply stone(double tonsPerYard, double payloadTons, double pricePerTon) {
        return new Supply(
                "base",
                tonsPerYard * TON / CUBIC_YARD,
                FROM,
                1.25,
                FROM,
                0,
                payloadTons * TON,
                pricePerTon / TON,
                Double.NaN,
                null);
    }

    private static LayerStone even(double feet, double widthFeet, double inches, Supply supply) {
        return StoneAnswer.of(
                        feet * FOOT,
                        widthFeet * FOOT,
                        List.of(new Layer("base", inches * INCH, 0)),
                        List.of(supply))
                .layers()
                .get(0);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "500 ft x 12 ft x 2 in at 2.2 tons/yd3 takes 82 tons | chtrucking.net, calculate-tons page | read")
    void fiveHundredFeetOfTwoInches() {
        LayerStone layer = even(500, 12, 2, stone(2.2, 20, Double.NaN));
        // The page rounds 40.74 tons an inch up to 41 before doubling, hence a ton.
        assertEquals(82, layer.netMass() / TON, 1.0);
        assertEquals(222.2 * 2 / 12, layer.volume() / CUBIC_YARD, 0.02);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "22 tons cover 424 ft at 1 in and 106 ft at 4 in on 12 ft | notes.beehivebeach.com, gravel page | read")
    void howFarALoadGoes() {
        for (double[] row : new double[][] {{1, 424, 0.5}, {4, 106, 0.5}}) {
            LayerStone layer = even(2000, 12, row[0], stone(1.4, 22, Double.NaN));
            assertEquals(row[1], layer.loads().get(0).covers() / FOOT, row[2]);
            assertEquals(row[1], layer.loads().get(1).covers() / FOOT, row[2]);
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "12 ft wide costs $1.867 a foot for each inch at $36 a ton | notes.beehivebeach.com, gravel page | read")
    void moneyForAFootAndAnInch() {
        // 19.28 ft a ton in the source is cut, not rounded; whole loads of one ton here.
        LayerStone layer = even(19.2857142857 * 100, 12, 1, stone(1.4, 1, 36));
        assertEquals(100, layer.loadCount());
        assertEquals(1.867, layer.cost() / (19.2857142857 * 100), 0.0005);
        assertEquals(0.05185, layer.netMass() / TON / (19.2857142857 * 100), 0.000005);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "8 ft x 200 ft x 2 in, 13.75 tons and 10 % more | gardenguides.com, how_5675601 | read")
    void tenPercentLost() {
        Supply supply = stone(1.375, 20, Double.NaN);
        Supply lossy =
                new Supply(
                        supply.role(),
                        supply.density(),
                        FROM,
                        1.25,
                        FROM,
                        0.10,
                        supply.payload(),
                        Double.NaN,
                        Double.NaN,
                        null);
        LayerStone layer = even(200, 8, 2, lossy);
        // The page rounds 9.88 yd3 up to 10 before weighing: 15.125 printed, 14.94 unrounded.
        assertEquals(15.125, layer.needed() / TON, 0.19);
        assertEquals(9.88, layer.volume() / CUBIC_YARD, 0.005);
        assertEquals(1.10, layer.needed() / layer.netMass(), 1e-12);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "48 tons for 3 in and 16 for 1 in per station keep the ratio of thickness | Iowa DOT Design Manual 7C-1 | read")
    void tonsFollowThickness() {
        LayerStone three = even(100, 27.4, 3, stone(1.89, 20, Double.NaN));
        LayerStone one = even(100, 27.4, 1, stone(1.89, 20, Double.NaN));
        assertEquals(48.0 / 16.0, three.netMass() / one.netMass(), 1e-12);
        // 27.4 ft is the width that the printed rate implies at that state's 140 lb/ft3.
        assertEquals(48, three.netMass() / TON, 0.5);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "A 24-ton load of 17 yd3 goes 60 ft at 3 in | spiritlakeeast.org, third post | read")
    void aFeatheredLoad() {
        // The page gives no width: 30.6 ft is implied by its own numbers, feathered edges in.
        LayerStone layer = even(600, 30.6, 3, stone(24.0 / 17.0, 24, Double.NaN));
        assertEquals(60, layer.loads().get(0).covers() / FOOT, 0.5);
    }

    @Test
    @Tag("outside")
    @DisplayName("17 tons at $30.50 cost $518.50 | nutrac.info, gravel drive page of 2015 | read")
    void priceOfALoad() {
        LayerStone layer = even(20, 10, 3, stone(1.4, 17, 30.50));
        assertEquals(1, layer.loadCount());
        assertEquals(518.50, layer.cost(), 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "A cubic yard covers 324 ft2 an inch deep, by seven depths | tkttrucking.com, FAQs | read")
    void aCubicYardByDepth() {
        double[][] rows = {{0.25, 1296}, {1, 324}, {2, 162}, {3, 108}, {4, 81}, {6, 54}, {12, 27}};
        for (double[] row : rows) {
            LayerStone layer = even(row[1] / 9, 9, row[0], stone(1.4, 20, Double.NaN));
            assertEquals(1.0, layer.volume() / CUBIC_YARD, 1e-12);
        }
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "1.35 tons/yd3 is 100 lb/ft3 | robertsoncrushedstone.com and espacecommunication.be agree | read")
    void weightByYardAndByFoot() {
        assertEquals(
                100, stone(1.35, 20, Double.NaN).density() / (POUND / (FOOT * FOOT * FOOT)), 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "0.0043 tons per ft·ft·in is 1.393 tons/yd3 | haulinrocks.com, aggregates page | read")
    void tonsByRuleOfThumb() {
        LayerStone layer = even(100, 10, 4, stone(1.393, 20, Double.NaN));
        assertEquals(100 * 10 * 4 * 0.0043, layer.netMass() / TON, 0.01);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "A layer with S:1 edges averages w + S t wide | plane geometry of a trapezium | derived")
    void slopedEdgesWidenTheLayersBelow() {
        StoneReport report =
                StoneAnswer.of(
                        100,
                        4,
                        List.of(new Layer("surface", 0.1, 1.5), new Layer("base", 0.2, 1.5)),
                        List.of(stone(1.85, 20, Double.NaN), stone(1.85, 20, Double.NaN)));
        assertEquals("base", report.layers().get(0).supply().role());
        // surface: (4.0 + 4.3)/2 × 0.1; base under it: (4.3 + 4.9)/2 × 0.2
        assertEquals(92.0, report.layers().get(0).volume(), 1e-9);
        assertEquals(41.5, report.layers().get(1).volume(), 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Compacted base of 3,700 lb/yd3 is 1.85 tons/yd3 and 137 lb/ft3 | Washington State DOT Design Manual ch. 620 | read")
    void publishedWeightInOtherUnits() {
        double density = StoneTables.density("base", "crushed surfacing, base course").value();
        assertEquals(1.85, density / (TON / CUBIC_YARD), 1e-9);
        assertEquals(137.0, density / (POUND / (FOOT * FOOT * FOOT)), 0.05);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Stone on the truck of 2,850 and 2,950 lb/yd3 is 1.43 and 1.48 tons/yd3, and stands 1.30"
                    + " and 1.25 times as deep as packed (ST-09) | Washington State DOT Design"
                    + " Manual ch. 620 | read")
    void looseDepthFromPublishedWeights() {
        String[] names = {"crushed surfacing, top course", "crushed surfacing, base course"};
        double[][] printed = {{2850, 1.43, 1.85, 1.298}, {2950, 1.48, 1.85, 1.254}};
        for (int i = 0; i < names.length; i++) {
            double packed = StoneTables.density("base", names[i]).value() / (TON / CUBIC_YARD);
            double truck = 0;
            for (Row row : Tables.read("stone-weights").rows()) {
                if (row.text("name").equals(names[i]) && row.text("state").equals("truck")) {
                    truck = row.number("weight_lb_per_yd3");
                }
            }
            assertEquals(printed[i][0], truck);
            assertEquals(printed[i][1], truck / 2000, 0.00501);
            assertEquals(printed[i][2], packed, 0.005);
            assertEquals(printed[i][3], packed / (truck / 2000), 0.0005);
        }
        double top = StoneTables.loose("surface", "crushed surfacing, top course").value();
        double packs = StoneTables.loose("base", "crushed stone that packs").value();
        assertEquals(1.298, top, 0.005);
        assertEquals(1.254, packs, 0.005);
        assertEquals(0.230, 1 - 1 / top, 0.002);
        assertEquals(0.203, 1 - 1 / packs, 0.004);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "1.5 tons to the loose yard and 1.25 for packing are 1.875 tons to the packed yard |"
                    + " gunnisongravel.com, FAQ | read")
    void looseYardsAndPackedYards() {
        LayerStone layer = even(100, 12, 6, stone(1.875, 20, Double.NaN));
        double looseYards = layer.volume() / CUBIC_YARD * layer.looseDepth() / layer.thickness();
        assertEquals(looseYards * 1.5, layer.netMass() / TON, 1e-9);
        assertEquals(1.25, layer.looseDepth() / layer.thickness(), 1e-12);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Dense graded limestone in place is 3,780 lb/yd3, 140 lb/ft3, 1.89 tons/yd3 | Iowa DOT"
                    + " district table, adambradley.org | read")
    void limestoneInPlace() {
        double density = StoneTables.density("base", "crushed limestone, dense graded").value();
        assertEquals(140, density / (POUND / (FOOT * FOOT * FOOT)), 0.05);
        assertEquals(1.89, density / (TON / CUBIC_YARD), 1e-9);
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "Passing shares of sizes No. 57 and 67 | Iowa DOT metric gradations, numbers 3 and 5 |"
                    + " read")
    void passingSharesOfTwoSizes() {
        Row size57 = StoneTables.size("57");
        assertEquals("100", size57.text("passing_1_1/2_in"));
        assertEquals("95-100", size57.text("passing_1_in"));
        assertEquals("25-60", size57.text("passing_1/2_in"));
        assertEquals("0-10", size57.text("passing_no_4"));
        assertEquals("0-5", size57.text("passing_no_8"));
        Row size67 = StoneTables.size("67");
        assertEquals("100", size67.text("passing_1_in"));
        assertEquals("90-100", size67.text("passing_3/4_in"));
        assertEquals("20-55", size67.text("passing_3/8_in"));
        assertEquals("0-10", size67.text("passing_no_4"));
        assertEquals("0-5", size67.text("passing_no_8"));
    }
}
