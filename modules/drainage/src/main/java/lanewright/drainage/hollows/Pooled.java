package lanewright.drainage.hollows;

/**
 * Water that stands in a hollow and, where it has parts, over them.
 *
 * @param hollow its number
 * @param level m
 * @param depth over its deepest cell, m
 * @param area under water, m²
 * @param volume m³
 * @param isFull whether it stands as high as the hollow lets it
 */
public record Pooled(
        int hollow, double level, double depth, double area, double volume, boolean isFull) {}
