package lanewright.sheets.paint;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import lanewright.measure.UnitSystem;
import lanewright.sheets.Swatches;
import lanewright.sheets.drawing.Drawing;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.page.LayoutCheck;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class PaintersTest {

    private static byte[] pdf() throws IOException {
        var leaves = new ArrayList<PdfBook.Leaf>();
        for (Drawing page : Swatches.pages(UnitSystem.US)) {
            leaves.add(new PdfBook.Leaf(leaves.isEmpty() ? List.of("Swatches") : List.of(), page));
        }
        var out = new ByteArrayOutputStream();
        PdfBook.write("Swatches", leaves, out);
        return out.toByteArray();
    }

    @Test
    void noWordOverlapsAnotherOrLeavesItsFrame() {
        for (UnitSystem units : UnitSystem.values()) {
            for (Drawing page : Swatches.pages(units)) {
                assertEquals(List.of(), LayoutCheck.of(page));
            }
        }
    }

    @Test
    void everyWordComesOutOfThePdfAsText() throws IOException {
        try (var document = Loader.loadPDF(pdf())) {
            String text = squeezed(new PDFTextStripper().getText(document));
            for (Drawing page : Swatches.pages(UnitSystem.US)) {
                for (Mark mark : page.marks()) {
                    if (mark instanceof Mark.Words words && words.turn() == 0) {
                        assertTrue(text.contains(squeezed(words.text())), words.text());
                    }
                }
            }
        }
    }

    private static String squeezed(String text) {
        return text.replaceAll("\\s", "");
    }

    @Test
    void theSameDrawingGivesTheSameBytesTwice() throws IOException {
        assertArrayEquals(pdf(), pdf());
        Drawing page = Swatches.pages(UnitSystem.METRIC).get(0);
        assertEquals(SvgPicture.of("t", page), SvgPicture.of("t", page));
        assertArrayEquals(PngPicture.of(page, 40), PngPicture.of(page, 40));
    }

    @Test
    void thePdfCarriesNoDate() throws IOException {
        String bytes = new String(pdf(), StandardCharsets.ISO_8859_1);
        assertFalse(bytes.contains("CreationDate"));
        assertFalse(bytes.contains("ModDate"));
    }

    @Test
    void theSvgIsWellFormedAndSaysItsWords() throws Exception {
        String svg = SvgPicture.of("A & B", Swatches.pages(UnitSystem.US).get(0));
        var factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        var root =
                factory.newDocumentBuilder()
                        .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))
                        .getDocumentElement();
        assertEquals("svg", root.getLocalName());
        assertTrue(svg.contains("aria-label=\"Swatches: How does each role look?\""));
    }

    @Test
    void thePngIsReadByTheJdkInTheRightSize() throws IOException {
        Drawing page = Swatches.pages(UnitSystem.US).get(0);
        var image = ImageIO.read(new ByteArrayInputStream(PngPicture.of(page, 36)));
        assertEquals(306, image.getWidth());
        assertEquals(396, image.getHeight());
        assertEquals(0xFFFFFF, image.getRGB(2, 2) & 0xFFFFFF, "paper is white");
    }
}
