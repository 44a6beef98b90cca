package lanewright.sheets.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lanewright.sheets.drawing.Box;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;

/**
 * Names of lines that run side by side across a drawing, each at a place where its line stands
 * clear of the others as far as it does anywhere, with a dot on the line.
 */
final class LineNames {

    /** Distance between two places that are tried, pt. */
    private static final double STEP = 6;

    /** Standing clear by more than this is no better, pt. */
    private static final double CLEAR = 14;

    /** What it is worth that one line fewer lies between a line and its name, pt. */
    private static final double ACROSS = 10;

    /** Two names should stand so far apart along the drawing, pt. */
    private static final double APART = 70;

    /** So near an end of a line, where others meet it, it has no name, pt. */
    private static final double END = 12;

    /** So many of the best places are tried. */
    private static final int TRIES = 40;

    /**
     * A line with its name.
     *
     * @param words its name
     * @param pieces each runs to the right
     */
    record Named(String words, List<Outline> pieces) {

        /** How far down the page the line is, pt; NaN where it is not. */
        double at(double x) {
            for (Outline piece : pieces) {
                for (int i = 1; i < piece.size(); i++) {
                    double from = piece.x(i - 1);
                    double to = piece.x(i);
                    if (from <= x && x <= to && from < to) {
                        double part = (x - from) / (to - from);
                        return piece.y(i - 1) + part * (piece.y(i) - piece.y(i - 1));
                    }
                }
            }
            return Double.NaN;
        }
    }

    /** A place on a line: the better, the higher its score. */
    private record Spot(double x, double y, int below, double score) {}

    private final List<Named> lines;
    private final Box box;
    private final double farthest;
    private final List<Double> taken = new ArrayList<>();

    private LineNames(List<Named> lines, Box box, double farthest) {
        this.lines = lines;
        this.box = box;
        this.farthest = farthest;
    }

    /**
     * Names every line for which there is room.
     *
     * @param farthest that a name stands from its line, pt
     */
    static void draw(Pen pen, Places places, List<Named> lines, Box box, double farthest) {
        var names = new LineNames(lines, box, farthest);
        for (Named line : lines) {
            names.name(pen, places, line);
        }
    }

    private void name(Pen pen, Places places, Named line) {
        var spots = new ArrayList<Spot>();
        for (double x = box.x() + STEP; x < box.right() - STEP; x += STEP) {
            double y = line.at(x);
            boolean inside = Double.isFinite(line.at(x - END) + y + line.at(x + END));
            if (inside && box.holds(x, y)) {
                spots.add(spot(line, x, y));
            }
        }
        spots.sort(Comparator.comparingDouble(spot -> -spot.score()));
        List<Spot> best = spots.subList(0, Math.min(TRIES, spots.size()));
        for (int turned : new int[] {1, -1}) {
            for (Spot spot : best) {
                int below = turned * spot.below();
                if (places.name(pen, line.words(), spot.x(), spot.y(), below, farthest)) {
                    taken.add(spot.x());
                    return;
                }
            }
        }
    }

    private Spot spot(Named line, double x, double y) {
        double over = Double.POSITIVE_INFINITY;
        double under = Double.POSITIVE_INFINITY;
        int above = 0;
        int beneath = 0;
        for (Named other : lines) {
            double there = other.equals(line) ? Double.NaN : other.at(x);
            if (there <= y) {
                over = Math.min(over, y - there);
                above++;
            } else if (there > y) {
                under = Math.min(under, there - y);
                beneath++;
            }
        }
        boolean below = beneath < above || (beneath == above && under > over);
        double score = Math.min(CLEAR, Math.min(over, under)) - ACROSS * Math.min(above, beneath);
        for (double other : taken) {
            score -= Math.max(0, APART - Math.abs(other - x)) / 12;
        }
        return new Spot(x, y, below ? 1 : -1, score);
    }
}
