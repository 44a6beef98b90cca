package lanewright.desktop.paper;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import lanewright.desktop.files.Chooser;
import lanewright.desktop.files.KeptCopies;
import lanewright.desktop.session.Session;
import lanewright.desktop.session.Shown;
import lanewright.earthwork.EarthworkReport;
import lanewright.earthwork.Hauled;
import lanewright.measure.Finding;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.document.PlanException;
import lanewright.planner.document.PlanFile;
import lanewright.planner.proposal.Steepest;
import lanewright.planner.run.Outcome;
import lanewright.stone.LayerStone;
import org.jspecify.annotations.Nullable;

/** The present plan beside one that was kept: what changed in stone, dirt, money and findings. */
public final class ComparePane {

    /** A plan that was kept. */
    record Copy(String name, PlanFile file, Path folder, @Nullable Outcome outcome) {
        @Override
        public String toString() {
            return name;
        }
    }

    private final Session session;
    private final Chooser chooser;
    private final Runnable back;
    private final BorderPane pane = new BorderPane();
    private final ComboBox<Copy> choice = new ComboBox<>();
    private final VBox body = new VBox(16);
    private final Label says = new Label();
    private final ChangeListener<Shown> news = (seen, was, now) -> show();
    private Session.@Nullable Working other;

    /**
     * Sets the present plan beside kept ones.
     *
     * @param copies the copies of this plan
     * @param chooser asks for the file of a kept plan
     * @param back closes this
     */
    public ComparePane(Session session, KeptCopies copies, Chooser chooser, Runnable back) {
        this.session = session;
        this.chooser = chooser;
        this.back = back;
        pane.getStyleClass().add("over");
        pane.setId("compare-pane");
        Label title = new Label("Compare with");
        title.getStyleClass().add("plan-name");
        choice.setId("compare-with");
        choice.setAccessibleText("Kept plan to compare with");
        choice.valueProperty().addListener((seen, was, now) -> chosen());
        Button file = new Button("A plan kept in a file");
        file.setId("compare-file");
        file.getStyleClass().add("quiet");
        file.setOnAction(event -> open());
        says.setId("compare-says");
        says.getStyleClass().add("note");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        Button close = new Button("Back to the plan");
        close.setId("back");
        close.setOnAction(event -> close());
        HBox head = new HBox(12, title, choice, file, says, gap, close);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("head");
        body.getStyleClass().add("page");
        ScrollPane scroll = new ScrollPane(body);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("start-scroll");
        pane.setTop(head);
        pane.setCenter(scroll);
        pane.setOnKeyPressed(
                event -> {
                    if (event.getCode() == KeyCode.ESCAPE) {
                        close();
                        event.consume();
                    }
                });
        session.shown().addListener(news);
        if (!session.opened().plan().equals(session.file().plan())) {
            choice.getItems()
                    .add(
                            new Copy(
                                    "as it was when you opened it",
                                    session.opened(),
                                    session.folder(),
                                    null));
        }
        read(copies);
        if (!choice.getItems().isEmpty()) {
            choice.getSelectionModel().selectLast();
        }
        show();
    }

    /** What to lay over the plan. */
    public Node node() {
        return pane;
    }

    private void read(KeptCopies copies) {
        try {
            copies.all().forEach(this::read);
        } catch (IOException e) {
            says.setText("Copies cannot be read: " + e.getMessage());
        }
    }

    private void read(KeptCopies.Kept kept) {
        try {
            byte[] text = kept.text().getBytes(StandardCharsets.UTF_8);
            PlanFile file = PlanFile.read(kept.name(), text);
            choice.getItems().add(new Copy(kept.name(), file, session.folder(), null));
        } catch (IOException | PlanException e) {
            says.setText(kept.name() + " cannot be read: " + e.getMessage());
        }
    }

    /** Sets the chosen plan beside the present one, worked out first if it is not yet. */
    private void chosen() {
        stop();
        Copy copy = choice.getValue();
        if (copy != null && copy.outcome() == null) {
            other = session.workOut(copy.file(), copy.folder(), new Hearing(copy));
        }
        show();
    }

    /** Works out a plan that was kept in a file, then sets it beside the present one. */
    private void open() {
        Path path = chooser.plan();
        Path folder = path == null ? null : path.toAbsolutePath().normalize().getParent();
        if (path == null || folder == null) {
            return;
        }
        String name = String.valueOf(path.getFileName());
        try {
            PlanFile file = PlanFile.read(name, Files.readAllBytes(path));
            Copy copy = new Copy(name, file, folder, null);
            choice.getItems().removeIf(each -> each.name().equals(name));
            choice.getItems().add(copy);
            choice.setValue(copy);
        } catch (IOException e) {
            says.setText(name + " cannot be read: " + e.getMessage());
        } catch (PlanException e) {
            says.setText(String.valueOf(e.getMessage()));
        }
    }

    /** Hears what becomes of a plan that is worked out beside the present one. */
    private final class Hearing implements Session.Beside {
        private final Copy copy;

        Hearing(Copy copy) {
            this.copy = copy;
        }

        @Override
        public void working(double part, String doing) {
            if (other == null) {
                return;
            }
            says.setText(copy.name() + ": " + doing);
        }

        @Override
        public void done(Outcome outcome) {
            if (other == null) {
                return;
            }
            stop();
            says.setText("");
            Copy made = new Copy(copy.name(), copy.file(), copy.folder(), outcome);
            choice.getItems().set(choice.getItems().indexOf(copy), made);
            choice.setValue(made);
            show();
        }

        @Override
        public void refused(Shown.Wrong wrong) {
            stop();
            says.setText(copy.name() + ": " + wrong.what() + " " + wrong.remedy());
        }
    }

    private void stop() {
        Session.Working going = other;
        other = null;
        if (going != null) {
            going.close();
        }
    }

    private void close() {
        stop();
        session.shown().removeListener(news);
        back.run();
    }

    private void show() {
        body.getChildren().clear();
        Copy copy = choice.getValue();
        Outcome now = session.shown().get().outcome();
        if (copy == null) {
            body.getChildren()
                    .add(
                            words(
                                    "Nothing has changed since the plan was opened, and no copy is"
                                            + " kept yet. Change the plan, and come back to see what"
                                            + " the change is worth; or choose a plan kept in a"
                                            + " file."));
            return;
        }
        Outcome then = copy.outcome();
        if (then == null) {
            body.getChildren().add(words(copy.name() + " is being worked out."));
            return;
        }
        if (now == null || !session.shown().get().settled()) {
            body.getChildren().add(words("The plan is still being worked out."));
            return;
        }
        UnitSystem units = now.plan().units();
        GridPane table = new GridPane();
        table.setId("compare-table");
        table.getStyleClass().add("compare");
        table.setHgap(28);
        table.setVgap(5);
        row(table, "", copy.name(), "now", "change", true);
        number(table, "Length", then, now, units, o -> o.design().length(), Quantity::length);
        number(
                table,
                "Steepest grade",
                then,
                now,
                units,
                o -> Math.abs(Steepest.of(o.design().profile()).grade()),
                Quantity::grade);
        for (String role : roles(then, now)) {
            number(
                    table,
                    "Needed of " + role,
                    then,
                    now,
                    units,
                    o -> layer(o, role, LayerStone::needed),
                    Quantity::mass);
            if (layer(then, role, LayerStone::inHand) > 0
                    || layer(now, role, LayerStone::inHand) > 0) {
                number(
                        table,
                        "In hand of " + role,
                        then,
                        now,
                        units,
                        o -> layer(o, role, LayerStone::inHand),
                        Quantity::mass);
            }
            number(
                    table,
                    "Order of " + role,
                    then,
                    now,
                    units,
                    o -> layer(o, role, LayerStone::toOrder),
                    Quantity::mass);
            number(
                    table,
                    "Loads to order of " + role,
                    then,
                    now,
                    units,
                    o -> layer(o, role, LayerStone::loadsToOrder),
                    Quantity::count);
        }
        number(table, "Cost of stone", then, now, units, o -> o.stone().cost(), Quantity::money);
        number(
                table,
                "Topsoil to strip",
                then,
                now,
                units,
                o -> o.volumes().strip().corrected(),
                Quantity::volume);
        number(
                table,
                "Dig",
                then,
                now,
                units,
                o -> o.volumes().cut().corrected(),
                Quantity::volume);
        number(table, "Build up", then, now, units, o -> o.volumes().earthFill(), Quantity::volume);
        hauled(table, "Earth to haul away or spread", then, now, e -> e.balance().haulAway());
        hauled(table, "Earth to bring in", then, now, e -> e.balance().bringIn());
        hauled(table, "Earth to refill soft soil", then, now, EarthworkReport::refill);
        number(
                table,
                "Land disturbed",
                then,
                now,
                units,
                o -> o.volumes().disturbed().corrected(),
                Quantity::land);
        number(
                table,
                "Wet places",
                then,
                now,
                units,
                o -> o.water().places().size(),
                Quantity::count);
        body.getChildren().add(table);
        body.getChildren().addAll(findings(then, now, units));
    }

    private static Set<String> roles(Outcome then, Outcome now) {
        Set<String> roles = new LinkedHashSet<>();
        for (Outcome each : List.of(now, then)) {
            each.stone().layers().forEach(layer -> roles.add(layer.supply().role()));
        }
        return roles;
    }

    private static double layer(Outcome outcome, String role, ToDoubleFunction<LayerStone> value) {
        return outcome.stone().layers().stream()
                .filter(layer -> layer.supply().role().equals(role))
                .mapToDouble(value)
                .sum();
    }

    private static Label words(String words) {
        Label label = new Label(words);
        label.setWrapText(true);
        return label;
    }

    private static void number(
            GridPane table,
            String what,
            Outcome then,
            Outcome now,
            UnitSystem units,
            ToDoubleFunction<Outcome> value,
            Function<Double, Quantity> kind) {
        double before = value.applyAsDouble(then);
        double after = value.applyAsDouble(now);
        if (Double.isNaN(before) && Double.isNaN(after)) {
            return;
        }
        String change = Words.change(kind.apply(before), kind.apply(after), units);
        row(
                table,
                what,
                Words.of(kind.apply(before), units),
                Words.of(kind.apply(after), units),
                change.isEmpty() ? "the same" : change,
                false);
    }

    private static void row(
            GridPane table, String what, String then, String now, String change, boolean head) {
        int row = table.getRowCount();
        Label[] labels = {new Label(what), new Label(then), new Label(now), new Label(change)};
        for (int i = 0; i < labels.length; i++) {
            if (head) {
                labels[i].getStyleClass().add("proposal-title");
            }
            if (i > 0) {
                labels[i].getStyleClass().add("number");
                labels[i].setMinWidth(110);
                labels[i].setMaxWidth(Double.MAX_VALUE);
            }
        }
        table.addRow(row, labels);
    }

    /** Earth on trucks, and its loads as far as they are known; no rows where none is hauled. */
    private static void hauled(
            GridPane table,
            String what,
            Outcome then,
            Outcome now,
            Function<EarthworkReport, Hauled> which) {
        UnitSystem units = now.plan().units();
        Hauled before = which.apply(then.earth());
        Hauled after = which.apply(now.earth());
        if (before.loose() > 0 || after.loose() > 0) {
            number(
                    table,
                    what + ", loose",
                    then,
                    now,
                    units,
                    o -> which.apply(o.earth()).loose(),
                    Quantity::volume);
        }
        if (before.loads() > 0 || after.loads() > 0) {
            number(
                    table,
                    what + ", loads",
                    then,
                    now,
                    units,
                    o -> which.apply(o.earth()).loads(),
                    Quantity::count);
        }
    }

    /** What is found of one plan only, and what is found of both in other words. */
    private static List<Node> findings(Outcome then, Outcome now, UnitSystem units) {
        SameFindings same = SameFindings.of(then.findings(), now.findings());
        List<Node> changed = new ArrayList<>();
        for (SameFindings.Pair pair : same.both()) {
            String was = pair.then().says().in(units);
            String is = pair.now().says().in(units);
            boolean asks =
                    pair.now().level() != Finding.Level.NOTE
                            || pair.then().level() != Finding.Level.NOTE;
            if (asks && !was.equals(is)) {
                Label before = words("before: " + was);
                before.getStyleClass().add("note");
                changed.add(new VBox(1, words("· " + is), before));
            }
        }
        List<Node> lists = new ArrayList<>();
        lists.add(listed("Gone", asked(same.gone(), units)));
        lists.add(listed("New", asked(same.come(), units)));
        if (!changed.isEmpty()) {
            VBox list = new VBox(5);
            list.setId("compare-changed");
            Label head = new Label("Changed");
            head.getStyleClass().add("proposal-title");
            list.getChildren().add(head);
            list.getChildren().addAll(changed);
            lists.add(list);
        }
        return lists;
    }

    /** What findings that ask for a look say. */
    private static List<String> asked(List<Finding> findings, UnitSystem units) {
        return findings.stream()
                .filter(finding -> finding.level() != Finding.Level.NOTE)
                .map(finding -> finding.says().in(units))
                .toList();
    }

    private static Node listed(String title, List<String> says) {
        VBox list = new VBox(5);
        list.setId("compare-" + title.toLowerCase(java.util.Locale.ROOT));
        Label head = new Label(title);
        head.getStyleClass().add("proposal-title");
        list.getChildren().add(head);
        for (String each : says) {
            list.getChildren().add(words("· " + each));
        }
        if (says.isEmpty()) {
            list.getChildren().add(words("nothing that asks for a look"));
        }
        return list;
    }
}
