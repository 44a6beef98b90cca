package lanewright.sheets.paint;

import java.awt.geom.PathIterator;
import java.io.IOException;
import java.util.Base64;
import java.util.List;
import java.util.TreeSet;
import lanewright.measure.Words;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Drawing;
import lanewright.sheets.drawing.Face;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Style;

/**
 * Writes a drawing as SVG 1.1. Letters are outlines, each defined once, so that the picture looks
 * the same where the font is not installed; what they say stands in {@code aria-label}.
 */
public final class SvgPicture {

    private SvgPicture() {}

    /**
     * The drawing as one SVG document.
     *
     * @param title what the picture shows, for those who cannot see it
     */
    public static String of(String title, Drawing drawing) {
        var brush = new SvgBrush();
        try {
            Painting.paint(drawing, brush);
        } catch (IOException impossible) {
            throw new IllegalStateException("writing to memory failed", impossible);
        }
        var svg = new StringBuilder();
        svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\"")
                .append(" xmlns:xlink=\"http://www.w3.org/1999/xlink\" width=\"")
                .append(number(drawing.width()))
                .append("pt\" height=\"")
                .append(number(drawing.height()))
                .append("pt\" viewBox=\"0 0 ")
                .append(number(drawing.width()))
                .append(' ')
                .append(number(drawing.height()))
                .append("\" role=\"img\">\n<title>")
                .append(escaped(title))
                .append("</title>\n<defs>\n");
        for (int letter : brush.letters) {
            svg.append("<path id=\"").append(id(letter)).append("\" d=\"");
            letter(Face.of(letter < 0).shape(Math.abs(letter)).getPathIterator(null), svg);
            svg.append("\"/>\n");
        }
        return svg.append("</defs>\n<rect width=\"100%\" height=\"100%\" fill=\"#ffffff\"/>\n")
                .append(brush.body)
                .append("</svg>\n")
                .toString();
    }

    private static void letter(PathIterator path, StringBuilder svg) {
        double[] c = new double[6];
        for (; !path.isDone(); path.next()) {
            switch (path.currentSegment(c)) {
                case PathIterator.SEG_MOVETO -> pairs(svg.append('M'), c, 1);
                case PathIterator.SEG_LINETO -> pairs(svg.append('L'), c, 1);
                case PathIterator.SEG_QUADTO -> pairs(svg.append('Q'), c, 2);
                case PathIterator.SEG_CUBICTO -> pairs(svg.append('C'), c, 3);
                default -> svg.append('Z');
            }
        }
    }

    private static void pairs(StringBuilder svg, double[] c, int count) {
        for (int i = 0; i < 2 * count; i++) {
            svg.append(i == 0 ? "" : " ").append(plain(c[i], 4));
        }
    }

    private static String id(int letter) {
        return (letter < 0 ? "b" : "r") + Math.abs(letter);
    }

    private static String number(double value) {
        return plain(value, 2);
    }

    private static String plain(double value, int decimals) {
        String fixed = Words.fixed(value, decimals).replace(",", "");
        int end = fixed.length();
        while (fixed.charAt(end - 1) == '0') {
            end--;
        }
        String shown = fixed.substring(0, fixed.charAt(end - 1) == '.' ? end - 1 : end);
        return shown.equals("-0") ? "0" : shown;
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }

    private static final class SvgBrush implements Brush {

        private final StringBuilder body = new StringBuilder();

        /** Letters used: the character, negative for bold. */
        private final TreeSet<Integer> letters = new TreeSet<>();

        private int holds;

        @Override
        public void fill(List<Outline> rings, int colour) {
            body.append("<path fill-rule=\"evenodd\" fill=\"").append(hex(colour));
            body.append("\" d=\"").append(path(rings)).append("\"/>\n");
        }

        @Override
        public void stroke(
                List<Outline> lines, int colour, double width, Style.Dash dash, boolean round) {
            body.append("<path fill=\"none\" stroke-linejoin=\"round\" stroke=\"")
                    .append(hex(colour))
                    .append("\" stroke-width=\"")
                    .append(number(width))
                    .append('"');
            if (round) {
                body.append(" stroke-linecap=\"round\"");
            }
            double[] lengths = dash.lengths();
            if (lengths.length > 0) {
                body.append(" stroke-dasharray=\"");
                for (int i = 0; i < lengths.length; i++) {
                    body.append(i == 0 ? "" : " ").append(number(lengths[i]));
                }
                body.append('"');
            }
            body.append(" d=\"").append(path(lines)).append("\"/>\n");
        }

        private static String path(List<Outline> lines) {
            var path = new StringBuilder();
            for (Outline line : lines) {
                for (int i = 0; i < line.size(); i++) {
                    path.append(i == 0 ? 'M' : 'L')
                            .append(number(line.x(i)))
                            .append(' ')
                            .append(number(line.y(i)));
                }
                path.append(line.isClosed() ? "Z" : "");
            }
            return path.toString();
        }

        @Override
        public void words(Mark.Words words, int colour) {
            body.append("<g aria-label=\"").append(escaped(words.text()));
            body.append("\" fill=\"").append(hex(colour)).append("\" transform=\"translate(");
            body.append(number(words.x())).append(' ').append(number(words.y())).append(')');
            if (words.turn() != 0) {
                body.append(" rotate(").append(number(words.turn())).append(')');
            }
            body.append(" scale(").append(number(words.size())).append(" -");
            body.append(number(words.size())).append(")\">");
            Face face = Face.of(words.bold());
            double at = -words.anchor().part() * words.width() / words.size();
            for (int point : words.text().codePoints().toArray()) {
                if (point != ' ') {
                    int letter = words.bold() ? -point : point;
                    letters.add(letter);
                    body.append("<use xlink:href=\"#").append(id(letter)).append("\" x=\"");
                    body.append(plain(at, 4)).append("\"/>");
                }
                at += face.advance(point);
            }
            body.append("</g>\n");
        }

        @Override
        public void picture(Mark.Picture picture) {
            Box place = picture.place();
            byte[] png = PngFile.grey(picture.columns(), picture.rows(), picture.grey().copy());
            body.append("<image x=\"").append(number(place.x()));
            body.append("\" y=\"").append(number(place.y()));
            body.append("\" width=\"").append(number(place.width()));
            body.append("\" height=\"").append(number(place.height()));
            body.append("\" preserveAspectRatio=\"none\" xlink:href=\"data:image/png;base64,");
            body.append(Base64.getEncoder().encodeToString(png)).append("\"/>\n");
        }

        @Override
        public void hold(List<Outline> rings) {
            holds++;
            body.append("<clipPath id=\"c").append(holds);
            body.append("\"><path clip-rule=\"evenodd\" d=\"").append(path(rings));
            body.append("\"/></clipPath>\n<g clip-path=\"url(#c").append(holds).append(")\">\n");
        }

        @Override
        public void release() {
            body.append("</g>\n");
        }

        private static String hex(int colour) {
            String digits = Integer.toHexString(colour);
            return "#" + "0".repeat(6 - digits.length()) + digits;
        }
    }
}
