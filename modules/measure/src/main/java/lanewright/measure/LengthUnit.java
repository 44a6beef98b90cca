package lanewright.measure;

/** Units in which survey coordinates come. Inside, every length is metres. */
public enum LengthUnit {
    /** The metre. */
    METRE(1, "m"),
    /** International foot, exactly 0.3048 m (NIST and NGS, 85 FR 62698, October 2020). */
    FOOT(0.3048, "ft"),
    /**
     * US survey foot, 1200/3937 m: retired after 2022 by the same notice, still met in old work.
     */
    SURVEY_FOOT(1200.0 / 3937.0, "ftUS");

    private final double metres;
    private final String symbol;

    LengthUnit(double metres, String symbol) {
        this.metres = metres;
        this.symbol = symbol;
    }

    /** Length of one unit, m. */
    public double metres() {
        return metres;
    }

    /** How it is written in a plan: {@code m}, {@code ft}, {@code ftUS}. */
    public String symbol() {
        return symbol;
    }
}
