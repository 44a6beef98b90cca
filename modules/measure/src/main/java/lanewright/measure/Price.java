package lanewright.measure;

/**
 * What the owner pays for one unit of something.
 *
 * @param amount money for one {@code unit}, zero or more
 * @param unit the unit as the owner wrote it, such as {@code ton}, {@code t}, {@code load}
 * @param kind what the unit measures: {@link Kind#MASS}, {@link Kind#VOLUME}, {@link Kind#AREA},
 *     {@link Kind#LENGTH}, {@link Kind#HOURS}, or {@link Kind#COUNT} for loads and pieces
 * @param size size of one unit in SI (kg, m³, m², m, h) or 1 for loads and pieces, above zero
 */
public record Price(double amount, String unit, Kind kind, double size) {

    /** Checks the ranges. */
    public Price {
        if (!(amount >= 0 && Double.isFinite(amount)) || !(size > 0 && Double.isFinite(size))) {
            throw new IllegalArgumentException(
                    "price must be zero or more for a unit above zero, was "
                            + amount
                            + " for "
                            + size);
        }
    }

    /**
     * Money for {@code si} of what is priced, in the SI unit of the kind.
     *
     * @param si finite
     */
    public double of(double si) {
        return amount * (si / size);
    }

    /** Such as {@code 36.00 USD per ton}. */
    public String inWords(String currency) {
        String money = Words.fixed(amount, 2) + (currency.isBlank() ? "" : " " + currency);
        return money + " per " + unit;
    }
}
