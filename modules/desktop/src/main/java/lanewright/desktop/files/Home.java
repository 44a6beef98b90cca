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
        if (name.contains("win")) {
            String data = environment.get("APPDATA");
            return (data == null ? user : Path.of(data)).resolve("Lanewright");
        }
        if (name.contains("mac")) {
            return user.resolve("Library").resolve("Application Support").resolve("Lanewright");
        }
        String data = environment.get("XDG_DATA_HOME");
        return (data == null || data.isBlank()
                        ? user.resolve(".local").resolve("share")
                        : Path.of(data))
                .resolve("lanewright");
    }
}
