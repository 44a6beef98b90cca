package lanewright.sheets.set;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class StakeSheetTest {

    @Test
    void notesSpeakOnlyOfColumnsThatAreThere() {
        String bare = StakeSheet.laneNote(List.of("Station", "Left edge from line"));
        assertFalse(bare.contains("Finished:"));
        assertFalse(bare.contains("Above ground:"));
        assertFalse(bare.contains("Rod"));
        String whole =
                StakeSheet.laneNote(
                        List.of("Line finished", "Line above ground", "Rod at right edge"));
        assertTrue(whole.contains("Finished:"));
        assertTrue(whole.contains("Above ground:"));
        assertTrue(whole.contains("Rod:"));
        assertFalse(StakeSheet.offsetNote(List.of("In to hinge")).contains("Above stake"));
        assertTrue(StakeSheet.offsetNote(List.of("Hinge above stake")).contains("Above stake"));
    }

    @Test
    void distancesAreSpokenOfOnlyWithABenchmark() {
        String without = StakeSheet.settingOutNote(List.of("Station", "East, m"));
        assertEquals(-1, without.indexOf("distance"));
        assertTrue(
                StakeSheet.settingOutNote(List.of("Station", "From the benchmark"))
                        .contains("distance and direction"));
    }
}
