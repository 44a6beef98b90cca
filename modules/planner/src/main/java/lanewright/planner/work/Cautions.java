package lanewright.planner.work;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

/** The cautions that apply to a plan. */
public final class Cautions {

    private static final String PRACTICE = "common practice, no source";

    private Cautions() {}

    /**
     * Cautions for the work of a plan.
     *
     * @param facts the figures of the plan
     * @param dammed greatest depth to which the lane would hold water back, m, zero if it holds
     *     none
     */
    public static List<Caution> of(WorkFacts facts, double dammed) {
        List<Caution> cautions = new ArrayList<>();
        add(
                cautions,
                "local-codes",
                "This plan is arithmetic on your survey. Your county, your road's owner and licensed engineers decide what may be built; where they differ from this plan, they are right",
                PRACTICE);
        land(cautions, facts);
        if (facts.onRoad()) {
            add(
                    cautions,
                    "public-road",
                    "An entrance on a public road needs its owner's permit before work starts: place, width, pipe and sight distance are his to set",
                    PRACTICE);
        }
        if (dammed > 0) {
            cautions.add(
                    new Caution(
                            "lane-as-dam",
                            Saying.of(
                                    "Without a way through, the lane would hold water {} deep. A lane that holds water is a dam: it can fail at once and flood what lies below; states set their own rules, often for small ones too",
                                    Quantity.height(dammed)),
                            "33 USC 467(3) and state dam laws"));
        }
        add(
                cautions,
                "buried-lines",
                "Call the public marking service before digging; it does not mark lines past your meter, such as your own water, power, gas or drain lines",
                "US 811 programme; your own country's service elsewhere");
        add(
                cautions,
                "overhead-wires",
                "Keep every machine and raised bed at least 10 ft (3 m) from wires of up to 50 kV, more from higher ones",
                "29 CFR 1926.1408, table A, from memory");
        add(
                cautions,
                "rollover",
                "Work straight up and down slopes, loads low, belt on under a rollover bar; most overturns go sideways and take under two seconds",
                "Canadian Centre for Occupational Health and Safety, tractor rollover page");
        add(
                cautions,
                "trench",
                "No one in a trench 5 ft (1.5 m) deep or more without protection, nor in a shallower one that may cave; a way out within 25 ft; spoil 2 ft back",
                "29 CFR 1926.650 to 652");
        if (!facts.stone().isEmpty()) {
            add(
                    cautions,
                    "tipping",
                    "A truck with its bed up falls over on a cross slope or a soft edge: tip on firm, level ground and keep people away",
                    PRACTICE);
            add(
                    cautions,
                    "stone-dust",
                    "Dust of crushed stone harms lungs for good: keep it damp, stay upwind, wear a fitting mask",
                    PRACTICE);
        }
        return List.copyOf(cautions);
    }

    private static void land(List<Caution> cautions, WorkFacts facts) {
        boolean large = facts.disturbed() >= WorkOrder.ONE_ACRE;
        cautions.add(
                new Caution(
                        "disturbed-land",
                        Saying.of(
                                large
                                        ? "The work disturbs {}, an acre or more: the federal construction permit asks for a notice first; ask your county and state about erosion permits"
                                        : "The work disturbs {}. Under an acre the federal construction permit usually does not apply, but states and counties ask for less: ask about erosion permits",
                                Quantity.land(facts.disturbed())),
                        "US EPA construction general permit, 2022"));
    }

    private static void add(List<Caution> cautions, String name, String says, String source) {
        cautions.add(new Caution(name, Saying.plain(says), source));
    }
}
