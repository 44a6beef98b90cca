package lanewright.desktop;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import lanewright.desktop.files.Chooser;
import lanewright.desktop.files.Home;
import lanewright.desktop.look.Type;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The start, by pointer and keys only. */
class StartTest {

    @TempDir Path folder;

    /** Answers for the owner. */
    static final class Answers implements Chooser {
        List<Path> surveys = List.of();
        @Nullable Path plan;
        @Nullable Path keep;
        @Nullable Path sheets;
        @Nullable Path pages;

        @Override
        public List<Path> surveys() {
            return surveys;
        }

        @Override
        public @Nullable Path plan() {
            return plan;
        }

        @Override
        public @Nullable Path keepPlan(@Nullable Path in, String name) {
            return keep;
        }

        @Override
        public @Nullable Path pages(@Nullable Path in, String name) {
            return pages;
        }

        @Override
        public @Nullable Path sheets(@Nullable Path in, String name) {
            return sheets;
        }
    }

    private static String said(Hand hand, String id) {
        Node node = hand.see(id);
        return Hand.on(() -> ((Label) node).getText());
    }

    @Test
    void stoneIsAnsweredAsOneTypes() throws Exception {
        Hand.ready();
        Desk desk = Hand.on(() -> desk(new Answers()));
        Hand hand = Hand.open(desk::root, 1440, 900);
        Hand.on(
                () -> {
                    desk.start();
                    return null;
                });
        hand.look("start");
        String before = said(hand, "stone-answer");
        hand.write("stone-length", "1200 ft");
        String after = said(hand, "stone-answer");
        assertTrue(!before.equals(after), before + " / " + after);
        hand.write("stone-price", "30 per ton");
        assertTrue(said(hand, "stone-answer").contains("delivered"));
        hand.look("start-stone");
        Hand.on(
                () -> {
                    desk.close();
                    return null;
                });
    }

    private Desk desk(Chooser chooser) {
        Type.ready();
        return new Desk(chooser, new Home(folder.resolve("home")));
    }
}
