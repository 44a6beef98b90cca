package lanewright.desktop;

import java.nio.file.Path;
import java.util.List;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.stage.Stage;
import lanewright.desktop.files.Home;
import lanewright.desktop.files.WindowChooser;
import lanewright.desktop.look.Type;
import org.jspecify.annotations.Nullable;

/** The program as a window of the machine. */
public final class DeskApp extends Application {

    private @Nullable Desk desk;

    @Override
    public void start(Stage stage) {
        Type.ready();
        Desk made = new Desk(new WindowChooser(() -> stage), Home.usual());
        desk = made;
        Scene scene = new Scene(made.root(), 1440, 900);
        stage.setScene(scene);
        stage.setMinWidth(900);
        stage.setMinHeight(600);
        stage.titleProperty().bind(made.title());
        made.live(stage);
        List<String> named = getParameters().getUnnamed();
        if (named.isEmpty()) {
            made.start();
        } else {
            made.openPlan(Path.of(named.get(0)));
        }
        stage.show();
    }

    @Override
    public void stop() {
        Desk open = desk;
        if (open != null) {
            open.close();
        }
    }
}
