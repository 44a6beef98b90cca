package lanewright.stone;

import java.util.List;
import lanewright.lane.volume.Running;
import org.jspecify.annotations.Nullable;

/**
 * What one layer takes.
 *
 * @param supply what the owner says of its stone
 * @param thickness compacted thickness, m
 * @param volume compacted volume in place, m³
 * @param netMass compacted volume × in-place density, kg
 * @param orderMass net mass × (1 + loss), kg
 * @param loadCount whole loads that bring the order
 * @param deliveredMass whole loads × payload, kg: what is paid for
 * @param spare what the last load brings beyond the order, kg
 * @param loads each load with its stretch, in the order of laying, up-station
 * @param looseDepth depth to spread before rolling, m
 * @param cost of the delivered mass in the owner's money, or NaN without a price
 * @param reach how far the stone in hand goes, or null if the owner did not say what is in hand
 */
public record LayerStone(
        Supply supply,
        double thickness,
        double volume,
        double netMass,
        double orderMass,
        int loadCount,
        double deliveredMass,
        double spare,
        List<Load> loads,
        double looseDepth,
        double cost,
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
     * @param loadsShort whole loads that bring what is missing
     */
    public record Reach(double mass, double station, double shortBy, int loadsShort) {}

    /** What must still be ordered: all of it, less what the owner has in hand, kg. */
    public double toOrder() {
        return reach == null ? orderMass : reach.shortBy();
    }

    /** Whole loads that bring what must still be ordered. */
    public int loadsToOrder() {
        return reach == null ? loadCount : reach.loadsShort();
    }

    /** What those loads bring, kg: what is paid for. */
    public double broughtToOrder() {
        return loadsToOrder() * supply.payload();
    }

    /** What those loads cost in the owner's money, or NaN without a price; zero for no load. */
    public double costToOrder() {
        return loadsToOrder() == 0 ? 0 : broughtToOrder() * supply.price();
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
        double order = net * (1 + supply.loss());
        int count = wholeLoads(order, supply.payload());
        double delivered = count * supply.payload();
        return new LayerStone(
                supply,
                thickness,
                volume,
                net,
                order,
                count,
                delivered,
                delivered - order,
                loads(supply, laid, order, volume, count),
                thickness * supply.looseRatio(),
                delivered * supply.price(),
                reach(supply, laid, order, volume));
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

    private static List<Load> loads(
            Supply supply, Running laid, double order, double volume, int count) {
        Load[] loads = new Load[count];
        double from = laid.begin();
        for (int i = 0; i < count; i++) {
            double reached = Math.min(order, (i + 1) * supply.payload());
            double to =
                    i == count - 1
                            ? laid.end()
                            : laid.stationOf(Math.min(volume, reached / order * volume));
            loads[i] = new Load(i + 1, reached - i * supply.payload(), from, to);
            from = to;
        }
        return List.of(loads);
    }

    private static @Nullable Reach reach(Supply supply, Running laid, double order, double volume) {
        if (Double.isNaN(supply.inHand())) {
            return null;
        }
        double missing = Math.max(0, order - supply.inHand());
        double station =
                order > 0
                        ? laid.stationOf(volume * Math.min(1, supply.inHand() / order))
                        : laid.end();
        return new Reach(supply.inHand(), station, missing, wholeLoads(missing, supply.payload()));
    }
}
