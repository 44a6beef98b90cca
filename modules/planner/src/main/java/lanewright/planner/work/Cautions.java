package lanewright.planner.work;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;

/** The cautions that apply to a plan. */
public final class Cautions {

    private static final String PRACTICE = "common practice";

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
                "This plan is arithmetic on your survey. Your county, your road's owner and licensed engineers decide what may be built; where they differ from this plan, they are right. The laws named here are those of the United States: elsewhere your own country's count instead",
                PRACTICE);
        land(cautions, facts);
        if (facts.onRoad()) {
            add(
                    cautions,
                    "public-road",
                    "An entrance on a public road needs its owner's permit before work starts: the owner sets its place, width and pipe, and how far drivers must be able to see",
                    PRACTICE);
        }
        if (dammed > 0) {
            cautions.add(
                    new Caution(
                            "lane-as-dam",
                            Saying.of(
                                    "Without a way through, the lane would hold water {} deep. A lane that holds water is a dam: it can fail suddenly and flood what lies below; states set their own rules, often for small ones too",
                                    Quantity.depth(dammed)),
                            "33 USC 467(3) and state dam laws"));
        }
        if (!facts.waterWork().isEmpty() || !facts.pipesToLay().isEmpty()) {
            add(
                    cautions,
                    "streams-and-wetlands",
                    "Pipes, fords and fill in a stream, a wetland or below its high-water line need"
                            + " a permit unless an exemption fits, and a drive to a house is"
                            + " seldom exempt: ask the district of the Corps of Engineers, your"
                            + " state and your county before anything is dug there",
                    "Clean Water Act, section 404; your state's own rules");
            add(
                    cautions,
                    "neighbours-below",
                    "A pipe, a ditch or a ford brings water to one place and sooner. Send no more"
                            + " of it to a neighbour or a road than came there before, and speak"
                            + " with who lives below before you build: laws on drainage differ from"
                            + " state to state",
                    PRACTICE);
        }
        add(
                cautions,
                "buried-lines",
                "Have the public marking service mark its lines before digging; it does not mark lines past your meter, such as your own water, power, gas or drain lines",
                "811 in the United States; your own country's service elsewhere");
        cautions.add(
                new Caution(
                        "overhead-wires",
                        Saying.of(
                                "Keep every machine and every bed, raised or not, at least {~} from wires of up to 50 kV, and farther from higher ones; ask the wire's owner which yours is. Where a machine must pass below a wire, have somebody watch, or have it switched off",
                                Quantity.length(10 * 0.3048)),
                        "29 CFR 1926.1408, table A, from memory: ask before you rely on it"));
        add(
                cautions,
                "rollover",
                "Most overturns go sideways and take under two seconds: keep loads low and the belt on under a rollover bar. On a side slope work straight up and down, or from a level bench that is cut first",
                "Canadian Centre for Occupational Health and Safety, tractor rollover page");
        cautions.add(
                new Caution(
                        "trench",
                        Saying.of(
                                "Nobody goes into a trench {~} deep or more without a box or sloped sides, nor into a shallower one that may cave. From {~} deep on there is a way out within {~}, and what was dug lies {~} back from the edge",
                                Quantity.length(5 * 0.3048),
                                Quantity.length(4 * 0.3048),
                                Quantity.length(25 * 0.3048),
                                Quantity.length(2 * 0.3048)),
                        "29 CFR 1926.650 to 652"));
        if (!facts.stone().isEmpty()) {
            add(
                    cautions,
                    "tipping",
                    "A truck with its bed up falls over on a cross slope or a soft edge: tip with the truck level across, on firm ground and away from the edge, and keep people away. Where the lane falls to one side all along, tip at its level end and carry the stone in with the loader",
                    PRACTICE);
            add(
                    cautions,
                    "stone-dust",
                    "Dust of crushed stone harms lungs for good: keep it damp, stay upwind, wear a mask that fits",
                    PRACTICE);
        }
        return List.copyOf(cautions);
    }

    private static void land(List<Caution> cautions, WorkFacts facts) {
        Saying land = facts.land();
        cautions.add(
                new Caution(
                        "disturbed-land",
                        new Saying(
                                "The work disturbs "
                                        + land.pattern()
                                        + (facts.isAnAcre()
                                                ? ". From one acre on the federal construction permit asks for a notice before work begins; county and state may ask for more"
                                                : ". Under one acre the federal construction permit usually does not apply, but many counties and states want a permit for smaller jobs too: ask"),
                                land.quantities()),
                        "US EPA construction general permit, 2022"));
    }

    private static void add(List<Caution> cautions, String name, String says, String source) {
        cautions.add(new Caution(name, Saying.plain(says), source));
    }
}
