package lanewright.samples;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * The first sample: rolling ground at Marrow Fold, an invented place, in feet.
 *
 * <p>A lane runs east from a gravel road, down across a draw that carries water south after rain,
 * and up a hill to a house site. The crew shot cross lines with a rover, closer together at breaks,
 * and walked the road's edge, its ditch, the bottom of the draw and a bank as lines.
 */
final class MarrowFold {

    static final String NAME = "marrow-fold";

    /** The file's own grid: an assumed zero well away, as crews do to keep numbers positive. */
    private static final double EAST = 5000;

    private static final double NORTH = 2000;

    private final SplittableRandom random = new SplittableRandom(20_260_411L);
    private final List<String> rows = new ArrayList<>();
    private int number = 100;

    private MarrowFold() {}

    /** Files of the survey by name. */
    static Map<String, String> files() {
        Map<String, String> files = new LinkedHashMap<>();
        files.put("points.csv", new MarrowFold().points());
        files.put("probes.csv", new MarrowFold().probes());
        return files;
    }

    /** Height of the ground, ft, at {@code x} ft east of the road's edge and {@code y} ft north. */
    static double height(double x, double y) {
        double draw = 310 + 0.12 * y + 14 * StrictMath.sin(y / 55);
        double fromDraw = x - draw;
        double hill = 30 * smooth((x - 370) / 330);
        double swale = -5.6 * StrictMath.exp(-fromDraw * fromDraw / (2 * 34 * 34));
        double drawFall = 0.030 * y * StrictMath.exp(-fromDraw * fromDraw / (2 * 90 * 90));
        double side =
                0.022 * y * (1 - smooth((x - 60) / 120)) + 0.018 * y * smooth((x - 420) / 150);
        double roll = 0.7 * StrictMath.sin(x / 61 + 0.6) * StrictMath.cos(y / 83);
        double fallFromRoad = -0.016 * smoothRamp(x, 40, 300);
        return roadside(x, 412.0 + hill + swale + drawFall + side + roll + fallFromRoad);
    }

    /** The road and its ditch, which the crew shot at the west end. */
    private static double roadside(double x, double natural) {
        double road = 412.6 + 0.02 * Math.min(0, x);
        if (x <= 0) {
            return road;
        }
        if (x <= 7) {
            return road - x * 1.7 / 7;
        }
        if (x <= 16) {
            double t = (x - 7) / 9;
            return (road - 1.7) * (1 - t) + natural * t;
        }
        return natural;
    }

    /** Rises smoothly from 0 at 0 to 1 at 1. */
    private static double smooth(double t) {
        double u = Math.max(0, Math.min(1, t));
        return u * u * (3 - 2 * u);
    }

    private static double smoothRamp(double x, double from, double to) {
        return Math.max(0, Math.min(x, to) - from);
    }

    private String points() {
        rows.add("Point,North,East,Elev,Code");
        shot(-6.0, 12.0, "benchmark");
        line("road-edge", 0, -150, 0, 150, 25);
        line("road-ditch", 7, -150, 7, 150, 22);
        rows.add("");
        crossLines(18, 250, 27, 24);
        drawBottom();
        crossLines(252, 372, 15, 16);
        rows.add("# changed battery, checked into the benchmark within 0.02");
        crossLines(376, 560, 24, 21);
        line("bank-top", 552, -80, 575, 70, 16);
        crossLines(584, 800, 26, 24);
        String twice = rows.get(rows.size() - 9);
        rows.add(number++ + twice.substring(twice.indexOf(',')));
        shot(742, 18, "tree");
        shot(756, -31, "tree");
        return String.join("\n", rows) + "\n";
    }

    private void crossLines(double from, double to, double every, double apart) {
        for (double x = from; x <= to; x += every * random.nextDouble(0.85, 1.15)) {
            for (double y = -135; y <= 135; y += apart * random.nextDouble(0.7, 1.3)) {
                shot(x + random.nextDouble(-4, 4), y, "ground");
            }
        }
    }

    /** The water's path at the bottom of the draw, walked from the top down. */
    private void drawBottom() {
        for (double y = 138; y >= -138; y -= random.nextDouble(8, 14)) {
            shot(310 + 0.12 * y + 14 * StrictMath.sin(y / 55), y, "flow-line");
        }
    }

    private void line(String code, double x0, double y0, double x1, double y1, double every) {
        double length = StrictMath.hypot(x1 - x0, y1 - y0);
        int steps = (int) Math.ceil(length / every);
        for (int i = 0; i <= steps; i++) {
            double t = (double) i / steps;
            shot(x0 + t * (x1 - x0) + random.nextDouble(-0.4, 0.4), y0 + t * (y1 - y0), code);
        }
    }

    private void shot(double x, double y, String code) {
        double noise = random.nextDouble(-0.04, 0.04);
        rows.add(
                number++
                        + ","
                        + fixed(NORTH + y, 2)
                        + ","
                        + fixed(EAST + x, 2)
                        + ","
                        + fixed(height(x, y) + noise, 2)
                        + ","
                        + code);
    }

    private String probes() {
        rows.add("Hole,North,East,Topsoil,Bearing,Met");
        Object[][] holes = {
            {40, 4, "6 in", "7 in", "brown clay loam"},
            {110, -6, "7 in", "8 in", "brown clay loam"},
            {180, 8, "8 in", "9 in", "stiff clay"},
            {240, -4, "9 in", "11 in", "stiff clay"},
            {290, 5, ">12 in", "20 in", "wet grey silt over clay"},
            {312, -3, ">12 in", "22 in", "wet grey silt over clay"},
            {340, 6, "10 in", "13 in", "damp clay"},
            {400, -8, "7 in", "8 in", "brown clay loam"},
            {470, 5, "6 in", "7 in", "gravelly clay"},
            {550, -5, "5 in", "6 in", "gravelly clay"},
            {640, 7, "5 in", "6 in", "gravelly clay"},
            {730, 0, "6 in", "7 in", "brown clay loam"},
        };
        int hole = 1;
        for (Object[] row : holes) {
            double x = ((Number) row[0]).doubleValue() + random.nextDouble(-3, 3);
            double y = ((Number) row[1]).doubleValue() + random.nextDouble(-3, 3);
            rows.add(
                    "H"
                            + hole++
                            + ","
                            + fixed(NORTH + y, 1)
                            + ","
                            + fixed(EAST + x, 1)
                            + ","
                            + row[2]
                            + ","
                            + row[3]
                            + ","
                            + row[4]);
        }
        return String.join("\n", rows) + "\n";
    }

    /** A number with a fixed count of decimals, the same in every locale. */
    static String fixed(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    }
}
