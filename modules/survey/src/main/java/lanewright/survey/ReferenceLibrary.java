package lanewright.survey;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.logging.Level;
import java.util.logging.Logger;

/** What must be set before the reference system library is first touched. */
final class ReferenceLibrary {

    /** Where the library looks for the folder to unpack its EPSG database into. */
    private static final String DATABASE_FOLDER = "EPSG-HSQL.directory";

    /** Held so that its level stays set: loggers that nobody holds are forgotten. */
    private static final Logger PREFERENCES = Logger.getLogger("java.util.prefs");

    /** The library warns of what the readers here say themselves, with file and remedy. */
    private static final Logger LIBRARY = Logger.getLogger("org.geotools");

    /** The same for the library of pictures under it. */
    private static final Logger PICTURES = Logger.getLogger("com.sun.media.jai");

    private static boolean ready;

    private ReferenceLibrary() {}

    static synchronized void ready() {
        if (ready) {
            return;
        }
        ready = true;
        // Writing WKT makes the library open the user's preferences, which complains on a fresh
        // home.
        PREFERENCES.setLevel(Level.SEVERE);
        LIBRARY.setLevel(Level.SEVERE);
        PICTURES.setLevel(Level.SEVERE);
        if (System.getProperty(DATABASE_FOLDER) != null) {
            return;
        }
        try {
            Path cache = cacheFolder().resolve("lanewright").resolve("epsg");
            Files.createDirectories(cache);
            System.setProperty(DATABASE_FOLDER, cache.toString());
        } catch (IOException | SecurityException | InvalidPathException readOnlyHome) {
            // The library then unpacks into the temporary folder, which is slower once and works.
            PREFERENCES.log(Level.FINE, "no cache folder for the EPSG database", readOnlyHome);
        }
    }

    private static Path cacheFolder() {
        String windows = System.getenv("LOCALAPPDATA");
        if (windows != null) {
            return Path.of(windows);
        }
        String stated = System.getenv("XDG_CACHE_HOME");
        return stated != null && !stated.isBlank()
                ? Path.of(stated)
                : Path.of(System.getProperty("user.home"), ".cache");
    }
}
