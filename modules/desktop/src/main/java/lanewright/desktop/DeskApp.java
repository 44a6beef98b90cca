package lanewright.desktop;

import java.nio.file.Path;
import java.util.List;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.stage.Stage;
import lanewright.desktop.files.Home;
import lanewright.desktop.files.WindowChooser;
import lanewright.desktop.look.Type;
import lanewright.desktop.start.Warming;
import org.jspecify.annotations.Nullable;

/** The program as a window of the machine. */
public final class DeskApp extends Application {

    /** So long the sample's files may take to be cleared away, ms. */
    private static final long A_MOMENT = 1000;

    private @Nullable Desk desk;
    private @Nullable Warming warming;

    @Override
    public void init() {
        if (getParameters().getUnnamed().isEmpty()) {
            warming = Warming.begin(Path.of(System.getProperty("java.io.tmpdir")));
        }
    }

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
        Warming begun = warming;
        if (begun != null) {
            made.untilOpened(begun);
        }
        List<String> named = getParameters().getUnnamed();
        if (named.isEmpty()) {
            made.start();
        } else {
            made.openPlan(Path.of(named.get(0)));
        }
        stage.show();
    }

    @Override
    public void stop() throws InterruptedException {
        Warming begun = warming;
        if (begun != null) {
            begun.close();
            begun.ended(A_MOMENT);
        }
        Desk open = desk;
        if (open != null) {
            open.close();
        }
    }
}
