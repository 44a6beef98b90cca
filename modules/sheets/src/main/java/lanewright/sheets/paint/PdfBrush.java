package lanewright.sheets.paint;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.zip.DeflaterOutputStream;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Style;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;

/** Paints on one page of a PDF, whose y runs up from the bottom. */
final class PdfBrush implements Brush {

    private static final int ROUND = 1;
    private static final int BUTT = 0;

    private final PDDocument document;
    private final PDPageContentStream stream;
    private final double height;
    private final PDFont ordinary;
    private final PDFont bold;

    PdfBrush(
            PDDocument document,
            PDPageContentStream stream,
            double height,
            PDFont ordinary,
            PDFont bold) {
        this.document = document;
        this.stream = stream;
        this.height = height;
        this.ordinary = ordinary;
        this.bold = bold;
    }

    @Override
    public void fill(List<Outline> rings, int colour) throws IOException {
        stream.setNonStrokingColor(red(colour), green(colour), blue(colour));
        for (Outline ring : rings) {
            trace(ring);
        }
        stream.fillEvenOdd();
    }

    @Override
    public void stroke(
            List<Outline> lines, int colour, double width, Style.Dash dash, boolean round)
            throws IOException {
        stream.setStrokingColor(red(colour), green(colour), blue(colour));
        stream.setLineWidth((float) width);
        stream.setLineJoinStyle(ROUND);
        stream.setLineCapStyle(round ? ROUND : BUTT);
        double[] lengths = dash.lengths();
        float[] gaps = new float[lengths.length];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = (float) lengths[i];
        }
        stream.setLineDashPattern(gaps, 0);
        for (Outline line : lines) {
            trace(line);
        }
        stream.stroke();
    }

    private void trace(Outline line) throws IOException {
        stream.moveTo(across(line.x(0)), up(line.y(0)));
        for (int i = 1; i < line.size(); i++) {
            stream.lineTo(across(line.x(i)), up(line.y(i)));
        }
        if (line.isClosed()) {
            stream.closePath();
        }
    }

    @Override
    public void words(Mark.Words words, int colour) throws IOException {
        stream.beginText();
        stream.setFont(words.bold() ? bold : ordinary, (float) words.size());
        stream.setNonStrokingColor(red(colour), green(colour), blue(colour));
        double back = words.anchor().part() * words.width();
        if (words.turn() == 0) {
            stream.newLineAtOffset(across(words.x() - back), up(words.y()));
        } else {
            double turn = StrictMath.toRadians(-words.turn());
            double cos = StrictMath.cos(turn);
            double sin = StrictMath.sin(turn);
            stream.setTextMatrix(
                    new Matrix(
                            (float) cos,
                            (float) sin,
                            (float) -sin,
                            (float) cos,
                            across(words.x() - back * cos),
                            up(words.y() + back * sin)));
        }
        stream.showText(words.text());
        stream.endText();
    }

    @Override
    public void picture(Mark.Picture picture) throws IOException {
        var packed = new ByteArrayOutputStream();
        try (var deflater = new DeflaterOutputStream(packed)) {
            deflater.write(picture.grey().copy());
        }
        var image =
                new PDImageXObject(
                        document,
                        new ByteArrayInputStream(packed.toByteArray()),
                        COSName.FLATE_DECODE,
                        picture.columns(),
                        picture.rows(),
                        8,
                        PDDeviceGray.INSTANCE);
        image.setInterpolate(true);
        Box place = picture.place();
        stream.drawImage(
                image,
                across(place.x()),
                up(place.bottom()),
                (float) place.width(),
                (float) place.height());
    }

    @Override
    public void hold(List<Outline> rings) throws IOException {
        stream.saveGraphicsState();
        for (Outline ring : rings) {
            trace(ring);
        }
        stream.clipEvenOdd();
    }

    @Override
    public void release() throws IOException {
        stream.restoreGraphicsState();
    }

    private static float across(double x) {
        return (float) (Math.rint(x * 100) / 100);
    }

    private float up(double y) {
        return (float) (Math.rint((height - y) * 100) / 100);
    }

    private static float red(int colour) {
        return (colour >> 16 & 0xff) / 255f;
    }

    private static float green(int colour) {
        return (colour >> 8 & 0xff) / 255f;
    }

    private static float blue(int colour) {
        return (colour & 0xff) / 255f;
    }
}
