package lanewright.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import lanewright.lane.shape.Layer;
import lanewright.measure.Kind;
import lanewright.measure.Parse;
import lanewright.measure.Price;
import lanewright.measure.Quantity;
import lanewright.measure.QuantityException;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.stone.LayerStone;
import lanewright.stone.StoneAnswer;
import lanewright.stone.StoneReport;
import lanewright.stone.StoneTables;
import lanewright.stone.StoneTables.Figure;
import lanewright.stone.Supply;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Answers how much stone a lane takes, without any survey. */
@Command(
        name = "stone",
        mixinStandardHelpOptions = true,
        description = "How many tons and loads a lane of even width takes, without any survey.",
        footer = {
            "",
            "Example:",
            "  lanewright stone --length \"600 ft\" --width \"12 ft\" --layer \"surface 3 in\" \\",
            "      --layer \"base 6 in\" --payload \"20 tons\" --price \"base 24 per ton\""
        })
final class StoneCommand implements Callable<Integer> {

    private static final String YOURS = "your own figure";

    @Spec private @Nullable CommandSpec spec;

    @Option(
            names = "--length",
            required = true,
            paramLabel = "LENGTH",
            description = "Length of the lane, such as \"600 ft\" or \"180 m\".")
    private String length = "";

    @Option(
            names = "--width",
            required = true,
            paramLabel = "WIDTH",
            description = "Travelled width at the top of the stone.")
    private String width = "";

    @Option(
            names = "--layer",
            required = true,
            paramLabel = "\"ROLE THICKNESS\"",
            description =
                    "A layer and its rolled thickness, from the top down; give it again for each layer.")
    private List<String> layers = List.of();

    @Option(
            names = "--edge",
            defaultValue = "1.5:1",
            paramLabel = "SLOPE",
            description =
                    "How the layers' edges slope out, run to rise, or the word box for upright sides. Without it: ${DEFAULT-VALUE}.")
    private String edge = "1.5:1";

    @Option(
            names = "--payload",
            required = true,
            paramLabel = "MASS",
            description =
                    "What one truck brings you, such as \"20 tons\" or \"18 t\": ask your haulier.")
    private String payload = "";

    @Option(
            names = "--density",
            paramLabel = "DENSITY",
            description =
                    "Weight of the stone rolled in place, such as \"137 lb/ft3\"; without it a published one is used and named.")
    private @Nullable String density;

    @Option(
            names = "--loss",
            defaultValue = "0 %",
            paramLabel = "SHARE",
            description =
                    "Part of the stone that never becomes lane, such as \"8 %%\". Without it: none.")
    private String loss = "0 %";

    @Option(
            names = "--price",
            paramLabel = "\"ROLE PRICE\"",
            description =
                    "Your own delivered price, such as \"base 24 per ton\"; without it no money is shown.")
    private List<String> prices = List.of();

    @Mixin private UnitsOption units = new UnitsOption();

    @Override
    public Integer call() throws CommandFailure {
        try {
            answer(out());
        } catch (QuantityException e) {
            throw new CommandFailure(Exit.INPUT, e.what() + ". " + e.remedy());
        } catch (IllegalArgumentException e) {
            throw new CommandFailure(Exit.INPUT, String.valueOf(e.getMessage()));
        }
        return Exit.DONE.code();
    }

    private PrintWriter out() {
        if (spec == null) {
            throw new IllegalStateException("the command runs only from a command line");
        }
        return spec.commandLine().getOut();
    }

    private void answer(PrintWriter out) throws QuantityException, CommandFailure {
        UnitSystem shown = units.system();
        double slope = edge.equals("box") ? 0 : Parse.sideSlope(edge);
        Map<String, Price> priced = prices();
        List<Layer> shape = new ArrayList<>();
        List<Supply> supplies = new ArrayList<>();
        for (String text : layers) {
            String[] parts = split(text, "--layer", "surface 3 in");
            shape.add(new Layer(parts[0], Parse.depth(parts[1]), slope));
            supplies.add(supply(parts[0], priced));
        }
        for (String role : priced.keySet()) {
            if (shape.stream().noneMatch(layer -> layer.role().equals(role))) {
                throw new CommandFailure(
                        Exit.INPUT,
                        "--price names "
                                + role
                                + ", which is no layer. Use the role of a --layer.");
            }
        }
        StoneReport report =
                StoneAnswer.of(Parse.length(length), Parse.length(width), shape, supplies);
        print(out, report, shown);
    }

    private Map<String, Price> prices() throws QuantityException, CommandFailure {
        Map<String, Price> priced = new LinkedHashMap<>();
        for (String text : prices) {
            String[] parts = split(text, "--price", "base 24 per ton");
            Price price = Parse.price(parts[1], "");
            if (price.kind() != Kind.MASS) {
                throw new CommandFailure(
                        Exit.INPUT,
                        "--price \"" + text + "\" is not by weight. Write it per ton or per t.");
            }
            priced.put(parts[0], price);
        }
        return priced;
    }

    /** A role of one word or more, and the quantity that begins with the first digit. */
    private static String[] split(String text, String option, String example)
            throws CommandFailure {
        int digit = 0;
        while (digit < text.length() && !Character.isDigit(text.charAt(digit))) {
            digit++;
        }
        String role = text.substring(0, digit).strip();
        if (role.isEmpty() || digit == text.length()) {
            throw new CommandFailure(
                    Exit.INPUT,
                    option
                            + " \""
                            + text
                            + "\" needs a role and a quantity. Write it like \""
                            + example
                            + "\".");
        }
        return new String[] {role, text.substring(digit)};
    }

    private Supply supply(String role, Map<String, Price> priced) throws QuantityException {
        Figure weight = StoneTables.density(role, StoneTables.weighed().get(0));
        if (density != null) {
            double own = Parse.density(density);
            weight =
                    StoneTables.yours(
                            "in-place density of " + role + " stone",
                            own,
                            Saying.of("{}, " + YOURS, Quantity.density(own)));
        }
        Figure loose = StoneTables.loose(role, StoneTables.spread().get(0));
        Price price = priced.get(role);
        return new Supply(
                role,
                weight.value(),
                weight.from(),
                loose.value(),
                loose.from(),
                Parse.share(loss),
                Parse.mass(payload),
                price == null ? Double.NaN : price.of(1),
                Double.NaN,
                null);
    }

    private static void print(PrintWriter out, StoneReport report, UnitSystem shown) {
        out.println(
                "Order "
                        + Words.of(Quantity.mass(report.toOrder()), shown)
                        + " in "
                        + Words.of(Quantity.count(report.loadsToOrder()), shown)
                        + Saying.number(report.loadsToOrder(), " load (", " loads (")
                        + Words.of(Quantity.mass(report.needed()), shown)
                        + " needed)"
                        + (Double.isNaN(report.cost())
                                ? ""
                                : ", "
                                        + Words.of(Quantity.money(report.cost()), shown)
                                        + " delivered"));
        out.println();
        out.println("In the order of laying:");
        for (LayerStone layer : report.layers()) {
            out.println(
                    "  "
                            + layer.supply().role()
                            + ": "
                            + Words.of(Quantity.mass(layer.toOrder()), shown)
                            + " in "
                            + Words.of(Quantity.count(layer.loadsToOrder()), shown)
                            + Saying.number(layer.loadsToOrder(), " load (", " loads (")
                            + Words.of(Quantity.mass(layer.needed()), shown)
                            + " needed), "
                            + Words.of(Quantity.volume(layer.volume()), shown)
                            + " rolled; spread "
                            + Words.of(Quantity.depth(layer.looseDepth()), shown)
                            + " loose to get "
                            + Words.of(Quantity.depth(layer.thickness()), shown)
                            + (layer.loads().isEmpty()
                                    ? ""
                                    : "; a load covers "
                                            + Words.of(
                                                    Quantity.length(layer.loads().get(0).covers()),
                                                    shown))
                            + (Double.isNaN(layer.cost())
                                    ? ""
                                    : "; "
                                            + Words.of(Quantity.money(layer.cost()), shown)
                                            + " delivered"));
        }
        out.println();
        out.println("This rests on:");
        report.assumptions()
                .forEach(
                        a ->
                                out.println(
                                        "  "
                                                + a.name()
                                                + ": "
                                                + a.value().in(shown)
                                                + " ("
                                                + a.source()
                                                + ")"));
    }
}
