package lanewright.lane.volume;

/**
 * A span in which a quantity runs out to nothing, with what either rule makes of it. The truth lies
 * between: a wedge fills a half of its box, a pyramid a third.
 *
 * @param from station where the span begins, m
 * @param to station where it ends, m
 * @param averageEndArea as counted, m³
 * @param pyramid what the pyramid would give, m³
 */
public record RunOut(double from, double to, double averageEndArea, double pyramid) {}
