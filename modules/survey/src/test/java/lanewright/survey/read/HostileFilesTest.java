package lanewright.survey.read;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import lanewright.measure.LengthUnit;
import lanewright.measure.Progress;
import lanewright.survey.Survey;
import lanewright.survey.SurveyException;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever stands in a file, it is read or refused in words; nothing else comes out. */
class HostileFilesTest {

    private static final String POINTS =
            """
                name,easting,northing,height,code
                1,100.1,200.2,30.3,"edge, left"
                2,110.4,205.1,30.9,
                3,120.7,215.9,31.4,tree
                4,130.2,218.4,31.7,
                """;
    private static final String PROBES =
            "name,easting,northing,topsoil,bearing,met\nA,1.5,2.5,>8 in,1 ft 2 in,loam\n";
    private static final String GEO_JSON =
            "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":"
                    + "{\"code\":\"edge\"},\"geometry\":{\"type\":\"LineString\",\"coordinates\":"
                    + "[[1,2,3],[4,5,6],[7,8.5,9e0]]}}]}\n";
    private static final String GRID =
            """
                ncols 3
                nrows 2
                xllcorner 0
                yllcorner 0
                cellsize 10
                NODATA_value -9999
                1 2 3
                4 5 -9999
                """;
    private static final String SNIPPETS = "\"\",;\t \n\r#-+.eE0189°{}[]:>'NaN\u0000\u00ff";

    @TempDir private Path folder;

    @RepeatedTest(400)
    void brokenFilesAreReadOrRefusedInWords(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        var random = new SplittableRandom(seed);
        String[] sound = {POINTS, PROBES, GEO_JSON, GRID};
        String[] names = {"a.csv", "b.csv", "c.geojson", "d.asc"};
        Holds[] holds = {Holds.POINTS, Holds.PROBES, Holds.BREAKLINES, Holds.GRID};
        for (int k = 0; k < sound.length; k++) {
            byte[] broken = broken(sound[k], random);
            Path path = Written.bytes(folder, names[k], broken);
            readOrRefused(path, holds[k], "seed " + seed + ": " + names[k]);
        }
    }

    @RepeatedTest(60)
    void brokenTiffsAreReadOrRefusedInWords(RepetitionInfo run) {
        int seed = run.getCurrentRepetition();
        var random = new SplittableRandom(seed);
        byte[] tiff = TinyTiff.of(8, 8, 1, 8);
        for (int k = 0; k < 1 + random.nextInt(3); k++) {
            tiff[8 + random.nextInt(160)] = (byte) random.nextInt(256);
        }
        readOrRefused(Written.bytes(folder, "land.tif", tiff), Holds.GRID, "seed " + seed);
    }

    private static void readOrRefused(Path path, Holds holds, String where) {
        SurveyFile file = SurveyFile.of(path, holds).unit(LengthUnit.METRE).local(true);
        try {
            Survey survey = SurveyReader.read(SurveyRequest.of(file), Progress.NONE);
            for (int i = 0; i < survey.size(); i++) {
                assertTrue(Double.isFinite(survey.x(i) + survey.y(i) + survey.z(i)), where);
            }
        } catch (SurveyException refused) {
            assertTrue(refused.getMessage().startsWith(path.getFileName().toString()), where);
            assertFalse(refused.what().isBlank() || refused.remedy().isBlank(), where);
        } catch (RuntimeException escaped) {
            fail(where, escaped);
        }
    }

    private static byte[] broken(String sound, SplittableRandom random) {
        var text = new StringBuilder(sound);
        for (int k = 0; k < 1 + random.nextInt(4); k++) {
            int at = random.nextInt(text.length());
            char snippet = SNIPPETS.charAt(random.nextInt(SNIPPETS.length()));
            switch (random.nextInt(4)) {
                case 0 -> text.deleteCharAt(at);
                case 1 -> text.insert(at, snippet);
                case 2 -> text.setCharAt(at, snippet);
                default -> text.insert(at, text.substring(at / 2, at));
            }
            if (text.isEmpty()) {
                text.append('x');
            }
        }
        boolean cut = random.nextInt(5) == 0;
        String left = cut ? text.substring(0, random.nextInt(text.length())) : text.toString();
        return left.getBytes(
                random.nextInt(6) == 0 ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8);
    }

    @Test
    void lineWithoutEndIsRefusedWithoutBeingKept() throws IOException {
        Path path = folder.resolve("endless.csv");
        byte[] block = "1234567890".repeat(100_000).getBytes(StandardCharsets.UTF_8);
        try (var out = Files.newOutputStream(path)) {
            for (int k = 0; k < 100; k++) {
                out.write(block);
            }
        }
        SurveyFile file = SurveyFile.of(path, Holds.POINTS);
        SurveyException refused =
                assertThrows(
                        SurveyException.class,
                        () -> SurveyReader.read(SurveyRequest.of(file), Progress.NONE));
        assertTrue(refused.getMessage().contains("line 1"), refused.getMessage());
    }
}
