package lanewright.desktop.ask;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import lanewright.desktop.session.Session;
import lanewright.desktop.session.Shown;
import lanewright.measure.LengthUnit;
import lanewright.measure.Parse;
import lanewright.measure.Quantity;
import lanewright.measure.QuantityException;
import lanewright.measure.UnitSystem;
import lanewright.measure.Written;
import lanewright.planner.document.Benchmark;
import lanewright.planner.document.Plan;
import lanewright.planner.document.Spot;
import lanewright.planner.document.SurveyPart;
import org.jspecify.annotations.Nullable;

/**
 * The benchmarks of the plan, each with a button that takes it out, and what it takes to name one.
 * A benchmark is put in whole: until all of it is there and right, what was written stays in its
 * fields and the plan stays as it is.
 */
final class BenchmarkRows {

    private final Session session;
    private final VBox box = new VBox(6);
    private final VBox named = new VBox(6);
    private final VBox form = new VBox(6);
    private final Button offer = new Button();
    private final Label other = new Label();
    private final Entry name = new Entry("benchmark-name", "What it is");
    private final Entry east = new Entry("benchmark-east", "East");
    private final Entry north = new Entry("benchmark-north", "North");
    private final Entry height = new Entry("benchmark-height", "Height");
    private final List<Entry> entries = List.of(name, east, north, height);
    private @Nullable List<Benchmark> shownMarks;
    private @Nullable UnitSystem shownUnits;

    BenchmarkRows(Session session) {
        this.session = session;
        Label title = new Label("Benchmarks");
        title.getStyleClass().add("row-title");
        Label note =
                new Label(
                        "A fixed point that will not move, such as a spike in a post: where it is,"
                                + " in the coordinates of your survey, and its height there. All"
                                + " heights of stakes are taken from the first one named.");
        note.getStyleClass().add("note");
        note.setWrapText(true);
        other.getStyleClass().add("wrong");
        other.setWrapText(true);
        offer.setId("benchmark-offer");
        offer.setOnAction(event -> open(!form.isVisible()));
        Button add = new Button("Put it in");
        add.setId("benchmark-add");
        add.setOnAction(event -> add());
        name.prompt("spike in the gatepost");
        form.getChildren().add(note);
        for (Entry entry : entries) {
            entry.onEnter(this::add);
            form.getChildren().add(entry.node());
        }
        form.getChildren().addAll(other, add);
        box.setId("benchmarks");
        box.getChildren().addAll(title, named, offer, form);
        say("");
        open(false);
    }

    Node node() {
        return box;
    }

    /** Shows the benchmarks that the plan has now. */
    void refresh(Shown shown) {
        Plan plan = shown.file().plan();
        if (plan.benchmarks().equals(shownMarks) && plan.units() == shownUnits) {
            return;
        }
        shownMarks = plan.benchmarks();
        shownUnits = plan.units();
        boolean held = Focus.within(named);
        List<Node> rows = new ArrayList<>();
        for (int i = 0; i < plan.benchmarks().size(); i++) {
            rows.add(row(i, plan.benchmarks().get(i), plan.units()));
        }
        named.getChildren().setAll(rows);
        named.setManaged(!rows.isEmpty());
        String flat = prompt(unit(plan, SurveyPart.File::unit));
        east.prompt(flat);
        north.prompt(flat);
        height.prompt(prompt(unit(plan, BenchmarkRows::heightUnit)));
        open(form.isVisible());
        if (held) {
            offer.requestFocus();
        }
    }

    private static String prompt(String unit) {
        return unit.isEmpty() ? "with its unit" : "in " + unit;
    }

    /** The unit that the files of the survey all give, or empty if a bare number is not plain. */
    private static String unit(Plan plan, Function<SurveyPart.File, @Nullable LengthUnit> of) {
        Set<String> units = new HashSet<>();
        for (SurveyPart.File file : plan.survey().files()) {
            LengthUnit unit = of.apply(file);
            units.add(unit == null ? "" : unit.symbol());
        }
        return units.size() == 1 ? units.iterator().next() : "";
    }

    private static @Nullable LengthUnit heightUnit(SurveyPart.File file) {
        return file.heightUnit() == null ? file.unit() : file.heightUnit();
    }

    private Node row(int number, Benchmark mark, UnitSystem units) {
        Label called = new Label(mark.name());
        called.getStyleClass().add("proposal-title");
        called.setWrapText(true);
        Label words =
                new Label(
                        words(mark, units) + (number == 0 ? "" : " No heights are taken from it."));
        words.getStyleClass().add("note");
        words.setWrapText(true);
        Label wrong = new Label();
        wrong.getStyleClass().add("wrong");
        wrong.setWrapText(true);
        Button out = new Button("Take this benchmark out");
        out.setId("benchmark-out-" + number);
        out.setAccessibleText("Take out " + mark.name());
        VBox row = new VBox(3, called, words, out);
        out.setOnAction(
                event -> {
                    Shown.Wrong found =
                            session.edit(
                                    "take out " + mark.name(),
                                    plan -> {
                                        var rest = new ArrayList<>(plan.benchmarks());
                                        rest.remove(number);
                                        return plan.levelled(rest);
                                    });
                    if (found != null) {
                        wrong.setText(found.what() + " " + found.remedy());
                        if (!row.getChildren().contains(wrong)) {
                            row.getChildren().add(wrong);
                        }
                    }
                });
        return row;
    }

    private static String words(Benchmark mark, UnitSystem units) {
        Spot spot = mark.spot();
        String place =
                spot.degrees()
                        ? Written.number(spot.across())
                                + "° of longitude, "
                                + Written.number(spot.up())
                                + "° of latitude"
                        : Written.exactly(Quantity.height(spot.across()), units)
                                + " east, "
                                + Written.exactly(Quantity.height(spot.up()), units)
                                + " north";
        return place + ", height " + Written.exactly(Quantity.height(mark.height()), units) + ".";
    }

    private void open(boolean now) {
        form.setVisible(now);
        form.setManaged(now);
        offer.setText(
                now
                        ? "Leave it"
                        : named.getChildren().isEmpty()
                                ? "Name a benchmark"
                                : "Name another benchmark");
        offer.getStyleClass().remove("quiet");
        if (now || !named.getChildren().isEmpty()) {
            offer.getStyleClass().add("quiet");
        }
    }

    private void add() {
        say("");
        entries.forEach(each -> each.say(""));
        String called = name.text();
        if (called.isEmpty()) {
            name.say("Say what it is, so that it is found again.");
        } else if (session.file().plan().benchmarks().stream()
                .anyMatch(each -> each.name().equals(called))) {
            name.say("There is a benchmark of that name already. Name this one otherwise.");
        }
        Plan before = session.file().plan();
        String flat = unit(before, SurveyPart.File::unit);
        double across = metres(east, flat);
        double up = metres(north, flat);
        double above = metres(height, unit(before, BenchmarkRows::heightUnit));
        for (Entry entry : entries) {
            if (entry.isWrong()) {
                entry.focus();
                return;
            }
        }
        var mark = new Benchmark(called, Spot.at(across, up), above);
        Shown.Wrong found =
                session.edit(
                        "name a benchmark: " + called,
                        plan -> {
                            List<Benchmark> all = new ArrayList<>(plan.benchmarks());
                            all.add(mark);
                            return plan.levelled(all);
                        });
        if (found == null) {
            entries.forEach(Entry::clear);
            open(false);
            offer.requestFocus();
        } else {
            say(found.what() + " " + found.remedy());
        }
    }

    /** What a field says, m; NaN if that is told to be wrong beside it. */
    private double metres(Entry entry, String unit) {
        String typed = entry.text();
        if (typed.isEmpty()) {
            entry.say("This is missing. Write it with its unit, such as 412.5 ft or 126 m.");
            return Double.NaN;
        }
        try {
            return Parse.height(Typed.inUnit(typed, unit));
        } catch (QuantityException e) {
            entry.say(e.what() + ". " + e.remedy() + ".");
            return Double.NaN;
        }
    }

    private void say(String words) {
        other.setText(words);
        other.setManaged(!words.isEmpty());
        other.setVisible(!words.isEmpty());
    }
}
