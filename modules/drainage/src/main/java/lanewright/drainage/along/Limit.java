package lanewright.drainage.along;

import lanewright.measure.Assumption.Mark;

/**
 * A figure that something is held against.
 *
 * @param value in SI units
 * @param source who published it, with edition
 * @param mark what kind of source that is
 */
public record Limit(double value, String source, Mark mark) {}
