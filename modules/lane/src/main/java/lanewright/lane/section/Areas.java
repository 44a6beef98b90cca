package lanewright.lane.section;

import java.util.List;

/**
 * The areas of one section. At every section finished − ground = stone + fill + topsoil back − cut
 * − strip, where fill includes the edge refill.
 *
 * @param strip ground to stripped ground, inside the limits of work
 * @param cut stripped ground above subgrade, bank
 * @param fill subgrade above stripped ground, compacted, edge refill included
 * @param edgeRefill that part of fill whose finished line is at or below the old ground: never
 *     ordered or balanced as earth
 * @param topsoilBack topsoil put back on slopes and in the margin
 * @param undercut subgrade down to the bearing line under stone and shoulders
 * @param layers stone by layer, in the order of the typical section (top down)
 */
public record Areas(
        Part strip,
        Part cut,
        Part fill,
        Part edgeRefill,
        Part topsoilBack,
        Part undercut,
        List<Part> layers) {
    /** Copies the list. */
    public Areas {
        layers = List.copyOf(layers);
    }
}
