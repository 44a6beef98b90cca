package lanewright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A survey of a million points is planned in the memory that the start scripts give. */
class MillionPointsTest {

    private static final int COLUMNS = 1250;
    private static final int ROWS = 800;

    @TempDir Path folder;

    @Test
    void theWholePlanOfAKilometreOfLaneFitsIntoTheUsualMemory() throws Exception {
        LargeSurvey.write(folder, COLUMNS, ROWS);
        Path made = folder.resolve("made");
        String said =
                Child.command(
                                List.of("-Xmx1500m"),
                                "make",
                                folder.resolve("plan.json").toString(),
                                "--into",
                                made.toString())
                        .run(0);
        assertTrue(said.contains("1,000,000 points"), said);
        assertTrue(said.contains("1,000 m of lane"), said);
        assertTrue(Files.size(made.resolve("tables/stakes.csv")) > 0);
        try (var sheets = Loader.loadPDF(made.resolve("sheets.pdf").toFile())) {
            assertTrue(sheets.getNumberOfPages() > 10);
        }

        // A straight line of 1 km. Each edge slopes 1 down for 1.5 out while the crown falls 4 %,
        // so
        // a layer reaches its thickness / (1 / 1.5 - 0.04) further out at its foot than at its top.
        double reach = 1 / (1 / 1.5 - 0.04);
        double surface = 1000 * 0.075 * (3.6 + reach * 0.075);
        double base = 1000 * 0.150 * (3.6 + 2 * reach * 0.075 + reach * 0.150);
        Path outcome = made.resolve("outcome.json");
        assertEquals(surface, used(outcome, "surface"), 1e-6 * surface);
        assertEquals(base, used(outcome, "base"), 1e-6 * base);
        // Between no more than the stone's own foot and ten lanes abreast, 150 mm deep.
        double strip = used(outcome, "topsoil strip");
        assertTrue(strip > 1000 * 0.15 * 3.6 && strip < 1000 * 0.15 * 36, strip + " m³");
    }

    /** The volume that is used, m³: the first figure in the row of the table of volumes. */
    private static double used(Path outcome, String what) throws IOException {
        boolean inTable = false;
        boolean inRow = false;
        try (JsonParser parser = new JsonFactory().createParser(outcome.toFile())) {
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token == JsonToken.VALUE_STRING && "name".equals(parser.currentName())) {
                    inTable = parser.getText().equals("volumes");
                } else if (token == JsonToken.VALUE_STRING && inTable) {
                    inRow = inRow || parser.getText().equals(what);
                } else if (token == JsonToken.VALUE_NUMBER_FLOAT && inRow) {
                    return parser.getDoubleValue();
                }
            }
        }
        throw new AssertionError("no volume of " + what);
    }
}
