package lanewright.desktop.lane;

import java.util.List;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.Tooltip;
import lanewright.desktop.look.Type;
import lanewright.desktop.session.Session;
import lanewright.desktop.session.Shown;
import lanewright.measure.Listing;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.planner.run.Outcome;
import lanewright.sheets.drawing.Face;

/** A table of the sheets, on the screen. */
public final class ListingTable {

    /** Words of a head are laid in lines of such a width, px. */
    private static final double HEAD = 92;

    private final Session session;
    private final Function<Outcome, Listing> which;
    private final TableView<List<Saying>> table = new TableView<>();
    private long shownEdit = -1;

    /**
     * A table of a plan that is being worked on.
     *
     * @param id name of the part
     * @param which makes the listing of an outcome
     */
    public ListingTable(Session session, String id, Function<Outcome, Listing> which) {
        this.session = session;
        this.which = which;
        table.setId(id);
        Label empty = new Label("Being worked out.");
        table.setPlaceholder(empty);
        session.shown().addListener((seen, was, now) -> refresh(now));
        refresh(session.shown().get());
    }

    /** What to show. */
    public Node node() {
        return table;
    }

    /** A head with its words in as many lines as they take. */
    private static Label head(String words) {
        var lines = new StringBuilder();
        String line = "";
        for (String word : words.split(" ")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && Face.of(false).width(longer, Type.NOTE) > HEAD) {
                lines.append(line).append('\n');
                longer = word;
            }
            line = longer;
        }
        Label label = new Label(lines + line);
        label.setTooltip(new Tooltip(words));
        return label;
    }

    private void refresh(Shown now) {
        Outcome outcome = now.outcome();
        if (outcome == null || now.outcomeEdit() == shownEdit) {
            return;
        }
        shownEdit = now.outcomeEdit();
        UnitSystem units = session.file().plan().units();
        Listing listing = which.apply(outcome);
        table.getColumns().clear();
        for (int i = 0; i < listing.columns().size(); i++) {
            int index = i;
            Listing.Column head = listing.columns().get(i);
            String unit = head.unit(units);
            TableColumn<List<Saying>, String> column = new TableColumn<>();
            column.setGraphic(head(head.head() + (unit.isEmpty() ? "" : ", " + unit)));
            column.setCellValueFactory(
                    row -> new ReadOnlyStringWrapper(head.shown(row.getValue().get(index), units)));
            if (head.kind() != null) {
                column.setStyle("-fx-alignment: center-right;");
            }
            column.setSortable(false);
            column.setReorderable(false);
            column.setPrefWidth(i == 0 ? 90 : 110);
            table.getColumns().add(column);
        }
        table.getItems().setAll(listing.rows());
    }
}
