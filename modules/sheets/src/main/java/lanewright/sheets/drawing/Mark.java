package lanewright.sheets.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** One thing on a drawing. Painted in the order given. */
public sealed interface Mark {

    /** A line in the stroke of its role. */
    record Line(Role role, Outline path) implements Mark {}

    /** An area in the fill and pattern of its role; rings inside rings are holes. */
    record Area(Role role, List<Outline> rings) implements Mark {
        /** Copies the list. */
        public Area {
            rings = List.copyOf(rings);
        }
    }

    /**
     * Words on one line.
     *
     * @param role their colour
     * @param text what is said; what the font does not hold is shown as a question mark
     * @param x place of the anchor, pt
     * @param y base line at the anchor, pt
     * @param size of the font, pt
     * @param bold heavy or ordinary
     * @param anchor which part of the words stands at x
     * @param turn degrees clockwise about the anchor
     * @param gauge what they say about the drawing itself; null if they speak of the plan
     */
    record Words(
            Role role,
            String text,
            double x,
            double y,
            double size,
            boolean bold,
            Anchor anchor,
            double turn,
            @Nullable Gauge gauge)
            implements Mark {
        /** Keeps only what the font can show. */
        public Words {
            text = Face.of(bold).shown(text);
            if (!(size >= 4 && size <= 200) || !Double.isFinite(x + y + turn)) {
                throw new IllegalArgumentException(
                        "words need a size of 4 to 200 pt and a place, had " + size);
            }
        }

        /** Words that speak of the plan. */
        public Words(
                Role role,
                String text,
                double x,
                double y,
                double size,
                boolean bold,
                Anchor anchor,
                double turn) {
            this(role, text, x, y, size, bold, anchor, turn, null);
        }

        /** Length of the words, pt. */
        public double width() {
            return Face.of(bold).width(text, size);
        }

        /** Where the words begin before they are turned, pt from the left. */
        public double start() {
            return x - anchor.part() * width();
        }
    }

    /**
     * A grey picture, for hill shading only.
     *
     * @param place where it stands on the page
     * @param columns pixels across
     * @param rows pixels down
     * @param grey 0 black to 255 white, row by row from the top
     */
    record Picture(Box place, int columns, int rows, Shade grey) implements Mark {
        /** Checks that the picture is whole. */
        public Picture {
            if (columns < 1 || rows < 1 || grey.size() != columns * rows) {
                throw new IllegalArgumentException(
                        grey.size() + " greys for " + columns + " by " + rows);
            }
        }
    }

    /** Marks of which only what lies in the frame is seen; words in it must lie in it whole. */
    record Framed(Box frame, List<Mark> marks) implements Mark {
        /** Copies the list. */
        public Framed {
            marks = List.copyOf(marks);
        }
    }
}
