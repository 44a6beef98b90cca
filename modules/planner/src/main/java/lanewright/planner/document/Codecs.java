package lanewright.planner.document;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewright.measure.Kind;
import lanewright.measure.Nearest;
import lanewright.measure.Parse;
import lanewright.measure.Price;
import lanewright.measure.Quantity;
import lanewright.measure.QuantityException;
import lanewright.measure.UnitSystem;
import lanewright.measure.Written;

/** How values stand in the plan. */
final class Codecs {

    /** A number somewhere near the front, and a unit after it. */
    private static final String QUANTITY = "^\\s*[-+\u2212]?\\s*[0-9.\u00bc\u00bd\u00be].*$";

    static final Codec<String> TEXT = new AnyText();
    static final Codec<Boolean> FLAG = new TrueOrFalse();
    static final Codec<UnitSystem> UNITS = choice(UnitSystem.class);

    static final Codec<Double> LENGTH = new Amount(Kind.LENGTH, "a length with its unit", 5.0);
    static final Codec<Double> DEPTH = new Amount(Kind.DEPTH, "a depth with its unit", 0.1);
    static final Codec<Double> HEIGHT = new Amount(Kind.HEIGHT, "a height with its unit", 100.0);
    static final Codec<Double> COORDINATE =
            new Amount(Kind.HEIGHT, "a coordinate with its unit", 0.0);
    static final Codec<Double> GRADE = new Amount(Kind.GRADE, "a slope such as 8 %", 0.02);
    static final Codec<Double> SIDE_SLOPE =
            new Amount(Kind.SIDE_SLOPE, "a side slope such as 3:1", 2.0);
    static final Codec<Double> SHARE = new Amount(Kind.SHARE, "a share such as 10 %", 0.1);
    static final Codec<Double> COUNT = new Amount(Kind.COUNT, "a number such as 25", 25.0);
    static final Codec<Double> MASS = new Amount(Kind.MASS, "a mass such as 20 tons", 10_000.0);
    static final Codec<Double> DENSITY =
            new Amount(Kind.DENSITY, "a density such as 140 lb/ft3", 2000.0);
    static final Codec<Double> AREA = new Amount(Kind.AREA, "an area with its unit", 2.0);
    static final Codec<Double> VOLUME = new Amount(Kind.VOLUME, "a volume with its unit", 10.0);
    static final Codec<Double> LAND = new Amount(Kind.LAND, "an area with its unit", 1000.0);
    static final Codec<Double> STATION =
            new Amount(Kind.STATION, "a station such as 12+50, or start", 0.0);
    static final Codec<Double> STATION_OR_END = new StationOrEnd();
    static final Codec<Double> CROSS_SLOPE = new SidedSlope();
    static final Codec<Double> SOAKING = new DepthPerHour();
    static final Codec<Price> PRICE = new PriceWords();
    static final Codec<Price> PRICE_OF_PIPE =
            new PaidBy(List.of(Kind.LENGTH), "pipe is priced by its length", "21.50 per ft");
    static final Codec<Price> PRICE_OF_ROCK =
            new PaidBy(
                    List.of(Kind.MASS, Kind.VOLUME),
                    "this stone is priced by its mass or its volume",
                    "24.00 per ton");
    static final Codec<Price> PRICE_OF_FABRIC =
            new PaidBy(List.of(Kind.AREA), "fabric is priced by its area", "2.10 per yd2");
    static final Codec<Price> PRICE_OF_DIGGING =
            new PaidBy(
                    List.of(Kind.HOURS, Kind.VOLUME),
                    "digging is priced by the hour or by what is dug",
                    "95.00 per h");
    static final Codec<Price> PRICE_OF_HEADWALL =
            new PaidBy(
                    List.of(Kind.COUNT), "a headwall is priced by the piece", "450.00 per piece");
    static final Codec<Double> LONGITUDE = new Degrees("longitude", 'E', 'W', 180);
    static final Codec<Double> LATITUDE = new Degrees("latitude", 'N', 'S', 90);
    static final Codec<SurveyPart.MapFrame> FRAME = new FrameWords();

    private Codecs() {}

    /** Constants of an enumeration, in lower case with blanks. */
    static <E extends Enum<E>> Codec<E> choice(Class<E> type) {
        return units(type.getEnumConstants(), each -> words(each.name()));
    }

    /** One of several values, each by its word. */
    static <E> Codec<E> units(E[] values, Function<E, String> word) {
        return new OneOf<>(List.of(values), word);
    }

    static String words(String constant) {
        return constant.toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static Codec.Unread unread(QuantityException e) {
        return new Codec.Unread(e.what(), e.remedy() + ".");
    }

    private record AnyText() implements Codec<String> {
        @Override
        public String read(String text, UnitSystem units) throws Unread {
            if (text.isBlank()) {
                throw new Unread("nothing stands here", "Give some words, or leave it out.");
            }
            if (text.chars().anyMatch(c -> c < ' ' && c != '\n' && c != '\t')) {
                throw new Unread("a character here cannot be shown", "Take it out.");
            }
            return text;
        }

        @Override
        public String write(String value, UnitSystem units) {
            return value;
        }

        @Override
        public String pattern() {
            return "\\S";
        }

        @Override
        public String what() {
            return "some words";
        }

        @Override
        public String sample() {
            return "words";
        }
    }

    /** Only for defaults: in the document true and false stand without quotes. */
    private record TrueOrFalse() implements Codec<Boolean> {
        @Override
        public Boolean read(String text, UnitSystem units) {
            return text.equals("true");
        }

        @Override
        public String write(Boolean value, UnitSystem units) {
            return value.toString();
        }

        @Override
        public String pattern() {
            return "^(true|false)$";
        }

        @Override
        public String what() {
            return "true or false";
        }

        @Override
        public Boolean sample() {
            return false;
        }
    }

    private record Amount(Kind kind, String what, Double sample) implements Codec<Double> {
        @Override
        public Double read(String text, UnitSystem units) throws Unread {
            if (kind == Kind.STATION && text.strip().equalsIgnoreCase("start")) {
                return 0.0;
            }
            try {
                return Parse.of(kind, text, units).value();
            } catch (QuantityException e) {
                throw unread(e);
            }
        }

        @Override
        public String write(Double value, UnitSystem units) {
            return kind == Kind.STATION && value == 0
                    ? "start"
                    : Written.exactly(new Quantity(value, kind), units);
        }

        @Override
        public String pattern() {
            return kind == Kind.STATION ? "^(start|[0-9.].*)$" : QUANTITY;
        }
    }

    private record StationOrEnd() implements Codec<Double> {
        @Override
        public Double read(String text, UnitSystem units) throws Unread {
            return text.strip().equalsIgnoreCase("end")
                    ? Double.POSITIVE_INFINITY
                    : STATION.read(text, units);
        }

        @Override
        public String write(Double value, UnitSystem units) {
            return value.isInfinite() ? "end" : STATION.write(value, units);
        }

        @Override
        public String pattern() {
            return "^(start|end|[0-9.].*)$";
        }

        @Override
        public String what() {
            return "a station such as 12+50, start or end";
        }

        @Override
        public Double sample() {
            return Double.POSITIVE_INFINITY;
        }
    }

    private record SidedSlope() implements Codec<Double> {
        @Override
        public Double read(String text, UnitSystem units) throws Unread {
            String tidy = text.strip();
            boolean left = tidy.endsWith(" left");
            boolean right = tidy.endsWith(" right");
            boolean level = tidy.equals("level");
            if (level) {
                return 0.0;
            }
            if (!left && !right) {
                throw new Unread(
                        "\"" + tidy + "\" does not say to which side it falls",
                        "Write 2 % right or 2 % left, looking up the lane, or level.");
            }
            double slope = GRADE.read(tidy.substring(0, tidy.lastIndexOf(' ')), units);
            if (slope < 0) {
                throw new Unread("it has a minus and a side", "Write one of the two.");
            }
            return left ? 0.0 - slope : slope;
        }

        @Override
        public String write(Double value, UnitSystem units) {
            if (value == 0) {
                return "level";
            }
            return GRADE.write(Math.abs(value), units) + (value < 0 ? " left" : " right");
        }

        @Override
        public String pattern() {
            return "^(level|[0-9.].* (left|right))$";
        }

        @Override
        public String what() {
            return "a cross slope such as 2 % right, 2 % left or level";
        }

        @Override
        public Double sample() {
            return 0.02;
        }
    }

    /** A price for one of some kinds of amount. */
    private record PaidBy(List<Kind> kinds, String refused, String such) implements Codec<Price> {
        @Override
        public Price read(String text, UnitSystem units) throws Unread {
            Price price;
            try {
                price = Parse.price(text, "");
            } catch (QuantityException e) {
                throw unread(e);
            }
            if (!kinds.contains(price.kind())) {
                throw new Unread(refused, "Write it so: " + such + ".");
            }
            return price;
        }

        @Override
        public String write(Price value, UnitSystem units) {
            return Written.price(value);
        }

        @Override
        public String pattern() {
            return "^[0-9.].*( per |/).*$";
        }

        @Override
        public String what() {
            return "a price such as " + such;
        }

        @Override
        public Price sample() {
            try {
                return Parse.price(such, "");
            } catch (QuantityException e) {
                throw new IllegalStateException("a sample that cannot be read: " + such, e);
            }
        }
    }

    private record DepthPerHour() implements Codec<Double> {
        private static final Pattern WORDS =
                Pattern.compile("(.*?)(?:\\s+per\\s+|\\s*/\\s*)(?:hour|hr|h)");
        private static final double HOUR = 3600;

        @Override
        public Double read(String text, UnitSystem units) throws Unread {
            Matcher matcher = WORDS.matcher(text.strip());
            if (!matcher.matches()) {
                throw new Unread(
                        "it does not say how much in an hour", "Write such as 0.1 in per hour.");
            }
            return DEPTH.read(matcher.group(1), units) / HOUR;
        }

        @Override
        public String write(Double value, UnitSystem units) {
            return DEPTH.write(value * HOUR, units) + " per hour";
        }

        @Override
        public String pattern() {
            return "^\\s*[0-9.\u00bc\u00bd\u00be].*( per |/).*$";
        }

        @Override
        public String what() {
            return "a depth in an hour, such as 0.1 in per hour";
        }

        @Override
        public Double sample() {
            return 0.0025 / HOUR;
        }
    }

    private record PriceWords() implements Codec<Price> {
        @Override
        public Price read(String text, UnitSystem units) throws Unread {
            Price price;
            try {
                price = Parse.price(text, "");
            } catch (QuantityException e) {
                throw unread(e);
            }
            boolean load = price.kind() == Kind.COUNT && price.unit().equals("load");
            if (price.kind() != Kind.MASS && !load) {
                throw new Unread(
                        "stone is priced here by its mass or by the load",
                        "Ask for a price per ton, such as 24.00 per ton or 26.50 per t, or per"
                                + " load.");
            }
            return price;
        }

        @Override
        public String write(Price value, UnitSystem units) {
            return Written.price(value);
        }

        @Override
        public String pattern() {
            return "^[0-9.].*( per |/).*$";
        }

        @Override
        public String what() {
            return "a price such as 24.00 per ton";
        }

        @Override
        public Price sample() {
            return new Price(24, "t", Kind.MASS, 1000);
        }
    }

    private record Degrees(String name, char positive, char negative, int most)
            implements Codec<Double> {
        @Override
        public Double read(String text, UnitSystem units) throws Unread {
            String tidy = text.strip();
            boolean back = tidy.endsWith(" " + negative);
            boolean ahead = tidy.endsWith(" " + positive);
            String number = back || ahead ? tidy.substring(0, tidy.length() - 2) : tidy;
            double degrees;
            try {
                degrees = Parse.angle(number);
            } catch (QuantityException e) {
                throw unread(e);
            }
            if ((back || ahead) && degrees < 0) {
                throw new Unread("it has a minus and a side", "Write one of the two.");
            }
            if (Math.abs(degrees) > most) {
                throw new Unread(
                        "a " + name + " lies within " + most + "°",
                        "Look whether longitude and latitude changed places.");
            }
            return back ? 0.0 - degrees : degrees;
        }

        @Override
        public String write(Double value, UnitSystem units) {
            return Written.exactly(new Quantity(value, Kind.ANGLE), units);
        }

        @Override
        public String pattern() {
            return "^-?[0-9.]+ ?(°|deg|degrees)( [" + positive + negative + "])?$";
        }

        @Override
        public String what() {
            return "a " + name + " in degrees";
        }

        @Override
        public Double sample() {
            return 0.0;
        }
    }

    private record FrameWords() implements Codec<SurveyPart.MapFrame> {
        private static final String ZONE = "zone at longitude ";

        @Override
        public SurveyPart.MapFrame read(String text, UnitSystem units) throws Unread {
            String tidy = text.strip();
            if (tidy.equals("local")) {
                return SurveyPart.MapFrame.LOCAL;
            }
            if (tidy.matches("EPSG:[0-9]{4,6}")) {
                return SurveyPart.MapFrame.epsg(Integer.parseInt(tidy.substring(5)));
            }
            int comma = tidy.indexOf(", latitude ");
            if (tidy.startsWith(ZONE) && comma > 0) {
                String longitude = tidy.substring(ZONE.length(), comma);
                String latitude = tidy.substring(comma + ", latitude ".length());
                if (isNumber(longitude) && isNumber(latitude)) {
                    return SurveyPart.MapFrame.zone(
                            Double.parseDouble(longitude), Double.parseDouble(latitude));
                }
            }
            throw new Unread(
                    "\"" + tidy + "\" is no frame known here",
                    "Write local, EPSG:26916 with your own code, or zone at longitude -86.5,"
                            + " latitude 39.2.");
        }

        private static boolean isNumber(String text) {
            return text.matches("-?[0-9]{1,3}(\\.[0-9]{1,12})?");
        }

        @Override
        public String write(SurveyPart.MapFrame value, UnitSystem units) {
            return switch (value.kind()) {
                case LOCAL -> "local";
                case EPSG -> "EPSG:" + value.epsg();
                case ZONE ->
                        ZONE
                                + Written.number(value.longitude())
                                + ", latitude "
                                + Written.number(value.latitude());
            };
        }

        @Override
        public String pattern() {
            return "^(local|EPSG:[0-9]{4,6}|zone at longitude -?[0-9.]+, latitude -?[0-9.]+)$";
        }

        @Override
        public String what() {
            return "a frame: local, EPSG:26916 or a zone";
        }

        @Override
        public SurveyPart.MapFrame sample() {
            return SurveyPart.MapFrame.LOCAL;
        }
    }

    /** One of a few values by its word. */
    private static final class OneOf<E> implements Codec<E> {
        private final List<E> values;
        private final List<String> words = new ArrayList<>();

        OneOf(List<E> values, Function<E, String> word) {
            this.values = values;
            for (E value : values) {
                words.add(word.apply(value));
            }
        }

        @Override
        public E read(String text, UnitSystem units) throws Unread {
            int at = words.indexOf(text);
            if (at < 0) {
                throw new Unread(
                        "\"" + text + "\" is not one of the words for it",
                        Nearest.to(text, words)
                                        .map(near -> "Did you mean " + near + "? ")
                                        .orElse("")
                                + "It may be "
                                + String.join(", ", words)
                                + ".");
            }
            return values.get(at);
        }

        @Override
        public String write(E value, UnitSystem units) {
            return words.get(values.indexOf(value));
        }

        @Override
        public String pattern() {
            return "";
        }

        @Override
        public List<String> words() {
            return words;
        }

        @Override
        public String what() {
            return "one of " + String.join(", ", words);
        }

        @Override
        public E sample() {
            return values.get(0);
        }
    }
}
