package lanewright.desktop.ask;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
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
    private final Map<Topic, VBox> places = new EnumMap<>(Topic.class);
    private @Nullable Topic looking;
    private String shownFor = "";

    Proposals(Session session) {
        this.session = session;
        session.shown().addListener((seen, was, now) -> refresh());
        session.ghost().addListener((seen, was, now) -> refresh());
    }

    void put(Topic topic, VBox place) {
        if (topic == Topic.GRADE || topic == Topic.WATER) {
            places.put(topic, place);
            refresh();
        }
    }

    private void refresh() {
        Shown shown = session.shown().get();
        Ghost ghost = session.ghost().get();
        String now =
                shown.edit()
                        + " "
                        + shown.settled()
                        + " "
                        + (ghost == null
                                ? "-"
                                : ghost.title()
                                        + (ghost.draft() == null)
                                        + (ghost.outcome() == null)
                                        + (ghost.wrong() == null));
        if (now.equals(shownFor) || (!shown.settled() && ghost == null)) {
            return;
        }
        shownFor = now;
        places.forEach(
                (topic, place) -> {
                    place.getChildren().clear();
                    if (ghost != null && topic == looking) {
                        seen(place, ghost);
                    } else if (ghost == null) {
                        offer(topic, place, shown);
                    }
                });
    }

    private void offer(Topic topic, VBox place, Shown shown) {
        if (topic == Topic.GRADE) {
            boolean own = !shown.file().plan().grade().points().isEmpty();
            if (own) {
                offer(
                        place,
                        topic,
                        "A grade laid by the program",
                        "Keeps within your limits, aims at little digging and at water that runs.",
                        plan -> plan.with(plan.grade().laid(List.of(), List.of())));
            } else {
                Label auto =
                        new Label(
                                "This grade was laid by the program and follows the lane until you"
                                        + " move a point of it.");
                auto.setWrapText(true);
                auto.getStyleClass().add("note");
                place.getChildren().add(auto);
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
                                + " long, under the lane at its low ground, to be bought and laid."
                                + " How wide it must be is not worked out: it stands as "
                                + Words.of(Quantity.depth(PipeOffer.wide(units)), units)
                                + " in your plan until you write another.",
                        plan -> PipeOffer.taken(plan, outcome, culvert));
            }
        }
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
            place.getChildren().add(changes(now, then, ghost.outcome()));
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

    /** The numbers that a proposal changes, now and then. */
    private GridPane changes(Draft now, Draft then, @Nullable Outcome whole) {
        UnitSystem units = session.file().plan().units();
        GridPane table = new GridPane();
        table.getStyleClass().add("changes");
        table.setHgap(12);
        table.setVgap(3);
        row(table, 0, "", "now", "then");
        row(table, 1, "Steepest", steepest(now, units), steepest(then, units));
        row(
                table,
                2,
                "Dig",
                Words.of(Quantity.volume(now.volumes().cut().corrected()), units),
                Words.of(Quantity.volume(then.volumes().cut().corrected()), units));
        row(
                table,
                3,
                "Build up",
                Words.of(Quantity.volume(now.volumes().earthFill()), units),
                Words.of(Quantity.volume(then.volumes().earthFill()), units));
        row(table, 4, "Left over", over(now, units), over(then, units));
        Outcome before = session.shown().get().outcome();
        if (before != null) {
            row(
                    table,
                    5,
                    "Wet places",
                    Integer.toString(before.water().made().size()),
                    whole == null ? "…" : Integer.toString(whole.water().made().size()));
        }
        return table;
    }

    private static String steepest(Draft draft, UnitSystem units) {
        double most = 0;
        var profile = draft.design().profile();
        for (double s = profile.from(); s <= profile.to(); s += 1) {
            most = Math.max(most, Math.abs(profile.grade(s)));
        }
        return Words.of(Quantity.grade(most), units);
    }

    private static String over(Draft draft, UnitSystem units) {
        double over = draft.earth().balance().over();
        return Words.of(Quantity.volume(Math.abs(over)), units) + (over < 0 ? " short" : "");
    }

    private static void row(GridPane table, int row, String what, String now, String then) {
        Label first = new Label(what);
        Label second = new Label(now);
        Label third = new Label(then);
        second.getStyleClass().add("number");
        third.getStyleClass().add("number");
        table.addRow(row, first, second, third);
    }
}
