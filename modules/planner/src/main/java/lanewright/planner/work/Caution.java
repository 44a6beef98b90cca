package lanewright.planner.work;

import lanewright.measure.Saying;

/**
 * A usual caution that applies to this plan. It never stands in for local codes or for the people
 * licensed to decide.
 *
 * @param name short, stable, lower case, words joined by hyphens
 * @param says what to mind
 * @param source who says so, or {@code common practice, no source}
 */
public record Caution(String name, Saying says, String source) {}
