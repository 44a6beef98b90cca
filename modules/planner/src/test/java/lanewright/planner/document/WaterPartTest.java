package lanewright.planner.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.TreeMap;
import lanewright.drainage.runoff.DesignRain;
import lanewright.drainage.storm.StormAsked;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Rain by a table, several kinds of land, outlets and berms, as a plan has them. */
class WaterPartTest {

    private static final String ROWS =
            """
            "years": "10", "periods": ["2", "10"],
            "table": [
              { "lasts": "5 min", "rain": ["5.18 in/h", "7.14 in/h"] },
              { "lasts": "10 min", "rain": ["4.15 in/h", "5.71 in/h"] },
              { "lasts": "15 min", "rain": ["3.48 in/h", "4.81 in/h"] },
              { "lasts": "30 min", "rain": ["2.40 in/h", "3.49 in/h"] },
              { "lasts": "60 min", "rain": ["1.51 in/h", "2.27 in/h"] }
            ]""";

    private static final String LAND = "\"land\": \"pasture, fair\", \"soil\": \"c\"";

    private static String plan(String water) {
        return Samples.LEAST.replace("\"along\":", "\"water\": {" + water + "},\n  \"along\":");
    }

    private static String rain(String rain) {
        return plan("\"rain\": {" + rain + "}");
    }

    private static StormAsked asked(String rain) throws PlanException {
        StormAsked asked =
                Samples.read(rain(rain)).plan().water().rain().asked(EarthPart.Washes.LITTLE);
        assertNotNull(asked);
        return asked;
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "20 minutes of a published table by a line of logarithms | NOAA Atlas 14, volume 2,"
                    + " version 3, annual maxima, 1 in 10; 4.210 in/h between 15 and 30 min | read")
    void aPublishedTableIsReadBetweenItsRows() throws PlanException {
        DesignRain rain = asked(ROWS + ", " + LAND).table().orElseThrow();
        assertEquals(4.210, rain.intensity(1200, 10) * 3600 / 0.0254, 0.001);
        assertEquals(7.14, rain.intensity(300, 10) * 3600 / 0.0254, 1e-9);
        assertEquals(5.18, rain.intensity(300, 2) * 3600 / 0.0254, 1e-9);
    }

    @Test
    void depthsAndIntensitiesAreOne() throws PlanException {
        String deep =
                """
                "years": "10",
                "table": [
                  { "lasts": "5 min", "rain": ["15.113 mm"] },
                  { "lasts": "1 h", "rain": ["57.658 mm"] }
                ],
                """
                        + LAND;
        DesignRain rain = asked(deep).table().orElseThrow();
        assertEquals(7.14, rain.intensity(300, 10) * 3600 / 0.0254, 1e-6);
        assertEquals(2.27, rain.intensity(3600, 10) * 3600 / 0.0254, 1e-6);
    }

    @Test
    void severalLandsStandForOne() throws PlanException {
        StormAsked asked =
                asked(
                        "\"day\": \"4 in\", \"lands\": ["
                                + "{\"land\": \"pasture, fair\", \"soil\": \"c\", \"share\": \"70 %\"},"
                                + "{\"land\": \"woods, good\", \"soil\": \"a\", \"share\": \"30 %\"}]");
        assertEquals(0.7 * 79 + 0.3 * 30, asked.curveNumber(), 1e-9);
        assertTrue(asked.table().isEmpty());
    }

    @Test
    void whatIsWrittenIsReadAgain() throws PlanException {
        Plan plan = Samples.read(Samples.MOST).plan();
        assertEquals(plan.water(), Samples.read(PlanFile.write(plan, false)).plan().water());
        WaterPart water = plan.water();
        assertEquals(3, water.outlets().size());
        assertEquals(WaterPart.Permitted.NOT_KNOWN, water.outlets().get(1).permitted());
        assertNull(water.outlets().get(1).side());
        assertEquals(Double.POSITIVE_INFINITY, water.berms().get(0).to());
    }

    @Test
    void whatCannotBeIsAnsweredInWords() {
        Map<String, String> wrong = new TreeMap<>();
        String table = ROWS + ", " + LAND;
        wrong.put(table.replace("5.18 in/h", "0 in/h"), "over zero");
        wrong.put(table.replace("5.18 in/h", "-1 in/h"), "");
        wrong.put(table.replace("\"5.18 in/h\", ", ""), "figures for");
        wrong.put(table.replace("10 min", "5 min"), "rise");
        wrong.put(table.replace("10 min", "4 min"), "rise");
        wrong.put(table.replace("10 min", "some time"), "how long it rains");
        wrong.put(table.replace("5.18 in/h", "a lot"), "rain in the table");
        wrong.put(table.replace("5.18 in/h", "9 in/h"), "less deep");
        wrong.put(table.replace("4.15 in/h", "0.4 in/h"), "less deep");
        wrong.put(table.replace("4.15 in/h", "6 in/h").replace("5.71", "9"), "harder");
        wrong.put(table.replace("\"years\": \"10\"", "\"years\": \"25\""), "no return period");
        wrong.put(table.replace("\"years\": \"10\", ", ""), "no return period");
        wrong.put(table.replace("[\"2\", \"10\"]", "[\"10\", \"2\"]"), "rise");
        wrong.put(table.replace("[\"2\", \"10\"]", "[\"0\", \"10\"]"), "rise");
        wrong.put(table + ", \"day\": \"4 in\"", "given twice");
        wrong.put("\"periods\": [\"2\"], " + LAND, "no table");
        wrong.put(
                "\"years\": \"2\", \"table\": [ {\"lasts\": \"24 h\", \"rain\": [\"4 in\"]} ], "
                        + LAND,
                "a day and longer");
        String land =
                "\"day\": \"4 in\", \"lands\": [{\"land\": \"meadow\", \"soil\": \"b\", \"share\": \"";
        wrong.put(land + "70 %\"}]", "must make 100 %");
        wrong.put(land + "0 %\"}]", "over 0");
        wrong.put(land + "130 %\"}]", "at most 100 %");
        wrong.put(land.replace("meadow", "moor") + "100 %\"}]", "no land of the table");
        wrong.put(land.replace("\"b\"", "\"not known\"") + "100 %\"}]", "is not known");
        wrong.put(land + "100 %\"}], " + LAND, "given twice");
        for (Map.Entry<String, String> each : wrong.entrySet()) {
            PlanException refusal =
                    assertThrows(
                            PlanException.class,
                            () -> Samples.read(rain(each.getKey())),
                            each.getKey());
            assertTrue(refusal.getMessage().contains(each.getValue()), refusal.getMessage());
            assertFalse(refusal.troubles().get(0).remedy().isBlank());
        }
    }

    @Test
    void outletsAndBermsThatCannotBeAreAnsweredInWords() {
        String outlet = "\"outlets\": [ { \"name\": \"gully\", ";
        for (String wrong :
                new String[] {
                    outlet + "\"station\": \"1+00\", \"east\": \"1 ft\", \"north\": \"2 ft\" } ]",
                    outlet + "\"east\": \"1 ft\" } ]",
                    outlet + "\"longitude\": \"10°\" } ]",
                    outlet
                            + "\"east\": \"1 ft\", \"north\": \"1 ft\", \"longitude\": \"1°\","
                            + " \"latitude\": \"1°\" } ]",
                    outlet + "\"station\": \"1+00\", \"permitted\": \"perhaps\" } ]",
                    outlet + "\"station\": \"1+00\", \"side\": \"up\" } ]",
                    outlet + "\"station\": \"1+00\", \"permited\": \"yes\" } ]",
                    "\"berms\": [ { \"from\": \"2+00\", \"to\": \"1+00\", \"side\": \"left\","
                            + " \"height\": \"4 in\" } ]",
                    "\"berms\": [ { \"from\": \"start\", \"to\": \"end\", \"side\": \"left\","
                            + " \"height\": \"0 in\" } ]"
                }) {
            PlanException refusal =
                    assertThrows(PlanException.class, () -> Samples.read(plan(wrong)), wrong);
            assertFalse(refusal.troubles().get(0).remedy().isBlank(), wrong);
        }
    }
}
