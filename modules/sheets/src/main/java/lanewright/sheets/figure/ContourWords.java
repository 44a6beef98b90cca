package lanewright.sheets.figure;

import java.util.Map;
import java.util.TreeMap;
import lanewright.sheets.drawing.Anchor;
import lanewright.sheets.drawing.Gauge;
import lanewright.sheets.drawing.Mark;
import lanewright.sheets.drawing.Outline;
import lanewright.sheets.drawing.Pen;
import lanewright.sheets.drawing.Role;
import lanewright.sheets.page.Type;
import org.jspecify.annotations.Nullable;

/** Heights along the heavy contours of a map. */
final class ContourWords {

    private static final double NOTE = Type.NOTE;

    private final Land land;
    private final LandView view;
    private final Places places;

    ContourWords(Land land, LandView view, Places places) {
        this.land = land;
        this.view = view;
        this.places = places;
    }

    /** Puts words on white, in the middle of a place, if there is room. */
    private boolean word(
            Pen pen,
            Role role,
            @Nullable Gauge gauge,
            String text,
            double x,
            double y,
            boolean bold,
            double turn) {
        var words = new Mark.Words(role, text, x, y, NOTE, bold, Anchor.MIDDLE, turn, gauge);
        if (text.isBlank() || !places.take(words)) {
            return false;
        }
        double half = words.width() / 2 + 1.5;
        double cos = StrictMath.cos(StrictMath.toRadians(turn));
        double sin = StrictMath.sin(StrictMath.toRadians(turn));
        double[] dx = {-half, half, half, -half};
        double[] dy = {-NOTE * 0.78, -NOTE * 0.78, NOTE * 0.22, NOTE * 0.22};
        double[] xy = new double[8];
        for (int i = 0; i < 4; i++) {
            xy[2 * i] = x + dx[i] * cos - dy[i] * sin;
            xy[2 * i + 1] = y + dx[i] * sin + dy[i] * cos;
        }
        pen.area(Role.PLATE, Outline.closed(xy)).add(words);
        return true;
    }

    /** Heights along the heavy contours, where the line runs straight enough, heads up. */
    void draw(Pen pen) {
        Map<String, Integer> placed = new TreeMap<>();
        for (Land.Contour contour : land.contours()) {
            int n = contour.x().length;
            if (!contour.heavy() || n < 3 || placed.getOrDefault(contour.words(), 0) >= 3) {
                continue;
            }
            for (int k : new int[] {n / 2, n / 4, 3 * n / 4, n / 3, 2 * n / 3, n / 8, 7 * n / 8}) {
                int i = Math.max(1, Math.min(n - 2, k));
                double dx = view.x(contour.x()[i + 1]) - view.x(contour.x()[i - 1]);
                double dy = view.y(contour.y()[i + 1]) - view.y(contour.y()[i - 1]);
                double turn = StrictMath.toDegrees(StrictMath.atan2(dy, dx));
                turn = turn > 90 ? turn - 180 : turn < -90 ? turn + 180 : turn;
                double sin = StrictMath.sin(StrictMath.toRadians(turn));
                double cos = StrictMath.cos(StrictMath.toRadians(turn));
                double x = view.x(contour.x()[i]) - 3 * sin;
                double y = view.y(contour.y()[i]) + 3 * cos;
                if (word(
                        pen,
                        Role.NOTE,
                        Gauge.of(Gauge.Use.CONTOUR, contour.words(), contour.height()),
                        contour.words(),
                        x,
                        y,
                        false,
                        turn)) {
                    placed.merge(contour.words(), 1, Integer::sum);
                    break;
                }
            }
        }
    }
}
