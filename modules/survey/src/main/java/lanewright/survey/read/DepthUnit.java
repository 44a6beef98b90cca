package lanewright.survey.read;

/** Units in which the depth of a probe hole is written. */
public enum DepthUnit {
    /** The metre. */
    METRE(1, "m"),
    /** A hundredth of a metre. */
    CENTIMETRE(0.01, "cm"),
    /** A thousandth of a metre. */
    MILLIMETRE(0.001, "mm"),
    /** The inch, exactly 0.0254 m (NIST Special Publication 811, 2008, appendix B). */
    INCH(0.0254, "in"),
    /** The international foot, exactly 0.3048 m; the survey foot would be the same to a micron. */
    FOOT(0.3048, "ft");

    private final double metres;
    private final String symbol;

    DepthUnit(double metres, String symbol) {
        this.metres = metres;
        this.symbol = symbol;
    }

    /** Length of one unit, m. */
    public double metres() {
        return metres;
    }

    /** How it is written. */
    public String symbol() {
        return symbol;
    }
}
