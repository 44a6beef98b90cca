package lanewright.desktop.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import lanewright.planner.document.Plan;
import lanewright.planner.document.PlanFile;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

class TypedTest {

    private static Plan plan;

    @BeforeAll
    static void read() throws Exception {
        Path sample = Path.of("..", "..", "sample-surveys", "marrow-fold", "plan.json");
        plan = PlanFile.read("plan.json", Files.readAllBytes(sample)).plan();
    }

    private static String meant(String typed, String shown) {
        return Typed.meant(typed, shown, "grade.steepest", plan);
    }

    @Test
    void aBareNumberHasTheUnitThatTheFieldShows() {
        assertEquals("10 %", meant("10", "12 %"));
        assertEquals("28 per ton", meant(" 28 ", "27.50 per ton"));
        assertEquals("4:1", meant("4", "3:1"));
        assertEquals("3,5 m", meant("3,5", "4 m"));
        assertEquals(".5 acres", meant(".5", "0.25 acres"));
        assertEquals("8'", meant("8", "7'"));
    }

    @Test
    void nothingIsGuessedWhereTheFieldShowsNoPlainUnit() {
        assertEquals("10", meant("10", ""));
        assertEquals("5", meant("5", "3+20"));
        assertEquals("5", meant("5", "7' 6\""));
        assertEquals("ten", meant("ten", "12 %"));
        assertEquals("10 ft", meant("10 ft", "12 in"));
    }

    @Test
    void anEmptyFieldTakesTheUnitOfTheExampleThatItShows() {
        String path = "stone.materials[0].price";
        assertEquals("30 per ton", Typed.example(path, plan));
        assertEquals("26.50 per ton", Typed.meant("26.50", "", path, plan));
        assertEquals("400 per load", Typed.meant("400 per load", "", path, plan));
        assertEquals("90 tons", Typed.meant("90", "", "stone.materials[0].inHand", plan));
        assertEquals("", Typed.example("grade.steepest", plan));
    }

    @Test
    void loadsInHandAreAsManyTonsAsTrucksBring() {
        String path = "stone.materials[0].inHand";
        assertEquals("126 tons", Typed.meant("7 loads", "200 tons", path, plan));
        assertEquals("18 tons", Typed.meant("1 load", "", path, plan));
        assertEquals("7 loads", meant("7 loads", "12 %"));
    }
}
