package lanewright.desktop.ask;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import lanewright.desktop.session.Session;
import lanewright.desktop.session.Shown;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.planner.run.Outcome;
import lanewright.planner.work.WorkStep;

/** What to do, step after step, with this plan's amounts. */
public final class Steps {

    private final Session session;
    private final VBox list = new VBox(12);
    private final ScrollPane scroll = new ScrollPane(list);
    private long shownEdit = -1;

    /** The steps of a plan that is being worked on. */
    public Steps(Session session) {
        this.session = session;
        scroll.setId("steps");
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("questions-scroll");
        list.getStyleClass().add("page");
        session.shown().addListener((seen, was, now) -> refresh(now));
        refresh(session.shown().get());
    }

    /** What to show. */
    public Node node() {
        return scroll;
    }

    private void refresh(Shown now) {
        Outcome outcome = now.outcome();
        UnitSystem units = session.file().plan().units();
        if (outcome == null || now.outcomeEdit() == shownEdit) {
            return;
        }
        shownEdit = now.outcomeEdit();
        list.getChildren().clear();
        int number = 0;
        for (WorkStep step : outcome.order()) {
            number++;
            Label title = new Label(number + ". " + step.title());
            title.getStyleClass().add("proposal-title");
            title.setWrapText(true);
            VBox one = new VBox(3, title);
            add(one, "", step.amounts(), units);
            add(one, "Go on only when: ", step.lookFor(), units);
            add(one, "Wait for: ", step.waitsFor(), units);
            add(one, "Danger: ", step.canHurt(), units);
            list.getChildren().add(one);
        }
    }

    private static void add(VBox to, String head, List<Saying> sayings, UnitSystem units) {
        for (Saying saying : sayings) {
            Label label = new Label(head + saying.in(units));
            label.setWrapText(true);
            label.getStyleClass().add("finding");
            to.getChildren().add(label);
        }
    }
}
