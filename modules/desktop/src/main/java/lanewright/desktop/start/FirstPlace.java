package lanewright.desktop.start;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The first place of a GeoJSON file, only to suggest a flat map; the reader looks at all. */
final class FirstPlace {

    private static final int HEAD = 200_000;
    private static final Pattern FIRST =
            Pattern.compile(
                    "\"coordinates\"\\s*:\\s*[\\[\\s]*(-?[0-9.eE+-]{1,30})\\s*,\\s*(-?[0-9.eE+-]{1,30})");

    private FirstPlace() {}

    /** Its two numbers, or null if none is found near the head of the file. */
    static double @Nullable [] of(Path file) {
        try (var in = Files.newInputStream(file)) {
            Matcher found = FIRST.matcher(new String(in.readNBytes(HEAD), StandardCharsets.UTF_8));
            if (found.find()) {
                return new double[] {
                    Double.parseDouble(found.group(1)), Double.parseDouble(found.group(2))
                };
            }
            return null;
        } catch (IOException | NumberFormatException e) {
            // No suggestion; the reader will say what is wrong with the file.
            return null;
        }
    }
}
