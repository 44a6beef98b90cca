package lanewright.survey.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import lanewright.survey.SurveyException;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LinesTest {

    @TempDir private Path folder;

    private List<String> read(String text) throws IOException, SurveyException {
        Path file = Files.writeString(folder.resolve("lines.txt"), text);
        List<String> read = new ArrayList<>();
        try (Lines lines = new Lines(file)) {
            while (lines.next()) {
                read.add(lines.text());
                assertEquals(read.size(), lines.number());
            }
            assertEquals(1.0, lines.done());
        }
        return read;
    }

    @Test
    void everyKindOfLineEndEndsALine() throws IOException, SurveyException {
        assertEquals(List.of("a", "b", "", "c"), read("a\nb\n\nc"));
        assertEquals(List.of("a", "b", "", "c"), read("a\r\nb\r\n\r\nc\r\n"));
        assertEquals(List.of("a", "b", "", "c"), read("a\rb\r\rc\r"));
        assertEquals(List.of("a", "b"), read("a\r\nb"));
    }

    @Test
    void byteOrderMarkIsPassedOver() throws IOException, SurveyException {
        assertEquals(List.of("größer"), read("\uFEFFgrößer\n"));
    }

    @RepeatedTest(10)
    void linesAcrossBuffersComeWhole(RepetitionInfo run) throws IOException, SurveyException {
        var random = new SplittableRandom(run.getCurrentRepetition());
        List<String> expected = new ArrayList<>();
        StringBuilder text = new StringBuilder();
        String[] ends = {"\n", "\r\n", "\r"};
        String end = ends[random.nextInt(3)];
        while (text.length() < 900_000) {
            int length = random.nextInt(random.nextInt(10) == 0 ? Lines.LONGEST : 40);
            String line = "x".repeat(length);
            expected.add(line);
            text.append(line).append(end);
        }
        assertEquals(expected, read(text.toString()));
    }

    @Test
    void missingFileIsNamedWithWhereItWasLookedFor() {
        Path missing = folder.resolve("missing.csv");
        SurveyException said = assertThrows(SurveyException.class, () -> new Lines(missing));
        assertTrue(said.getMessage().contains("there is no such file"), said.getMessage());
        assertTrue(said.getMessage().contains(missing.toString()), said.getMessage());
    }

    @Test
    void folderIsNoFile() {
        SurveyException said = assertThrows(SurveyException.class, () -> new Lines(folder));
        assertTrue(said.getMessage().contains("this is a folder"), said.getMessage());
    }
}
