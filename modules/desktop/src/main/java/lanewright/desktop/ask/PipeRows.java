package lanewright.desktop.ask;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import lanewright.desktop.session.Session;
import lanewright.desktop.session.Shown;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.WaterPart;
import lanewright.planner.document.WaterPart.PipeState;
import org.jspecify.annotations.Nullable;

/** The pipes of the plan, each with a button that takes it out. */
final class PipeRows {

    private final Session session;
    private final VBox box = new VBox(6);
    private List<WaterPart.Pipe> shownPipes = List.of();
    private @Nullable UnitSystem shownUnits;

    PipeRows(Session session) {
        this.session = session;
    }

    VBox node() {
        return box;
    }

    /** Shows the pipes that the plan has now. */
    void refresh(Shown shown) {
        List<WaterPart.Pipe> pipes = shown.file().plan().water().pipes();
        UnitSystem units = shown.file().plan().units();
        if (pipes.equals(shownPipes) && units == shownUnits) {
            return;
        }
        shownPipes = pipes;
        shownUnits = units;
        List<VBox> rows = new ArrayList<>();
        for (int i = 0; i < pipes.size(); i++) {
            rows.add(row(i, pipes.get(i), units));
        }
        box.getChildren().setAll(rows);
    }

    private VBox row(int number, WaterPart.Pipe pipe, UnitSystem units) {
        Label name = new Label(pipe.name());
        name.getStyleClass().add("proposal-title");
        name.setWrapText(true);
        Label words = new Label(words(pipe).in(units));
        words.getStyleClass().add("note");
        words.setWrapText(true);
        Label wrong = new Label();
        wrong.getStyleClass().add("wrong");
        wrong.setWrapText(true);
        Button out = new Button("Take this pipe out");
        out.setId("pipe-out-" + number);
        out.setAccessibleText("Take out " + pipe.name());
        VBox row = new VBox(3, name, words, out);
        out.setOnAction(
                event -> {
                    Shown.Wrong found =
                            session.edit(
                                    "take out " + pipe.name(),
                                    plan -> plan.with(plan.water().without(number)));
                    if (found != null) {
                        wrong.setText(found.what() + " " + found.remedy());
                        if (!row.getChildren().contains(wrong)) {
                            row.getChildren().add(wrong);
                        }
                    }
                });
        return row;
    }

    /** What a pipe of the plan is, in a line. */
    static Saying words(WaterPart.Pipe pipe) {
        return Saying.of(
                "A pipe of your plan, {} wide, its ends "
                        + pipe.ends().known().words()
                        + ", "
                        + (pipe.state() == PipeState.TO_LAY
                                ? "to be bought and laid."
                                : "there already."),
                Quantity.depth(pipe.diameter()));
    }
}
