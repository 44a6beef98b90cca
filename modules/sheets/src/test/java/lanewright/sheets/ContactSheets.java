package lanewright.sheets;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * Turns the pages of a PDF into pictures, in colour or grey, for people who want to look at them.
 */
public final class ContactSheets {

    private ContactSheets() {}

    /**
     * Arguments: the PDF, the folder for the pictures, dots per inch, and {@code grey} if wanted.
     */
    public static void main(String[] args) throws IOException {
        Path folder = Files.createDirectories(Path.of(args[1]));
        boolean grey = args.length > 3;
        try (var document = Loader.loadPDF(Path.of(args[0]).toFile())) {
            var renderer = new PDFRenderer(document);
            for (int i = 0; i < document.getNumberOfPages(); i++) {
                var image =
                        renderer.renderImageWithDPI(
                                i,
                                Float.parseFloat(args[2]),
                                grey ? ImageType.GRAY : ImageType.RGB);
                ImageIO.write(image, "png", folder.resolve("page-" + (i + 1) + ".png").toFile());
            }
        }
    }
}
