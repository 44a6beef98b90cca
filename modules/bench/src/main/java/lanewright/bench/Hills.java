package lanewright.bench;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;
import lanewright.survey.Survey;

/** Rolling ground with irregular points about one metre apart, the same on every run. */
final class Hills {

    private Hills() {}

    /** As many points, m; the square that holds them is as wide as the root of their number. */
    static Survey of(int points) {
        var random = new SplittableRandom(points);
        double wide = Math.sqrt(points);
        double[] x = new double[points];
        double[] y = new double[points];
        double[] z = new double[points];
        for (int i = 0; i < points; i++) {
            x[i] = random.nextDouble(wide);
            y[i] = random.nextDouble(wide);
            z[i] = height(x[i], y[i]);
        }
        return Survey.builder().points(x, y, z).build();
    }

    /** Writes the points as text, millimetres kept. */
    static void write(Survey survey, Path file) throws IOException {
        try (var writer = Files.newBufferedWriter(file)) {
            writer.write("number,easting,northing,height\n");
            for (int i = 0; i < survey.size(); i++) {
                writer.write(
                        (i + 1)
                                + ","
                                + millimetres(survey.x(i))
                                + ","
                                + millimetres(survey.y(i))
                                + ","
                                + millimetres(survey.z(i))
                                + "\n");
            }
        }
    }

    private static String millimetres(double metres) {
        return BigDecimal.valueOf(Math.round(metres * 1000), 3).toPlainString();
    }

    static double height(double x, double y) {
        return 100
                + 6 * StrictMath.sin(x / 90)
                + 4 * StrictMath.cos(y / 70)
                + 0.3 * StrictMath.sin(x / 7 + y / 11);
    }
}
