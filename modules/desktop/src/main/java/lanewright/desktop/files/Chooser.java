package lanewright.desktop.files;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Asks the owner for files and folders. One place for it, so that a test can answer. */
public interface Chooser {

    /**
     * Survey files to read.
     *
     * @return what was chosen, empty if nothing
     */
    List<Path> surveys();

    /** A plan to open, or null if none was chosen. */
    @Nullable Path plan();

    /**
     * Where a plan is to be kept, or null if the owner thought better of it.
     *
     * @param folder where to begin to look
     * @param name suggested name of the file
     */
    @Nullable Path keepPlan(@Nullable Path folder, String name);

    /**
     * Where some of the sheets are to be put as a PDF, or null if the owner thought better of it.
     *
     * @param folder where to begin to look
     * @param name suggested name of the file
     */
    @Nullable Path pages(@Nullable Path folder, String name);

    /**
     * A folder to put the sheets into, or null if none was chosen.
     *
     * @param folder where to begin to look
     * @param name suggested name of the new folder
     */
    @Nullable Path sheets(@Nullable Path folder, String name);
}
