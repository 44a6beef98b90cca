package lanewright.planner.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** What cannot be built or paid for is refused in words that say what to write. */
class PipeWorkRefusedTest {

    private static void refused(String written, String instead, String... words) {
        assertTrue(Samples.MOST.contains(written), written);
        String plan = Samples.MOST.replace(written, instead);
        PlanException refusal = assertThrows(PlanException.class, () -> Samples.read(plan));
        for (String word : words) {
            assertTrue(
                    refusal.getMessage().contains(word),
                    instead + ": " + refusal.getMessage() + " lacks " + word);
        }
    }

    @Test
    void measuresThatCannotBeBuiltAreRefused() {
        refused("\"sideRoom\": \"10 in\"", "\"sideRoom\": \"1 in\"", "room");
        refused("\"bedding\": \"4 in\"", "\"bedding\": \"-1 in\"", "minus");
        refused("\"bedding\": \"4 in\"", "\"bedding\": \"6 ft\"", "bedding");
        refused("\"soldBy\": \"20 ft\"", "\"soldBy\": \"0 ft\"", "sold");
        refused("\"soldBy\": \"20 ft\"", "\"soldBy\": \"100 ft\"", "sold");
        refused("\"beyond\": \"1 ft\"", "\"beyond\": \"-1 ft\"", "minus");
        refused("\"axle\": \"12 tons\"", "\"axle\": \"0 tons\"", "axle");
        refused("\"axle\": \"12 tons\"", "\"axle\": \"200 tons\"", "axle");
        refused("\"trenchPerHour\": \"15 yd3\"", "\"trenchPerHour\": \"0 yd3\"", "hour");
        refused("\"size\": \"18 in\"", "\"size\": \"0 in\"", "wide");
        refused("\"rise\": \"15 in\"", "\"rise\": \"30 ft\"", "wide");
    }

    @Test
    void aPriceForTheWrongThingIsRefusedWithOneForTheRight() {
        refused("\"21.50 per ft\"", "\"21.50 per ton\"", "length", "per ft");
        refused("\"22.00 per ton\"", "\"22.00 per ft\"", "mass", "per ton");
        refused("\"41.00 per ton\"", "\"41.00 per h\"", "mass", "per ton");
        refused("\"2.10 per yd2\"", "\"2.10 per ton\"", "area", "per yd2");
        refused("\"95.00 per h\"", "\"95.00 per ft\"", "hour", "per h");
        refused("\"95.00 per h\"", "\"-95.00 per h\"", "zero");
        refused("\"450.00 per piece\"", "\"450.00 per ft\"", "piece");
    }

    @Test
    void whatNoPipeIsMadeOfAndWaterBelowTheGroundAreRefused() {
        refused("\"material\": \"plastic\"", "\"material\": \"wood\"", "concrete");
        refused("\"tailwater\": \"6 in\"", "\"tailwater\": \"-6 in\"", "minus");
        refused("\"tailwater\": \"6 in\"", "\"tailwater\": \"60 ft\"", "outlet");
    }

    @Test
    void endsThatNobodyMakesOrPublishedFiguresForAreRefused() {
        refused("\"ends\": \"mitred\"", "\"ends\": \"square\"", "projecting, mitred, headwall");
        refused(
                "\"material\": \"plastic\", \"tailwater\": \"6 in\"",
                "\"material\": \"concrete\", \"tailwater\": \"6 in\"",
                "no published figures",
                "headwall or projecting");
    }

    @Test
    void whatIsWrittenIsRead() throws PlanException {
        PipeWorkPart work = Samples.read(Samples.MOST).plan().water().pipeWork();
        assertEquals(0.254, work.sideRoom(), 1e-12);
        assertEquals(2, work.prices().size());
        assertEquals(WaterPart.PipeMaterial.METAL, work.prices().get(1).material());
        assertEquals(450, work.headwallPrice().of(1), 1e-9);
        List<WaterPart.Pipe> pipes = Samples.read(Samples.MOST).plan().water().pipes();
        assertEquals(WaterPart.PipeEnds.PROJECTING, pipes.get(0).ends());
        assertEquals(WaterPart.PipeEnds.MITRED, pipes.get(1).ends());
        assertEquals(21.50 / 0.3048, work.prices().get(0).price().of(1), 1e-9);
    }
}
