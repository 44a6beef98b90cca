package lanewright.desktop.ask;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lanewright.drainage.culvert.Inlet;
import lanewright.measure.Quantity;
import lanewright.measure.Words;
import lanewright.measure.Written;
import lanewright.planner.document.PipeWorkPart;
import lanewright.planner.document.Plan;
import lanewright.planner.document.WaterPart;
import lanewright.planner.document.WaterPart.PipeState;

/** What a pipe that is to be laid is paid for by: asked only where the plan has one. */
final class PipePrices {

    /** A price holds for a pipe as wide as this part of its width. */
    private static final double NEAR = 0.03;

    private PipePrices() {}

    static List<Control> of(Plan plan) {
        List<WaterPart.Pipe> laid =
                plan.water().pipes().stream()
                        .filter(pipe -> pipe.state() == PipeState.TO_LAY)
                        .toList();
        if (laid.isEmpty()) {
            return List.of();
        }
        List<Control> prices = new ArrayList<>();
        Set<Double> widths = new LinkedHashSet<>();
        laid.forEach(pipe -> widths.add(pipe.diameter()));
        widths.forEach(width -> prices.add(barrel(width, plan)));
        String work = "water.pipeWork.";
        if (plan.water().pipeWork().bedding() > 0) {
            prices.add(price("Price of stone under pipes", work + "beddingPrice"));
        }
        prices.add(price("Price of riprap", work + "riprapPrice"));
        prices.add(price("Price of fabric under it", work + "fabricPrice"));
        prices.add(price("Price of digging pipes in", work + "trenchPrice"));
        if (laid.stream().anyMatch(pipe -> pipe.ends().known() == Inlet.End.HEADWALL)) {
            prices.add(price("Price of a headwall", work + "headwallPrice"));
        }
        return prices;
    }

    private static Control price(String label, String path) {
        return new Control(label, path, List.of(), "", path, Map.of());
    }

    /** The price of pipe of a width, in the row that the plan has for it or in the next one. */
    private static Control barrel(double width, Plan plan) {
        List<PipeWorkPart.PipePrice> rows = plan.water().pipeWork().prices();
        int at = 0;
        while (at < rows.size()
                && (rows.get(at).rise() != null
                        || Math.abs(rows.get(at).size() / width - 1) >= NEAR)) {
            at++;
        }
        String row = "water.pipeWork.prices[" + at + "]";
        return new Control(
                "Price of pipe, " + Words.of(Quantity.depth(width), plan.units()) + " wide",
                row + ".price",
                List.of(),
                "",
                "price-of-pipe-" + Math.round(width * 1000),
                Map.of(row + ".size", Written.exactly(Quantity.depth(width), plan.units())));
    }
}
