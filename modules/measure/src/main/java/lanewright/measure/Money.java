package lanewright.measure;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Amounts and prices in the owner's one currency, whatever its name; no rates, no guessing. */
final class Money {

    /** What is paid by the piece. */
    private static final List<String> PIECES = List.of("load", "piece", "trip");

    private Money() {}

    static double amount(String text, String currency) throws QuantityException {
        String tidy = Terms.tidy(text);
        String number = withoutCurrency(tidy, currency.strip());
        double amount = Parse.bare(number, tidy);
        if (amount < 0) {
            throw new QuantityException(
                    "\"" + tidy + "\" is below zero", "Write money as zero or more");
        }
        return amount;
    }

    static Price price(String text, String currency) throws QuantityException {
        String tidy = Terms.tidy(text);
        int per = tidy.toLowerCase(Locale.ROOT).indexOf(" per ");
        int bar = tidy.indexOf('/');
        if (per < 0 && bar < 0) {
            throw new QuantityException(
                    "\"" + tidy + "\" does not say what it is the price of",
                    "Write it as 36 per ton, 18 per t or 400 per load");
        }
        double amount = amount(tidy.substring(0, per < 0 ? bar : per), currency);
        String unit = tidy.substring(per < 0 ? bar + 1 : per + " per ".length()).strip();
        if (PIECES.contains(unit.toLowerCase(Locale.ROOT))) {
            return new Price(amount, unit, Kind.COUNT, 1);
        }
        Unit known = Unit.named(unit);
        Optional<Kind> kind = known == null ? Optional.empty() : priced(known);
        if (known == null || kind.isEmpty()) {
            throw new QuantityException(
                    "\"" + unit + "\" is nothing that is paid for here",
                    "Write the price per ton, t, yd3, m3, yd2, m2, ft, m, h or load");
        }
        return new Price(amount, unit, kind.get(), known.si());
    }

    private static Optional<Kind> priced(Unit unit) {
        return switch (unit.measure()) {
            case MASS -> Optional.of(Kind.MASS);
            case VOLUME -> Optional.of(Kind.VOLUME);
            case AREA -> Optional.of(Kind.AREA);
            case LENGTH -> Optional.of(Kind.LENGTH);
            case TIME -> Optional.of(Kind.HOURS);
            case DENSITY, SLOPE, ANGLE, FLOW, SPEED, SHEAR -> Optional.empty();
        };
    }

    /** The plan's currency may stand before or after the number; any other is refused. */
    private static String withoutCurrency(String text, String currency) throws QuantityException {
        String number = text.strip();
        if (!currency.isEmpty() && number.startsWith(currency)) {
            number = number.substring(currency.length()).strip();
        } else if (!currency.isEmpty() && number.endsWith(currency)) {
            number = number.substring(0, number.length() - currency.length()).strip();
        }
        boolean plain =
                !number.isEmpty() && number.chars().allMatch(c -> "0123456789.,-+".indexOf(c) >= 0);
        if (!plain) {
            throw new QuantityException(
                    "\"" + text + "\" is not an amount of money in the plan's currency",
                    "Write 36.00"
                            + (currency.isEmpty() ? "" : " or 36.00 " + currency)
                            + "; the currency is named once, for the whole plan");
        }
        return number;
    }
}
