package lanewright.stone;

/**
 * One truck load of one layer: where spreading starts and where it stops.
 *
 * @param number counted within the layer from 1, in the order of laying
 * @param mass what is used of it, kg; the last load may carry more than is needed
 * @param from station where it starts, m
 * @param to station where it stops, m
 */
public record Load(int number, double mass, double from, double to) {
    /** Length of lane that the load covers, m. */
    public double covers() {
        return to - from;
    }
}
