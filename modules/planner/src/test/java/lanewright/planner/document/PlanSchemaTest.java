package lanewright.planner.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The published schema against the reader. */
class PlanSchemaTest {

    private static final Path PUBLISHED = Path.of("../../docs/plan.schema.json");

    private static final Schema SCHEMA =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(PlanFile.schema());

    @Test
    void thePublishedSchemaIsTheOneThatThePlanIsReadBy() throws IOException {
        String made = PlanFile.schema();
        if (Boolean.getBoolean("regenerate")) {
            Files.writeString(PUBLISHED, made);
        }
        assertEquals(
                made,
                Files.readString(PUBLISHED),
                "docs/plan.schema.json is out of date: run this test with -Dregenerate=true");
        try (var packaged =
                PlanFile.class.getResourceAsStream("/lanewright/planner/plan.schema.json")) {
            assertEquals(made, new String(packaged.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    @Test
    void whatThePlanReaderTakesTheSchemaTakesToo() throws PlanException {
        for (String json :
                List.of(
                        Samples.LEAST,
                        Samples.MOST,
                        PlanFile.write(Samples.read(Samples.LEAST).plan(), true),
                        PlanFile.write(Samples.read(Samples.MOST).plan(), true))) {
            assertEquals(List.of(), SCHEMA.validate(json, InputFormat.JSON), json);
        }
    }

    @Test
    void theSchemaRefusesWhatTheReaderRefuses() {
        assertRefused("\"width\": \"14 ft\"", "\"widht\": \"14 ft\"");
        assertRefused("\"width\": \"14 ft\"", "\"width\": 14");
        assertRefused("\"bed\": \"boxed\"", "\"bed\": \"box\"");
        assertRefused("\"frame\": \"EPSG:26916\"", "\"frame\": \"UTM\"");
        assertRefused("\"radius\": \"80 ft\"", "\"east\": \"80 ft\"");
        assertRefused("\"width\": \"the", "\"wide\": \"the");
        assertRefused("\"version\": 1", "\"version\": 2");
        assertRefused("\"payload\": \"20 t\",", "");
    }

    private static void assertRefused(String good, String bad) {
        assertTrue(Samples.MOST.contains(good), good);
        assertFalse(
                SCHEMA.validate(Samples.MOST.replace(good, bad), InputFormat.JSON).isEmpty(), bad);
    }
}
