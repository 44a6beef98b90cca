package lanewright.desktop.ask;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import lanewright.desktop.session.Ghost;
import lanewright.desktop.session.Session;
import lanewright.desktop.session.Shown;
import lanewright.drainage.along.CulvertLine;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.document.Plan;
import lanewright.planner.pipes.PipeJob;
import lanewright.planner.proposal.Steepest;
import lanewright.planner.run.Draft;
import lanewright.planner.run.Outcome;
import lanewright.planner.run.PipeOffer;
import org.jspecify.annotations.Nullable;

/**
 * What the program proposes: a grade of its own, a pipe where the lane holds back water. A proposal
 * is seen beside the plan with what it would change, and is taken or left; nothing is changed by
 * itself.
 */
final class Proposals {

    private final Session session;
    private final Consumer<Node> reveal;
    private final Map<Topic, VBox> places = new EnumMap<>(Topic.class);
    private final Map<Topic, Node> heads = new EnumMap<>(Topic.class);
    private final Map<Topic, String> shownFor = new EnumMap<>(Topic.class);
    private @Nullable Topic looking;

    /**
     * The proposals of a plan.
     *
     * @param reveal brings a part of the list into sight
     */
    Proposals(Session session, Consumer<Node> reveal) {
        this.session = session;
        this.reveal = reveal;
        session.shown().addListener((seen, was, now) -> refresh());
        session.ghost().addListener((seen, was, now) -> refresh());
    }

    /**
     * Takes a place for the proposals of a question.
     *
     * @param head takes the keyboard where a proposal goes and leaves nothing to press
     */
    void put(Topic topic, VBox place, Node head) {
        if (topic == Topic.GRADE || topic == Topic.WATER) {
            places.put(topic, place);
            heads.put(topic, head);
            refresh();
        }
    }

    private void refresh() {
        Shown shown = session.shown().get();
        Ghost ghost = session.ghost().get();
        places.forEach((topic, place) -> refresh(topic, place, shown, ghost));
    }

    private void refresh(Topic topic, VBox place, Shown shown, @Nullable Ghost ghost) {
        // A grade is known with the sections; where a pipe fits, only when water was followed.
        boolean known = topic == Topic.GRADE ? shown.drafted() : shown.settled();
        boolean mine = ghost != null && topic == looking;
        String now = "edit " + shown.edit();
        if (ghost != null) {
            now = mine ? seenAs(ghost) : "";
        }
        if (now.equals(shownFor.get(topic)) || (ghost == null && !known)) {
            return;
        }
        shownFor.put(topic, now);
        boolean held = Focus.within(place);
        place.getChildren().clear();
        if (ghost != null && mine) {
            seen(place, ghost);
        } else if (ghost == null) {
            offer(topic, place, shown);
        }
        if (held) {
            Focus.to(place, Objects.requireNonNull(heads.get(topic), "a head comes with a place"));
        }
        if (mine) {
            reveal.accept(place);
        }
    }

    private static String seenAs(Ghost ghost) {
        return ghost.title()
                + (ghost.draft() == null)
                + (ghost.outcome() == null)
                + (ghost.wrong() == null);
    }

    /** How wide the pipe stands in the plan once it is taken, and why. */
    private static String wide(Outcome outcome, CulvertLine culvert, UnitSystem units) {
        String wide = Words.of(Quantity.depth(PipeOffer.wide(outcome, culvert)), units);
        if (outcome.storm() == null) {
            return "How wide it must be is not worked out, for nobody said "
                    + String.join(", nor ", outcome.plan().water().rain().missing())
                    + ": it stands as "
                    + wide
                    + " in your plan until you write another."
                    + (PipeOffer.isTight(outcome, culvert)
                            ? " A wider one would have too little earth over it."
                            : "");
        }
        return PipeOffer.enough(outcome, culvert).isPresent()
                ? "It is " + wide + " wide, which carries the storm of your plan."
                : "One round pipe does not carry the storm of your plan: look below and on the"
                        + " water sheet which does. It stands as "
                        + wide
                        + " in your plan until you write another.";
    }

    /** How much of it is ordered, and what is to be minded while trucks build. */
    private static String bought(Outcome outcome, CulvertLine culvert, UnitSystem units) {
        for (PipeJob job : outcome.pipes()) {
            if (!job.planned() && job.line().equals(culvert)) {
                return " Order "
                        + Words.of(Quantity.length(job.length().ordered()), units)
                        + " of it"
                        + (Double.isNaN(job.money())
                                ? "; without a price nothing is said of money."
                                : ": with bed and riprap "
                                        + Words.of(Quantity.money(job.money()), units)
                                        + outcome.plan().afterMoney()
                                        + ".")
                        + (job.building().lacking() > 0
                                ? " While trucks build it wants "
                                        + Words.of(Quantity.depth(job.building().lacking()), units)
                                        + " more over it."
                                : "");
            }
        }
        return "";
    }

    private void offer(Topic topic, VBox place, Shown shown) {
        if (topic == Topic.GRADE) {
            if (shown.file().plan().grade().points().isEmpty()) {
                laid(place);
            } else {
                offer(
                        place,
                        topic,
                        newGrade(shown),
                        "Laid by the program: keeps within your limits, aims at little digging and"
                                + " at water that runs. It takes the place of the grade points in"
                                + " your plan.",
                        plan -> plan.with(plan.grade().laid(List.of(), List.of())));
            }
        } else {
            Outcome outcome = shown.outcome();
            CulvertLine culvert = outcome == null ? null : PipeOffer.fitting(outcome);
            if (outcome != null && culvert != null) {
                UnitSystem units = shown.file().plan().units();
                offer(
                        place,
                        topic,
                        "A pipe at " + Words.of(Quantity.station(culvert.station()), units),
                        Words.of(Quantity.length(culvert.length()), units)
                                + " long, under the lane at its low ground, to be bought and laid. "
                                + wide(outcome, culvert, units)
                                + bought(outcome, culvert, units),
                        plan -> PipeOffer.taken(plan, outcome, culvert));
            }
        }
    }

    /** Says that the grade is the program's, and offers to keep it. */
    private void laid(VBox place) {
        Label auto =
                new Label(
                        "This grade was laid by the program and follows the lane until you move a"
                                + " point of it or keep it.");
        auto.setWrapText(true);
        auto.getStyleClass().add("note");
        Button keep = new Button("Keep this grade");
        keep.setId("keep-grade");
        keep.setOnAction(event -> session.keepGrade());
        place.getChildren().addAll(auto, keep);
    }

    /** What a new grade would be, beside the one that there is. */
    private static String newGrade(Shown shown) {
        UnitSystem units = shown.file().plan().units();
        String most = Words.of(Quantity.grade(shown.file().plan().grade().steepest()), units);
        Draft draft = shown.draft();
        if (draft == null || !shown.drafted()) {
            return "A new grade of at most " + most;
        }
        Steepest steepest = Steepest.of(draft.design().profile());
        return "A new grade of at most "
                + most
                + ", in place of "
                + Words.of(Quantity.grade(Math.abs(steepest.grade())), units)
                + " at "
                + Words.of(Quantity.station(steepest.station()), units);
    }

    private void offer(
            VBox place, Topic topic, String title, String about, UnaryOperator<Plan> change) {
        Label name = new Label(title);
        name.getStyleClass().add("proposal-title");
        name.setWrapText(true);
        Label words = new Label(about);
        words.getStyleClass().add("note");
        words.setWrapText(true);
        Label wrong = new Label();
        wrong.getStyleClass().add("wrong");
        wrong.setWrapText(true);
        Button see = new Button("See it first");
        see.setId("see-" + topic.name().toLowerCase(java.util.Locale.ROOT));
        see.setOnAction(
                event -> {
                    looking = topic;
                    Shown.Wrong found = session.look(title, change);
                    if (found != null) {
                        looking = null;
                        wrong.setText(found.what() + " " + found.remedy());
                        place.getChildren().add(wrong);
                    }
                });
        place.getChildren().addAll(name, words, see);
    }

    private void seen(VBox place, Ghost ghost) {
        Label name = new Label(ghost.title());
        name.getStyleClass().add("proposal-title");
        place.getChildren().add(name);
        Shown.Wrong wrong = ghost.wrong();
        Draft then = ghost.draft();
        Draft now = session.shown().get().draft();
        if (wrong != null) {
            Label words = new Label(wrong.what() + " " + wrong.remedy());
            words.getStyleClass().add("wrong");
            words.setWrapText(true);
            place.getChildren().add(words);
        } else if (then == null || now == null) {
            Label words = new Label("Being worked out …");
            words.getStyleClass().add("note");
            place.getChildren().add(words);
        } else {
            place.getChildren()
                    .add(
                            Changes.of(
                                    session.file().plan().units(),
                                    now,
                                    then,
                                    session.shown().get().outcome(),
                                    ghost.outcome()));
        }
        Button take = new Button("Use it");
        take.setId("take");
        take.getStyleClass().add("acting");
        take.setDisable(wrong != null || then == null);
        take.setOnAction(event -> session.take());
        Button leave = new Button("Leave it");
        leave.setId("leave");
        leave.setOnAction(event -> session.leave());
        place.getChildren().add(new HBox(8, take, leave));
    }
}
