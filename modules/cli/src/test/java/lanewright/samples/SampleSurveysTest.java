package lanewright.samples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import lanewright.survey.SurveyException;
import org.junit.jupiter.api.Test;

/**
 * The sample surveys are what their generators make. Run with {@code -Dregenerate=true} to write
 * them anew after a generator was changed on purpose.
 */
class SampleSurveysTest {

    /** The top of the project: Surefire starts in the module's own folder. */
    static final Path SAMPLES = Path.of("..", "..", "sample-surveys").normalize();

    @Test
    void marrowFoldIsWhatItsGeneratorMakes() throws IOException {
        compare(MarrowFold.NAME, MarrowFold.files());
    }

    @Test
    void wickleBankIsWhatItsGeneratorMakes() throws IOException, SurveyException {
        compare(WickleBank.NAME, WickleBank.files());
    }

    @Test
    void theGroundOfWickleBankRisesNorthwardEverywhere() {
        for (double x = 0; x <= 350; x += 1) {
            for (double y = -45; y < 165; y += 1) {
                assertTrue(WickleBank.height(x, y + 1) > WickleBank.height(x, y), x + ", " + y);
            }
        }
    }

    private static void compare(String name, Map<String, String> files) throws IOException {
        for (Map.Entry<String, String> file : files.entrySet()) {
            Path path = SAMPLES.resolve(name).resolve(file.getKey());
            if (Boolean.getBoolean("regenerate")) {
                Files.createDirectories(path.getParent());
                Files.writeString(path, file.getValue());
            }
            assertEquals(file.getValue(), Files.readString(path), path.toString());
        }
    }
}
