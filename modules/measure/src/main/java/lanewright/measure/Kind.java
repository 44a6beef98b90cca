package lanewright.measure;

/**
 * What a number measures. Decides how it is written in either unit system; the value itself is SI.
 */
public enum Kind {
    /** A distance along or across the ground, m. */
    LENGTH,
    /** A height above the datum, or a height difference to be staked, m. */
    HEIGHT,
    /** A small thickness or depth (topsoil, a layer, a step), m. */
    DEPTH,
    /** Distance along the alignment from its start, m; written with the plus sign. */
    STATION,
    /** Distance square to the alignment, m, positive right looking up-station. */
    OFFSET,
    /** A plan or section area, m². */
    AREA,
    /** An area of land, m²; written in acres or hectares. */
    LAND,
    /** A volume, m³. */
    VOLUME,
    /** A grade or cross slope, rise over run. */
    GRADE,
    /** A side slope, run over rise (3 means 3:1, horizontal to vertical). */
    SIDE_SLOPE,
    /** A mass, kg; written in short tons or tonnes. */
    MASS,
    /** A density, kg/m³. */
    DENSITY,
    /** An angle, degrees. */
    ANGLE,
    /** A part of one (0.1 is 10 %). */
    SHARE,
    /** A number of things. */
    COUNT,
    /** An amount of money in the owner's own currency. */
    MONEY,
    /** Working time, hours. */
    HOURS,
    /** Water that runs through a place, m³/s. */
    FLOW,
    /** How fast water runs, m/s. */
    SPEED,
    /** Drag of water on what it runs over, Pa; written in lb/ft² or Pa. */
    SHEAR
}
