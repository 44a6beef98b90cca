package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.planner.listing.WorkListings;
import lanewright.planner.work.Caution;
import lanewright.planner.work.WorkStep;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;
import org.jspecify.annotations.Nullable;

/** What to do, in what order, with a box to tick for each step, and the cautions that apply. */
final class OrderSheet {

    private OrderSheet() {}

    static Sheet of(
            List<String> askFirst,
            List<WorkStep> steps,
            List<Caution> cautions,
            UnitSystem units,
            String answer,
            @Nullable Sheet before) {
        var flow =
                new Flow(
                        Paper.of(units),
                        units,
                        "Order of work",
                        "What do I do, in what order?",
                        answer,
                        before);
        if (!askFirst.isEmpty()) {
            flow.entry(Flow.Sign.LOOK, "Ask these first", askFirst);
        }
        for (int i = 0; i < steps.size(); i++) {
            WorkStep step = steps.get(i);
            var below = new ArrayList<String>();
            add(below, "", step.amounts(), ". ", units);
            add(below, "Go on only when: ", step.lookFor(), "; ", units);
            add(below, "Wait for: ", step.waitsFor(), "; ", units);
            for (Saying danger : step.canHurt()) {
                add(below, "Danger: ", List.of(danger), "", units);
            }
            flow.entry(Flow.Sign.BOX, Quantity.count(i + 1).in(units) + ". " + step.title(), below);
        }
        if (!cautions.isEmpty()) {
            flow.head("Cautions");
            for (Caution caution : cautions) {
                flow.entry(
                        Flow.Sign.LOOK,
                        Told.sentence(caution.says().in(units)),
                        caution.source().startsWith("common practice")
                                ? ""
                                : "Source: " + Told.sentence(caution.source()));
            }
        }
        return flow.sheet();
    }

    private static void add(
            List<String> below,
            String label,
            List<Saying> sayings,
            String between,
            UnitSystem units) {
        if (!sayings.isEmpty()) {
            String said = WorkListings.joined(sayings, between).in(units);
            below.add(label + said + (said.endsWith(".") ? "" : "."));
        }
    }
}
