package lanewright.desktop.ask;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import lanewright.desktop.session.Session;
import lanewright.desktop.session.Shown;
import lanewright.drainage.WaterReport;
import lanewright.drainage.hollows.RainStep;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Parse;
import lanewright.measure.QuantityException;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.planner.document.WaterPart;
import lanewright.planner.listing.StandingListings;
import lanewright.planner.run.Outcome;
import org.jspecify.annotations.Nullable;

/**
 * The rain of the plan in steps: one is chosen, the last at first, and what stands then in each
 * hollow is told here and on the land. Steps are given here too.
 */
final class RainSteps {

    /** So many hollows are told of in a line; the rows have all. */
    private static final int TOLD = 4;

    private final Session session;
    private final VBox box = new VBox(6);
    private final FlowPane choices = new FlowPane(4, 4);
    private final Label said = new Label();
    private final VBox giving = new VBox(6);
    private final ToggleButton give = new ToggleButton();
    private final TextField name = field("rain-step-name", "What you call the step");
    private final TextField rain = field("rain-step-rain", "How much rain falls in it");
    private final TextField hours = field("rain-step-hours", "How many hours it takes");
    private final Button out = new Button();
    private final Label wrong = new Label();
    private List<RainStep> shownSteps = List.of();
    private @Nullable Outcome shownOf;
    private @Nullable UnitSystem shownUnits;

    RainSteps(Session session) {
        this.session = session;
        Label title = new Label("Rain, step by step");
        title.getStyleClass().add("row-title");
        box.setId("rain-steps");
        said.setId("rain-says");
        said.setWrapText(true);
        said.getStyleClass().add("finding");
        wrong.setWrapText(true);
        wrong.getStyleClass().add("wrong");
        give.setId("rain-give");
        give.getStyleClass().add("quiet");
        give.setOnAction(event -> offer());
        Button add = new Button("Add this step");
        add.setId("rain-add");
        add.setOnAction(event -> add());
        hours.setOnAction(event -> add());
        out.setId("rain-out");
        out.getStyleClass().add("quiet");
        out.setWrapText(true);
        out.setOnAction(event -> takeOut());
        giving.getChildren()
                .addAll(
                        wrong,
                        row("Called", name),
                        row("How much falls", rain),
                        row("Over how many hours", hours),
                        new FlowPane(6, 4, add, out));
        box.getChildren().addAll(title, choices, said, give, giving);
        session.rainStep().addListener((seen, was, now) -> tell());
        offer();
    }

    Node node() {
        return box;
    }

    /** Shows what is known now. */
    @SuppressWarnings("ReferenceEquality") // what was worked out anew is told anew
    void refresh(Shown now) {
        Outcome outcome = now.outcome();
        UnitSystem units = now.file().plan().units();
        if (outcome == null || (outcome == shownOf && units == shownUnits)) {
            return;
        }
        boolean first = shownOf == null;
        shownOf = outcome;
        shownUnits = units;
        rain.setPromptText(units == UnitSystem.US ? "1 in" : "25 mm");
        List<RainStep> steps = outcome.water().land().steps();
        if (first || !steps.equals(shownSteps)) {
            shownSteps = steps;
            // A step that is gone is no longer chosen: the last one is.
            session.rainStep().set(-1);
            choose();
            offer();
        }
        tell();
    }

    private void choose() {
        boolean held = Focus.within(choices);
        ToggleGroup group = new ToggleGroup();
        List<ToggleButton> made = new ArrayList<>();
        for (int i = 0; i < shownSteps.size(); i++) {
            ToggleButton one = new ToggleButton(shownSteps.get(i).name());
            one.setId("rain-step-" + i);
            one.setToggleGroup(group);
            one.setSelected(i == shownSteps.size() - 1);
            one.setWrapText(true);
            one.setAccessibleText("Show what stands after " + shownSteps.get(i).name());
            made.add(one);
        }
        group.selectedToggleProperty()
                .addListener(
                        (seen, was, now) -> {
                            if (now == null) {
                                was.setSelected(true); // one is always chosen
                            } else {
                                session.rainStep().set(made.indexOf(now));
                            }
                        });
        choices.getChildren().setAll(made);
        choices.setManaged(!made.isEmpty());
        if (held) {
            (made.isEmpty() ? give : made.get(made.size() - 1)).requestFocus();
        }
    }

    /** What stands in the hollows after the chosen step. */
    private void tell() {
        Outcome outcome = shownOf;
        UnitSystem units = shownUnits;
        if (outcome == null || units == null) {
            return;
        }
        if (shownSteps.isEmpty()) {
            said.setText(
                    "No rain is given in steps, so nothing is told of how deep water stands after"
                            + " it. Give one below, such as a wet day.");
            return;
        }
        int step = session.rainStepOf(shownSteps.size());
        WaterReport water = outcome.water();
        Listing listing = StandingListings.rain(water);
        List<String> stands = new ArrayList<>();
        int wet = 0;
        for (int i = 0; i < listing.rows().size(); i++) {
            if (water.land().spots().get(i).depths().get(step) > 0) {
                wet++;
                List<Saying> row = listing.rows().get(i);
                if (wet <= TOLD) {
                    stands.add(row.get(0).in(units) + " " + row.get(step + 1).in(units) + " deep");
                }
            }
        }
        String after = "After " + shownSteps.get(step).name();
        said.setText(
                stands.isEmpty()
                        ? after + " no water stands in any hollow that is listed."
                        : after
                                + " water stands: "
                                + String.join("; ", stands)
                                + (wet > TOLD ? "; and more, in the rows below." : "."));
    }

    private void offer() {
        boolean asked = give.isSelected();
        give.setText(
                asked
                        ? "Leave it"
                        : shownSteps.isEmpty() ? "Give a rain" : "Add a step, or take one out");
        giving.setVisible(asked);
        giving.setManaged(asked);
        out.setVisible(!shownSteps.isEmpty());
        out.setManaged(!shownSteps.isEmpty());
        if (!shownSteps.isEmpty()) {
            out.setText("Take out " + shownSteps.get(shownSteps.size() - 1).name());
        }
        say("");
    }

    private void say(String words) {
        wrong.setText(words);
        wrong.setManaged(!words.isEmpty());
        wrong.setVisible(!words.isEmpty());
    }

    private void add() {
        try {
            if (name.getText().isBlank()) {
                say("The step has no name. Call it as you like, such as first day.");
                return;
            }
            UnitSystem units = session.file().plan().units();
            double falls = Parse.of(Kind.DEPTH, rain.getText(), units).value();
            double takes =
                    Parse.of(
                                    Kind.COUNT,
                                    hours.getText().replaceFirst("\\s*h(ours?)?\\s*$", ""),
                                    units)
                            .value();
            WaterPart.Step step = new WaterPart.Step(name.getText().strip(), falls, takes);
            edit(
                    "add rain: " + step.name(),
                    steps -> {
                        steps.add(step);
                    });
        } catch (QuantityException e) {
            say(e.what() + ". " + e.remedy() + ".");
        } catch (IllegalArgumentException e) {
            say(e.getMessage() + ".");
        }
    }

    private void takeOut() {
        edit("take out rain", steps -> steps.remove(steps.size() - 1));
    }

    private void edit(String what, java.util.function.Consumer<List<WaterPart.Step>> change) {
        Shown.Wrong found =
                session.edit(
                        what,
                        plan -> {
                            List<WaterPart.Step> steps =
                                    new ArrayList<>(plan.water().rain().steps());
                            change.accept(steps);
                            return plan.with(plan.water().raining(steps));
                        });
        if (found == null) {
            name.clear();
            rain.clear();
            hours.clear();
            give.setSelected(false);
            give.requestFocus();
            offer();
        } else {
            say(found.what() + " " + found.remedy());
        }
    }

    private static TextField field(String id, String accessible) {
        TextField field = new TextField();
        field.setId(id);
        field.setAccessibleText(accessible);
        return field;
    }

    private static Node row(String words, TextField field) {
        Label label = new Label(words);
        label.getStyleClass().add("control-label");
        label.setLabelFor(field);
        label.setMinWidth(128);
        label.setPrefWidth(128);
        field.setPrefWidth(140);
        field.setMinWidth(110);
        javafx.scene.layout.HBox line = new javafx.scene.layout.HBox(8, label, field);
        line.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
        return line;
    }
}
