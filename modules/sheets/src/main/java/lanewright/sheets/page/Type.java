package lanewright.sheets.page;

import java.util.ArrayList;
import java.util.List;
import lanewright.sheets.drawing.Face;

/** Sizes of words on sheets, pt, and how they are broken into lines. */
public final class Type {

    /** The question that a sheet answers. */
    public static final double TITLE = 17;

    /** The answer in words. */
    public static final double ANSWER = 12;

    /** A head above a part of a sheet. */
    public static final double HEAD = 11.5;

    /** Ordinary words. */
    public static final double BODY = 9.5;

    /** Tables. */
    public static final double TABLE = 8.5;

    /** Notes, and the smallest words anywhere: 11 px on a screen of 96 dots an inch. */
    public static final double NOTE = 8.25;

    /** Distance from base line to base line, part of the size. */
    public static final double LEAD = 1.32;

    private Type() {}

    /**
     * Words broken into lines no longer than {@code width} pt, at blanks; a word that is longer by
     * itself is broken where it must be.
     *
     * @return at least one line, blank if there are no words
     */
    public static List<String> lines(String text, double size, boolean bold, double width) {
        Face face = Face.of(bold);
        var lines = new ArrayList<String>();
        StringBuilder line = new StringBuilder();
        for (String word : face.shown(text).split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && face.width(longer, size) > width) {
                lines.add(line.toString());
                line.setLength(0);
                longer = word;
            }
            while (face.width(longer, size) > width
                    && longer.codePointCount(0, longer.length()) > 1) {
                int fits = fitting(face, longer, size, width);
                lines.add(longer.substring(0, fits));
                longer = longer.substring(fits);
            }
            line.setLength(0);
            line.append(longer);
        }
        lines.add(line.toString());
        return lines;
    }

    private static int fitting(Face face, String word, double size, double width) {
        int end = word.offsetByCodePoints(0, 1);
        while (end < word.length()) {
            int next = word.offsetByCodePoints(end, 1);
            if (face.width(word.substring(0, next), size) > width) {
                break;
            }
            end = next;
        }
        return end;
    }

    /** The text, cut short with an ellipsis where it is longer than {@code width} pt. */
    public static String cut(String text, double size, boolean bold, double width) {
        Face face = Face.of(bold);
        String shown = face.shown(text);
        if (face.width(shown, size) <= width) {
            return shown;
        }
        int end = shown.length();
        while (end > 0 && face.width(shown.substring(0, end) + "…", size) > width) {
            end = shown.offsetByCodePoints(end, -1);
        }
        return shown.substring(0, end).stripTrailing() + "…";
    }
}
