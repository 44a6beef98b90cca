package lanewright.sheets.set;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import lanewright.measure.UnitSystem;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.page.LayoutCheck;
import lanewright.sheets.paint.PdfBook;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SheetSetTest {

    @TempDir Path place;

    @Test
    void noWordOverlapsAnotherOrIsCutOffOnAnyPage() throws Exception {
        for (UnitSystem units : UnitSystem.values()) {
            List<PdfBook.Leaf> leaves = ToySet.pages(units);
            for (int i = 0; i < leaves.size(); i++) {
                assertEquals(
                        List.of(),
                        LayoutCheck.of(leaves.get(i).drawing()),
                        units + ", page " + (i + 1));
            }
        }
    }

    @Test
    void everyWordOfEveryPageComesOutAsText() throws Exception {
        List<PdfBook.Leaf> leaves = ToySet.pages(UnitSystem.US);
        try (var document = Loader.loadPDF(SetPrinter.pdf(leaves))) {
            assertEquals(leaves.size(), document.getNumberOfPages());
            for (int i = 0; i < leaves.size(); i++) {
                var stripper = new PDFTextStripper();
                stripper.setStartPage(i + 1);
                stripper.setEndPage(i + 1);
                String text = squeezed(stripper.getText(document));
                for (String words : words(leaves.get(i).drawing().marks())) {
                    assertTrue(text.contains(squeezed(words)), "page " + (i + 1) + ": " + words);
                }
            }
        }
    }

    private static List<String> words(List<Mark> marks) {
        var words = new ArrayList<String>();
        for (Mark mark : marks) {
            if (mark instanceof Mark.Words said) {
                words.add(said.text());
            } else if (mark instanceof Mark.Framed framed) {
                words.addAll(words(framed.marks()));
            }
        }
        return words;
    }

    private static String squeezed(String text) {
        return text.replaceAll("\\s", "");
    }

    @Test
    void onlyHillShadingIsAPicture() throws Exception {
        List<PdfBook.Leaf> leaves = ToySet.pages(UnitSystem.METRIC);
        try (var document = Loader.loadPDF(SetPrinter.pdf(leaves))) {
            for (int i = 0; i < leaves.size(); i++) {
                int pictures = 0;
                PDPage page = document.getPage(i);
                for (COSName name : page.getResources().getXObjectNames()) {
                    pictures += page.getResources().isImageXObject(name) ? 1 : 0;
                }
                assertEquals(leaves.get(i).name().equals("Plan") ? 1 : 0, pictures, "page " + i);
            }
        }
    }

    @Test
    void theSameBytesComeFromAnyMachineLocaleAndNumberOfThreadsAlsoWithoutFonts() throws Exception {
        String here = SetPrinter.digest();
        assertEquals(List.of(here), elsewhere("1", "en", "US", 1));
        assertEquals(List.of(here), elsewhere("1", "ar", "EG", 2));
        assertEquals(List.of(here, here), elsewhere("2", "de", "DE", 2));
    }

    /** Makes the set in a new JVM with a fresh home and no font that the system knows. */
    private List<String> elsewhere(String threads, String language, String country, int processors)
            throws IOException, InterruptedException {
        Path noFonts = place.resolve("fonts.conf");
        Files.writeString(noFonts, "<fontconfig></fontconfig>");
        Path home = Files.createDirectories(place.resolve("home-" + language + threads));
        Path out = place.resolve("out-" + language + threads);
        var command =
                new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx600m",
                        "-XX:TieredStopAtLevel=1",
                        "-XX:ActiveProcessorCount=" + processors,
                        "-Djava.awt.headless=true",
                        "-Duser.home=" + home,
                        "-Duser.language=" + language,
                        "-Duser.country=" + country,
                        "-Duser.timezone=Asia/Kathmandu",
                        "-cp",
                        System.getProperty(
                                "surefire.test.class.path", System.getProperty("java.class.path")),
                        SetPrinter.class.getName(),
                        threads);
        command.environment().put("FONTCONFIG_FILE", noFonts.toString());
        command.redirectErrorStream(true).redirectOutput(out.toFile());
        Process process = command.start();
        assertTrue(process.waitFor(120, TimeUnit.SECONDS), "a set took over two minutes");
        List<String> lines = Files.readAllLines(out, StandardCharsets.UTF_8);
        assertEquals(0, process.exitValue(), String.join("\n", lines));
        return lines;
    }
}
