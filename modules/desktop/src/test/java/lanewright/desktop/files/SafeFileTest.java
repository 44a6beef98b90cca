package lanewright.desktop.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SafeFileTest {

    @TempDir Path folder;

    private List<String> names() throws IOException {
        try (Stream<Path> each = Files.list(folder)) {
            return each.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void theNewTextTakesThePlaceOfTheOldAndNothingIsLeftBeside() throws IOException {
        Path file = folder.resolve("plan.json");
        SafeFile.write(file, "one");
        SafeFile.write(file, "zwölf\n");
        assertEquals("zwölf\n", Files.readString(file));
        assertEquals(List.of("plan.json"), names());
    }

    @Test
    void foldersThatAreMissingAreMade() throws IOException {
        Path file = folder.resolve("a").resolve("b").resolve("plan.json");
        SafeFile.write(file, "one");
        assertEquals("one", Files.readString(file));
    }

    @Test
    void whatCannotBeReplacedIsLeftAsItWas() throws IOException {
        Path inTheWay = folder.resolve("plan.json");
        Files.createDirectories(inTheWay.resolve("inside"));
        assertThrows(IOException.class, () -> SafeFile.write(inTheWay, "one"));
        assertTrue(Files.isDirectory(inTheWay.resolve("inside")));
        assertEquals(List.of("plan.json"), names());
        Path file = folder.resolve("file");
        Files.writeString(file, "old");
        assertThrows(IOException.class, () -> SafeFile.write(file.resolve("plan.json"), "one"));
        assertEquals("old", Files.readString(file));
    }

    @Test
    void linksStayLinksAndReadersStayReaders() throws IOException {
        assumeTrue(FileSystems.getDefault().supportedFileAttributeViews().contains("posix"));
        Path real = Files.createDirectory(folder.resolve("real"));
        Path file = real.resolve("plan.json");
        Files.writeString(file, "old");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
        Path link = Files.createSymbolicLink(folder.resolve("link.json"), file);
        Path way = Files.createSymbolicLink(folder.resolve("way"), real);
        SafeFile.write(link, "new");
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("new", Files.readString(file));
        assertEquals(
                "rw-r--r--", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
        SafeFile.write(way.resolve("other.json"), "other");
        assertEquals("other", Files.readString(real.resolve("other.json")));
    }

    @Test
    void whatADeadProgramLeftHalfWrittenIsRemoved() throws IOException {
        long dead = 4_000_000_000L;
        FileTime old = FileTime.from(Instant.now().minus(Duration.ofMinutes(5)));
        Path left = folder.resolve(".lanewright-" + dead + "-3.part");
        Path young = folder.resolve(".lanewright-" + dead + "-4.part");
        Path own = folder.resolve(".lanewright-" + ProcessHandle.current().pid() + "-1.part");
        Path other = folder.resolve(".lanewright-mine.part");
        for (Path each : List.of(left, young, own, other)) {
            Files.writeString(each, "half");
        }
        for (Path each : List.of(left, own, other)) {
            Files.setLastModifiedTime(each, old);
        }
        SafeFile.write(folder.resolve("plan.json"), "one");
        assertTrue(Files.notExists(left));
        assertTrue(Files.exists(young) && Files.exists(own) && Files.exists(other));
    }
}
