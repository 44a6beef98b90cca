package lanewright.sheets.paint;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import lanewright.sheets.drawing.Drawing;
import lanewright.sheets.drawing.Face;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDPageContentStream.AppendMode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageFitDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * Writes pages into one PDF: lines as lines, words as words in the font that comes along. The same
 * pages give the same bytes, whenever, wherever and by whatever thread they are written: the file
 * carries no date, and its identity is fixed.
 */
public final class PdfBook {

    /** Stands for the time that PDFBox would otherwise mix into the file's identity. */
    private static final long IDENTITY = 20_000L;

    /**
     * A page and the names that readers list it under.
     *
     * @param names for the list of contents; none if it continues the page before
     * @param drawing what is on it, as large as the page
     */
    public record Leaf(List<String> names, Drawing drawing) {
        /** Copies the list. */
        public Leaf {
            names = List.copyOf(names);
        }

        /** The first of the names, or nothing. */
        public String name() {
            return names.isEmpty() ? "" : names.get(0);
        }
    }

    private PdfBook() {}

    /**
     * Writes the book.
     *
     * @param title of the whole
     * @param leaves the pages in order, at least one
     * @param out stays open
     * @throws IOException if it cannot be written
     */
    public static void write(String title, List<Leaf> leaves, OutputStream out) throws IOException {
        if (leaves.isEmpty()) {
            throw new IllegalArgumentException("a book needs a page");
        }
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(IDENTITY);
            document.setVersion(1.7f);
            describe(document, title);
            PDFont ordinary = PDType0Font.load(document, Face.of(false).fresh(), true);
            PDFont bold = PDType0Font.load(document, Face.of(true).fresh(), true);
            var contents = new PDDocumentOutline();
            for (Leaf leaf : leaves) {
                Drawing drawing = leaf.drawing();
                PDPage page =
                        new PDPage(
                                new PDRectangle((float) drawing.width(), (float) drawing.height()));
                document.addPage(page);
                try (var stream =
                        new PDPageContentStream(document, page, AppendMode.OVERWRITE, false)) {
                    Painting.paint(
                            drawing,
                            new PdfBrush(document, stream, drawing.height(), ordinary, bold));
                }
                pack(document, page);
                for (String name : leaf.names()) {
                    contents.addLast(item(name, page));
                }
            }
            document.getDocumentCatalog().setDocumentOutline(contents);
            document.save(out, CompressParameters.NO_COMPRESSION);
        }
    }

    /** Packs what is on a page. Quickly: the library's own packing takes longer than all else. */
    private static void pack(PDDocument document, PDPage page) throws IOException {
        var packed = new PDStream(document);
        var deflater = new Deflater(Deflater.BEST_SPEED);
        try (InputStream content = page.getContents();
                var raw = packed.getCOSObject().createRawOutputStream();
                var out = new DeflaterOutputStream(raw, deflater)) {
            content.transferTo(out);
        } finally {
            deflater.end();
        }
        packed.getCOSObject().setItem(COSName.FILTER, COSName.FLATE_DECODE);
        page.setContents(packed);
    }

    private static void describe(PDDocument document, String title) {
        var about = new PDDocumentInformation();
        about.setTitle(title);
        about.setCreator("Lanewright");
        document.setDocumentInformation(about);
        var catalog = document.getDocumentCatalog();
        catalog.setLanguage(Locale.ENGLISH.getLanguage());
        var view = new PDViewerPreferences(new COSDictionary());
        view.setDisplayDocTitle(true);
        catalog.setViewerPreferences(view);
    }

    private static PDOutlineItem item(String name, PDPage page) {
        var item = new PDOutlineItem();
        item.setTitle(name);
        var place = new PDPageFitDestination();
        place.setPage(page);
        item.setDestination(place);
        return item;
    }
}
