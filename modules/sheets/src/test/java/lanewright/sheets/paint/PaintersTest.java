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
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Drawing;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pattern;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.drawing.Style;
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

    /** Half an inch of land in a frame, whether it ends just outside or a mile away. */
    @Test
    void anAreaThatReachesFarOutOfItsFrameLooksTheSameAndTakesNoMorePaint() throws IOException {
        Box frame = new Box(17.3, 11.9, 41.7, 36.1);
        for (Role role : Role.values()) {
            if (Style.of(role).pattern() == Pattern.NONE) {
                continue;
            }
            Drawing near = framed(role, frame, 20);
            Drawing far = framed(role, frame, 3000);
            assertArrayEquals(PngPicture.of(near, 300), PngPicture.of(far, 300), role.name());
            int more = SvgPicture.of("t", far).length() - SvgPicture.of("t", near).length();
            assertTrue(more < 100, role + " takes " + more + " letters more");
            // Between two pieces of its pattern there is nothing to stroke.
            Drawing thin = framed(role, new Box(30.1, 30.1, 0.05, 0.05), 0);
            assertFalse(SvgPicture.of("t", thin).contains("d=\"\""), role.name());
        }
    }

    private static Drawing framed(Role role, Box frame, double past) {
        Box land = frame.inset(-past);
        Outline ring = Outline.box(land.x(), land.y(), land.width(), land.height());
        return new Drawing(
                80,
                60,
                List.of(new Mark.Framed(frame, List.of(new Mark.Area(role, List.of(ring))))));
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
