package lanewright.desktop;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.robot.Robot;
import lanewright.desktop.files.Home;
import lanewright.desktop.lane.Handles;
import lanewright.desktop.look.Type;
import lanewright.desktop.session.Session;
import lanewright.desktop.session.Shown;
import lanewright.desktop.start.Warming;
import lanewright.planner.document.PlanFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * How quick the window is, for docs/speed.md: no test, it holds nothing to a limit. A lane of 1,055
 * m with sections every 5 m on a million points, at 1920 by 1080 in the software renderer. Writes
 * {@code target/window-figures.txt}.
 */
class WindowFigures {

    private static final Path SAMPLE =
            Path.of("..", "..", "sample-surveys", "marrow-fold", "plan.json");

    private static final String PLAN =
            """
            { "version": 1, "name": "Long lane", "units": "metric",
              "survey": { "files": [ { "path": "hills.csv", "holds": "points", "unit": "m" } ] },
              "line": { "points": [
                { "east": "20 m", "north": "480 m" },
                { "east": "260 m", "north": "580 m", "radius": "60 m" },
                { "east": "500 m", "north": "440 m", "radius": "45 m" },
                { "east": "720 m", "north": "580 m", "radius": "60 m" },
                { "east": "978 m", "north": "500 m" } ] },
              "grade": { "steepest": "12 %" },
              "shapes": [ { "name": "lane", "width": "4 m", "layers": [
                { "role": "surface", "thickness": "100 mm" },
                { "role": "base", "thickness": "200 mm" } ] } ],
              "along": [ { "from": "start", "to": "end", "shape": "lane" } ],
              "stone": { "payload": "14 t", "materials": [
                { "role": "surface", "kind": "crushed surfacing, top course", "price": "20 per t" },
                { "role": "base", "kind": "crushed surfacing, base course" } ] },
              "earth": { "topsoil": "200 mm" },
              "work": { "interval": "5 m" } }
            """;

    @TempDir Path folder;

    private final StringBuilder told = new StringBuilder();
    private final AtomicBoolean beating = new AtomicBoolean();
    private final List<Double> late = new ArrayList<>();
    private final List<Double> frames = new ArrayList<>();

    @Test
    void figures() throws Exception {
        Warming warming = Warming.begin(folder);
        Hand.ready();
        firstSample(warming);
        million();
        Files.createDirectories(Path.of("target"));
        Files.writeString(Path.of("target", "window-figures.txt"), told);
    }

    /** From dropping the first sample's files to the ground with answers, in a fresh program. */
    private void firstSample(Warming warming) throws Exception {
        Desk desk =
                Hand.on(
                        () -> {
                            Type.ready();
                            return new Desk(
                                    new StartTest.Answers(), new Home(folder.resolve("home")));
                        });
        Hand hand = Hand.open(desk::root, 1440, 900);
        Hand.on(
                () -> {
                    desk.start();
                    desk.untilOpened(warming);
                    return null;
                });
        hand.settle();
        Path plan = folder.resolve("sample");
        Files.createDirectories(plan);
        for (String file : List.of("plan.json", "points.csv", "probes.csv")) {
            Files.copy(SAMPLE.resolveSibling(file), plan.resolve(file));
        }
        beat();
        Hand.pause(300);
        fresh();
        long begun = System.nanoTime();
        Hand.on(
                () -> {
                    desk.drop(List.of(plan.resolve("plan.json")));
                    return null;
                });
        hand.until(
                "answers",
                () -> {
                    Node stone = hand.see("question-stone").lookup(".answer");
                    return ((javafx.scene.control.Label) stone).getText().contains("loads");
                });
        told("opening the first sample", true);
        beating.set(false);
        say("first sample dropped in a fresh program to the first answers, ms", since(begun));
        hand.until("the window at rest", () -> !hand.bar());
        say("and to the whole outcome, ms", since(begun));
        Hand.on(
                () -> {
                    desk.close();
                    return null;
                });
    }

    private static double since(long begun) {
        return (System.nanoTime() - begun) / 1e6;
    }

    private void million() throws Exception {
        hills(folder.resolve("hills.csv"));
        PlanFile bare = PlanFile.read("plan.json", PLAN.getBytes(StandardCharsets.UTF_8));
        beat();
        long begun = System.nanoTime();
        Session session = Hand.on(() -> new Session(bare, folder, Platform::runLater));
        DeskWindow window = Hand.on(() -> new DeskWindow(session));
        Hand hand = Hand.open(window::root, 1920, 1080);
        watch();
        told("opening a plan in the window", true);
        hand.until("the land", () -> session.land().get() != null);
        say("a million points from the text file to the land, ms", since(begun));
        hand.until("the whole outcome", () -> session.shown().get().settled());
        say("and to the whole outcome with a first grade laid, ms", since(begun));
        told("while a million points are read", true);
        Hand.pause(1000);
        fresh();
        Hand.on(
                () -> {
                    session.keepGrade();
                    return null;
                });
        for (int round = 0; round < 6; round++) {
            dragGrade(hand, session, round);
        }
        for (int round = 0; round < 6; round++) {
            dragCorner(hand, session, window, round);
        }
        pan(hand, window);
        hand.settle();
        Hand.pause(1000);
        System.gc();
        Runtime memory = Runtime.getRuntime();
        say(
                "memory in use after collecting, MB",
                (memory.totalMemory() - memory.freeMemory()) / 1e6);
        beating.set(false);
        Hand.on(
                () -> {
                    window.close();
                    return null;
                });
    }

    private void dragGrade(Hand hand, Session session, int round) {
        hand.open("question-grade");
        Hand.pause(500);
        Node board = hand.see("unrolled");
        double[] at =
                Hand.on(
                        () -> {
                            var points = session.shown().get().draft().design().profile().points();
                            return Handles.place(
                                    session,
                                    board.getBoundsInLocal().getWidth(),
                                    board.getBoundsInLocal().getHeight(),
                                    points.get(points.size() / 2));
                        });
        drag(hand, session, board, at, 0, -1, "a point between grades", round);
    }

    private void dragCorner(Hand hand, Session session, DeskWindow window, int round) {
        hand.open("question-line");
        Hand.pause(500);
        hand.click("fit");
        Hand.pause(500);
        Node board = hand.see("land");
        double[] at =
                Hand.on(
                        () -> {
                            var line = session.shown().get().draft().design().alignment();
                            var corner = line.points().get(2);
                            return window.land().place(corner.x(), corner.y());
                        });
        drag(hand, session, board, at, 0.5, -0.5, "a corner of the line", round);
    }

    /** Drags, and tells how long each answer and each frame took. */
    private void drag(
            Hand hand,
            Session session,
            Node board,
            double[] at,
            double dx,
            double dy,
            String what,
            int round) {
        Map<Long, Long> asked = new LinkedHashMap<>();
        List<Double> answers = new ArrayList<>();
        var listener =
                new javafx.beans.value.ChangeListener<Shown>() {
                    @Override
                    public void changed(
                            javafx.beans.value.ObservableValue<? extends Shown> seen,
                            Shown was,
                            Shown now) {
                        if (now.edit() != was.edit() && moved > 0) {
                            asked.put(now.edit(), moved);
                        }
                        if (now.draftEdit() != was.draftEdit()) {
                            Long since = asked.get(now.draftEdit());
                            if (since != null) {
                                answers.add((System.nanoTime() - since) / 1e6);
                            }
                        }
                    }
                };
        Hand.on(
                () -> {
                    board.addEventFilter(MouseEvent.MOUSE_DRAGGED, this::moves);
                    session.shown().addListener(listener);
                    return null;
                });
        Robot pointer = Hand.on(Robot::new);
        move(pointer, board, at[0], at[1]);
        press(pointer, true);
        move(pointer, board, at[0] + 4 * Math.signum(dx), at[1] + 4 * Math.signum(dy));
        Hand.pause(200);
        Hand.on(
                () -> {
                    answers.clear();
                    return null;
                });
        fresh();
        for (int i = 1; i <= 120; i++) {
            double k = 60 - Math.abs(60 - i);
            move(pointer, board, at[0] + 4 * dx + dx * k, at[1] + 4 * dy + dy * k);
            Hand.pause(12);
        }
        Hand.pause(200);
        // The whole outcome that is asked for now is no answer to the last move.
        moved = 0;
        long released = System.nanoTime();
        press(pointer, false);
        hand.until("the whole outcome", () -> session.shown().get().settled());
        double settled = since(released);
        Hand.on(
                () -> {
                    board.removeEventFilter(MouseEvent.MOUSE_DRAGGED, this::moves);
                    session.shown().removeListener(listener);
                    return null;
                });
        told("dragging " + what + ", round " + (round + 1), false);
        line("  mouse event to outcome", answers);
        say("  settled after release, ms", settled);
    }

    /** The toolkit's own robot: the other one waits until the screen is at rest. */
    private static void move(Robot pointer, Node board, double x, double y) {
        Hand.on(
                () -> {
                    var bounds = board.localToScreen(board.getBoundsInLocal());
                    pointer.mouseMove(bounds.getMinX() + x, bounds.getMinY() + y);
                    return null;
                });
    }

    private static void press(Robot pointer, boolean down) {
        Hand.on(
                () -> {
                    if (down) {
                        pointer.mousePress(MouseButton.PRIMARY);
                    } else {
                        pointer.mouseRelease(MouseButton.PRIMARY);
                    }
                    return null;
                });
    }

    private long moved;

    private void moves(MouseEvent event) {
        moved = System.nanoTime();
    }

    private void pan(Hand hand, DeskWindow window) {
        Node board = hand.see("land");
        fresh();
        Robot pointer = Hand.on(Robot::new);
        move(pointer, board, 900, 250);
        press(pointer, true);
        for (int i = 0; i <= 100; i++) {
            move(pointer, board, 900 - 6 * i, 250 - i / 2.0);
            Hand.pause(12);
        }
        press(pointer, false);
        told("moving the land", true);
        for (int i = 0; i < 60; i++) {
            boolean nearer = i < 30;
            Hand.on(
                    () -> {
                        window.land().zoom(nearer ? 1.07 : 1 / 1.07);
                        return null;
                    });
            Hand.pause(15);
        }
        told("coming nearer and going farther", true);
    }

    /** Every few milliseconds something is asked of the thread of the screen. */
    private void beat() {
        beating.set(true);
        Thread beats =
                new Thread(
                        () -> {
                            while (beating.get()) {
                                long asked = System.nanoTime();
                                Platform.runLater(() -> late.add(since(asked)));
                                Hand.pause(5);
                            }
                        },
                        "heartbeat");
        beats.setDaemon(true);
        beats.start();
    }

    /** From frame to frame. */
    private void watch() {
        Hand.on(
                () -> {
                    var timer =
                            new AnimationTimer() {
                                private long last;

                                @Override
                                public void handle(long now) {
                                    long at = System.nanoTime();
                                    if (last != 0) {
                                        frames.add((at - last) / 1e6);
                                    }
                                    last = at;
                                }
                            };
                    timer.start();
                    return null;
                });
    }

    private void fresh() {
        Hand.on(
                () -> {
                    late.clear();
                    frames.clear();
                    return null;
                });
    }

    private void told(String what, boolean andFresh) {
        told.append(what).append('\n');
        Hand.on(
                () -> {
                    line("  from frame to frame", frames);
                    line("  heartbeat of the window late by", late);
                    return null;
                });
        if (andFresh) {
            fresh();
        }
    }

    private void line(String what, List<Double> all) {
        List<Double> sorted = all.stream().sorted().toList();
        if (sorted.isEmpty()) {
            told.append(what).append(": none\n");
            return;
        }
        told.append(
                String.format(
                        Locale.ROOT,
                        "%s, ms: median %.1f, 95th percentile %.1f, most %.1f (%d)%n",
                        what,
                        part(sorted, 0.5),
                        part(sorted, 0.95),
                        part(sorted, 1),
                        sorted.size()));
    }

    private static double part(List<Double> sorted, double part) {
        return sorted.get((int) Math.min(sorted.size() - 1, Math.floor(part * sorted.size())));
    }

    private void say(String what, double value) {
        told.append(String.format(Locale.ROOT, "%s: %.0f%n", what, value));
    }

    /** Rolling ground with irregular points about a metre apart. */
    private static void hills(Path file) throws IOException {
        SplittableRandom random = new SplittableRandom(1_000_000);
        try (var writer = Files.newBufferedWriter(file)) {
            writer.write("number,easting,northing,height\n");
            for (int i = 1; i <= 1_000_000; i++) {
                double x = random.nextDouble(1000);
                double y = random.nextDouble(1000);
                double z =
                        100
                                + 6 * StrictMath.sin(x / 90)
                                + 4 * StrictMath.cos(y / 70)
                                + 0.3 * StrictMath.sin(x / 7 + y / 11);
                writer.write(String.format(Locale.ROOT, "%d,%.3f,%.3f,%.3f%n", i, x, y, z));
            }
        }
    }
}
