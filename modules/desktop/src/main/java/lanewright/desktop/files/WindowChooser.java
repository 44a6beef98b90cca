package lanewright.desktop.files;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.FileChooser.ExtensionFilter;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;

/** Asks with the machine's own dialogs. */
public final class WindowChooser implements Chooser {

    private final Supplier<@Nullable Window> owner;

    /**
     * A chooser.
     *
     * @param owner window that the dialogs belong to
     */
    public WindowChooser(Supplier<@Nullable Window> owner) {
        this.owner = owner;
    }

    @Override
    public List<Path> surveys() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Survey files");
        chooser.getExtensionFilters()
                .addAll(
                        new ExtensionFilter(
                                "Survey files",
                                "*.csv",
                                "*.txt",
                                "*.pts",
                                "*.xyz",
                                "*.geojson",
                                "*.json",
                                "*.tif",
                                "*.tiff",
                                "*.asc"),
                        new ExtensionFilter("All files", "*"));
        List<File> chosen = chooser.showOpenMultipleDialog(owner.get());
        return chosen == null ? List.of() : chosen.stream().map(File::toPath).toList();
    }

    @Override
    public @Nullable Path plan() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("A plan");
        chooser.getExtensionFilters().add(new ExtensionFilter("Plans", "*.json"));
        File chosen = chooser.showOpenDialog(owner.get());
        return chosen == null ? null : chosen.toPath();
    }

    @Override
    public @Nullable Path keepPlan(@Nullable Path folder, String name) {
        return newFile("Keep the plan", folder, name, new ExtensionFilter("Plans", "*.json"));
    }

    @Override
    public @Nullable Path pages(@Nullable Path folder, String name) {
        return newFile("Save the chosen sheets", folder, name, new ExtensionFilter("PDF", "*.pdf"));
    }

    private @Nullable Path newFile(
            String title, @Nullable Path folder, String name, ExtensionFilter kind) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.setInitialFileName(name);
        if (folder != null && folder.toFile().isDirectory()) {
            chooser.setInitialDirectory(folder.toFile());
        }
        chooser.getExtensionFilters().add(kind);
        File chosen = chooser.showSaveDialog(owner.get());
        return chosen == null ? null : chosen.toPath();
    }

    @Override
    public @Nullable Path sheets(@Nullable Path folder, String name) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle("A folder for the sheets: a new folder " + name + " is made in it");
        if (folder != null && folder.toFile().isDirectory()) {
            chooser.setInitialDirectory(folder.toFile());
        }
        File chosen = chooser.showDialog(owner.get());
        return chosen == null ? null : chosen.toPath().resolve(name);
    }
}
