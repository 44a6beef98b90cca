package lanewright.measure;

/** The units in which a person reads the plan. Inside, everything is SI. */
public enum UnitSystem {
    /** Feet, inches, cubic yards, short tons of 2,000 lb, stations of 100 ft. */
    US,
    /** Metres, millimetres, cubic metres, tonnes, stations of 1,000 m. */
    METRIC
}
