package lanewright.measure;

import java.math.BigDecimal;

/** Units in which survey coordinates come. Inside, every length is metres. */
public enum LengthUnit {
    /** The metre. */
    METRE(Unit.METRE),
    /** International foot, exactly 0.3048 m (NIST and NGS, 85 FR 62698, October 2020). */
    FOOT(Unit.FOOT),
    /**
     * US survey foot, 1200/3937 m: retired after 2022 by the same notice, still met in old work.
     */
    SURVEY_FOOT(Unit.SURVEY_FOOT);

    private final double metres;
    private final String symbol;

    LengthUnit(Unit unit) {
        this.metres = unit.toSi(BigDecimal.ONE);
        this.symbol = unit.symbol();
    }

    /** Length of one unit, m. */
    public double metres() {
        return metres;
    }

    /** How it is written in a plan: {@code m}, {@code ft}, {@code ftUS}. */
    public String symbol() {
        return symbol;
    }

    /**
     * The unit that is written as {@code name}, such as {@code m}, {@code feet} or {@code US survey
     * foot}.
     *
     * @throws QuantityException if coordinates do not come in it
     */
    public static LengthUnit named(String name) throws QuantityException {
        Unit wanted = Unit.named(Terms.tidy(name));
        for (LengthUnit unit : values()) {
            if (wanted != null && unit.symbol.equals(wanted.symbol())) {
                return unit;
            }
        }
        throw new QuantityException(
                "\"" + Terms.tidy(name) + "\" is not a unit that coordinates come in",
                "Write m, ft (international foot) or ftUS (US survey foot)");
    }
}
