package lanewright.drainage.storm;

import lanewright.drainage.along.Relief;

/**
 * One storm at a turn-out that is proposed, with every other proposal for the ditches built.
 *
 * @param relief the turn-out
 * @param flow that it leads out over the land at its height, m³/s
 * @param drained land that drains to it, the lane's own included, m²
 * @param isLeast whether more may drain there from beyond the survey
 */
public record TurnedOut(Relief relief, double flow, double drained, boolean isLeast) {}
