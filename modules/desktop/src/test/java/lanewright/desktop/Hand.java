package lanewright.desktop;

import java.awt.image.BufferedImage;
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
import java.util.function.Predicate;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Cursor;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import lanewright.desktop.look.Board;
import org.jspecify.annotations.Nullable;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;

/**
 * A person at the window: looks, waits, moves the pointer and presses keys. There is no other way
 * to the program for tests of the window.
 */
final class Hand {

    /** Where the pictures of the windows go. */
    static final Path PICTURES = Path.of("target", "screens");

    private static final long PATIENCE = 180_000;

    private final Stage stage;
    private final FxRobot robot = new FxRobot();
    private final javafx.scene.robot.Robot wheel = on(javafx.scene.robot.Robot::new);

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

    /** Starts the toolkit, if it is not running yet. */
    static void ready() {
        try {
            FxToolkit.registerPrimaryStage();
        } catch (TimeoutException e) {
            throw new IllegalStateException("the toolkit did not start", e);
        }
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
        until("the boards at rest", () -> rest(stage.getScene().getRoot()));
        on(() -> null);
    }

    private static boolean rest(Node from) {
        if (from instanceof Board board && board.isVisible() && !board.isAtRest()) {
            return false;
        }
        return !(from instanceof Parent parent)
                || parent.getChildrenUnmodifiable().stream().allMatch(Hand::rest);
    }

    static void pause(long millis) {
        try {
            Thread.sleep(millis);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Whether there is a part with an id. */
    boolean has(String id) {
        return on(() -> find(stage.getScene().getRoot(), id)) != null;
    }

    /** A part of the window by its id. */
    Node see(String id) {
        Node found = on(() -> find(stage.getScene().getRoot(), id));
        if (found == null) {
            look("not-found");
            throw new AssertionError("there is no " + id + " in the window");
        }
        return found;
    }

    private static @Nullable Node find(Node from, String id) {
        if (id.equals(from.getId())) {
            return from;
        }
        if (from instanceof Parent parent) {
            for (Node child : parent.getChildrenUnmodifiable()) {
                Node found = find(child, id);
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }

    /** How bright a place of the window is, of 1. */
    double brightness(double x, double y) {
        settle();
        WritableImage image = on(() -> stage.getScene().snapshot(null));
        return image.getPixelReader().getColor((int) x, (int) y).getBrightness();
    }

    /**
     * Moves the pointer over places of a part that are painted in a colour, by rows, until it
     * becomes a hand; px from its left top.
     *
     * @throws AssertionError if it becomes none
     */
    double[] handOver(Node part, Predicate<Color> colour) {
        settle();
        Bounds bounds = on(() -> part.localToScene(part.getBoundsInLocal()));
        PixelReader pixels = on(() -> stage.getScene().snapshot(null)).getPixelReader();
        for (int y = 0; y < (int) bounds.getHeight(); y += 3) {
            for (int x = 0; x < (int) bounds.getWidth(); x += 3) {
                int left = (int) bounds.getMinX() + x;
                int top = (int) bounds.getMinY() + y;
                if (colour.test(pixels.getColor(left, top))) {
                    moveTo(part, x, y);
                    if (on(part::getCursor) == Cursor.HAND) {
                        return new double[] {x, y};
                    }
                }
            }
        }
        look("no-hand");
        throw new AssertionError("the pointer never became a hand over " + part);
    }

    /** Takes a picture of the window. */
    void look(String name) {
        settle();
        WritableImage image = on(() -> stage.getScene().snapshot(null));
        int columns = (int) image.getWidth();
        int rows = (int) image.getHeight();
        int[] pixels = new int[columns * rows];
        image.getPixelReader()
                .getPixels(
                        0, 0, columns, rows, PixelFormat.getIntArgbInstance(), pixels, 0, columns);
        // A window hides what is behind it, and a picture that cannot be seen through packs sooner.
        var opaque = new BufferedImage(columns, rows, BufferedImage.TYPE_INT_RGB);
        opaque.getRaster().setDataElements(0, 0, columns, rows, pixels);
        try {
            Files.createDirectories(PICTURES);
            ImageIO.write(opaque, "png", PICTURES.resolve(name + ".png").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Clicks into the middle of a part, rolling it into sight first where it is not. */
    void click(String id) {
        Node part = see(id);
        roll(part);
        robot.clickOn(part);
        settle();
    }

    /** Rolls a part into sight, if it is not. */
    void rollTo(String id) {
        roll(see(id));
        settle();
    }

    /** Clicks on the head of a question, which may lie out of sight. */
    void open(String question) {
        Node head = on(() -> see(question).lookup(".question-head"));
        roll(head);
        robot.clickOn(head);
        settle();
    }

    /** Rolls the wheel over the panel that holds a part until the part is in sight. */
    private void roll(Node part) {
        Node panel = on(() -> scrolling(part));
        if (panel == null) {
            return;
        }
        for (int i = 0; i < 100; i++) {
            double off = on(() -> outOfSight(panel, part));
            if (off == 0) {
                return;
            }
            Bounds bounds = on(() -> panel.localToScreen(panel.getBoundsInLocal()));
            robot.moveTo(
                    new javafx.geometry.Point2D(
                            bounds.getMinX() + bounds.getWidth() - 30,
                            bounds.getMinY() + bounds.getHeight() / 2));
            // The screen that is only in memory moves a pixel a notch.
            int notches = (int) Math.max(1, Math.min(400, 0.8 * on(() -> far(panel, part))));
            on(
                    () -> {
                        wheel.mouseWheel(off > 0 ? -notches : notches);
                        return null;
                    });
            pause(30);
        }
        look("not-rolled");
        throw new AssertionError("could not be rolled into sight: " + part);
    }

    private static Node scrolling(Node part) {
        Node up = part.getParent();
        while (up != null && !(up instanceof javafx.scene.control.ScrollPane)) {
            up = up.getParent();
        }
        return up;
    }

    /** How far a part lies from the middle of the panel that rolls it, px. */
    private static double far(Node panel, Node part) {
        Bounds outer = panel.localToScene(panel.getBoundsInLocal());
        Bounds inner = part.localToScene(part.getBoundsInLocal());
        return Math.abs(inner.getCenterY() - outer.getCenterY());
    }

    private static double outOfSight(Node panel, Node part) {
        Bounds outer = panel.localToScene(panel.getBoundsInLocal());
        Bounds inner = part.localToScene(part.getBoundsInLocal());
        if (inner.getMaxY() > outer.getMaxY() - 2 && inner.getHeight() < outer.getHeight()) {
            return 1;
        }
        return inner.getMinY() < outer.getMinY() + 2 ? -1 : 0;
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
        Node field = see(id);
        roll(field);
        robot.clickOn(field);
        robot.push(KeyCode.CONTROL, KeyCode.A);
        robot.write(words);
        robot.push(KeyCode.ENTER);
        settle();
    }

    /** Clicks at a place of a part, px from its left top. */
    void clickAt(Node part, double x, double y) {
        moveTo(part, x, y);
        robot.clickOn(MouseButton.PRIMARY);
        pause(350);
    }

    /** Opens a list and takes one of its words with the keys. */
    void choose(String id, String words) {
        var box = (javafx.scene.control.ComboBox<?>) see(id);
        int way = on(() -> indexOf(box, words)) - now(box);
        roll(box);
        robot.clickOn(box);
        settle();
        if (!on(box::isShowing)) {
            look("not-opened");
            throw new AssertionError(id + " did not open");
        }
        for (int i = 0; i < Math.abs(way); i++) {
            robot.push(way > 0 ? KeyCode.DOWN : KeyCode.UP);
        }
        robot.push(KeyCode.ENTER);
        settle();
    }

    private static int now(javafx.scene.control.ComboBox<?> box) {
        return on(() -> box.getSelectionModel().getSelectedIndex());
    }

    private static int indexOf(javafx.scene.control.ComboBox<?> box, String words) {
        for (int i = 0; i < box.getItems().size(); i++) {
            if (words.equals(box.getItems().get(i))) {
                return i;
            }
        }
        throw new AssertionError("there is no " + words + " among " + box.getItems());
    }

    /** Whether something is still being worked out. */
    boolean bar() {
        Node found = stage.getScene().getRoot().lookup(".progress-bar");
        return found != null && found.isVisible();
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
