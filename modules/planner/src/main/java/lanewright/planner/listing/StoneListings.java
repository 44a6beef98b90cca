package lanewright.planner.listing;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Kind;
import lanewright.measure.Listing;
import lanewright.measure.Listing.Column;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.stone.LayerStone;
import lanewright.stone.Load;
import lanewright.stone.StoneReport;

/** The stone as rows: by layer, and load by load. */
public final class StoneListings {

    private StoneListings() {}

    /** What to order of each layer, in the order of laying, and the whole. */
    public static Listing layers(StoneReport report) {
        var rows = new ArrayList<List<Saying>>();
        double net = 0;
        double delivered = 0;
        double volume = 0;
        for (LayerStone layer : report.layers()) {
            net += layer.netMass();
            delivered += layer.deliveredMass();
            volume += layer.volume();
            rows.add(
                    List.of(
                            Listing.cell(layer.supply().role()),
                            Listing.cell(Quantity.depth(layer.thickness())),
                            Listing.cell(Quantity.depth(layer.looseDepth())),
                            Listing.cell(Quantity.volume(layer.volume())),
                            Listing.cell(Quantity.mass(layer.netMass())),
                            Listing.cell(Quantity.mass(layer.orderMass())),
                            Listing.cell(Quantity.count(layer.loadCount())),
                            Listing.cell(Quantity.mass(layer.deliveredMass())),
                            money(layer.cost())));
        }
        rows.add(
                List.of(
                        Listing.cell("all layers"),
                        Listing.BLANK,
                        Listing.BLANK,
                        Listing.cell(Quantity.volume(volume)),
                        Listing.cell(Quantity.mass(net)),
                        Listing.cell(Quantity.mass(report.orderMass())),
                        Listing.cell(Quantity.count(report.loadCount())),
                        Listing.cell(Quantity.mass(delivered)),
                        money(report.cost())));
        return new Listing(
                "stone",
                "Stone by layer, in the order of laying",
                List.of(
                        Column.words("Layer"),
                        Column.of("Compacted depth", Kind.DEPTH),
                        Column.of("Loose depth to spread", Kind.DEPTH),
                        Column.of("Compacted volume", Kind.VOLUME),
                        Column.of("In place", Kind.MASS),
                        Column.of("Order, loss included", Kind.MASS),
                        Column.of("Whole loads", Kind.COUNT),
                        Column.of("Delivered", Kind.MASS),
                        Column.of("Cost at your prices", Kind.MONEY)),
                rows,
                1);
    }

    private static Saying money(double amount) {
        return Double.isNaN(amount) ? Listing.BLANK : Listing.cell(Quantity.money(amount));
    }

    /** Where each load starts and stops, layer by layer in the order of laying. */
    public static Listing loads(StoneReport report) {
        var rows = new ArrayList<List<Saying>>();
        for (LayerStone layer : report.layers()) {
            for (Load load : layer.loads()) {
                rows.add(
                        List.of(
                                Listing.cell(layer.supply().role()),
                                Listing.cell(Quantity.count(load.number())),
                                Listing.cell(Quantity.station(load.from())),
                                Listing.cell(Quantity.station(load.to())),
                                Listing.cell(Quantity.length(load.covers())),
                                Listing.cell(Quantity.mass(load.mass()))));
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
                        Column.of("Covers", Kind.LENGTH),
                        Column.of("Used of it", Kind.MASS)),
                rows,
                0);
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
                                Listing.cell(Quantity.mass(layer.orderMass())),
                                Listing.cell(Quantity.station(reach.station())),
                                Listing.cell(Quantity.mass(reach.shortBy())),
                                Listing.cell(Quantity.count(reach.loadsShort()))));
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
                        Column.of("Short by", Kind.MASS),
                        Column.of("Loads short", Kind.COUNT)),
                rows,
                0);
    }
}
