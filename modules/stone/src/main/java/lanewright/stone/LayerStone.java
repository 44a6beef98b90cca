package lanewright.stone;

import java.util.ArrayList;
import java.util.List;
import lanewright.lane.volume.Running;
import org.jspecify.annotations.Nullable;

/**
 * What one layer takes, who brings it, and what is ordered.
 *
 * <p>Five amounts, each defined here and nowhere else, in kg: <em>needed</em>, the packed volume
 * times its density and the loss on top; <em>in hand</em>, what the owner says is there; <em>to
 * order</em>, what the whole loads bring that make up for the difference, and what is paid for; and
 * <em>left over</em>, what is in hand and to order beyond what is needed.
 *
 * @param supply what the owner says of its stone
 * @param thickness compacted thickness, m
 * @param volume compacted volume in place, m³
 * @param netMass compacted volume × in-place density, kg
 * @param needed net mass × (1 + loss), kg
 * @param loads each load with its stretch, in the order of laying, up-station: first those of the
 *     stone in hand, then those to order
 * @param looseDepth depth to spread before rolling, m
 * @param reach how far the stone in hand goes, or null if the owner did not say what is in hand
 */
public record LayerStone(
        Supply supply,
        double thickness,
        double volume,
        double netMass,
        double needed,
        List<Load> loads,
        double looseDepth,
        @Nullable Reach reach) {

    /** Most loads that are listed: one more is a plan gone wrong, not a lane. */
    static final int MOST_LOADS = 20_000;

    /** Copies the list. */
    public LayerStone {
        loads = List.copyOf(loads);
    }

    /**
     * How far the stone in hand reaches.
     *
     * @param mass in hand, kg
     * @param station up to which it lasts when laid from the beginning, m; the layer's end if it is
     *     enough; its beginning if there is none
     * @param shortBy what is missing, kg, zero if it is enough
     */
    public record Reach(double mass, double station, double shortBy) {}

    /** All loads that are spread, those in hand too. */
    public int loadCount() {
        return loads.size();
    }

    /** Loads into which the stone in hand is taken; the last may be a small one. */
    public int loadsInHand() {
        return (int) loads.stream().filter(Load::inHand).count();
    }

    /** Whole loads to order. */
    public int loadsToOrder() {
        return loadCount() - loadsInHand();
    }

    /** In hand, kg; zero if the owner did not say. */
    public double inHand() {
        return reach == null ? 0 : reach.mass();
    }

    /** What the loads to order bring, kg: the one amount to order, and what is paid for. */
    public double toOrder() {
        return loadsToOrder() * supply.payload();
    }

    /** What is left once the layer is laid, kg: in hand and to order, less what is needed. */
    public double leftOver() {
        return inHand() + toOrder() - needed;
    }

    /** What the loads to order cost in the owner's money, or NaN without a price; zero for none. */
    public double cost() {
        return loadsToOrder() == 0 ? 0 : toOrder() * supply.price();
    }

    /**
     * Works out one layer.
     *
     * @param supply what the owner says of its stone
     * @param thickness compacted thickness, m, over zero
     * @param laid its compacted volume along the lane, m³
     * @throws IllegalArgumentException if the layer would take more than 20,000 loads
     */
    public static LayerStone of(Supply supply, double thickness, Running laid) {
        double volume = laid.corrected();
        double net = volume * supply.density();
        double needed = net * (1 + supply.loss());
        return new LayerStone(
                supply,
                thickness,
                volume,
                net,
                needed,
                loads(supply, laid, needed, volume),
                thickness * supply.looseRatio(),
                reach(supply, laid, needed, volume));
    }

    /**
     * Whole loads that bring {@code mass}; a hair of rounding above a whole load does not call
     * another truck.
     */
    static int wholeLoads(double mass, double payload) {
        double loads = mass / payload;
        if (loads > MOST_LOADS) {
            throw new IllegalArgumentException(
                    "more than " + MOST_LOADS + " loads: check payload, thickness and width");
        }
        return (int) Math.ceil(loads - ROUNDING);
    }

    /** Part of a load that is rounding of doubles and not stone: a gram in a truck. */
    private static final double ROUNDING = 1e-9;

    /**
     * Load after load: the stone in hand first, in loads as a truck takes them, then the loads to
     * order, which begin full where the stone in hand ends.
     */
    private static List<Load> loads(Supply supply, Running laid, double needed, double volume) {
        double inHand = Double.isNaN(supply.inHand()) ? 0 : Math.min(needed, supply.inHand());
        int first = wholeLoads(inHand, supply.payload());
        int count = first + wholeLoads(needed - inHand, supply.payload());
        List<Load> loads = new ArrayList<>();
        double from = laid.begin();
        double before = 0;
        for (int i = 0; i < count; i++) {
            boolean own = i < first;
            double reached =
                    own
                            ? Math.min(inHand, (i + 1) * supply.payload())
                            : Math.min(needed, inHand + (i + 1 - first) * supply.payload());
            double to = i == count - 1 ? laid.end() : station(laid, reached, needed, volume);
            loads.add(new Load(i + 1, reached - before, from, to, own));
            from = to;
            before = reached;
        }
        return loads;
    }

    /** Where so much of what is needed is laid. */
    private static double station(Running laid, double mass, double needed, double volume) {
        return laid.stationOf(Math.min(volume, mass / needed * volume));
    }

    private static @Nullable Reach reach(
            Supply supply, Running laid, double needed, double volume) {
        if (Double.isNaN(supply.inHand())) {
            return null;
        }
        double shortBy = Math.max(0, needed - supply.inHand());
        double station = needed > 0 ? station(laid, supply.inHand(), needed, volume) : laid.end();
        return new Reach(supply.inHand(), station, shortBy);
    }
}
