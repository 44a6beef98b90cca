package lanewright.desktop.ask;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.VBox;
import javafx.scene.shape.SVGPath;
import lanewright.desktop.session.Shown;
import lanewright.desktop.session.WaterRow;
import lanewright.measure.UnitSystem;
import lanewright.measure.Where;
import lanewright.planner.run.Outcome;
import org.jspecify.annotations.Nullable;

/**
 * The rows of the water sheet in the card of its question, in groups that open and close; each row
 * shows its place on the land.
 */
final class WaterRows {

    /** Rows shown of a group before the rest is asked for. */
    private static final int FIRST = 8;

    private static final PseudoClass POINTED = PseudoClass.getPseudoClass("pointed");

    private static final String CLOSED = "M4 1 L9 6 L4 11 Z";
    private static final String OPENED = "M1 3 L11 3 L6 8.5 Z";

    private final Consumer<Where> jump;
    private final VBox box = new VBox(6);
    private final Set<String> open = new HashSet<>();
    private final Set<String> whole = new HashSet<>();
    private final Map<String, VBox> places = new HashMap<>();
    private List<WaterTold.Group> shown = List.of();
    private @Nullable Outcome shownOf;
    private @Nullable UnitSystem shownUnits;

    /**
     * No rows yet.
     *
     * @param jump shows a place on the land
     */
    WaterRows(Consumer<Where> jump) {
        this.jump = jump;
        box.setId("water-rows");
    }

    VBox node() {
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
        shownOf = outcome;
        shownUnits = units;
        List<WaterTold.Group> groups = WaterTold.of(outcome, units);
        if (!groups.equals(shown)) {
            shown = groups;
            fill();
        }
    }

    /** Opens the group of a row and marks the row; null if there is none. */
    @Nullable Node show(WaterRow wanted) {
        String name = wanted.group().id();
        WaterTold.Group group =
                shown.stream().filter(each -> each.name().equals(name)).findFirst().orElse(null);
        if (group == null || wanted.number() >= group.rows().size()) {
            return null;
        }
        open.add(name);
        if (wanted.number() >= FIRST) {
            whole.add(name);
        }
        fill();
        VBox place = places.get(name);
        String id = id(group, wanted.number());
        Node row =
                place == null
                        ? null
                        : place.getChildren().stream()
                                .filter(each -> id.equals(each.getId()))
                                .findFirst()
                                .orElse(null);
        if (row != null) {
            row.pseudoClassStateChanged(POINTED, true);
        }
        return row;
    }

    private static String id(WaterTold.Group group, int number) {
        return "row-" + group.name() + "-" + number;
    }

    private void fill() {
        String held = Focus.within(box) ? focused() : "";
        places.clear();
        List<Node> made = new ArrayList<>();
        for (WaterTold.Group group : shown) {
            VBox rows = new VBox(8);
            places.put(group.name(), rows);
            made.add(new VBox(6, head(group), rows));
            fill(group);
        }
        box.getChildren().setAll(made);
        if (!held.isEmpty()) {
            Node again = box.lookup("#" + held);
            if (again == null) {
                Focus.to(box, box);
            } else {
                again.requestFocus();
            }
        }
    }

    private String focused() {
        String id = box.getScene().getFocusOwner().getId();
        return id == null ? "" : id;
    }

    private ToggleButton head(WaterTold.Group group) {
        int count = group.rows().size();
        ToggleButton head = new ToggleButton(group.title() + " (" + count + ")");
        SVGPath mark = new SVGPath();
        mark.getStyleClass().add("mark-open");
        head.setGraphic(mark);
        head.setId("rows-" + group.name());
        head.getStyleClass().add("group-head");
        head.setWrapText(true);
        head.setMaxWidth(Double.MAX_VALUE);
        head.setSelected(open.contains(group.name()));
        tell(head, mark, group);
        head.setOnAction(
                event -> {
                    if (head.isSelected()) {
                        open.add(group.name());
                    } else {
                        open.remove(group.name());
                        whole.remove(group.name());
                    }
                    tell(head, mark, group);
                    fill(group);
                });
        return head;
    }

    private static void tell(ToggleButton head, SVGPath mark, WaterTold.Group group) {
        mark.setContent(head.isSelected() ? OPENED : CLOSED);
        head.setAccessibleText(
                group.title()
                        + ", "
                        + group.rows().size()
                        + (head.isSelected() ? ", open" : ", closed"));
    }

    private void fill(WaterTold.Group group) {
        VBox place = places.get(group.name());
        if (place == null) {
            return;
        }
        List<Node> made = new ArrayList<>();
        if (open.contains(group.name())) {
            if (!group.note().isBlank()) {
                made.add(label(group.note(), "remedy"));
            }
            int count = group.rows().size();
            int first = whole.contains(group.name()) ? count : Math.min(count, FIRST);
            for (int i = 0; i < first; i++) {
                made.add(row(group, i));
            }
            if (first < count) {
                Button more = new Button("Show all " + count);
                more.setId("all-" + group.name());
                more.getStyleClass().add("quiet");
                more.setAccessibleText("Show all " + count + ": " + group.title());
                more.setOnAction(
                        event -> {
                            whole.add(group.name());
                            fill(group);
                            Focus.to((VBox) place.getChildren().get(first + 1), place);
                        });
                made.add(more);
            }
        }
        place.setManaged(!made.isEmpty());
        place.getChildren().setAll(made);
    }

    private Node row(WaterTold.Group group, int number) {
        WaterTold.Row row = group.rows().get(number);
        VBox told = new VBox(2, label(row.title(), "row-title"));
        row.lines().forEach(line -> told.getChildren().add(label(line, "finding")));
        if (!row.where().equals(Where.ANYWHERE)) {
            Button show = new Button("Show the place");
            show.setId("place-" + group.name() + "-" + number);
            show.getStyleClass().add("quiet");
            show.setAccessibleText("Show the place of " + row.title());
            show.setOnAction(event -> jump.accept(row.where()));
            told.getChildren().add(show);
        }
        told.setId(id(group, number));
        told.getStyleClass().add("evidence-note");
        return told;
    }

    private static Label label(String words, String style) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.getStyleClass().add(style);
        return label;
    }
}
