package lanewright.desktop.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;
import lanewright.desktop.session.Session;
import lanewright.desktop.session.Shown;
import lanewright.desktop.session.WaterRow;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Listing;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.measure.Where;
import lanewright.planner.listing.EarthListings;
import lanewright.planner.listing.StoneListings;
import lanewright.planner.run.Answer;
import lanewright.planner.run.Numbered;
import lanewright.planner.run.Outcome;
import lanewright.planner.work.HeapPlace;
import org.jspecify.annotations.Nullable;

/** One question: its answer in a line, and when it is open, its controls and its evidence. */
final class QuestionCard {

    private static final PseudoClass OPEN = PseudoClass.getPseudoClass("open");
    private static final PseudoClass POINTED = PseudoClass.getPseudoClass("pointed");
    private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

    /** Findings shown before the rest is asked for. */
    private static final int FIRST_FINDINGS = 3;

    private final Session session;
    private final Topic topic;
    private final Consumer<Where> jump;
    private final VBox box = new VBox(8);
    private final HBox head = new HBox(10);
    private final SVGPath mark = new SVGPath();
    private final Label question = new Label();
    private final Label answer = new Label("Being worked out.");
    private final Label before = new Label();
    private final Label changed = new Label("changed");
    private final VBox inside = new VBox(10);
    private final VBox controls = new VBox(8);
    private final VBox proposal = new VBox(6);
    private final @Nullable PipeRows pipes;
    private final @Nullable BenchmarkRows benchmarks;
    private final @Nullable RainSteps rain;
    private final @Nullable WetSwitch wet;
    private final @Nullable WaterRows water;
    private final VBox evidence = new VBox(8);
    private final VBox heaps = new VBox(3);
    private final VBox fewer = new VBox(3);
    private final List<ControlRow> rows = new ArrayList<>();
    private List<Control> shownControls = List.of();
    private List<Finding> shownFindings = List.of();
    private List<Finding> shownNumbers = List.of();
    private @Nullable UnitSystem shownUnits;
    private boolean open;

    /** The answer when all was settled and nothing moved, and the edit it was of. */
    private String settled = "";

    private long settledEdit = -1;

    /** What was settled before the newest edit. */
    private String earlier = "";

    /** Whether all findings were asked for since the card was opened. */
    private boolean all;

    QuestionCard(Session session, Topic topic, String words, Consumer<Where> jump) {
        this.session = session;
        this.topic = topic;
        this.jump = jump;
        box.setId("question-" + topic.name().toLowerCase(java.util.Locale.ROOT));
        box.getStyleClass().add("question");
        question.setText(words);
        question.getStyleClass().add("question-words");
        question.setWrapText(true);
        answer.getStyleClass().add("answer");
        answer.setWrapText(true);
        before.getStyleClass().add("before");
        before.setWrapText(true);
        changed.getStyleClass().add("changed");
        changed.setMinWidth(Region.USE_PREF_SIZE);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        VBox said = new VBox(2, new HBox(6, question, gap, changed), answer, before);
        HBox.setHgrow(said, Priority.ALWAYS);
        Region badge = new Region();
        badge.setMinSize(18, 18);
        badge.setMaxSize(18, 18);
        mark.getStyleClass().add("mark");
        head.getChildren().addAll(new javafx.scene.layout.StackPane(badge, mark), said);
        head.setAlignment(Pos.TOP_LEFT);
        head.getStyleClass().add("question-head");
        head.setFocusTraversable(true);
        head.setAccessibleRole(AccessibleRole.BUTTON);
        head.accessibleTextProperty()
                .bind(question.textProperty().concat(" ").concat(answer.textProperty()));
        head.setOnMouseClicked(
                event -> {
                    // Leaves a field of the card that closes, which goes with its card.
                    head.requestFocus();
                    session.open().set(topic);
                });
        head.setOnKeyPressed(
                event -> {
                    if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE) {
                        session.open().set(topic);
                        event.consume();
                    }
                });
        pipes = topic == Topic.WATER ? new PipeRows(session) : null;
        benchmarks = topic == Topic.FIELD ? new BenchmarkRows(session) : null;
        rain = topic == Topic.WATER ? new RainSteps(session) : null;
        wet = topic == Topic.WATER ? new WetSwitch(session) : null;
        water = topic == Topic.WATER ? new WaterRows(jump) : null;
        inside.getChildren().addAll(controls, proposal);
        if (pipes != null) {
            inside.getChildren().add(pipes.node());
        }
        if (benchmarks != null) {
            inside.getChildren().add(benchmarks.node());
        }
        if (rain != null) {
            inside.getChildren().add(rain.node());
        }
        if (wet != null) {
            inside.getChildren().add(wet.node());
        }
        if (water != null) {
            inside.getChildren().add(water.node());
        }
        if (topic == Topic.STONE) {
            fewer.setId("fewer-loads");
            inside.getChildren().add(fewer);
        }
        inside.getChildren().add(evidence);
        if (topic == Topic.EARTH) {
            heaps.setId("heaps");
            inside.getChildren().add(heaps);
        }
        box.getChildren().add(head);
    }

    Node node() {
        return box;
    }

    /** What opens the card. */
    Node head() {
        return head;
    }

    VBox proposal() {
        return proposal;
    }

    /** Opens or closes the card. */
    void setOpen(boolean now) {
        if (open && !now) {
            all = false;
            shownFindings = List.of();
            evidence.getChildren().clear();
        }
        open = now;
        box.pseudoClassStateChanged(OPEN, now);
        if (now && !box.getChildren().contains(inside)) {
            box.getChildren().add(inside);
        } else if (!now) {
            box.getChildren().remove(inside);
        }
        refresh(session.shown().get());
    }

    /** Shows what is known now. */
    void refresh(Shown shown) {
        UnitSystem units = shown.file().plan().units();
        Answer told =
                shown.answers().stream()
                        .filter(each -> each.topic() == topic)
                        .findFirst()
                        .orElse(null);
        boolean stale = shown.stale(topic);
        box.pseudoClassStateChanged(STALE, stale);
        Shown.Wrong wrong = shown.wrong();
        if (wrong != null && told == null) {
            answer.setText(
                    topic == Topic.LINE
                            ? wrong.what() + " " + wrong.remedy()
                            : "Not yet: first settle what is wrong with the lane.");
        } else if (told != null) {
            answer.setText(
                    told.says().in(units)
                            + (shown.onEarlierGrade(topic)
                                    ? " Still with the grade of before: a new one comes when your"
                                            + " hand rests."
                                    : ""));
        }
        // A shorter answer takes less room only when all is known, so that nothing jumps before.
        boolean working = !shown.settled() && wrong == null;
        answer.setMinHeight(
                working
                        ? Math.max(answer.getMinHeight(), answer.getHeight())
                        : Region.USE_COMPUTED_SIZE);
        mark(told, stale);
        compare(shown);
        if (!open) {
            return;
        }
        List<Control> wanted = Control.of(topic, shown.file().plan());
        if (!wanted.equals(shownControls)) {
            shownControls = wanted;
            rows.clear();
            boolean held = Focus.within(controls);
            controls.getChildren().clear();
            for (Control control : wanted) {
                ControlRow row = new ControlRow(session, control);
                rows.add(row);
                controls.getChildren().add(row.node());
            }
            if (held) {
                head.requestFocus();
            }
        } else {
            rows.forEach(ControlRow::fill);
        }
        if (shown.draft() != null && topic == Topic.STONE) {
            fewer(StoneListings.fewer(shown.draft().stone()), units);
        }
        Outcome outcome = shown.outcome();
        if (outcome != null && topic == Topic.EARTH) {
            heaps(outcome.heaps().heaps(), units);
        }
        if (pipes != null) {
            pipes.refresh(shown);
        }
        if (benchmarks != null) {
            benchmarks.refresh(shown);
        }
        if (rain != null) {
            rain.refresh(shown);
        }
        if (water != null) {
            water.refresh(shown);
        }
        List<Finding> found =
                shown.findings().stream().filter(each -> each.topic() == topic).toList();
        List<Finding> numbered = Numbered.of(shown.findings());
        if (!found.equals(shownFindings)
                || !numbered.equals(shownNumbers)
                || !Objects.equals(units, shownUnits)) {
            shownFindings = found;
            shownNumbers = numbered;
            shownUnits = units;
            evidence(found, units);
        }
    }

    /** Tells whether the newest edit changed the answer, and of the open question what it was. */
    private void compare(Shown shown) {
        if (shown.edit() != settledEdit) {
            earlier = settled;
        }
        String now = answer.getText();
        boolean other = !earlier.isEmpty() && !earlier.equals(now);
        show(changed, other);
        show(before, other && open);
        before.setText("before: " + earlier);
        if (shown.settled() && !session.isMoving() && shown.edit() != settledEdit) {
            settled = now;
            settledEdit = shown.edit();
        }
    }

    private static void show(Label label, boolean seen) {
        label.setVisible(seen);
        label.setManaged(seen);
    }

    private void mark(@Nullable Answer told, boolean stale) {
        mark.getStyleClass().removeAll("mark-answered", "mark-look", "mark-open");
        if (told == null || told.mark() == Answer.Mark.OPEN) {
            mark.setContent("M9 1 A8 8 0 1 0 9.01 1 M9 3 A6 6 0 1 1 8.99 3 Z");
            mark.getStyleClass().add("mark-open");
            mark.setAccessibleText("not yet");
        } else if (told.mark() == Answer.Mark.LOOK) {
            mark.setContent(
                    "M9 1 L17.5 16 L0.5 16 Z M8 6 L8 11 L10 11 L10 6 Z M8 12.5 L8 14.5 L10 14.5 L10 12.5 Z");
            mark.getStyleClass().add("mark-look");
            mark.setAccessibleText("look here");
        } else {
            mark.setContent(
                    "M9 1 A8 8 0 1 0 9.01 1 Z M4.5 9.2 L6 7.7 L8 9.7 L12.2 5.5 L13.7 7 L8 12.7 Z");
            mark.getStyleClass().add("mark-answered");
            mark.setAccessibleText("answered");
        }
        mark.setFillRule(javafx.scene.shape.FillRule.EVEN_ODD);
        mark.setOpacity(stale ? 0.5 : 1);
    }

    /** The text of a finding of this question, shown if it was not; null if there is none. */
    @Nullable Node textOf(Finding finding) {
        int at = shownFindings.indexOf(finding);
        UnitSystem units = shownUnits;
        if (at < 0 || units == null) {
            return null;
        }
        if (at >= FIRST_FINDINGS && !all) {
            all = true;
            evidence(shownFindings, units);
        }
        Node text = evidence.getChildren().get(at);
        evidence.getChildren().forEach(each -> each.pseudoClassStateChanged(POINTED, each == text));
        return text;
    }

    /** Shows a row of what is told of water, place by place; null if there is none. */
    @Nullable Node show(WaterRow row) {
        return water == null ? null : water.show(row);
    }

    private void evidence(List<Finding> found, UnitSystem units) {
        boolean held = Focus.within(evidence);
        evidence.getChildren().clear();
        int first = all ? found.size() : Math.min(found.size(), FIRST_FINDINGS);
        for (Finding finding : found.subList(0, first)) {
            evidence.getChildren().add(one(finding, units));
        }
        if (found.size() > first) {
            Button more = new Button("Show all " + found.size() + " findings");
            more.setId("more-" + topic.name().toLowerCase(java.util.Locale.ROOT));
            more.getStyleClass().add("quiet");
            more.setOnAction(event -> rest(more, found.subList(first, found.size()), units));
            evidence.getChildren().add(more);
        }
        if (held) {
            Focus.to(evidence, head);
        }
    }

    private void rest(Button more, List<Finding> found, UnitSystem units) {
        all = true;
        List<Node> made = new ArrayList<>();
        found.forEach(each -> made.add(one(each, units)));
        // The keyboard leaves the button before it goes.
        evidence.getChildren().addAll(made);
        Focus.to((javafx.scene.Parent) made.get(0), head);
        evidence.getChildren().remove(more);
    }

    /** Where the layers end if fewer loads come. */
    private void fewer(Listing listing, UnitSystem units) {
        List<Node> lines = new ArrayList<>();
        if (!listing.rows().isEmpty()) {
            Label title = new Label(listing.title());
            title.getStyleClass().addAll("level", "level-note");
            lines.add(title);
        }
        for (List<Saying> row : listing.rows()) {
            String two = row.get(3).in(units);
            lines.add(
                    line(
                            row.get(0).in(units)
                                    + ": without the last load, of which it takes "
                                    + row.get(1).in(units)
                                    + ", it ends at "
                                    + row.get(2).in(units)
                                    + (two.isEmpty()
                                            ? "."
                                            : "; without the last two at " + two + "."),
                            "finding"));
        }
        fewer.getStyleClass().setAll(lines.isEmpty() ? List.of() : List.of("evidence-note"));
        fewer.getChildren().setAll(lines);
    }

    /** Where the topsoil is heaped, heap by heap. */
    private void heaps(List<HeapPlace> places, UnitSystem units) {
        List<Node> lines = new ArrayList<>();
        if (!places.isEmpty()) {
            Label title = new Label("Heaps of topsoil");
            title.getStyleClass().addAll("level", "level-note");
            lines.add(title);
            for (HeapPlace heap : places) {
                lines.add(line("heap " + EarthListings.heapLine(heap).in(units), "finding"));
            }
            lines.add(line(EarthListings.HEAPS_ARE_LOOSE, "remedy"));
        }
        heaps.getStyleClass().setAll(places.isEmpty() ? List.of() : List.of("evidence-note"));
        heaps.getChildren().setAll(lines);
    }

    private static Label line(String words, String style) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.getStyleClass().add(style);
        return label;
    }

    private Node one(Finding finding, UnitSystem units) {
        int number = shownNumbers.indexOf(finding) + 1;
        String called = number > 0 ? " " + number : "";
        Label level =
                new Label(
                        switch (finding.level()) {
                            case STOP -> "Settle first" + called;
                            case LOOK -> "Look here" + called;
                            case NOTE -> "Good to know";
                        });
        level.getStyleClass()
                .addAll(
                        "level",
                        "level-" + finding.level().name().toLowerCase(java.util.Locale.ROOT));
        Label says = new Label(finding.says().in(units));
        says.setWrapText(true);
        says.getStyleClass().add("finding");
        VBox text = new VBox(3, level, says);
        String remedy = finding.remedy().in(units);
        if (!remedy.isBlank()) {
            Label todo = new Label(remedy);
            todo.setWrapText(true);
            todo.getStyleClass().add("remedy");
            text.getChildren().add(todo);
        }
        if (finding.where().from() != null || finding.where().x() != null) {
            Button show = new Button("Show the place");
            show.getStyleClass().add("quiet");
            show.setOnAction(event -> jump.accept(finding.where()));
            text.getChildren().add(show);
        }
        text.getStyleClass().add(finding.level() == Level.NOTE ? "evidence-note" : "evidence");
        return text;
    }
}
