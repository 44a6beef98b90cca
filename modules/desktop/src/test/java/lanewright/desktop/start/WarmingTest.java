package lanewright.desktop.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WarmingTest {

    @TempDir Path under;

    private long left() throws IOException {
        try (Stream<Path> all = Files.list(under)) {
            return all.count();
        }
    }

    @Test
    void itEndsByItselfAndSoonerWhenAskedAndLeavesNothingBehind() throws Exception {
        Warming whole = Warming.begin(under);
        assertTrue(whole.ended(120_000));
        Warming cut = Warming.begin(under);
        cut.close();
        assertTrue(cut.ended(120_000));
        assertEquals(0, left());
    }
}
