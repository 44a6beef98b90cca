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
    public static Listing order(StoneReport report) {
        var rows = new ArrayList<List<Saying>>();
        double inHand = 0;
        double brought = 0;
        for (LayerStone layer : report.layers()) {
            LayerStone.Reach reach = layer.reach();
            inHand += reach == null ? 0 : reach.mass();
            brought += layer.broughtToOrder();
            rows.add(
                    List.of(
                            Listing.cell(layer.supply().role()),
                            Listing.cell(Quantity.depth(layer.thickness())),
                            Listing.cell(Quantity.mass(layer.orderMass())),
                            reach == null
                                    ? Listing.BLANK
                                    : Listing.cell(Quantity.mass(reach.mass())),
                            Listing.cell(Quantity.mass(layer.toOrder())),
                            Listing.cell(Quantity.mass(layer.supply().payload())),
                            Listing.cell(Quantity.count(layer.loadsToOrder())),
                            Listing.cell(Quantity.mass(layer.broughtToOrder())),
                            money(layer.costToOrder())));
        }
        rows.add(
                List.of(
                        Listing.cell("all layers"),
                        Listing.BLANK,
                        Listing.cell(Quantity.mass(report.orderMass())),
                        report.isSomeInHand() ? Listing.cell(Quantity.mass(inHand)) : Listing.BLANK,
                        Listing.cell(Quantity.mass(report.toOrder())),
                        Listing.BLANK,
                        Listing.cell(Quantity.count(report.loadsToOrder())),
                        Listing.cell(Quantity.mass(brought)),
                        money(report.costToOrder())));
        return new Listing(
                "stone-to-order",
                "Stone to order, in the order of laying",
                List.of(
                        Column.words("Layer"),
                        Column.of("Packed depth", Kind.DEPTH),
                        Column.of("Needed, loss included", Kind.MASS),
                        Column.of("In hand", Kind.MASS),
                        Column.of("ORDER THIS", Kind.MASS),
                        Column.of("One load", Kind.MASS),
                        Column.of("Loads to order", Kind.COUNT),
                        Column.of("They bring", Kind.MASS),
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
                            Listing.cell(Quantity.mass(layer.orderMass())),
                            Listing.cell(Quantity.count(layer.loadCount()))));
        }
        rows.add(
                List.of(
                        Listing.cell("all layers"),
                        Listing.BLANK,
                        Listing.BLANK,
                        Listing.cell(Quantity.volume(volume)),
                        Listing.cell(Quantity.mass(net)),
                        Listing.cell(Quantity.mass(report.orderMass())),
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
                        Column.of("Weight used", Kind.MASS)),
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
