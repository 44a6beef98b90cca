package lanewright.desktop.ask;

import java.util.function.Function;
import java.util.function.ToIntFunction;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import lanewright.drainage.WetPlace;
import lanewright.earthwork.Balance;
import lanewright.earthwork.Hauled;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.proposal.Steepest;
import lanewright.planner.run.Draft;
import lanewright.planner.run.Outcome;
import lanewright.stone.StoneReport;
import org.jspecify.annotations.Nullable;

/** The numbers that a proposal changes, now and then. */
final class Changes {

    private final UnitSystem units;
    private final Draft now;
    private final Draft then;
    private final GridPane table = new GridPane();
    private int rows;

    private Changes(UnitSystem units, Draft now, Draft then) {
        this.units = units;
        this.now = now;
        this.then = then;
        table.getStyleClass().add("changes");
        table.setHgap(12);
        table.setVgap(3);
        row("", "now", "then");
    }

    /**
     * The table.
     *
     * @param before the whole outcome of the present plan, or null while that is worked out
     * @param after the whole outcome of the proposal, or null while that is worked out
     */
    static GridPane of(
            UnitSystem units,
            Draft now,
            Draft then,
            @Nullable Outcome before,
            @Nullable Outcome after) {
        var changes = new Changes(units, now, then);
        changes.row(
                "Steepest",
                draft -> Quantity.grade(Math.abs(Steepest.of(draft.design().profile()).grade())));
        changes.row("Dig", draft -> Quantity.volume(draft.volumes().cut().corrected()));
        changes.row("Build up, packed", draft -> Quantity.volume(draft.volumes().earthFill()));
        changes.row("Dirt to haul, loose", changes.hauled(now), changes.hauled(then));
        changes.row("Stone to order", changes.stone(now), changes.stone(then));
        if (!Double.isNaN(now.stone().cost()) && !Double.isNaN(then.stone().cost())) {
            String money = now.plan().afterMoney();
            changes.row(
                    "To pay for stone",
                    Words.of(Quantity.money(now.stone().cost()), units) + money,
                    Words.of(Quantity.money(then.stone().cost()), units) + money);
        }
        if (before != null) {
            changes.wet("Wet places", before, after, each -> each.water().places().size());
            changes.wet(
                    "to settle before building",
                    before,
                    after,
                    each -> (int) each.water().places().stream().filter(WetPlace::isDam).count());
            changes.row(
                    "Deepest that water stands",
                    deepest(before, units),
                    after == null ? "…" : deepest(after, units));
        }
        return changes.table;
    }

    private void wet(
            String what, Outcome before, @Nullable Outcome after, ToIntFunction<Outcome> count) {
        row(
                what,
                Integer.toString(count.applyAsInt(before)),
                after == null ? "…" : Integer.toString(count.applyAsInt(after)));
    }

    private static String deepest(Outcome outcome, UnitSystem units) {
        double deepest =
                outcome.water().places().stream()
                        .filter(each -> each.pool() != null)
                        .mapToDouble(WetPlace::depth)
                        .max()
                        .orElse(0);
        return Words.of(Quantity.depth(deepest), units);
    }

    /** What is left over or short, in trucks' measure. */
    private String hauled(Draft draft) {
        Balance balance = draft.earth().balance();
        boolean brings = balance.over() < 0;
        Hauled hauled = brings ? balance.bringIn() : balance.haulAway();
        String loads = hauled.loads() > 0 ? ", " + loads(hauled.loads()) : "";
        return hauled.loose() > 0
                ? (brings ? "bring in " : "take away ")
                        + Words.of(Quantity.volume(hauled.loose()), units)
                        + loads
                : "none";
    }

    private String stone(Draft draft) {
        StoneReport stone = draft.stone();
        return Words.of(Quantity.mass(stone.toOrder()), units) + ", " + loads(stone.loadsToOrder());
    }

    private static String loads(int count) {
        return count + (count == 1 ? " load" : " loads");
    }

    private void row(String what, Function<Draft, Quantity> amount) {
        row(what, Words.of(amount.apply(now), units), Words.of(amount.apply(then), units));
    }

    private void row(String what, String before, String after) {
        Label first = new Label(what);
        Label second = new Label(before);
        Label third = new Label(after);
        second.getStyleClass().add("number");
        third.getStyleClass().add("number");
        first.setWrapText(true);
        second.setWrapText(true);
        third.setWrapText(true);
        table.addRow(rows++, first, second, third);
    }
}
