package lanewright.measure;

/**
 * What a kind of quantity is usually written in, for telling people what to write.
 *
 * @param example a quantity as it may be written, in either system
 * @param us its unit in US customary
 * @param metric its unit in metric; equal to {@code us} where there is one
 */
record Usual(String example, String us, String metric) {

    static Usual of(Kind kind) {
        return switch (kind) {
            case LENGTH -> new Usual("14 ft or 4.3 m", "ft", "m");
            case HEIGHT -> new Usual("412.5 ft or 125.73 m", "ft", "m");
            case DEPTH -> new Usual("7 in or 180 mm", "in", "mm");
            case STATION -> new Usual("12+50 in feet or 1+250 in metres", "ft", "m");
            case OFFSET -> new Usual("12 ft right or 3.5 m left", "ft", "m");
            case AREA -> new Usual("120 ft2 or 11 m2", "ft2", "m2");
            case LAND -> new Usual("0.42 acres or 0.17 ha", "acres", "ha");
            case VOLUME -> new Usual("212 yd3 or 162 m3", "yd3", "m3");
            case GRADE -> new Usual("8 % or 1/2 in/ft", "%", "%");
            case SIDE_SLOPE -> new Usual("3:1", ":1", ":1");
            case MASS -> new Usual("22 tons or 20 t", "tons", "t");
            case DENSITY -> new Usual("140 lb/ft3 or 2240 kg/m3", "lb/ft3", "kg/m3");
            case ANGLE -> new Usual("37°", "°", "°");
            case SHARE -> new Usual("10 %", "%", "%");
            case HOURS -> new Usual("6.5 h or 90 min", "h", "min");
            case FLOW -> new Usual("12 ft3/s or 0.34 m3/s", "ft3/s", "m3/s");
            case SPEED -> new Usual("4 ft/s or 1.2 m/s", "ft/s", "m/s");
            case SHEAR -> new Usual("0.5 lb/ft2 or 24 Pa", "lb/ft2", "Pa");
            case COUNT -> new Usual("3", "", "");
            case MONEY -> new Usual("36.00", "", "");
        };
    }

    /** What units of {@code kind} measure. */
    static Unit.Measure measure(Kind kind) {
        return switch (kind) {
            case LENGTH, HEIGHT, DEPTH, STATION, OFFSET -> Unit.Measure.LENGTH;
            case AREA, LAND -> Unit.Measure.AREA;
            case VOLUME -> Unit.Measure.VOLUME;
            case GRADE, SHARE, SIDE_SLOPE -> Unit.Measure.SLOPE;
            case MASS -> Unit.Measure.MASS;
            case DENSITY -> Unit.Measure.DENSITY;
            case ANGLE -> Unit.Measure.ANGLE;
            case HOURS -> Unit.Measure.TIME;
            case FLOW -> Unit.Measure.FLOW;
            case SPEED -> Unit.Measure.SPEED;
            case SHEAR -> Unit.Measure.SHEAR;
            case COUNT, MONEY ->
                    throw new IllegalArgumentException(kind + " is written without a unit");
        };
    }

    /** {@code 14 ft or 14 m}, for a number that came without. */
    String withNumber(String number) {
        return us.equals(metric)
                ? number + " " + us
                : number + " " + us + " or " + number + " " + metric;
    }
}
