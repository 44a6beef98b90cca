package lanewright.desktop.ask;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewright.measure.Parse;
import lanewright.measure.QuantityException;

/**
 * A price as people write it, {@code $28}, {@code 28 $/ton} or {@code 28 dollars a ton}, in the way
 * a plan keeps it.
 *
 * @param price such as {@code 28 per ton}; as it was typed if it is not understood, so that the
 *     plan tells what is wrong with it
 * @param currency the word or sign of money that the plan shall take on, or empty
 */
record TypedPrice(String price, String currency) {

    /** Nobody writes a longer price; a longer text is not looked into. */
    private static final int LONGEST = 80;

    private static final Pattern NUMBER = Pattern.compile("[-+]?(?:\\d[\\d.,']*|\\.\\d+)");
    private static final Pattern PER =
            Pattern.compile("(.*?)(?:/| (?:per|an?) )(.*)", Pattern.CASE_INSENSITIVE);
    private static final Pattern EACH = Pattern.compile("(.*?) each", Pattern.CASE_INSENSITIVE);

    /** Words and signs of one money. A sign that several countries use is no other money. */
    private static final List<Set<String>> MONIES =
            List.of(
                    Set.of("$", "dollar", "dollars", "usd", "us$"),
                    Set.of("€", "euro", "euros", "eur"),
                    Set.of("£", "pound", "pounds", "gbp"),
                    Set.of("kr", "crown", "crowns", "krona", "kronor", "krone", "kroner"),
                    Set.of("¥", "yen", "jpy"));

    private static final Set<String> DOLLAR = Set.of("$", "dollar", "dollars");
    private static final Set<String> OTHER_DOLLARS = Set.of("cad", "aud", "nzd", "hkd", "sgd");

    /**
     * What was meant.
     *
     * @param typed what stands in the field
     * @param like a price whose unit is meant if none is written, such as {@code 30 per ton}
     * @param currency what the plan calls its money
     * @param said whether the plan's owner called it so; else it takes on what is written here
     * @throws QuantityException if it is in another money than the plan's
     */
    static TypedPrice of(String typed, String like, String currency, boolean said)
            throws QuantityException {
        String text = typed.length() > LONGEST ? "" : typed.strip().replaceAll("\\s+", " ");
        Matcher number = NUMBER.matcher(text);
        if (!number.find()) {
            return new TypedPrice(typed, "");
        }
        String before = text.substring(0, number.start()).strip();
        String rest = text.substring(number.end());
        String after = rest.startsWith(" ") ? rest : " " + rest;
        Matcher per = PER.matcher(after);
        Matcher each = EACH.matcher(after);
        Matcher usual = PER.matcher(like);
        String unit;
        if (per.matches()) {
            after = per.group(1);
            unit = per.group(2).strip();
        } else if (each.matches()) {
            after = each.group(1);
            unit = "piece";
        } else {
            unit = usual.matches() ? usual.group(2).strip() : "";
        }
        after = after.strip();
        boolean two = !before.isEmpty() && !after.isEmpty() && !same(before, after);
        String money = before.isEmpty() ? after : before;
        if (two || unit.isEmpty() || (!money.isEmpty() && !isMoney(money, currency))) {
            return new TypedPrice(typed, "");
        }
        boolean lone = !per.matches() && !each.matches();
        if (lone && !same(money, currency) && isUnit(money)) {
            return new TypedPrice(typed, "");
        }
        String price = number.group() + " per " + unit;
        if (money.isEmpty() || same(money, currency)) {
            return new TypedPrice(price, "");
        }
        if (said) {
            throw new QuantityException(
                    "\"" + money + "\" is not the money of your plan, which is " + currency,
                    "Write the price in "
                            + currency
                            + ", or first change what your money is called; nothing is"
                            + " exchanged here");
        }
        return new TypedPrice(price, money);
    }

    /** Whether two words or signs are of the same money. */
    private static boolean same(String one, String other) {
        String a = plain(one);
        String b = plain(other);
        if (a.equals(b)
                || a.equals(b + "s")
                || b.equals(a + "s")
                || MONIES.stream().anyMatch(each -> each.contains(a) && each.contains(b))) {
            return true;
        }
        return (DOLLAR.contains(a) && isDollar(b)) || (DOLLAR.contains(b) && isDollar(a));
    }

    private static boolean isDollar(String plain) {
        return plain.endsWith("$")
                || plain.endsWith("dollars")
                || plain.endsWith("dollar")
                || OTHER_DOLLARS.contains(plain);
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace(" ", "").replace(".", "");
    }

    /** A word or sign that stands for money: the plan's own, a known one, or a code of three. */
    private static boolean isMoney(String word, String currency) {
        String plain = plain(word);
        return same(word, currency)
                || MONIES.stream().anyMatch(each -> each.contains(plain))
                || isDollar(plain)
                || (word.length() == 1
                        && Character.getType(word.charAt(0)) == Character.CURRENCY_SYMBOL)
                || (word.matches("[A-Z]{3}") && !isUnit(word));
    }

    private static boolean isUnit(String word) {
        try {
            return Parse.price("1 per " + word, "").size() > 0;
        } catch (QuantityException e) {
            return false; // the words that are refused are no unit, which is what is asked
        }
    }
}
