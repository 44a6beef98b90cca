package lanewright.lane.volume;

/**
 * A volume of the whole lane.
 *
 * @param name what it is, in the owner's words, such as {@code topsoil strip}
 * @param state the state it is measured in
 * @param plain by average end area, m³
 * @param corrected the same with each area carried along its own centroid's path where the lane
 *     curves, m³
 */
public record Volume(String name, State state, double plain, double corrected) {}
