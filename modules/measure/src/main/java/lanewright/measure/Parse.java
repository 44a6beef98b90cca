package lanewright.measure;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Quantities as people write them, turned into SI: {@code 14 ft}, {@code 6 ft 3 1/2 in}, {@code
 * 6'-3"}, {@code 450 mm}, {@code 12+50}, {@code 8 %}, {@code 3:1}, {@code 140 lb/ft3}, {@code 22
 * tons}.
 *
 * <p>Nothing is guessed. A number without a unit, a decimal comma, a comma that could be one, and a
 * slope that could be meant either way round are refused with what to write instead. The ton is the
 * short ton of 2,000 lb, {@code t} the tonne of 1,000 kg; {@code ft} is the international foot,
 * {@code ftUS} the US survey foot. What {@link Words} writes is read again, but for a lone comma
 * before three digits with a metric unit, which elsewhere is a decimal sign.
 */
public final class Parse {

    /** Larger than any quantity about a lane in SI, and small enough to reckon with. */
    private static final double LARGEST = 1e12;

    private Parse() {}

    /**
     * A quantity of {@code kind}.
     *
     * @param text what was written, any text
     * @param units the system that stations are in; other kinds name their unit
     * @return the quantity, finite; zero or more but for heights, offsets and grades
     * @throws QuantityException if the text cannot be read as it stands
     */
    public static Quantity of(Kind kind, String text, UnitSystem units) throws QuantityException {
        double value =
                switch (kind) {
                    case STATION -> station(text, units);
                    case SIDE_SLOPE -> sideSlope(text);
                    case OFFSET -> offset(text);
                    case GRADE -> grade(text);
                    case SHARE -> share(text);
                    case COUNT -> count(text);
                    case MONEY -> Money.amount(text, "");
                    case LENGTH,
                            HEIGHT,
                            DEPTH,
                            AREA,
                            LAND,
                            VOLUME,
                            MASS,
                            DENSITY,
                            ANGLE,
                            HOURS,
                            FLOW,
                            SPEED,
                            SHEAR ->
                            plain(kind, text);
                };
        return new Quantity(value, kind);
    }

    /** A distance, m, zero or more. */
    public static double length(String text) throws QuantityException {
        return plain(Kind.LENGTH, text);
    }

    /** A height above the datum or a difference of heights, m, of either sign. */
    public static double height(String text) throws QuantityException {
        return plain(Kind.HEIGHT, text);
    }

    /** A thickness or depth, m, zero or more. */
    public static double depth(String text) throws QuantityException {
        return plain(Kind.DEPTH, text);
    }

    /** An area, m², zero or more. */
    public static double area(String text) throws QuantityException {
        return plain(Kind.AREA, text);
    }

    /** A volume, m³, zero or more. */
    public static double volume(String text) throws QuantityException {
        return plain(Kind.VOLUME, text);
    }

    /** A mass, kg, zero or more; {@code tons} are short tons, {@code t} tonnes. */
    public static double mass(String text) throws QuantityException {
        return plain(Kind.MASS, text);
    }

    /** A density, kg/m³, zero or more. */
    public static double density(String text) throws QuantityException {
        return plain(Kind.DENSITY, text);
    }

    /** An angle, degrees, of either sign. */
    public static double angle(String text) throws QuantityException {
        return plain(Kind.ANGLE, text);
    }

    /** A working time, h, zero or more. */
    public static double hours(String text) throws QuantityException {
        return plain(Kind.HOURS, text);
    }

    /**
     * A distance along the alignment, m, zero or more, written with its plus or as a length.
     *
     * @param units the system the plus belongs to: 100 ft or 1,000 m
     */
    public static double station(String text, UnitSystem units) throws QuantityException {
        String tidy = Terms.tidy(text);
        if (tidy.indexOf('+') > 0) {
            return Stations.read(tidy, units);
        }
        if (Terms.of(tidy).stream().allMatch(term -> term.unit().isEmpty())) {
            throw new QuantityException(
                    "\"" + tidy + "\" is not a station",
                    "Write it as " + Stations.example(units) + ", or as a length with its unit");
        }
        return plain(Kind.STATION, tidy);
    }

    /**
     * A distance square to the alignment, m, positive right looking up-station: {@code 12 ft
     * right}, {@code 12 ft left}, or with a sign.
     */
    public static double offset(String text) throws QuantityException {
        String tidy = Terms.tidy(text);
        String lower = tidy.toLowerCase(Locale.ROOT);
        for (String side : List.of(" right", " left")) {
            if (lower.endsWith(side)) {
                String rest = tidy.substring(0, tidy.length() - side.length());
                if (rest.startsWith("-") || rest.startsWith("+")) {
                    throw new QuantityException(
                            "\"" + tidy + "\" has a sign and a side", "Write one of the two");
                }
                double across = plain(Kind.OFFSET, rest);
                return side.equals(" left") ? 0 - across : across;
            }
        }
        return plain(Kind.OFFSET, tidy);
    }

    /**
     * A grade or cross slope, rise over run, of either sign: {@code 8 %}, {@code 1/2 in/ft}, {@code
     * 40 mm/m}.
     */
    public static double grade(String text) throws QuantityException {
        String tidy = Terms.tidy(text);
        boolean ratio = tidy.indexOf(':') >= 0;
        List<Terms.Term> terms = ratio ? List.of() : Terms.of(tidy);
        boolean oneIn = terms.size() == 2 && terms.get(0).unit().equalsIgnoreCase("in");
        if (ratio || oneIn) {
            throw new QuantityException(
                    "\"" + tidy + "\" can be read as rise to run or as run to rise",
                    "Write a grade in percent: 1 up in 12 along is 8.33 %");
        }
        return plain(Kind.GRADE, tidy);
    }

    /** A cross slope, rise over run; the same as a grade. */
    public static double crossSlope(String text) throws QuantityException {
        return grade(text);
    }

    /** A side slope, run over rise, above zero: {@code 3:1} is 3 across for 1 up or down. */
    public static double sideSlope(String text) throws QuantityException {
        String tidy = Terms.tidy(text);
        int colon = tidy.indexOf(':');
        if (colon < 0) {
            throw new QuantityException(
                    "\"" + tidy + "\" is not a side slope",
                    "Write it across to up, as in 3:1 for 3 across and 1 up");
        }
        double across = bare(tidy.substring(0, colon), tidy);
        double up = bare(tidy.substring(colon + 1), tidy);
        if (up != 1 || !(across > 0)) {
            throw new QuantityException(
                    "\"" + tidy + "\" does not say which number is across and which is up",
                    "Write it across to up, the second number 1: 3:1 for 3 across and 1 up");
        }
        return across;
    }

    /** A part of one, zero or more: {@code 10 %}. */
    public static double share(String text) throws QuantityException {
        return plain(Kind.SHARE, text);
    }

    /** A number of things, zero or more, without a unit. */
    public static double count(String text) throws QuantityException {
        String tidy = Terms.tidy(text);
        double count = bare(tidy, tidy);
        if (count < 0) {
            throw negative(tidy);
        }
        return count;
    }

    /**
     * An amount of money, zero or more: {@code 36.00}, {@code 36.00 USD} or {@code $36.00}.
     *
     * @param currency the plan's own name or sign of its money, the only one that may stand there
     */
    public static double money(String text, String currency) throws QuantityException {
        return Money.amount(text, currency);
    }

    /**
     * A price: {@code 36 per ton}, {@code 18 EUR/t}, {@code $2.50 per yd2}, {@code 95 per hour},
     * {@code 400 per load}.
     *
     * @param currency the plan's own name or sign of its money, the only one that may stand there
     */
    public static Price price(String text, String currency) throws QuantityException {
        return Money.price(text, currency);
    }

    /** The one number of {@code text}, which has no unit. */
    static double bare(String text, String whole) throws QuantityException {
        List<Terms.Term> terms = Terms.of(text);
        Terms.Term only = terms.get(0);
        if (terms.size() > 1 || !only.unit().isEmpty()) {
            throw new QuantityException(
                    "\"" + whole + "\" holds more than a number", "Leave out what follows it");
        }
        return bounded(only.number().doubleValue(), whole);
    }

    private static double plain(Kind kind, String text) throws QuantityException {
        List<Terms.Term> terms = Terms.of(text);
        double value = bounded(sum(kind, terms, text.strip()), text.strip());
        boolean signed =
                kind == Kind.HEIGHT
                        || kind == Kind.OFFSET
                        || kind == Kind.GRADE
                        || kind == Kind.ANGLE;
        if (value < 0 && !signed) {
            throw negative(text.strip());
        }
        return value + 0.0; // never minus zero
    }

    private static double sum(Kind kind, List<Terms.Term> terms, String text)
            throws QuantityException {
        Unit first = unit(kind, terms.get(0));
        if (terms.size() == 1) {
            return first.toSi(terms.get(0).number());
        }
        BigDecimal feet = terms.get(0).number();
        BigDecimal inches = terms.get(1).number();
        boolean feetAndInches =
                terms.size() == 2
                        && first == Unit.FOOT
                        && unit(kind, terms.get(1)) == Unit.INCH
                        && feet.stripTrailingZeros().scale() <= 0
                        && inches.compareTo(BigDecimal.valueOf(12)) < 0;
        if (!feetAndInches) {
            throw new QuantityException(
                    "\"" + text + "\" holds more than one number",
                    "Write one number and its unit, or whole feet and less than 12 in");
        }
        boolean below = terms.get(0).written().startsWith("-");
        return Unit.FOOT
                .exact(feet)
                .add(Unit.INCH.exact(below ? inches.negate() : inches))
                .doubleValue();
    }

    private static Unit unit(Kind kind, Terms.Term term) throws QuantityException {
        String name = term.unit();
        if (name.isEmpty()) {
            throw new QuantityException(
                    term.written() + " has no unit",
                    "Write " + Usual.of(kind).withNumber(term.written()) + ", whichever it is");
        }
        Unit unit = Unit.named(name);
        Unit.Measure wanted = Usual.measure(kind);
        if (unit == null) {
            Optional<String> nearest = Nearest.to(name, Unit.names(wanted));
            throw new QuantityException(
                    "\"" + name + "\" is not a unit known here",
                    nearest.map(near -> "Nearest known is " + near + "; otherwise write ")
                                    .orElse("Write ")
                            + Usual.of(kind).example());
        }
        if (unit.measure() != wanted || (kind == Kind.SHARE && unit != Unit.PERCENT)) {
            String other = kind == Kind.SHARE ? "a share" : wanted.words();
            throw new QuantityException(
                    "\"" + name + "\" is " + unit.measure().words() + ", not " + other,
                    "Write " + Usual.of(kind).example());
        }
        // A density is read either way: two thousandths of a tonne per cubic metre is no soil.
        if (term.twoReadings() && unit.isMetric() && kind != Kind.DENSITY) {
            String joined = term.written().replace(",", "");
            String point = term.written().replace(',', '.');
            throw new QuantityException(
                    "The comma in " + term.written() + " may end thousands or begin decimals",
                    "Write " + joined + " " + name + " or " + point + " " + name);
        }
        return unit;
    }

    static double bounded(double value, String text) throws QuantityException {
        if (!(Math.abs(value) <= LARGEST)) {
            throw new QuantityException(
                    "\"" + text + "\" is too large to be meant", "Look for digits too many");
        }
        return value;
    }

    private static QuantityException negative(String text) {
        return new QuantityException(
                "\"" + text + "\" is below zero", "Write it without the minus if it was meant");
    }
}
