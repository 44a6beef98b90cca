package lanewright.stone;

/**
 * One truck load of one layer: where spreading starts and where it stops.
 *
 * @param number counted within the layer from 1, in the order of laying
 * @param mass what is used of it, kg; the last load may carry more than is needed
 * @param from station where it starts, m
 * @param to station where it stops, m
 * @param inHand whether it comes of the stone in hand; otherwise it is one of those to order
 */
public record Load(int number, double mass, double from, double to, boolean inHand) {
    /** Length of lane that the load covers, m. */
    public double covers() {
        return to - from;
    }
}
