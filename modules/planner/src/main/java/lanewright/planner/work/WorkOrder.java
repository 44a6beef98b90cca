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

    /**
     * Land disturbed from which the federal construction permit asks for a notice, m²: one acre.
     */
    static final double ONE_ACRE = 4046.8564224;

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
        step.amount("Land inside the limits of work: {}", Quantity.land(facts.disturbed()));
        if (facts.onRoad()) {
            step.look(
                    "The road's owner has answered about the entrance: place, width, pipe, sight distance");
        }
        step.look(
                "The erosion permit is settled: ask your county and state, they may ask for less land than the federal one acre (US construction general permit, 2022)");
        step.look("No stream, wetland or protected place is touched without its own permit");
        step.look(
                "The public marking service has marked its lines, every owner has answered, and the marks are fresh");
        step.look(
                "Your own lines past the meter are found and marked by you: the public service does not mark them");
        step.wait(
                "The marking service's notice, two or three working days in most places; your own rule counts");
        step.hurt("Dig by hand within 18 to 24 in of a mark; the distance is set by your state");
        if (facts.buriedPublic() || facts.buriedPrivate()) {
            step.hurt(
                    "This plan crosses buried lines that you named: see the findings before any machine moves");
        }
        steps.add(step.done());
    }

    private void siltControl() {
        Step step =
                new Step("silt-control", "Set silt fence and keep a grass strip below the work");
        step.look(
                "Fence is buried 4 to 6 in, on the contour, its ends turned uphill, and stands only where water comes as a sheet");
        step.look("Nothing stands in a live stream");
        steps.add(step.done());
    }

    private void clear() {
        Step step = new Step("clear", "Clear brush and stumps inside the limits of work");
        step.amount(
                "{} along {}", Quantity.land(facts.disturbed()), Quantity.length(facts.length()));
        step.look(
                "Stumps and roots are out from under the lane, and trees to keep are fenced at their drip line");
        step.hurt(
                "Go straight up or down a slope, never across, with the load low and the belt on under a rollover bar");
        steps.add(step.done());
    }

    private void waterWays() {
        Step step =
                new Step("water-ways", "Rough in outlets, pipes and ditches from the low end up");
        for (double station : facts.waterPlaces()) {
            step.amount("Water must pass under the lane at {}", Quantity.station(station));
        }
        if (facts.pipesThere() > 0) {
            step.amount(
                    "{} pipes are there already: open both ends",
                    Quantity.count(facts.pipesThere()));
        }
        if (facts.ditches() > 0) {
            step.amount("Ditches: {} on both sides together", Quantity.length(facts.ditches()));
        }
        step.look("Each outlet runs free before anything uphill is opened");
        step.look(
                "The size of each pipe is chosen by somebody who may; this plan says where and how long, not how wide");
        step.wait("Dry days in the forecast: an open ditch is at its weakest now");
        step.hurt(
                "Nobody stands in a trench 5 ft deep or more without a box or sloped sides, nor in a shallower one that may cave; a way out within 25 ft from 4 ft on; spoil 2 ft back (29 CFR 1926.651 and 652)");
        steps.add(step.done());
    }

    private void strip() {
        Step step = new Step("strip", "Strip the topsoil and heap it");
        List<HeapPlace> heaps = facts.heaps().heaps();
        step.amount(
                heaps.size() == 1 ? "{} as it lies, in {} heap" : "{} as it lies, in {} heaps",
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
        step.look("No dark soil or roots show on the stripped ground");
        step.look(
                "Heaps lie off the slopes and out of every path of water, with silt fence or straw below them at once; seed them if they will stand over 30 days (Illinois Urban Manual, standard 752)");
        step.wait("Soil that does not smear or stick: wet topsoil is ruined by handling");
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
        Step step = new Step("undercut", "Dig out soil that does not bear and refill in lifts");
        step.amount("{} out, and as much back compacted", Quantity.volume(facts.undercut()));
        step.look("A heel or rod meets firm soil all over the bottom before anything goes back");
        step.wait("A dry week: an undercut that fills with rain is dug twice");
        step.hurt("Soft edges: keep machines as far back as the hole is deep");
        steps.add(step.done());
    }

    private void earth() {
        Step step = new Step("earth", "Cut to subgrade and build fill up in lifts");
        step.amount("Cut {} as it lies", Quantity.volume(facts.cut()));
        if (facts.fill() > NOTHING) {
            double lifts = Math.max(1, Math.ceil(facts.deepestFill() / facts.lift() - 1e-9));
            step.amount(
                    "Fill {} compacted, in lifts of {}, up to {} lifts at the deepest place",
                    Quantity.volume(facts.fill()),
                    Quantity.depth(facts.lift()),
                    Quantity.count(lifts));
            step.look(
                    "Each lift is rolled until the machine leaves no more track, and no topsoil or sod is in it");
        }
        step.wait("Damp soil that holds together in the fist: neither dust nor mud");
        step.hurt(
                "Fill edges are soft: stay a machine's width back and let the next lift reach out");
        steps.add(step.done());
    }

    private void shape() {
        Step step = new Step("shape", "Shape the subgrade and prove it by rolling");
        step.amount("{} of lane", Quantity.length(facts.length()));
        step.look("Water from a bucket runs off to both sides, or to the one the lane sheds to");
        step.look(
                "A loaded truck or full tractor leaves no rut deeper than an inch or so; where it does, dig out and refill");
        step.wait("A day of dry weather after the last rain");
        steps.add(step.done());
    }

    private void fabric() {
        Step step = new Step("fabric", "Lay the fabric");
        step.amount("{} under the stone, before overlaps", Quantity.area(facts.fabric()));
        step.look(
                "The bed is smooth, sheets overlap by at least 1 to 3 ft, more on softer soil (AASHTO M 288, appendix, from memory)");
        step.look(
                "No wheel or track has touched it: the first 6 in of stone go on ahead of the machine");
        steps.add(step.done());
    }

    private void stone(LayerStone layer, boolean last) {
        String role = layer.supply().role();
        Step step = new Step("stone-" + role.replace(' ', '-'), "Spread the " + role + " stone");
        step.amount(
                "{} in {} loads, {} loose to make {} rolled",
                Quantity.mass(layer.orderMass()),
                Quantity.count(layer.loadCount()),
                Quantity.depth(layer.looseDepth()),
                Quantity.depth(layer.thickness()));
        step.look("Each load is tipped where its stake says and spread out within its own stretch");
        step.look(
                "The layer is rolled damp, from the edges to the middle, in lifts that your roller reaches");
        if (!last) {
            step.wait(
                    "Some weeks of traffic and a few good rains before the next layer, if the season allows; then reshape first");
        } else {
            step.wait("Rain or a water truck: the surface binds only when damp");
        }
        step.hurt(
                "Never tip on a cross slope, a soft edge or under a wire; keep people away from the tailgate");
        step.hurt("Stone dust harms lungs: wet it, stay upwind, wear a mask made for it");
        if (facts.wires()) {
            step.hurt(
                    "A raised bed is taller than you think: see the findings for the stretch under the wire");
        }
        steps.add(step.done());
    }

    private void ditches() {
        Step step = new Step("trim-ditches", "Trim the ditches to grade");
        step.amount("{} on both sides together", Quantity.length(facts.ditches()));
        step.look("Water poured in at the top comes out at the outlet and stands nowhere");
        steps.add(step.done());
    }

    private void finish() {
        if (facts.topsoilBack() > NOTHING) {
            Step step = new Step("topsoil-back", "Put topsoil back on the slopes");
            step.amount("{} in place", Quantity.volume(facts.topsoilBack()));
            step.look("Slopes are roughened across the fall first, so that it holds");
            steps.add(step.done());
        }
        Step step = new Step("seed", "Seed and mulch at once");
        step.amount("{} outside the stone", Quantity.land(facts.seeded()));
        step.look("Grass stands thick before the silt fence comes out");
        step.wait("Your seeding season; mulch alone if it has passed");
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

        void look(String words) {
            look.add(Saying.plain(words));
        }

        void wait(String words) {
            wait.add(Saying.plain(words));
        }

        void hurt(String words) {
            hurt.add(Saying.plain(words));
        }

        WorkStep done() {
            return new WorkStep(name, title, amounts, look, wait, hurt);
        }
    }
}
