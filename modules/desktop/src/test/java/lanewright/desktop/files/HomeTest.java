package lanewright.desktop.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HomeTest {

    @TempDir Path user;

    @Test
    void theOwnersWordComesFirstOnEverySystem() {
        Path chosen = user.resolve("chosen");
        for (String system : new String[] {"Linux", "Windows 11", "Mac OS X", ""}) {
            assertEquals(
                    chosen, Home.of(Map.of("LANEWRIGHT_HOME", chosen.toString()), system, user));
        }
    }

    @Test
    void windowsKeepsItWithTheDataOfPrograms() {
        Path data = user.resolve("AppData").resolve("Roaming");
        assertEquals(
                data.resolve("Lanewright"),
                Home.of(Map.of("APPDATA", data.toString()), "Windows 11", user));
        assertEquals(user.resolve("Lanewright"), Home.of(Map.of(), "Windows 10", user));
        assertEquals(user.resolve("Lanewright"), Home.of(Map.of("APPDATA", " "), "Windows", user));
    }

    @Test
    void macKeepsItInTheLibrary() {
        Path expected = user.resolve("Library/Application Support/Lanewright");
        assertEquals(expected, Home.of(Map.of(), "Mac OS X", user));
        // A name in which "win" stands, and yet no Windows.
        assertEquals(user.resolve(".local/share/lanewright"), Home.of(Map.of(), "Darwin", user));
    }

    @Test
    @Tag("outside")
    @DisplayName(
            "data folder of a user, and a relative one ignored | XDG Base Directory Specification"
                    + " 0.8, Basics and Environment variables | from memory")
    void otherSystemsKeepItWhereTheirUsersDataIs() {
        Path own = user.resolve(".local/share/lanewright");
        assertEquals(own, Home.of(Map.of(), "Linux", user));
        assertEquals(own, Home.of(Map.of("XDG_DATA_HOME", ""), "Linux", user));
        assertEquals(own, Home.of(Map.of("XDG_DATA_HOME", "some/where"), "Linux", user));
        assertEquals(
                user.resolve("data/lanewright"),
                Home.of(Map.of("XDG_DATA_HOME", user.resolve("data").toString()), "FreeBSD", user));
    }
}
