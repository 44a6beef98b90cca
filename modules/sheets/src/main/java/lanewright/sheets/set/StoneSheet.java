package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Listing;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.planner.listing.StoneListings;
import lanewright.sheets.figure.LoadStrip;
import lanewright.sheets.page.Flow;
import lanewright.sheets.page.Paper;
import lanewright.sheets.page.Sheet;
import lanewright.stone.LayerStone;
import lanewright.stone.Load;
import lanewright.stone.StoneReport;

/** How much stone, in what layers, how many loads, and where each load starts and stops. */
final class StoneSheet {

    private StoneSheet() {}

    static Sheet of(
            StoneReport stone,
            List<Finding> findings,
            List<LoadStrip.Note> notes,
            List<Saying> wires,
            double length,
            String currency,
            Listing also,
            UnitSystem units,
            String answer) {
        var flow = new Flow(Paper.of(units), units, "Stone and loads", "How much stone?", answer);
        stone.findings().stream()
                .filter(finding -> finding.level() != Finding.Level.NOTE)
                .forEach(finding -> Told.brief(flow, finding, units));
        Listing order = StoneListings.order(stone);
        flow.table(order);
        flow.note(note(flow.heads(order), currency));
        if (!also.rows().isEmpty()) {
            flow.table(also);
        }
        flow.table(StoneListings.layers(stone));
        List<LoadStrip.Layer> strip = strip(stone, units);
        if (!strip.isEmpty()) {
            double height = LoadStrip.height(strip.size());
            flow.head(
                    "How the loads follow one another",
                    "One bar for each layer in the order of laying, one box for each load, its"
                            + " number inside and stations below. Spread each load from its first"
                            + " station to its last at the loose depth."
                            + (stone.isSomeInHand()
                                    ? " Each layer begins with the stone in hand; the loads to"
                                            + " order follow where it ends."
                                    : ""),
                    height + 6);
            flow.gap(6);
            flow.figure(
                    height, (pen, box) -> LoadStrip.draw(strip, notes, length, units, pen, box));
            for (Saying wire : wires) {
                flow.note("Danger: " + wire.in(units) + ".");
            }
            flow.table(StoneListings.fewer(stone));
            flow.table(StoneListings.loads(stone, findings));
        }
        return flow.sheet();
    }

    /** What the columns that are shown mean. */
    private static String note(List<String> heads, String currency) {
        boolean inHand = heads.contains("In hand");
        String rule =
                "Needed: packed volume times packed weight, plus your loss. Order this: whole loads"
                        + (inHand
                                ? " for what is needed beyond what is in hand. Left over: in hand"
                                        + " and ordered, less needed."
                                : " that bring what is needed. Left over: ordered, less needed.");
        if (!heads.contains("Cost to pay")) {
            return rule + " No cost is shown, since the plan holds no price.";
        }
        return rule
                + " The cost is for what the loads bring, in "
                + (currency.isBlank() ? "your currency" : currency)
                + ", at the prices in your plan and no other.";
    }

    private static List<LoadStrip.Layer> strip(StoneReport stone, UnitSystem units) {
        var strip = new ArrayList<LoadStrip.Layer>();
        for (LayerStone layer : stone.layers()) {
            List<Load> loads = layer.loads();
            if (loads.isEmpty()) {
                continue;
            }
            var stops = new ArrayList<Double>();
            stops.add(loads.get(0).from());
            loads.forEach(load -> stops.add(load.to()));
            LayerStone.Reach reach = layer.reach();
            double outAt = reach != null && reach.shortBy() > 0 ? reach.station() : Double.NaN;
            boolean runsOut = !Double.isNaN(outAt);
            String words =
                    layer.supply().role()
                            + ": "
                            + Words.fine(Quantity.mass(layer.needed()), units)
                            + " needed, in "
                            + Words.fine(Quantity.count(layer.loadCount()), units)
                            + " loads, spread "
                            + Words.fine(Quantity.depth(layer.looseDepth()), units)
                            + " loose for "
                            + Words.fine(Quantity.depth(layer.thickness()), units)
                            + " compacted";
            strip.add(
                    new LoadStrip.Layer(
                            runsOut
                                    ? words
                                            + "; in hand to "
                                            + Words.fine(Quantity.station(outAt), units)
                                    : words,
                            stops,
                            outAt));
        }
        return strip;
    }
}
