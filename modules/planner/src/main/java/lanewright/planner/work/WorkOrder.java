package lanewright.planner.work;

import java.util.ArrayList;
import java.util.List;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.stone.LayerStone;

/**
 * The order of work. Steps are there because this plan has something for them to do: a plan without
 * fill has no fill step, one without fabric no fabric step.
 *
 * <p>The order itself, water first and from the low end up, stone last and with traffic and rain
 * between its layers, is common practice, no source. Figures with a publication name it.
 */
public final class WorkOrder {

    /** Volumes below this are rounding, m³: a bucket. */
    private static final double NOTHING = 0.05;

    private final WorkFacts facts;
    private final List<WorkStep> steps = new ArrayList<>();

    private WorkOrder(WorkFacts facts) {
        this.facts = facts;
    }

    /** The steps for a plan, first to last. */
    public static List<WorkStep> of(WorkFacts facts) {
        return new WorkOrder(facts).write();
    }

    private List<WorkStep> write() {
        ask();
        siltControl();
        clear();
        waterWays();
        if (facts.strip() > NOTHING) {
            strip();
        }
        if (facts.undercut() > NOTHING) {
            undercut();
        }
        if (facts.cut() > NOTHING || facts.fill() > NOTHING) {
            earth();
        }
        shape();
        if (facts.fabric() > 0) {
            fabric();
        }
        for (int i = 0; i < facts.stone().size(); i++) {
            if (facts.stone().get(i).loadCount() > 0) {
                stone(facts.stone().get(i), i == facts.stone().size() - 1);
            }
        }
        if (facts.ditches() > 0) {
            ditches();
        }
        finish();
        return List.copyOf(steps);
    }

    private void ask() {
        Step step = new Step("ask-and-mark", "Ask for permits and have buried lines marked");
        Saying land = facts.land();
        step.amount(new Saying("Land that is disturbed: " + land.pattern(), land.quantities()));
        if (facts.onRoad()) {
            step.look(
                    "the road's owner has allowed the entrance: its place, width, pipe and how far drivers can see");
        }
        step.look("the county and the state have said whether they want an erosion permit");
        step.look("no stream, wetland or protected place is touched without its own permit");
        step.look(
                "the public marking service has marked its lines, every owner has answered, and the marks are fresh");
        step.look(
                "your own lines past the meter are found and marked by you: the public service does not mark them");
        step.wait(
                "the marking service's notice, two or three working days in most places; your own rule counts");
        step.hurt(
                "a struck line. Dig by hand near every mark; your law sets how near, often {~} to {~}",
                Quantity.depth(18 * 0.0254),
                Quantity.depth(24 * 0.0254));
        if (facts.buriedPublic() || facts.buriedPrivate()) {
            step.hurt(
                    "the buried lines that you named lie in this work. See the findings before any machine moves");
        }
        steps.add(step.done());
    }

    private void siltControl() {
        Step step =
                new Step("silt-control", "Set silt fence and keep a grass strip below the work");
        step.amount(
                "Along the low side of the work, at most {}; none where nothing below could be silted",
                Quantity.length(facts.length()));
        step.look(
                "the fence is buried {~} to {~}, runs level along the slope with its ends turned uphill, and stands only where water comes as a sheet and not in a channel",
                Quantity.depth(0.1),
                Quantity.depth(0.15));
        step.look("nothing stands in a stream that runs");
        steps.add(step.done());
    }

    private void clear() {
        Step step = new Step("clear", "Clear brush and stumps inside the limits of work");
        step.amount(
                "{} along {}", Quantity.land(facts.disturbed()), Quantity.length(facts.length()));
        step.look(
                "stumps and roots are out from under the lane, and trees to keep are fenced as far out as their branches reach");
        step.hurt(
                "rolling over. Keep loads low and the belt on under a rollover bar; on a side slope work straight up and down. Where the lane runs along a hillside, first cut a level bench from the uphill side and work from it, no steeper across than your machine's maker allows");
        steps.add(step.done());
    }

    private void waterWays() {
        Step step =
                new Step("water-ways", "Rough in outlets, pipes and ditches from the low end up");
        facts.waterWork().forEach(step::amount);
        facts.pipesToLay().forEach(step::amount);
        if (facts.pipesThere() > 0) {
            step.amount(
                    "{} "
                            + Saying.number(facts.pipesThere(), "pipe is", "pipes are")
                            + " there already: open both ends",
                    Quantity.count(facts.pipesThere()));
        }
        if (facts.ditches() > 0) {
            ditchAmount(step);
        }
        if (facts.strip() > NOTHING) {
            step.look(
                    "the topsoil over each ditch line and trench came off first and is kept apart with the rest of it, never mixed with what is dug below");
        }
        step.look("each outlet runs free before anything uphill is opened");
        step.look(
                "the width of each pipe was chosen by a person who is licensed or named to do so where you build; this plan says where and how long");
        step.wait("dry days in the forecast: an open ditch is at its weakest now");
        step.hurt(
                "a trench that caves in kills. Nobody stands in one {~} deep or more without a box or sloped sides, nor in a shallower one that may cave; from {~} deep on there is a way out within {~}; what was dug lies {~} back from the edge (29 CFR 1926.651 and 652)",
                Quantity.length(5 * 0.3048),
                Quantity.length(4 * 0.3048),
                Quantity.length(25 * 0.3048),
                Quantity.length(2 * 0.3048));
        steps.add(step.done());
    }

    private void strip() {
        Step step = new Step("strip", "Strip the topsoil and heap it");
        List<HeapPlace> heaps = facts.heaps().heaps();
        step.amount(
                (facts.stripAtLeast() ? "At least {}" : "{}")
                        + (heaps.size() == 1
                                ? " as it lies, in {} heap"
                                : " as it lies, in {} heaps")
                        + "; how deep and how wide at each place is in the table of depths in the volumes sheet",
                Quantity.volume(facts.strip()),
                Quantity.count(heaps.size()));
        for (HeapPlace heap : heaps) {
            step.amount(heapAt(heap));
        }
        if (facts.heaps().unplaced() > NOTHING) {
            step.amount(
                    "{} loose without a place: see the findings before stripping there",
                    Quantity.volume(facts.heaps().unplaced()));
        }
        step.look("no dark soil or roots show on the stripped ground");
        step.look(
                "heaps lie off the slopes and out of every path of water, with silt fence or straw below them at once, and are seeded if they will stand over 30 days (Illinois Urban Manual, standard 752)");
        step.wait("soil that does not smear or stick: wet topsoil is ruined by handling");
        steps.add(step.done());
    }

    /** One heap: how much, loose, where, and from which stretch. */
    private static Saying heapAt(HeapPlace heap) {
        Saying place = heap.place();
        List<Quantity> quantities = new ArrayList<>();
        quantities.add(Quantity.volume(heap.form().volume()));
        quantities.addAll(place.quantities());
        quantities.add(Quantity.station(heap.from()));
        quantities.add(Quantity.station(heap.to()));
        return new Saying(
                "Heap " + heap.number() + " of {} loose, " + place.pattern() + ", from {} to {}",
                quantities);
    }

    private void undercut() {
        Step step = new Step("undercut", "Dig out soft soil under the lane and refill in lifts");
        step.amount(
                "{} out as it lies, and its room filled again, packed; how deep at each place is in the table of depths in the volumes sheet",
                Quantity.volume(facts.undercut()));
        step.look("a heel or rod meets firm soil all over the bottom before anything goes back");
        step.wait("a dry week: a hole that fills with rain is dug twice");
        step.hurt("soft edges that break off. Keep machines as far back as the hole is deep");
        steps.add(step.done());
    }

    private void earth() {
        Step step = new Step("earth", "Cut to subgrade and build fill up in lifts");
        step.amount("Cut {} as it lies", Quantity.volume(facts.cut()));
        if (facts.fill() > NOTHING) {
            double lifts = Math.max(1, Math.ceil(facts.deepestFill() / facts.lift() - 1e-9));
            step.amount(
                    "Fill {} packed, in lifts of {}, up to {} lifts at the deepest place",
                    Quantity.volume(facts.fill()),
                    Quantity.depth(facts.lift()),
                    Quantity.count(lifts));
            step.look(
                    "each lift is rolled until the machine leaves no more track, and no topsoil or sod is in it");
        }
        step.wait("damp soil that holds together in the fist: neither dust nor mud");
        step.hurt(
                "the soft edge of a fill. Stay a machine's width back; build each lift a little wider than the slope and trim it afterwards");
        steps.add(step.done());
    }

    private void shape() {
        Step step = new Step("shape", "Shape the subgrade and prove it by rolling");
        step.amount("{} of lane", Quantity.length(facts.length()));
        step.look(
                "water from a bucket runs off the way that the sections show, and stands nowhere");
        step.look(
                "a loaded truck or full tractor leaves no rut deeper than about {~}; where it does, dig out and refill",
                Quantity.depth(0.025));
        step.wait("a day of dry weather after the last rain");
        steps.add(step.done());
    }

    private void fabric() {
        Step step = new Step("fabric", "Lay the fabric");
        step.amount("{} under the stone, overlaps not counted", Quantity.area(facts.fabric()));
        step.look(
                "the bed is smooth, and sheets overlap by {~} on firm soil and up to {~} on soft (AASHTO M 288, appendix, from memory)",
                Quantity.length(0.3048),
                Quantity.length(0.9144));
        step.look(
                "no wheel or track has touched it: the first {~} of stone go on ahead of the machine",
                Quantity.depth(0.15));
        steps.add(step.done());
    }

    private void stone(LayerStone layer, boolean last) {
        String role = layer.supply().role();
        Step step = new Step("stone-" + role.replace(' ', '-'), "Spread the " + role + " stone");
        step.amount(
                "{} in {} loads of up to {}, spread {} loose to make {} rolled",
                Quantity.mass(layer.needed()),
                Quantity.count(layer.loadCount()),
                Quantity.mass(layer.supply().payload()),
                Quantity.depth(layer.looseDepth()),
                Quantity.depth(layer.thickness()));
        if (layer.loadsInHand() > 0) {
            step.amount(
                    "Loads {} to {} are the stone in hand; {} are to order",
                    Quantity.count(1),
                    Quantity.count(layer.loadsInHand()),
                    Quantity.count(layer.loadsToOrder()));
        }
        step.look(
                "each load is spread from the load mark where it starts to the one where it stops, as the stakes sheet lists them");
        step.look(
                "the layer is rolled damp, from the low edge up, in lifts no thicker than your roller packs");
        if (!last) {
            step.wait(
                    "some weeks of traffic and a few good rains before the next layer, if the season allows; so book its loads for later, and reshape first");
        } else {
            step.wait("rain or a water truck: the surface binds only when damp");
        }
        step.hurt(
                "a truck that falls over with its bed up. Tip with the truck standing level across and on firm ground, on the middle of the lane or at its level end; where neither is to be had, tip in a heap there and carry the stone in with the loader. Keep people away from the tailgate");
        step.hurt("stone dust in the lungs. Wet it, stay upwind, wear a mask made for it");
        for (Saying wire : facts.wires()) {
            step.hurt(wire.pattern(), wire.quantities().toArray(Quantity[]::new));
        }
        steps.add(step.done());
    }

    private void ditches() {
        Step step = new Step("trim-ditches", "Trim the ditches to grade");
        ditchAmount(step);
        step.look(
                facts.waterWork().isEmpty()
                        ? "water poured in at the top comes out at the outlet and stands nowhere"
                        : "what is to be done at each wet place is done, and water poured in at the top comes out at the outlet and stands nowhere");
        steps.add(step.done());
    }

    private void ditchAmount(Step step) {
        if (facts.ditchesLeft() > 0) {
            step.amount("Left ditch: {}", Quantity.length(facts.ditchesLeft()));
        }
        if (facts.ditchesRight() > 0) {
            step.amount("Right ditch: {}", Quantity.length(facts.ditchesRight()));
        }
    }

    private void finish() {
        if (facts.topsoilBack() > NOTHING) {
            Step step = new Step("topsoil-back", "Put topsoil back on the slopes");
            step.amount("{} in place", Quantity.volume(facts.topsoilBack()));
            step.look("slopes are roughened across the fall first, so that it holds");
            steps.add(step.done());
        }
        Step step = new Step("seed", "Seed and mulch at once");
        step.amount("{} outside the stone", Quantity.land(facts.seeded()));
        step.look("grass stands thick before the silt fence comes out");
        step.wait("your seeding season; mulch alone if it has passed");
        steps.add(step.done());
    }

    /** A step while it is being written. */
    private static final class Step {
        private final String name;
        private final String title;
        private final List<Saying> amounts = new ArrayList<>();
        private final List<Saying> look = new ArrayList<>();
        private final List<Saying> wait = new ArrayList<>();
        private final List<Saying> hurt = new ArrayList<>();

        Step(String name, String title) {
            this.name = name;
            this.title = title;
        }

        void amount(String pattern, Quantity... quantities) {
            amounts.add(Saying.of(pattern, quantities));
        }

        void amount(Saying saying) {
            amounts.add(saying);
        }

        void look(String pattern, Quantity... quantities) {
            look.add(Saying.of(pattern, quantities));
        }

        void wait(String words) {
            wait.add(Saying.plain(words));
        }

        void hurt(String pattern, Quantity... quantities) {
            hurt.add(Saying.of(pattern, quantities));
        }

        WorkStep done() {
            return new WorkStep(name, title, amounts, look, wait, hurt);
        }
    }
}
