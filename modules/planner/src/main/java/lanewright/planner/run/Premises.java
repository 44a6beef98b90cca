package lanewright.planner.run;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import lanewright.lane.shape.DitchRule;
import lanewright.lane.shape.LaneDesign;
import lanewright.measure.Assumption;
import lanewright.measure.Assumption.Mark;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.planner.document.EarthPart;
import lanewright.planner.document.Plan;
import lanewright.planner.document.StonePart;
import lanewright.survey.read.Holds;

/**
 * The assumptions of all rooms in one list: what rests on nothing in this plan is left out, what
 * two rooms say is said once, and what the owner's own figures are is said too.
 */
final class Premises {

    /** A default of the plan, and the name under which a room says the same with its effect. */
    private static final List<List<String>> SAME =
            List.of(
                    List.of("low spots less deep are not listed", "Low spots"),
                    List.of("smaller low spots are not listed", "Low spots"),
                    List.of("land that drains through a way of water", "Ways of water"),
                    List.of("how easily the soil washes", "Soil that water runs over"),
                    List.of(
                            "lane's edge above the higher ground beside it",
                            "Lane's edge above the ground"),
                    List.of("packed lift of fill", "compacted lift of fill"));

    private static final List<String> DITCH =
            List.of("depth of the ditch", "flat bottom of the ditch", "slope from the ditch up");

    private Premises() {}

    static List<Assumption> of(List<Assumption> gathered, Plan plan, LaneDesign lane) {
        Set<String> idle = idle(gathered, plan, lane);
        var all = new LinkedHashSet<Assumption>(yours(plan));
        for (Assumption assumption : gathered) {
            if (!idle.contains(assumption.name())) {
                all.add(assumption);
            }
        }
        return new ArrayList<>(all);
    }

    private static Set<String> idle(List<Assumption> gathered, Plan plan, LaneDesign lane) {
        var names = new HashSet<String>();
        gathered.forEach(assumption -> names.add(assumption.name()));
        var idle = new HashSet<String>();
        for (List<String> same : SAME) {
            if (names.contains(same.get(1))) {
                idle.add(same.get(0));
            }
        }
        if (isWithoutDitch(lane, false)) {
            DITCH.forEach(name -> idle.add(name + ", left"));
        }
        if (isWithoutDitch(lane, true)) {
            DITCH.forEach(name -> idle.add(name + ", right"));
        }
        if (Double.isNaN(plan.ends().road().crossSlope())) {
            idle.add("cross slope going over into the road's");
        }
        if (Double.isNaN(plan.ends().far().crossSlope())) {
            idle.add("cross slope going over at the far end");
        }
        boolean grid = plan.survey().files().stream().anyMatch(file -> file.holds() == Holds.GRID);
        if (!grid) {
            idle.add("reach of elevation grids beside the lane");
        }
        return idle;
    }

    private static boolean isWithoutDitch(LaneDesign lane, boolean right) {
        return lane.typical().stream()
                .map(stretch -> right ? stretch.value().right() : stretch.value().left())
                .allMatch(side -> side.ditch().rule() == DitchRule.NEVER);
    }

    /** What the owner's plan says and everything leans on. */
    private static List<Assumption> yours(Plan plan) {
        var all = new ArrayList<Assumption>();
        all.add(
                yours(
                        "one truckload of stone or earth",
                        Saying.of("{}", Quantity.mass(plan.stone().payload()))));
        all.add(
                yours(
                        "depth of topsoil",
                        plan.earth().topsoil() == EarthPart.Depth.FROM_PROBES
                                ? Saying.plain(
                                        "from the probe holes; the nearer a hole, the more it counts")
                                : Saying.of(
                                        "{} everywhere",
                                        Quantity.depth(plan.earth().topsoilDepth()))));
        for (StonePart.Material material : plan.stone().materials()) {
            var price = material.price();
            if (price != null) {
                all.add(
                        yours(
                                "price of " + material.role() + " stone",
                                Saying.of(
                                        "{}"
                                                + (plan.afterMoney() + " per " + price.unit())
                                                        .replace("{}", "{ }"),
                                        Quantity.money(price.amount()))));
            }
        }
        return all;
    }

    private static Assumption yours(String name, Saying value) {
        return new Assumption(name, value, Mark.YOURS, "your plan");
    }
}
