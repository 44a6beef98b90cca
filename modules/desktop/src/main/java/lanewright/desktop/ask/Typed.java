package lanewright.desktop.ask;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Written;
import lanewright.planner.document.Plan;

/** What an owner means who writes less than the plan needs, where it is plain. */
final class Typed {

    private static final String NUMBER = "[+-]?\\d[\\d,']*(?:\\.\\d+)?|[+-]?\\.\\d+";
    private static final Pattern BARE = Pattern.compile("\\s*(" + NUMBER + ")\\s*");

    /** Such as {@code 12 %} or {@code 3:1}, but no station and no feet with inches. */
    private static final Pattern WITH_UNIT =
            Pattern.compile("(?:" + NUMBER + ")(\\s*(?::1|[^\\d:+]+))");

    private static final Pattern LOADS =
            Pattern.compile("\\s*(\\d{1,4}(?:\\.\\d{1,3})?)\\s*(?:truck\\s*)?loads?\\s*");

    private Typed() {}

    /**
     * What may be written into a field that is empty, such as {@code 30 per ton}; empty where the
     * field's own words say it. It is shown in the field, and a number alone has its unit.
     *
     * @param path which value of the plan
     */
    static String example(String path, Plan plan) {
        boolean us = plan.units() == UnitSystem.US;
        if (path.startsWith("water.pipeWork.prices")) {
            return us ? "20 per ft" : "70 per m";
        }
        return switch (path.substring(path.lastIndexOf('.') + 1)) {
            case "price", "beddingPrice" -> us ? "30 per ton" : "30 per t";
            case "riprapPrice" -> us ? "40 per ton" : "40 per t";
            case "fabricPrice" -> us ? "2 per yd2" : "2 per m2";
            case "trenchPrice" -> "95 per h";
            case "headwallPrice" -> "450 per piece";
            case "inHand" -> us ? "200 tons" : "200 t";
            default -> "";
        };
    }

    /** A number alone has this unit, if it is not empty; anything else stays as it was typed. */
    static String inUnit(String typed, String unit) {
        Matcher bare = BARE.matcher(typed);
        return bare.matches() && !unit.isEmpty() ? bare.group(1) + " " + unit : typed;
    }

    /**
     * A number alone has the unit that the field shows; loads in hand are as many tons as trucks of
     * the plan bring. Anything else stays as it was typed.
     *
     * @param typed what stands in the field
     * @param shown what the field showed before, such as {@code 12 %}; empty if only its example
     * @param path which value of the plan
     */
    static String meant(String typed, String shown, String path, Plan plan) {
        Matcher bare = BARE.matcher(typed);
        Matcher unit = WITH_UNIT.matcher(shown.isEmpty() ? example(path, plan) : shown);
        if (bare.matches() && unit.matches()) {
            return bare.group(1) + unit.group(1);
        }
        Matcher loads = LOADS.matcher(typed);
        if (path.endsWith(".inHand") && loads.matches()) {
            double mass = Double.parseDouble(loads.group(1)) * plan.stone().payload();
            return Written.exactly(Quantity.mass(mass), plan.units());
        }
        return typed;
    }
}
