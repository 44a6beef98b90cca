package lanewright.survey.read;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

/** Files for tests: written on the spot, or from the open data. */
final class Written {

    private Written() {}

    static Path file(Path folder, String name, String text) {
        return bytes(folder, name, text.getBytes(StandardCharsets.UTF_8));
    }

    static Path bytes(Path folder, String name, byte[] bytes) {
        try {
            return Files.write(folder.resolve(name), bytes);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    static Path openData(String name) {
        URL found = Objects.requireNonNull(Written.class.getResource("/open-data/" + name), name);
        try {
            return Path.of(found.toURI());
        } catch (URISyntaxException wrong) {
            throw new IllegalStateException(wrong);
        }
    }
}
