package lanewright.desktop.land;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;
import lanewright.survey.Survey;

/**
 * Measured points sorted into squares, so that of a million only as many are looked at as the board
 * can show.
 */
final class Shots {

    /** A code that this part of the points carries tells nothing of one of them. */
    private static final double COMMON = 0.2;

    /** Points in a square, about. */
    private static final double EACH = 16;

    private final Survey survey;
    private final double left;
    private final double low;
    private final double side;
    private final int columns;
    private final int rows;
    private final int[] first;
    private final int[] sorted;
    private final Map<String, Integer> codes = new HashMap<>();

    /** Sorts the points of a survey. */
    Shots(Survey survey) {
        this.survey = survey;
        double minX = Double.POSITIVE_INFINITY;
        double minY = Double.POSITIVE_INFINITY;
        double maxX = Double.NEGATIVE_INFINITY;
        double maxY = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < survey.size(); i++) {
            minX = Math.min(minX, survey.x(i));
            maxX = Math.max(maxX, survey.x(i));
            minY = Math.min(minY, survey.y(i));
            maxY = Math.max(maxY, survey.y(i));
        }
        boolean none = survey.size() == 0;
        left = none ? 0 : minX;
        low = none ? 0 : minY;
        double wide = none ? 1 : Math.max(1e-3, maxX - minX);
        double tall = none ? 1 : Math.max(1e-3, maxY - minY);
        side = Math.max(Math.sqrt(wide * tall * EACH / Math.max(1, survey.size())), 1e-3);
        columns = (int) Math.min(4000, Math.floor(wide / side) + 1);
        rows = (int) Math.min(4000, Math.floor(tall / side) + 1);
        first = new int[columns * rows + 1];
        for (int i = 0; i < survey.size(); i++) {
            first[square(i) + 1]++;
            codes.merge(survey.code(i), 1, Integer::sum);
        }
        for (int k = 0; k < columns * rows; k++) {
            first[k + 1] += first[k];
        }
        sorted = new int[survey.size()];
        int[] next = first.clone();
        for (int i = 0; i < survey.size(); i++) {
            sorted[next[square(i)]++] = i;
        }
    }

    /** Whether so many points carry a code that it need not be written at each. */
    boolean isCommon(String code) {
        return codes.getOrDefault(code, 0) > COMMON * survey.size();
    }

    /** The codes that need not be written at each of their points, by the alphabet. */
    List<String> common() {
        return codes.keySet().stream()
                .filter(code -> !code.isBlank() && isCommon(code))
                .sorted()
                .toList();
    }

    private int square(int i) {
        return row(survey.y(i)) * columns + column(survey.x(i));
    }

    private int column(double x) {
        return (int) Math.max(0, Math.min(columns - 1, Math.floor((x - left) / side)));
    }

    private int row(double y) {
        return (int) Math.max(0, Math.min(rows - 1, Math.floor((y - low) / side)));
    }

    /**
     * Hands over points that are seen: all where they are few, else so many that they stand about
     * {@code apart} pixels from each other.
     */
    void seen(View view, double apart, IntConsumer each) {
        int fromColumn = column(view.east(0));
        int toColumn = column(view.east(view.width()));
        int fromRow = row(view.north(view.height()));
        int toRow = row(view.north(0));
        double pixels = side * view.scale();
        int stride = (int) Math.max(1, Math.ceil(apart / Math.max(pixels, 1e-9)));
        int most = (int) Math.max(1, Math.floor(pixels / apart * (pixels / apart)));
        for (int row = fromRow - fromRow % stride; row <= toRow; row += stride) {
            for (int column = fromColumn - fromColumn % stride;
                    column <= toColumn;
                    column += stride) {
                int square = row * columns + column;
                int end = Math.min(first[square + 1], first[square] + most);
                for (int k = first[square]; k < end; k++) {
                    each.accept(sorted[k]);
                }
            }
        }
    }

    /** The point nearest to a place, or -1 if none lies within {@code reach} metres. */
    int nearest(double x, double y, double reach) {
        int best = -1;
        double bestAway = reach;
        for (int row = row(y - reach); row <= row(y + reach); row++) {
            for (int column = column(x - reach); column <= column(x + reach); column++) {
                int square = row * columns + column;
                for (int k = first[square]; k < first[square + 1]; k++) {
                    double away = Math.hypot(survey.x(sorted[k]) - x, survey.y(sorted[k]) - y);
                    if (away <= bestAway) {
                        bestAway = away;
                        best = sorted[k];
                    }
                }
            }
        }
        return best;
    }
}
