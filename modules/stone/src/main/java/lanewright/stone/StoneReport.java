package lanewright.stone;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Assumption;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import org.jspecify.annotations.Nullable;

/**
 * How much stone, in what layers, how many loads, and what runs out first.
 *
 * @param layers in the order of laying, lowest first
 * @param findings what deserves a look
 * @param assumptions densities, ratios and losses used
 */
public record StoneReport(
        List<LayerStone> layers, List<Finding> findings, List<Assumption> assumptions) {

    /** Copies the lists. */
    public StoneReport {
        layers = List.copyOf(layers);
        findings = List.copyOf(findings);
        assumptions = List.copyOf(assumptions);
    }

    /**
     * The report on layers that were worked out one by one.
     *
     * @param layers in the order of laying, lowest first
     */
    public static StoneReport of(List<LayerStone> layers) {
        List<Finding> findings = new ArrayList<>();
        List<Assumption> assumptions = new ArrayList<>();
        for (LayerStone layer : layers) {
            assume(layer.supply(), assumptions);
            look(layer, findings);
        }
        return new StoneReport(layers, findings, assumptions);
    }

    /**
     * The layer that falls short first in the order of laying.
     *
     * @return null if nothing is short or the owner did not say what is in hand
     */
    public @Nullable LayerStone firstShort() {
        for (LayerStone layer : layers) {
            LayerStone.Reach reach = layer.reach();
            if (reach != null && reach.shortBy() > 0) {
                return layer;
            }
        }
        return null;
    }

    /** Needed of all layers, loss included, kg. */
    public double needed() {
        return layers.stream().mapToDouble(LayerStone::needed).sum();
    }

    /** In hand of all layers, kg. */
    public double inHand() {
        return layers.stream().mapToDouble(LayerStone::inHand).sum();
    }

    /** What the loads to order bring of all layers, kg. */
    public double toOrder() {
        return layers.stream().mapToDouble(LayerStone::toOrder).sum();
    }

    /** Left over of all layers, kg. */
    public double leftOver() {
        return layers.stream().mapToDouble(LayerStone::leftOver).sum();
    }

    /** All loads that are spread. */
    public int loadCount() {
        return layers.stream().mapToInt(LayerStone::loadCount).sum();
    }

    /** Whole loads to order. */
    public int loadsToOrder() {
        return layers.stream().mapToInt(LayerStone::loadsToOrder).sum();
    }

    /** What they cost in the owner's money, or NaN if a layer to order has no price. */
    public double cost() {
        return layers.stream().mapToDouble(LayerStone::cost).sum();
    }

    /** Whether the owner said of any layer what is in hand. */
    public boolean isSomeInHand() {
        return layers.stream().anyMatch(layer -> layer.reach() != null);
    }

    private static void look(LayerStone layer, List<Finding> findings) {
        Supply supply = layer.supply();
        LayerStone.Reach reach = layer.reach();
        if (reach != null && reach.shortBy() > 0) {
            findings.add(
                    new Finding(
                            "stone-short",
                            Level.LOOK,
                            Topic.STONE,
                            Where.station(reach.station()),
                            Saying.of(
                                    "The "
                                            + supply.role()
                                            + " stone in hand, {}, is not enough: laid from the"
                                            + " road it runs out at {}.",
                                    Quantity.mass(reach.mass()),
                                    Quantity.station(reach.station())),
                            Quantity.mass(reach.mass()),
                            Quantity.mass(layer.needed()),
                            "your plan",
                            Saying.of(
                                    "Order {} in {} "
                                            + Saying.number(layer.loadsToOrder(), "load", "loads")
                                            + ", as the table of stone to order has it, or stop"
                                            + " the layer there.",
                                    Quantity.mass(layer.toOrder()),
                                    Quantity.count(layer.loadsToOrder()))));
        }
        if (Double.isNaN(supply.price()) && layer.loadCount() > 0) {
            findings.add(
                    Finding.of(
                            "stone-no-price",
                            Level.NOTE,
                            Topic.STONE,
                            Where.ANYWHERE,
                            Saying.plain(
                                    "The "
                                            + supply.role()
                                            + " stone has no price, so its cost is not worked"
                                            + " out."),
                            Saying.plain(
                                    "Ask your quarry for a delivered price and write it into the"
                                            + " plan.")));
        }
    }

    private static void assume(Supply supply, List<Assumption> assumptions) {
        assumptions.add(supply.densityFrom());
        assumptions.add(supply.looseFrom());
        assumptions.add(
                new Assumption(
                        "loss of " + supply.role() + " stone",
                        Saying.of("{}", Quantity.share(supply.loss())),
                        Assumption.Mark.YOURS,
                        "your plan"));
    }
}
