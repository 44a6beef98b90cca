package lanewright.measure;

/**
 * A number that knows what it measures.
 *
 * @param value the number in the SI unit of its kind; may be any double, and is written as "not
 *     known" when it is not finite
 * @param kind what it measures
 */
public record Quantity(double value, Kind kind) {

    /** A distance, m. */
    public static Quantity length(double metres) {
        return new Quantity(metres, Kind.LENGTH);
    }

    /** A height above the datum or to be staked, m. */
    public static Quantity height(double metres) {
        return new Quantity(metres, Kind.HEIGHT);
    }

    /** A small thickness or depth, m. */
    public static Quantity depth(double metres) {
        return new Quantity(metres, Kind.DEPTH);
    }

    /** A distance along the alignment, m. */
    public static Quantity station(double metres) {
        return new Quantity(metres, Kind.STATION);
    }

    /** A distance square to the alignment, m, positive right. */
    public static Quantity offset(double metres) {
        return new Quantity(metres, Kind.OFFSET);
    }

    /** An area, m². */
    public static Quantity area(double squareMetres) {
        return new Quantity(squareMetres, Kind.AREA);
    }

    /** An area of land, m². */
    public static Quantity land(double squareMetres) {
        return new Quantity(squareMetres, Kind.LAND);
    }

    /** A volume, m³. */
    public static Quantity volume(double cubicMetres) {
        return new Quantity(cubicMetres, Kind.VOLUME);
    }

    /** A grade or cross slope, rise over run. */
    public static Quantity grade(double riseOverRun) {
        return new Quantity(riseOverRun, Kind.GRADE);
    }

    /** A side slope, run over rise. */
    public static Quantity sideSlope(double runOverRise) {
        return new Quantity(runOverRise, Kind.SIDE_SLOPE);
    }

    /** A mass, kg. */
    public static Quantity mass(double kilograms) {
        return new Quantity(kilograms, Kind.MASS);
    }

    /** A density, kg/m³. */
    public static Quantity density(double kilogramsPerCubicMetre) {
        return new Quantity(kilogramsPerCubicMetre, Kind.DENSITY);
    }

    /** A part of one. */
    public static Quantity share(double ofOne) {
        return new Quantity(ofOne, Kind.SHARE);
    }

    /** A number of things. */
    public static Quantity count(double number) {
        return new Quantity(number, Kind.COUNT);
    }

    /** An amount of the owner's money. */
    public static Quantity money(double amount) {
        return new Quantity(amount, Kind.MONEY);
    }

    /** Working time, h. */
    public static Quantity hours(double hours) {
        return new Quantity(hours, Kind.HOURS);
    }

    /** Water that runs through a place, m³/s. */
    public static Quantity flow(double cubicMetresPerSecond) {
        return new Quantity(cubicMetresPerSecond, Kind.FLOW);
    }

    /** How fast water runs, m/s. */
    public static Quantity speed(double metresPerSecond) {
        return new Quantity(metresPerSecond, Kind.SPEED);
    }

    /** Drag of water on a bed, Pa. */
    public static Quantity shear(double pascal) {
        return new Quantity(pascal, Kind.SHEAR);
    }

    /** An angle, degrees. */
    public static Quantity angle(double degrees) {
        return new Quantity(degrees, Kind.ANGLE);
    }

    /** The number in words of {@code units}, unit included, the same in every locale. */
    public String in(UnitSystem units) {
        return Words.of(this, units);
    }
}
