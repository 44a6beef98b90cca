package lanewright.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands on a plan, on a plane of 5 %. */
class PlanCommandsTest {

    @TempDir Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @BeforeEach
    void survey() throws IOException {
        var points = new StringBuilder("name,easting,northing,height,code\n");
        int number = 1;
        for (int x = -40; x <= 540; x += 20) {
            for (int y = -100; y <= 100; y += 20) {
                points.append(number++).append(',').append(x).append(',').append(y);
                points.append(',').append(400 + x / 20.0).append(",ground\n");
            }
        }
        Files.writeString(folder.resolve("points.csv"), points);
    }

    private int run(String... arguments) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return Main.run(new PrintWriter(out), new PrintWriter(err), arguments);
    }

    private String plan() {
        return folder.resolve("plan.json").toString();
    }

    private int start(String... more) {
        return startTo("500 ft, 0 ft", more);
    }

    private int startTo(String place, String... more) {
        var words = new ArrayList<>(List.of(more));
        words.addAll(
                0,
                List.of(
                        "start",
                        "--points",
                        folder.resolve("points.csv").toString(),
                        "--unit",
                        "ft",
                        "--from",
                        "0 ft, 0 ft",
                        "--to",
                        place,
                        "--plan",
                        plan()));
        return run(words.toArray(String[]::new));
    }

    @Test
    void fromPointsToAPlanFolder() throws IOException {
        assertEquals(0, start(), err.toString());
        assertTrue(out.toString().contains("points.csv"), out.toString());
        String written = Files.readString(folder.resolve("plan.json"));
        assertTrue(written.contains("\"why\""), written);
        assertTrue(written.contains("\"reasons\""), written);

        assertEquals(0, run("check", plan()), err.toString());
        assertTrue(out.toString().contains("How much stone?"), out.toString());

        Path target = folder.resolve("made");
        assertEquals(0, run("make", plan(), "--into", target.toString()), err.toString());
        assertTrue(out.toString().contains(target.toString()), out.toString());
        assertTrue(Files.size(target.resolve("sheets.pdf")) > 0);

        byte[] before = Files.readAllBytes(target.resolve("outcome.json"));
        Files.writeString(folder.resolve("plan.json"), written.replace("12 ft", "12"));
        assertEquals(3, run("make", plan(), "--into", target.toString()));
        assertTrue(err.toString().contains("12 has no unit"), err.toString());
        assertTrue(err.toString().contains("plan.json, line "), err.toString());
        assertArrayEquals(before, Files.readAllBytes(target.resolve("outcome.json")));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(
                    List.of("made", "plan.json", "points.csv"),
                    left.map(path -> path.getFileName().toString()).sorted().toList());
        }
    }

    @Test
    void codesOfSeveralWordsComeThroughThePlan() throws IOException {
        Path points = folder.resolve("points.csv");
        Files.writeString(
                points,
                Files.readString(points)
                        + "a,11,3,400.6,road edge\nb,52,4,402.6,Road  Edge\n"
                        + "c,11,33,400.6,\"swale, old\"\nd,52,34,402.6,\"swale, old\"\n"
                        + "e,11,43,400.6,6\"\" pipe\nf,52,44,402.6,6\"\" pipe\n"
                        + "g,11,63,400.6,Straße\n");
        assertEquals(
                0, start("--breaklines", "road edge,\"swale, old\",6\"\" pipe"), err.toString());
        String written = Files.readString(folder.resolve("plan.json"));
        assertTrue(written.contains("\"road edge\""), written);
        assertTrue(written.contains("\"swale, old\""), written);
        assertEquals(0, run("check", plan()), err.toString());
        assertTrue(
                out.toString().contains("Read points.csv: 337 points, 3 lines, 0 probe holes"),
                out.toString());
        Files.delete(folder.resolve("plan.json"));
        assertEquals(3, start("--breaklines", "edge,\"open"));
        assertTrue(err.toString().contains("double quotes"), err.toString());
    }

    @Test
    void aPlanThatIsThereIsNeverWrittenOver() throws IOException {
        Files.writeString(folder.resolve("plan.json"), "mine");
        assertEquals(4, start());
        assertEquals("mine", Files.readString(folder.resolve("plan.json")));
    }

    @Test
    void aGradeIsReplacedOnlyWhenAsked() throws IOException {
        start();
        assertEquals(3, run("grade", plan()));
        assertTrue(err.toString().contains("--replace"), err.toString());
        String before = Files.readString(folder.resolve("plan.json"));
        assertEquals(0, run("grade", plan(), "--replace"), err.toString());
        assertEquals(before, Files.readString(folder.resolve("plan.json")));
    }

    @Test
    void whatIsMissingIsNamedWithWhatToDo() {
        assertEquals(4, run("check", folder.resolve("none.json").toString()));
        assertTrue(err.toString().contains("lanewright start"), err.toString());
        assertEquals(2, run("chek", plan()));
        assertTrue(err.toString().contains("check"), err.toString());
        assertEquals(2, run("start", "--points", "points.csv"));
        assertTrue(err.toString().contains("--from"), err.toString());
    }

    @Test
    void aSurveyWithTwoReadingsIsRefusedWithWhatToDeclare() throws IOException {
        Files.writeString(
                folder.resolve("points.csv"),
                "1,100.0,200.0,50.0\n2,110.0,200.0,50.1\n3,110.0,215.0,50.2\n4,100.0,215.0,50.3\n");
        assertEquals(3, start());
        assertTrue(err.toString().contains("columns"), err.toString());
        assertFalse(Files.exists(folder.resolve("plan.json")));
        start("--columns", "name, easting, northing, height");
        assertFalse(err.toString().contains("columns"), err.toString());
    }

    @Test
    void aPlaceOffTheSurveyIsNamed() {
        assertEquals(3, startTo("5000 ft, 0 ft", "--by", "250 ft, 20 ft"));
        assertTrue(err.toString().contains("far end"), err.toString());
        assertTrue(err.toString().contains("outside the surveyed ground"), err.toString());
    }

    @Test
    void helpLoadsNeitherReferenceSystemsNorPdf() throws IOException, InterruptedException {
        Process process =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-Xlog:class+load",
                                "-cp",
                                Child.classPath(),
                                "lanewright.cli.Main",
                                "--help")
                        .redirectErrorStream(true)
                        .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor());
        assertTrue(said.contains("Usage: lanewright"), said);
        for (String library : List.of("org.geotools", "org.hsqldb", "org.apache.pdfbox")) {
            assertFalse(said.contains(library), library);
        }
    }
}
