package lanewright.survey.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Every kind of file that cannot be read as it stands, with the whole message it gets. */
class MalformedInputTest {

    @TempDir private Path folder;

    private static List<BadFile> all() {
        List<BadFile> all = new ArrayList<>(BadText.all());
        all.addAll(BadLayouts.all());
        all.addAll(BadGeoJson.all());
        all.addAll(BadGridsAndProbes.all());
        return all;
    }

    @TestFactory
    Stream<DynamicTest> saysWhatIsWrongWhereAndWhatToDo() {
        return all().stream()
                .map(
                        bad ->
                                DynamicTest.dynamicTest(
                                        bad.cause(),
                                        () -> assertEquals(bad.says(), bad.message(folder))));
    }

    @Test
    void sixtyKindsAndMoreEachWithItsOwnMessage() {
        Set<String> causes = new HashSet<>();
        Set<String> messages = new HashSet<>();
        for (BadFile bad : all()) {
            assertTrue(causes.add(bad.cause()), bad.cause());
            assertTrue(messages.add(bad.says()), bad.says());
        }
        assertTrue(causes.size() >= 60, "only " + causes.size());
    }
}
