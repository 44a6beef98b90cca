package lanewright.desktop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.embed.swing.SwingFXUtils;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;

/**
 * A person at the window: looks, waits, moves the pointer and presses keys. There is no other way
 * to the program for tests of the window.
 */
final class Hand {

    /** Where the pictures of the windows go. */
    static final Path PICTURES = Path.of("target", "screens");

    private static final long PATIENCE = 60_000;

    private final Stage stage;
    private final FxRobot robot = new FxRobot();

    private Hand(Stage stage) {
        this.stage = stage;
    }

    /** Opens a window of a size around what {@code make} makes. */
    static Hand open(Callable<Parent> make, double width, double height) {
        try {
            Stage stage = FxToolkit.registerPrimaryStage();
            on(
                    () -> {
                        stage.setScene(new Scene(make.call(), width, height));
                        stage.setX(0);
                        stage.setY(0);
                        stage.show();
                        return null;
                    });
            return new Hand(stage);
        } catch (TimeoutException e) {
            throw new IllegalStateException("the toolkit did not start", e);
        }
    }

    /** Puts something else into the window. */
    void show(Parent root) {
        stage.getScene().setRoot(root);
    }

    /** Does something on the thread of the screen and waits for it. */
    static <T> T on(Callable<T> work) {
        if (Platform.isFxApplicationThread()) {
            try {
                return work.call();
            } catch (Exception e) {
                throw new IllegalStateException(e);
            }
        }
        FutureTask<T> task = new FutureTask<>(work);
        Platform.runLater(task);
        try {
            return task.get(PATIENCE, TimeUnit.MILLISECONDS);
        } catch (InterruptedException | TimeoutException e) {
            throw new IllegalStateException("the screen did not answer", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        }
    }

    /** Waits until something is seen. */
    void until(String what, BooleanSupplier seen) {
        long end = System.currentTimeMillis() + PATIENCE;
        while (!on(seen::getAsBoolean)) {
            if (System.currentTimeMillis() > end) {
                look("waited-for");
                throw new AssertionError("never saw: " + what);
            }
            pause(20);
        }
    }

    /** Waits until the screen has painted what it was told. */
    void settle() {
        for (int i = 0; i < 3; i++) {
            on(() -> null);
            pause(30);
        }
    }

    static void pause(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** A part of the window by its id. */
    Node see(String id) {
        Node found = on(() -> stage.getScene().getRoot().lookup("#" + id));
        if (found == null) {
            look("not-found");
            throw new AssertionError("there is no " + id + " in the window");
        }
        return found;
    }

    /** Takes a picture of the window. */
    void look(String name) {
        settle();
        WritableImage image = on(() -> stage.getScene().snapshot(null));
        try {
            Files.createDirectories(PICTURES);
            ImageIO.write(
                    SwingFXUtils.fromFXImage(image, null),
                    "png",
                    PICTURES.resolve(name + ".png").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Clicks into the middle of a part. */
    void click(String id) {
        robot.clickOn(see(id));
        settle();
    }

    /** Moves the pointer to a place of a part, px from its left top. */
    void moveTo(Node part, double x, double y) {
        Bounds bounds = on(() -> part.localToScreen(part.getBoundsInLocal()));
        robot.moveTo(new javafx.geometry.Point2D(bounds.getMinX() + x, bounds.getMinY() + y));
    }

    /** Presses at one place of a part, moves in steps to another and lets go. */
    void drag(Node part, double x0, double y0, double x1, double y1, int steps) {
        moveTo(part, x0, y0);
        robot.press(MouseButton.PRIMARY);
        for (int i = 1; i <= steps; i++) {
            moveTo(part, x0 + (x1 - x0) * i / steps, y0 + (y1 - y0) * i / steps);
        }
        robot.release(MouseButton.PRIMARY);
        settle();
    }

    /** Types into a field in place of what stands there, and presses Enter. */
    void write(String id, String words) {
        robot.clickOn(see(id));
        robot.push(KeyCode.CONTROL, KeyCode.A);
        robot.write(words);
        robot.push(KeyCode.ENTER);
        settle();
    }

    /** Presses keys together. */
    void keys(KeyCode... keys) {
        robot.push(keys);
        settle();
    }

    FxRobot robot() {
        return robot;
    }
}
