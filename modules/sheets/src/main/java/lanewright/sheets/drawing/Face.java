package lanewright.sheets.drawing;

import java.awt.Shape;
import java.awt.geom.GeneralPath;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * The one typeface of all drawings, Noto Sans (SIL Open Font License 1.1), ordinary and bold. Words
 * are measured from the font's own tables, so a drawing is the same on every machine, also on one
 * without any font. All its figures are equally wide.
 *
 * <p>Safe for any number of threads.
 */
public final class Face {

    /** Part of the size that letters rise above the base line: the tallest of the Latin letters. */
    public static final double RISE = 0.77;

    /** Part of the size that letters fall below the base line. */
    public static final double FALL = 0.24;

    /** Characters below this are measured at once, for nearly all words are made of them. */
    private static final int LATIN = 0x180;

    private final String resource;
    private final byte[] bytes;
    private final TrueTypeFont font;
    private final CmapLookup glyphs;
    private final double unit;
    private final double[] latin = new double[LATIN];
    private final ConcurrentMap<Integer, Double> widths = new ConcurrentHashMap<>();
    private final ConcurrentMap<Integer, Shape> shapes = new ConcurrentHashMap<>();

    private static final class Regular {
        static final Face FACE = new Face("NotoSans_400Regular.ttf");
    }

    private static final class Bold {
        static final Face FACE = new Face("NotoSans_700Bold.ttf");
    }

    private Face(String name) {
        resource = "/lanewright/sheets/font/" + name;
        try (InputStream in = Face.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("the font " + resource + " is missing");
            }
            bytes = in.readAllBytes();
            font = parse(bytes);
            glyphs = font.getUnicodeCmapLookup();
            unit = 1.0 / font.getUnitsPerEm();
            for (int point = 0; point < LATIN; point++) {
                latin[point] = font.getAdvanceWidth(glyphs.getGlyphId(point)) * unit;
            }
        } catch (IOException broken) {
            throw new UncheckedIOException("the font " + resource + " cannot be read", broken);
        }
    }

    /** The ordinary or the bold face. */
    public static Face of(boolean bold) {
        return bold ? Bold.FACE : Regular.FACE;
    }

    /** The font anew, for a painter that wants one of its own. Ligatures are switched off. */
    public TrueTypeFont fresh() {
        try {
            return parse(bytes);
        } catch (IOException broken) {
            throw new UncheckedIOException("the font " + resource + " cannot be read", broken);
        }
    }

    private static TrueTypeFont parse(byte[] bytes) throws IOException {
        TrueTypeFont font = new TTFParser(true).parse(new RandomAccessReadBuffer(bytes));
        font.setEnableGsub(false);
        return font;
    }

    /** True if the font can show the character. */
    public boolean shows(int codePoint) {
        return codePoint >= ' ' && glyphs.getGlyphId(codePoint) != 0;
    }

    /**
     * What of {@code text} the font can show: blanks for tabs and line ends, {@code <=} and the
     * like for signs that it lacks, a question mark for all else that it does not hold.
     */
    public String shown(String text) {
        if (text.codePoints().allMatch(this::shows)) {
            return text;
        }
        StringBuilder shown = new StringBuilder();
        text.codePoints().forEach(point -> shown.append(stand(point)));
        return shown.toString();
    }

    private String stand(int point) {
        if (shows(point)) {
            return Character.toString(point);
        }
        return switch (point) {
            case '≤' -> "<=";
            case '≥' -> ">=";
            case '→' -> "->";
            default -> Character.isWhitespace(point) ? " " : "?";
        };
    }

    /** Length of {@code text} on one line at {@code size} pt, pt. */
    public double width(String text, double size) {
        double sum = 0;
        for (int at = 0; at < text.length(); at += Character.charCount(text.codePointAt(at))) {
            sum += advance(text.codePointAt(at));
        }
        return sum * size;
    }

    /** How far the pen moves for one character, part of the size. */
    public double advance(int codePoint) {
        return codePoint >= 0 && codePoint < LATIN
                ? latin[codePoint]
                : widths.computeIfAbsent(codePoint, this::readAdvance);
    }

    private double readAdvance(int codePoint) {
        synchronized (font) {
            try {
                return font.getAdvanceWidth(glyphs.getGlyphId(codePoint)) * unit;
            } catch (IOException broken) {
                throw new UncheckedIOException("the font " + resource + " cannot be read", broken);
            }
        }
    }

    /** Outline of one character at size 1, y up, base line at zero. */
    public Shape shape(int codePoint) {
        return shapes.computeIfAbsent(codePoint, this::readShape);
    }

    private Shape readShape(int codePoint) {
        synchronized (font) {
            try {
                GlyphData glyph = font.getGlyph().getGlyph(glyphs.getGlyphId(codePoint));
                GeneralPath path = glyph == null ? new GeneralPath() : glyph.getPath();
                path.transform(java.awt.geom.AffineTransform.getScaleInstance(unit, unit));
                return path;
            } catch (IOException broken) {
                throw new UncheckedIOException("the font " + resource + " cannot be read", broken);
            }
        }
    }
}
