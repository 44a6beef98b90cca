package lanewright.desktop.files;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/**
 * Where the program keeps what it remembers between starts: recent plans, the window's state, and
 * edits that are not yet in a plan file.
 *
 * @param folder the folder; made when something is first kept
 */
public record Home(Path folder) {

    /** The usual place on this machine, or what {@code LANEWRIGHT_HOME} says. */
    public static Home usual() {
        return new Home(
                of(
                        System.getenv(),
                        System.getProperty("os.name", ""),
                        Path.of(System.getProperty("user.home", "."))));
    }

    /**
     * The place for a machine.
     *
     * @param environment its variables
     * @param system name of its operating system
     * @param user the user's own folder
     */
    static Path of(Map<String, String> environment, String system, Path user) {
        String chosen = environment.get("LANEWRIGHT_HOME");
        if (chosen != null && !chosen.isBlank()) {
            return Path.of(chosen);
        }
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return said(environment, "APPDATA", user).resolve("Lanewright");
        }
        if (name.startsWith("mac")) {
            return user.resolve("Library").resolve("Application Support").resolve("Lanewright");
        }
        return said(environment, "XDG_DATA_HOME", user.resolve(".local").resolve("share"))
                .resolve("lanewright");
    }

    /**
     * A folder that a variable names whole; one named in part is not taken, nor is an empty one.
     */
    private static Path said(Map<String, String> environment, String name, Path otherwise) {
        String value = environment.get(name);
        if (value == null || value.isBlank()) {
            return otherwise;
        }
        Path folder = Path.of(value);
        return folder.isAbsolute() ? folder : otherwise;
    }
}
