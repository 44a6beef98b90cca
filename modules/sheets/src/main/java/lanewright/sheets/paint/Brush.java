package lanewright.sheets.paint;

import java.io.IOException;
import java.util.List;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pattern;
import lanewright.sheets.drawing.Style;

/** What a file format must be able to paint. Coordinates are the drawing's, y down. */
public interface Brush {

    /** Fills between rings, even-odd. */
    void fill(List<Outline> rings, int colour) throws IOException;

    /** Strokes lines; {@code round} gives them round ends, so that a very short one is a dot. */
    void stroke(List<Outline> lines, int colour, double width, Style.Dash dash, boolean round)
            throws IOException;

    /**
     * Covers what lies between rings, even-odd, with a pattern in lines of such a width.
     *
     * @param seen outside of it nothing is seen, so that a large area in a small frame need not be
     *     covered to its ends
     */
    default void cover(List<Outline> rings, Box seen, Pattern pattern, int colour, double width)
            throws IOException {
        // A line just outside reaches in by half its width.
        Box box = rings.isEmpty() ? null : Box.around(rings).within(seen.inset(-width));
        List<Outline> pieces = box == null ? List.of() : pattern.over(box);
        if (!pieces.isEmpty()) {
            hold(rings);
            stroke(pieces, colour, width, Style.Dash.NONE, true);
            release();
        }
    }

    /** Words in one colour. */
    void words(Mark.Words words, int colour) throws IOException;

    /** A grey picture. */
    void picture(Mark.Picture picture) throws IOException;

    /** From here on only what lies between {@code rings} is seen, until {@link #release()}. */
    void hold(List<Outline> rings) throws IOException;

    /** Ends the innermost {@link #hold}. */
    void release() throws IOException;
}
