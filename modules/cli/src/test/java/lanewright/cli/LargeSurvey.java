package lanewright.cli;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SplittableRandom;

/** Invented rolling land measured about every metre, and a kilometre of lane over it. */
final class LargeSurvey {

    private static final long SEED = 41;

    /** A kilometre of lane without a grade, so that a first one is laid too. */
    private static final String PLAN =
            """
            {
              "version": 1,
              "name": "Long lane",
              "units": "metric",
              "survey": { "frame": "local", "files": [
                { "path": "points.csv", "holds": "points", "unit": "m" } ] },
              "line": { "points": [
                { "name": "road", "east": "100 m", "north": "380 m" },
                { "name": "far end", "east": "1060 m", "north": "660 m" } ] },
              "shapes": [ { "name": "lane", "width": "3.6 m", "layers": [
                { "role": "surface", "thickness": "75 mm" },
                { "role": "base", "thickness": "150 mm" } ] } ],
              "along": [ { "from": "start", "to": "end", "shape": "lane" } ],
              "stone": { "payload": "14 t", "materials": [
                { "role": "surface", "kind": "crushed surfacing, top course" },
                { "role": "base", "kind": "crushed surfacing, base course" } ] },
              "earth": { "topsoil": "150 mm", "soil": "common earth" }
            }
            """;

    private LargeSurvey() {}

    /** Writes {@code plan.json} and its points, so many from west to east and south to north. */
    static void write(Path folder, int columns, int rows) throws IOException {
        points(folder, columns, rows);
        Files.writeString(folder.resolve("plan.json"), PLAN);
    }

    /** Uneven shots about a metre apart on rolling land, in millimetres. */
    private static void points(Path folder, int columns, int rows) throws IOException {
        var random = new SplittableRandom(SEED);
        var line = new StringBuilder();
        try (BufferedWriter out =
                Files.newBufferedWriter(folder.resolve("points.csv"), StandardCharsets.US_ASCII)) {
            out.write("name,easting,northing,height\n");
            for (int i = 0; i < columns * rows; i++) {
                int row = i / columns;
                double x = i % columns + random.nextDouble(-0.4, 0.4);
                double y = row + random.nextDouble(-0.4, 0.4);
                double z =
                        200
                                + 0.03 * x
                                + 6 * StrictMath.sin(x / 90)
                                + 4 * StrictMath.cos(y / 70)
                                + 3 * StrictMath.sin((x + y) / 41)
                                + random.nextDouble(0.02);
                line.setLength(0);
                line.append(i + 1);
                millimetres(line, x + 1);
                millimetres(line, y + 1);
                millimetres(line, z);
                out.append(line.append('\n'));
            }
        }
    }

    private static void millimetres(StringBuilder line, double metres) {
        long all = Math.round(metres * 1000);
        line.append(',').append(all / 1000).append('.');
        String rest = Long.toString(all % 1000);
        line.append("0".repeat(3 - rest.length())).append(rest);
    }
}
