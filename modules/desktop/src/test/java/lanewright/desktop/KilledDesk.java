package lanewright.desktop;

import java.nio.file.Path;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.application.Platform;
import javafx.event.ActionEvent;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import lanewright.desktop.files.Home;
import lanewright.desktop.look.Type;

/** The window, in which somebody writes one width after the other until it is killed. */
final class KilledDesk {

    static final String FIELD = "field-shapes[0].width";

    private KilledDesk() {}

    /** Arguments: home, plan, number of the last width, seed. */
    public static void main(String[] arguments) {
        StartTest.Answers answers = new StartTest.Answers();
        answers.plan = Path.of(arguments[1]);
        SplittableRandom random = new SplittableRandom(Long.parseLong(arguments[3]));
        Hand.ready();
        Desk desk =
                Hand.on(
                        () -> {
                            Type.ready();
                            return new Desk(answers, new Home(Path.of(arguments[0])));
                        });
        Hand hand = Hand.open(desk::root, 1000, 700);
        Hand.on(
                () -> {
                    desk.start();
                    return null;
                });
        hand.keys(KeyCode.CONTROL, KeyCode.O);
        hand.until("the plan", () -> desk.title().get().contains("lane"));
        hand.keys(KeyCode.CONTROL, KeyCode.DIGIT4);
        // What comes in while the plan is worked out may move the field away under the pointer.
        hand.until("the whole outcome", () -> !hand.bar());
        for (int i = 0; i < 20 && !Hand.on(() -> hand.see(FIELD).isFocused()); i++) {
            hand.click(FIELD);
        }
        Thread alive = new Thread(KilledDesk::beat);
        alive.setDaemon(true);
        alive.start();
        TextField field = (TextField) hand.see(FIELD);
        AtomicInteger made = new AtomicInteger();
        Robot keys = Hand.on(Robot::new);
        Hand.on(
                () -> {
                    // Told once the field's own action, which makes the edit, is over.
                    field.addEventHandler(
                            ActionEvent.ACTION,
                            event -> {
                                int edit = Integer.parseInt(field.getText().split(" ")[0]);
                                Platform.runLater(
                                        () -> {
                                            say("edit", edit);
                                            made.set(edit);
                                        });
                            });
                    return null;
                });
        for (int edit = Integer.parseInt(arguments[2]) + 1; ; edit++) {
            int number = edit;
            say("typing", edit);
            Hand.on(
                    () -> {
                        write(keys, number + " mm");
                        return null;
                    });
            long end = System.nanoTime() + 60_000_000_000L;
            while (made.get() < edit) {
                if (System.nanoTime() > end) {
                    throw new AssertionError("the edit was not made: " + Hand.on(field::getText));
                }
                Hand.pause(2);
            }
            if (random.nextInt(15) == 0) {
                say("keeping", edit);
                Hand.on(
                        () -> {
                            with(keys, KeyCode.CONTROL, KeyCode.S);
                            return null;
                        });
                if (random.nextBoolean()) {
                    hand.until("it is kept", () -> !desk.title().get().contains("not kept"));
                    say("kept", edit);
                }
            }
            Hand.pause(random.nextInt(20));
        }
    }

    /** Presses the keys of words in a field in place of what stands there, and Enter. */
    private static void write(Robot keys, String words) {
        with(keys, KeyCode.CONTROL, KeyCode.A);
        for (int i = 0; i < words.length(); i++) {
            char letter = words.charAt(i);
            keys.keyType(
                    letter == ' '
                            ? KeyCode.SPACE
                            : Character.isDigit(letter)
                                    ? KeyCode.valueOf("DIGIT" + letter)
                                    : KeyCode.valueOf(
                                            String.valueOf(Character.toUpperCase(letter))));
        }
        keys.keyType(KeyCode.ENTER);
    }

    private static void with(Robot keys, KeyCode held, KeyCode pressed) {
        keys.keyPress(held);
        keys.keyType(pressed);
        keys.keyRelease(held);
    }

    private static void beat() {
        while (true) {
            say("beat", 0);
            Hand.pause(20);
        }
    }

    private static void say(String word, int edit) {
        System.out.println(word + " " + edit + " " + System.currentTimeMillis());
    }
}
