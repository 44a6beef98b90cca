package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Finding;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.stone.LayerStone;
import lanewright.stone.Load;
import lanewright.stone.StoneReport;

/** The stone as rows: by layer, and load by load. */
public final class StoneListings {

    private StoneListings() {}

    /**
     * What to order of each layer, in the order of laying, and the whole: needed less what is in
     * hand, in whole loads, and what will be left.
     */
    public static Listing order(StoneReport report) {
        var rows = new ArrayList<List<Saying>>();
        for (LayerStone layer : report.layers()) {
            rows.add(
                    List.of(
                            Listing.cell(layer.supply().role()),
                            Listing.cell(Quantity.depth(layer.thickness())),
                            Listing.cell(Quantity.mass(layer.needed())),
                            layer.reach() == null
                                    ? Listing.BLANK
                                    : Listing.cell(Quantity.mass(layer.inHand())),
                            Listing.cell(Quantity.count(layer.loadsToOrder())),
                            Listing.cell(Quantity.mass(layer.supply().payload())),
                            Listing.cell(Quantity.mass(layer.toOrder())),
                            Listing.cell(Quantity.mass(layer.leftOver())),
                            money(layer.cost())));
        }
        rows.add(
                List.of(
                        Listing.cell("all layers"),
                        Listing.BLANK,
                        Listing.cell(Quantity.mass(report.needed())),
                        report.isSomeInHand()
                                ? Listing.cell(Quantity.mass(report.inHand()))
                                : Listing.BLANK,
                        Listing.cell(Quantity.count(report.loadsToOrder())),
                        Listing.BLANK,
                        Listing.cell(Quantity.mass(report.toOrder())),
                        Listing.cell(Quantity.mass(report.leftOver())),
                        money(report.cost())));
        return new Listing(
                "stone-to-order",
                "Stone to order, in the order of laying",
                List.of(
                        Column.words("Layer"),
                        Column.of("Packed depth", Kind.DEPTH),
                        Column.of("Needed, loss included", Kind.MASS),
                        Column.of("In hand", Kind.MASS),
                        Column.of("Loads to order", Kind.COUNT),
                        Column.of("One load", Kind.MASS),
                        Column.of("ORDER THIS", Kind.MASS),
                        Column.of("Left over", Kind.MASS),
                        Column.of("Cost to pay", Kind.MONEY)),
                rows,
                1);
    }

    /** What each layer takes, whoever brings it, in the order of laying, and the whole. */
    public static Listing layers(StoneReport report) {
        var rows = new ArrayList<List<Saying>>();
        double net = 0;
        double volume = 0;
        for (LayerStone layer : report.layers()) {
            net += layer.netMass();
            volume += layer.volume();
            rows.add(
                    List.of(
                            Listing.cell(layer.supply().role()),
                            Listing.cell(Quantity.depth(layer.thickness())),
                            Listing.cell(Quantity.depth(layer.looseDepth())),
                            Listing.cell(Quantity.volume(layer.volume())),
                            Listing.cell(Quantity.mass(layer.netMass())),
                            Listing.cell(Quantity.mass(layer.needed())),
                            Listing.cell(Quantity.count(layer.loadCount()))));
        }
        rows.add(
                List.of(
                        Listing.cell("all layers"),
                        Listing.BLANK,
                        Listing.BLANK,
                        Listing.cell(Quantity.volume(volume)),
                        Listing.cell(Quantity.mass(net)),
                        Listing.cell(Quantity.mass(report.needed())),
                        Listing.cell(Quantity.count(report.loadCount()))));
        return new Listing(
                "stone",
                "What each layer takes, whether in hand or to order",
                List.of(
                        Column.words("Layer"),
                        Column.of("Packed depth", Kind.DEPTH),
                        Column.of("Loose depth to spread", Kind.DEPTH),
                        Column.of("Packed volume", Kind.VOLUME),
                        Column.of("Packed weight", Kind.MASS),
                        Column.of("Needed, loss included", Kind.MASS),
                        Column.of("Loads to spread", Kind.COUNT)),
                rows,
                1);
    }

    private static Saying money(double amount) {
        return Double.isNaN(amount) ? Listing.BLANK : Listing.cell(Quantity.money(amount));
    }

    /**
     * Where each load starts and stops, layer by layer in the order of laying, who brings it, and
     * where no bed may be raised over it.
     *
     * @param findings those about wires that a raised bed would meet are told beside their loads
     */
    public static Listing loads(StoneReport report, List<Finding> findings) {
        List<Where> wires = wires(findings);
        var rows = new ArrayList<List<Saying>>();
        for (LayerStone layer : report.layers()) {
            for (Load load : layer.loads()) {
                rows.add(
                        List.of(
                                Listing.cell(layer.supply().role()),
                                Listing.cell(Quantity.count(load.number())),
                                Listing.cell(Quantity.station(load.from())),
                                Listing.cell(Quantity.station(load.to())),
                                Listing.cell(Quantity.mass(load.mass())),
                                mind(load, report.isSomeInHand(), wires)));
            }
        }
        return new Listing(
                "loads",
                "Where each load starts and stops",
                List.of(
                        Column.words("Layer"),
                        Column.of("Load", Kind.COUNT),
                        Column.of("Starts at", Kind.STATION),
                        Column.of("Stops at", Kind.STATION),
                        Column.of("Used", Kind.MASS),
                        Column.words("Note")),
                rows,
                0);
    }

    /**
     * Where each layer ends if the last of its loads, or the last two, do not come; and how much of
     * the last one it takes. Of the loads to order only: what is in hand has come.
     */
    public static Listing fewer(StoneReport report) {
        var rows = new ArrayList<List<Saying>>();
        for (LayerStone layer : report.layers()) {
            List<Load> ordered = layer.loads().stream().filter(load -> !load.inHand()).toList();
            int count = ordered.size();
            if (count > 0) {
                Load last = ordered.get(count - 1);
                rows.add(
                        List.of(
                                Listing.cell(layer.supply().role()),
                                Listing.cell(Quantity.mass(last.mass())),
                                Listing.cell(Quantity.station(last.from())),
                                count > 1
                                        ? Listing.cell(
                                                Quantity.station(ordered.get(count - 2).from()))
                                        : Listing.BLANK));
            }
        }
        return new Listing(
                "fewer-loads",
                "If fewer loads come than were ordered",
                List.of(
                        Column.words("Layer"),
                        Column.of("Taken of the last", Kind.MASS),
                        Column.of("Without it ends at", Kind.STATION),
                        Column.of("Without the last two at", Kind.STATION)),
                rows,
                0);
    }

    /** Stretches where a raised bed would meet a wire, in the order of the findings. */
    public static List<Where> wires(List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.code().equals(WIRE))
                .map(Finding::where)
                .filter(where -> where.from() != null && where.to() != null)
                .toList();
    }

    private static final String WIRE = "load-under-wire";

    /** Who brings a load, and where it must be tipped if it is spread under a wire. */
    private static Saying mind(Load load, boolean someInHand, List<Where> wires) {
        var pattern = new StringBuilder();
        var quantities = new ArrayList<Quantity>();
        if (someInHand) {
            pattern.append(load.inHand() ? "in hand" : "to order");
        }
        for (Where wire : wires) {
            Double from = wire.from();
            Double to = wire.to();
            if (from != null && to != null && load.from() < to && load.to() > from) {
                pattern.append(pattern.isEmpty() ? "" : "; ")
                        .append("tip before {}, push under the wire");
                quantities.add(Quantity.station(from));
            }
        }
        return new Saying(pattern.toString(), quantities);
    }

    /** How far the stone in hand reaches; no rows where the owner did not say what is in hand. */
    public static Listing inHand(StoneReport report) {
        var rows = new ArrayList<List<Saying>>();
        for (LayerStone layer : report.layers()) {
            LayerStone.Reach reach = layer.reach();
            if (reach != null) {
                rows.add(
                        List.of(
                                Listing.cell(layer.supply().role()),
                                Listing.cell(Quantity.mass(reach.mass())),
                                Listing.cell(Quantity.mass(layer.needed())),
                                Listing.cell(Quantity.station(reach.station())),
                                Listing.cell(Quantity.mass(reach.shortBy()))));
            }
        }
        return new Listing(
                "stone-in-hand",
                "How far the stone in hand reaches, laid from the beginning",
                List.of(
                        Column.words("Layer"),
                        Column.of("In hand", Kind.MASS),
                        Column.of("Needed", Kind.MASS),
                        Column.of("Lasts to", Kind.STATION),
                        Column.of("Short by", Kind.MASS)),
                rows,
                0);
    }
}
