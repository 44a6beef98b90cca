package lanewright.sheets.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * What fills an area so that it can be told apart without colour. Drawn as short lines clipped to
 * the area, from one grid for the whole page, so that neighbours match.
 */
public enum Pattern {
    /** Nothing. */
    NONE,
    /** Lines rising to the right. */
    HATCH,
    /** Lines falling to the right. */
    HATCH_BACK,
    /** Lines both ways. */
    HATCH_BOTH,
    /** Short upright strokes, like grass. */
    BLADES,
    /** Dots. */
    DOTS,
    /** Short level dashes. */
    DASHES,
    /** Long level lines. */
    LEVEL,
    /** Small upright crosses. */
    CROSSES,
    /** Small round stones. */
    STONES_SMALL,
    /** Middle round stones. */
    STONES_MIDDLE,
    /** Large round stones. */
    STONES_LARGE;

    /** Takes one piece of a pattern. */
    @FunctionalInterface
    public interface Sink {
        /** One open or closed line of the pattern. */
        void line(Outline line);
    }

    /** Length of a line that stands for a dot: drawn with round ends it is a dot. */
    private static final double DOT = 0.01;

    private static final double HATCH_STEP = 4.2;
    private static final double LEVEL_STEP = 5.5;
    private static final double BLADE_STEP = 3.2;
    private static final double BLADE_TALL = 2.2;
    private static final double CROSS_STEP = 9;
    private static final double DOTS_WIDE = 4.4;
    private static final double DOTS_TALL = 3.4;
    private static final double DASHES_WIDE = 5;
    private static final double DASHES_TALL = 2.4;
    private static final double SMALL_WIDE = 2.2;
    private static final double SMALL_TALL = 1.9;
    private static final double STONE_MIDDLE = 3.8;
    private static final double STONE_LARGE = 6;
    private static final double STONE_RISE = 0.87;

    /** After how far to the right it is the same again, pt. */
    public double wide() {
        return switch (this) {
            case NONE -> 1;
            case HATCH, HATCH_BACK, HATCH_BOTH -> HATCH_STEP;
            case BLADES -> BLADE_STEP;
            case DOTS -> DOTS_WIDE;
            case DASHES -> DASHES_WIDE;
            case LEVEL -> LEVEL_STEP;
            case CROSSES -> CROSS_STEP;
            case STONES_SMALL -> SMALL_WIDE;
            case STONES_MIDDLE -> STONE_MIDDLE;
            case STONES_LARGE -> STONE_LARGE;
        };
    }

    /** After how far down it is the same again, pt: two rows where they stand in gaps. */
    public double tall() {
        return switch (this) {
            case NONE -> 1;
            case HATCH, HATCH_BACK, HATCH_BOTH -> HATCH_STEP;
            case BLADES -> 2 * BLADE_TALL;
            case DOTS -> 2 * DOTS_TALL;
            case DASHES -> 2 * DASHES_TALL;
            case LEVEL -> LEVEL_STEP;
            case CROSSES -> 2 * CROSS_STEP;
            case STONES_SMALL -> 2 * SMALL_TALL;
            case STONES_MIDDLE -> 2 * STONE_MIDDLE * STONE_RISE;
            case STONES_LARGE -> 2 * STONE_LARGE * STONE_RISE;
        };
    }

    /** The pieces that cover a box. */
    public List<Outline> over(Box box) {
        var pieces = new ArrayList<Outline>();
        cover(box.x(), box.y(), box.right(), box.bottom(), pieces::add);
        return pieces;
    }

    /**
     * Gives {@code sink} the pieces that cover a box.
     *
     * @param left left side of the box, pt
     * @param top top of the box, pt
     * @param right right side, pt
     * @param bottom bottom, pt
     */
    public void cover(double left, double top, double right, double bottom, Sink sink) {
        switch (this) {
            case NONE -> {}
            case HATCH -> hatch(left, top, right, bottom, true, sink);
            case HATCH_BACK -> hatch(left, top, right, bottom, false, sink);
            case HATCH_BOTH -> {
                hatch(left, top, right, bottom, true, sink);
                hatch(left, top, right, bottom, false, sink);
            }
            case BLADES -> blades(left, top, right, bottom, sink);
            case DOTS -> staggered(left, top, right, bottom, DOTS_WIDE, DOTS_TALL, DOT, sink);
            case DASHES -> staggered(left, top, right, bottom, DASHES_WIDE, DASHES_TALL, 2.4, sink);
            case LEVEL -> level(left, top, right, bottom, sink);
            case CROSSES -> crosses(left, top, right, bottom, sink);
            case STONES_SMALL ->
                    staggered(left, top, right, bottom, SMALL_WIDE, SMALL_TALL, DOT, sink);
            case STONES_MIDDLE -> stones(left, top, right, bottom, STONE_MIDDLE, sink);
            case STONES_LARGE -> stones(left, top, right, bottom, STONE_LARGE, sink);
        }
    }

    private static void hatch(
            double left, double top, double right, double bottom, boolean rising, Sink sink) {
        double step = HATCH_STEP;
        double tall = bottom - top;
        double sign = rising ? 1 : -1;
        // A rising line keeps x + y the same (y runs down the page), a falling one x - y.
        double low = rising ? left + top : left - bottom;
        double high = rising ? right + bottom : right - top;
        for (long k = (long) Math.ceil(low / step); k * step <= high; k++) {
            double sum = k * step;
            double atTop = sum - sign * top;
            double atBottom = atTop - sign * tall;
            sink.line(Outline.open(atTop, top, atBottom, bottom));
        }
    }

    private static void level(double left, double top, double right, double bottom, Sink sink) {
        double step = LEVEL_STEP;
        for (long k = (long) Math.ceil(top / step); k * step <= bottom; k++) {
            sink.line(Outline.open(left, k * step, right, k * step));
        }
    }

    private static void blades(double left, double top, double right, double bottom, Sink sink) {
        double step = BLADE_STEP;
        double tall = BLADE_TALL;
        for (long row = (long) Math.floor(top / tall) - 1; row * tall <= bottom; row++) {
            double shift = (row & 1) == 0 ? 0 : step / 2;
            for (long k = (long) Math.floor((left - shift) / step);
                    k * step + shift <= right;
                    k++) {
                double x = k * step + shift;
                sink.line(Outline.open(x, row * tall, x, row * tall + tall));
            }
        }
    }

    private static void crosses(double left, double top, double right, double bottom, Sink sink) {
        double step = CROSS_STEP;
        double arm = 1.6;
        for (long row = (long) Math.floor(top / step); row * step <= bottom + step; row++) {
            double shift = (row & 1) == 0 ? 0 : step / 2;
            double y = row * step;
            for (long k = (long) Math.floor((left - shift) / step) - 1;
                    k * step + shift <= right + step;
                    k++) {
                double x = k * step + shift;
                sink.line(Outline.open(x - arm, y, x + arm, y));
                sink.line(Outline.open(x, y - arm, x, y + arm));
            }
        }
    }

    private static void staggered(
            double left,
            double top,
            double right,
            double bottom,
            double stepX,
            double stepY,
            double length,
            Sink sink) {
        for (long row = (long) Math.floor(top / stepY); row * stepY <= bottom; row++) {
            double shift = (row & 1) == 0 ? 0 : stepX / 2;
            for (long k = (long) Math.floor((left - shift - length) / stepX);
                    k * stepX + shift <= right;
                    k++) {
                double x = k * stepX + shift;
                sink.line(Outline.open(x, row * stepY, x + length, row * stepY));
            }
        }
    }

    private static void stones(
            double left, double top, double right, double bottom, double step, Sink sink) {
        double rise = step * STONE_RISE;
        for (long row = (long) Math.floor(top / rise); row * rise <= bottom + step; row++) {
            double shift = (row & 1) == 0 ? 0 : step / 2;
            for (long k = (long) Math.floor((left - shift) / step) - 1;
                    k * step + shift <= right + step;
                    k++) {
                sink.line(Outline.circle(k * step + shift, row * rise, step * 0.38, 6));
            }
        }
    }
}
