package lanewright.desktop.ask;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import lanewright.desktop.look.Seldom;
import lanewright.desktop.session.Session;
import lanewright.desktop.session.WaterRow;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Where;

/** The questions down the side, in the order in which they are asked. */
public final class Questions {

    private static final Map<Topic, String> WORDS = new EnumMap<>(Topic.class);

    static {
        WORDS.put(Topic.GROUND, "Can I trust the ground?");
        WORDS.put(Topic.LINE, "Where does the lane run?");
        WORDS.put(Topic.GRADE, "What grade does it take?");
        WORDS.put(Topic.SHAPE, "How is it shaped?");
        WORDS.put(Topic.WATER, "Where does water go?");
        WORDS.put(Topic.EARTH, "How much topsoil and dirt?");
        WORDS.put(Topic.STONE, "How much stone?");
        WORDS.put(Topic.ORDER, "What do I do, in what order?");
        WORDS.put(Topic.FIELD, "What do I carry to the field?");
    }

    /** Seen around a part that is brought into sight. */
    private static final double MARGIN = 12;

    private final Map<Topic, QuestionCard> cards = new EnumMap<>(Topic.class);
    private final ScrollPane scroll;

    /**
     * The questions of a plan.
     *
     * @param jump shows a place on the land
     */
    public Questions(Session session, Consumer<Where> jump) {
        VBox list = new VBox(0);
        list.getStyleClass().add("questions");
        Proposals proposals = new Proposals(session, this::reveal);
        WORDS.forEach(
                (topic, words) -> {
                    QuestionCard card = new QuestionCard(session, topic, words, jump);
                    cards.put(topic, card);
                    list.getChildren().add(card.node());
                    proposals.put(topic, card.proposal(), card.head());
                });
        scroll = new ScrollPane(list);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().add("questions-scroll");
        scroll.setFocusTraversable(false);
        // A kept picture of all cards would be made anew for each word in them that changes.
        scroll.skinProperty()
                .addListener((seen, was, now) -> scroll.lookup(".viewport").setCache(false));
        session.open().addListener((seen, was, now) -> open(now));
        var refreshing =
                new Seldom(
                        () -> cards.values().forEach(card -> card.refresh(session.shown().get())));
        session.shown()
                .addListener(
                        (seen, was, now) -> {
                            if (now.saysTheSameAs(was)) {
                                return;
                            }
                            if (session.isMoving()) {
                                refreshing.soon();
                            } else {
                                refreshing.now();
                            }
                        });
        session.pointed()
                .addListener(
                        (seen, was, now) -> {
                            if (now != null) {
                                Platform.runLater(() -> point(now));
                            }
                        });
        session.pointedRow()
                .addListener(
                        (seen, was, now) -> {
                            if (now != null) {
                                Platform.runLater(() -> point(now));
                            }
                        });
        open(session.open().get());
    }

    /** The panel. */
    public Node node() {
        return scroll;
    }

    private void rollTo(double top, double room) {
        scroll.setVvalue(room <= 0 ? 0 : Math.max(0, Math.min(1, top / room)));
    }

    /** Rolls no further than it takes to see the whole of a part of the list, its end first. */
    private void reveal(Node part) {
        Platform.runLater(
                () -> {
                    if (part.getScene() == null) {
                        return;
                    }
                    scroll.applyCss();
                    scroll.layout();
                    Node list = scroll.getContent();
                    var at = list.sceneToLocal(part.localToScene(part.getLayoutBounds()));
                    double seen = scroll.getViewportBounds().getHeight();
                    double room = list.getLayoutBounds().getHeight() - seen;
                    double top = Math.max(0, room) * scroll.getVvalue();
                    double wanted = Math.min(top, at.getMinY() - MARGIN);
                    rollTo(Math.max(wanted, at.getMaxY() + MARGIN - seen), room);
                });
    }

    private void point(Finding finding) {
        QuestionCard card = cards.get(finding.topic());
        Node text = card == null ? null : card.textOf(finding);
        if (text != null) {
            reveal(text);
        }
    }

    private void point(WaterRow row) {
        QuestionCard card = cards.get(Topic.WATER);
        Node told = card == null ? null : card.show(row);
        if (told != null) {
            reveal(told);
        }
    }

    private void open(Topic topic) {
        cards.forEach((each, card) -> card.setOpen(each == topic));
        QuestionCard opened = cards.get(topic);
        if (opened != null) {
            Platform.runLater(() -> bringUp(opened.node()));
        }
    }

    /** Rolls the list so that the head of the open question is in sight, with one above it. */
    private void bringUp(Node card) {
        scroll.layout();
        double list = scroll.getContent().getLayoutBounds().getHeight();
        double seen = scroll.getViewportBounds().getHeight();
        double top = card.getBoundsInParent().getMinY() - 72;
        double room = list - seen;
        rollTo(top, room);
    }
}
