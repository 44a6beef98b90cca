package lanewright.desktop.start;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import lanewright.lane.shape.Layer;
import lanewright.measure.Assumption;
import lanewright.measure.Parse;
import lanewright.measure.Quantity;
import lanewright.measure.QuantityException;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.stone.LayerStone;
import lanewright.stone.StoneAnswer;
import lanewright.stone.StoneReport;
import lanewright.stone.StoneTables;
import lanewright.stone.StoneTables.Figure;
import lanewright.stone.Supply;

/** How much stone, without any survey: a sentence to fill in, answered as one types. */
final class StoneSentence {

    private final VBox box = new VBox(10);
    private final ComboBox<String> units = new ComboBox<>();
    private final TextField length = field("stone-length", "Length of the lane", "600 ft");
    private final TextField width = field("stone-width", "Width of the lane", "12 ft");
    private final TextField surface = field("stone-surface", "Surface stone, packed", "3 in");
    private final TextField base = field("stone-base", "Base stone, packed", "6 in");
    private final TextField truck = field("stone-truck", "What one truck brings", "15 tons");
    private final TextField price = field("stone-price", "Price, if you know it", "");
    private final Label answer = new Label();
    private final Label layers = new Label();
    private final Label rests = new Label();

    StoneSentence() {
        Label title = new Label("Just the stone, without a survey");
        title.getStyleClass().add("proposal-title");
        units.getItems().setAll("US", "metric");
        units.setValue("US");
        units.setId("stone-units");
        units.setAccessibleText("Units");
        units.setOnAction(event -> swap());
        price.setPromptText("30 per ton");
        FlowPane sentence = new FlowPane(6, 8);
        sentence.getChildren()
                .addAll(
                        new Label("A lane"),
                        length,
                        new Label("long and"),
                        width,
                        new Label("wide, with"),
                        surface,
                        new Label("of surface stone on"),
                        base,
                        new Label("of base, packed, brought"),
                        truck,
                        new Label("at a time, at"),
                        price,
                        new Label("in"),
                        units,
                        new Label("units."));
        answer.setId("stone-answer");
        answer.getStyleClass().add("big-answer");
        answer.setWrapText(true);
        layers.setId("stone-layers");
        layers.setWrapText(true);
        rests.getStyleClass().add("note");
        rests.setWrapText(true);
        for (TextField each : List.of(length, width, surface, base, truck, price)) {
            each.textProperty().addListener((seen, was, now) -> work());
        }
        box.getChildren().addAll(title, sentence, answer, layers, rests);
        box.getStyleClass().add("card");
        work();
    }

    Node node() {
        return box;
    }

    private static TextField field(String id, String name, String words) {
        TextField field = new TextField(words);
        field.setId(id);
        field.setAccessibleText(name);
        field.setPrefColumnCount(7);
        return field;
    }

    private UnitSystem system() {
        return "metric".equals(units.getValue()) ? UnitSystem.METRIC : UnitSystem.US;
    }

    /** Other units: usual values of that system, since a converted 182.88 m helps nobody. */
    private void swap() {
        boolean us = system() == UnitSystem.US;
        length.setText(us ? "600 ft" : "200 m");
        width.setText(us ? "12 ft" : "3.6 m");
        surface.setText(us ? "3 in" : "75 mm");
        base.setText(us ? "6 in" : "150 mm");
        truck.setText(us ? "15 tons" : "14 t");
        price.setPromptText(us ? "30 per ton" : "30 per t");
        price.setText("");
        work();
    }

    private void work() {
        try {
            double paid =
                    price.getText().isBlank() ? Double.NaN : Parse.price(price.getText(), "").of(1);
            List<Layer> shape = new ArrayList<>();
            List<Supply> supplies = new ArrayList<>();
            add(shape, supplies, "surface", surface, paid);
            add(shape, supplies, "base", base, paid);
            if (shape.isEmpty()) {
                answer.setText("Give a thickness for the surface, the base or both.");
                layers.setText("");
                return;
            }
            StoneReport report =
                    StoneAnswer.of(
                            Parse.length(length.getText()),
                            Parse.length(width.getText()),
                            shape,
                            supplies);
            show(report, system());
        } catch (QuantityException e) {
            answer.setText(e.what() + ". " + e.remedy() + ".");
            layers.setText("");
        } catch (IllegalArgumentException e) {
            answer.setText(String.valueOf(e.getMessage()));
            layers.setText("");
        }
    }

    private void add(
            List<Layer> shape, List<Supply> supplies, String role, TextField field, double paid)
            throws QuantityException {
        if (field.getText().isBlank()) {
            return;
        }
        double thickness = Parse.depth(field.getText());
        if (thickness == 0) {
            return;
        }
        shape.add(new Layer(role, thickness, 1.5));
        Figure weight = StoneTables.density(role, StoneTables.weighed().get(0));
        Figure loose = StoneTables.loose(role, StoneTables.spread().get(0));
        supplies.add(
                new Supply(
                        role,
                        weight.value(),
                        weight.from(),
                        loose.value(),
                        loose.from(),
                        0.05,
                        Parse.mass(truck.getText()),
                        paid,
                        Double.NaN,
                        null));
    }

    private static String loads(int count) {
        return count + Saying.number(count, " load", " loads");
    }

    private void show(StoneReport report, UnitSystem system) {
        answer.setText(
                "Order "
                        + Words.of(Quantity.mass(report.toOrder()), system)
                        + " in "
                        + loads(report.loadsToOrder())
                        + " ("
                        + Words.of(Quantity.mass(report.needed()), system)
                        + " needed)"
                        + (Double.isNaN(report.cost())
                                ? ""
                                : ", "
                                        + Words.of(Quantity.money(report.cost()), system)
                                        + " delivered"));
        StringBuilder each = new StringBuilder();
        for (LayerStone layer : report.layers()) {
            each.append(layer.supply().role())
                    .append(": ")
                    .append(Words.of(Quantity.mass(layer.toOrder()), system))
                    .append(" in ")
                    .append(loads(layer.loadsToOrder()))
                    .append(" (")
                    .append(Words.of(Quantity.mass(layer.needed()), system))
                    .append(" needed); spread ")
                    .append(Words.of(Quantity.depth(layer.looseDepth()), system))
                    .append(" loose to get ")
                    .append(Words.of(Quantity.depth(layer.thickness()), system))
                    .append(
                            layer.loads().isEmpty()
                                    ? ""
                                    : "; a load covers "
                                            + Words.of(
                                                    Quantity.length(layer.loads().get(0).covers()),
                                                    system))
                    .append('\n');
        }
        layers.setText(each.toString().strip());
        StringBuilder from = new StringBuilder("Rests on: edges of the stone at 1.5:1; 5 % lost");
        for (Assumption assumption : report.assumptions()) {
            from.append("; ")
                    .append(assumption.name())
                    .append(' ')
                    .append(assumption.value().in(system))
                    .append(" (")
                    .append(assumption.source())
                    .append(')');
        }
        rests.setText(from.append('.').toString());
    }
}
