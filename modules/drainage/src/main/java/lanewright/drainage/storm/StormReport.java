package lanewright.drainage.storm;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanewright.drainage.Crossing;
import lanewright.drainage.DitchWater;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.Relief;
import lanewright.drainage.channel.Imperial;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.runoff.Concentration;
import lanewright.drainage.runoff.Peak;
import lanewright.measure.Assumption;

/**
 * One storm at every crossing.
 *
 * <p>The flow at its height comes by curve number and the graphical method (TR-55, 1986), or by the
 * rational method where the plan has a table of short rains; the time in which water gathers by
 * Kirpich over grass along the longest way. Pipes stick out of the fill, unless their owner says
 * how their ends are. They run out freely, unless their owner says how deep water stands below
 * them, or they run into a pool, which then is full, or into a ditch, which then carries their
 * water. Water may stand up to {@link #FREEBOARD} below the lower edge of the lane.
 *
 * @param asked the storm
 * @param sized every crossing, those that wet places want first
 * @param reliefs every relief culvert that is proposed, each with what gathers below the proposal
 *     above it
 * @param turnOuts every turn-out of a ditch that is proposed
 * @param ditches every ditch that has land draining through it, with no proposal built
 * @param relieved the same ditches with every proposal for them built that can be; empty if there
 *     is none
 * @param assumptions what the answers rest on
 */
public record StormReport(
        StormAsked asked,
        List<Sized> sized,
        List<SizedRelief> reliefs,
        List<TurnedOut> turnOuts,
        List<SizedDitch> ditches,
        List<SizedDitch> relieved,
        List<Assumption> assumptions) {

    /** Water is kept this far below the edge of the lane, m: half a foot. Our choice. */
    public static final double FREEBOARD = 0.5 * Imperial.FOOT;

    /** Flatter ways are taken as this steep, rise over run. Our choice. */
    private static final double FLATTEST = 0.001;

    /** Ways shorter than this are taken as this long, m. Our choice: they gather in no time. */
    private static final double SHORTEST = 1;

    /** Flows that differ by less are one, m³/s: a cupful in a second. */
    private static final double LITTLE = 2e-4;

    /** Copies the lists. */
    public StormReport {
        sized = List.copyOf(sized);
        reliefs = List.copyOf(reliefs);
        turnOuts = List.copyOf(turnOuts);
        ditches = List.copyOf(ditches);
        relieved = List.copyOf(relieved);
        assumptions = List.copyOf(assumptions);
    }

    /** The storm at all crossings and in all ditches. */
    public static StormReport of(
            StormAsked asked, List<Crossing> crossings, List<DitchWater> channels) {
        return of(asked, crossings, channels, List.of());
    }

    /**
     * The same, with the relief culverts among the proposals for lane and ditches.
     *
     * @param reliefs all that is proposed, from the top of each way down
     */
    public static StormReport of(
            StormAsked asked,
            List<Crossing> crossings,
            List<DitchWater> channels,
            List<Relief> reliefs) {
        var sizing = new Sizing(asked, channels);
        List<Sized> sized = crossings.stream().map(sizing::of).toList();
        DitchStorm.Relieved built = DitchStorm.relieved(asked, channels, reliefs, sizing::of);
        boolean proposed = !built.reliefs().isEmpty() || !built.turnOuts().isEmpty();
        List<SizedDitch> ditches = DitchStorm.of(asked, channels);
        boolean none = sized.isEmpty() && ditches.isEmpty();
        return new StormReport(
                asked,
                sized,
                built.reliefs(),
                built.turnOuts(),
                ditches,
                proposed ? built.ditches() : List.of(),
                none ? List.of() : StormAssumptions.of(asked, !built.reliefs().isEmpty()));
    }

    /** Of {@link #relieved} the ditches that a relief culvert leads water into. */
    public List<SizedDitch> receiving() {
        return relieved.stream()
                .filter(ditch -> reliefs.stream().anyMatch(each -> each.comesOutIn(ditch)))
                .toList();
    }

    /**
     * The reach of a ditch, as it runs with no proposal built, at the foot of one that runs with
     * them; empty where that ditch is dry.
     */
    public Optional<SizedReach> before(SizedDitch relieved, SizedReach reach) {
        return ditches.stream()
                .filter(each -> each.water().equals(relieved.water()))
                .flatMap(each -> each.reaches().stream())
                .filter(
                        each ->
                                Double.compare(each.foot(), each.top())
                                                == Double.compare(reach.foot(), reach.top())
                                        && reach.foot() >= each.from()
                                        && reach.foot() <= each.to()
                                        && (reach.foot() != each.top()
                                                || reach.foot() == reach.top()))
                .findFirst();
    }

    /** Whether a reach with every proposal built carries more than it does with none. */
    public boolean carriesMore(SizedDitch relieved, SizedReach reach) {
        return reach.flow() > before(relieved, reach).map(SizedReach::flow).orElse(0.0) + LITTLE;
    }

    /** The storm at a relief culvert; empty for any other proposal. */
    public Optional<SizedRelief> at(Relief relief) {
        return reliefs.stream().filter(each -> each.relief().equals(relief)).findFirst();
    }

    /** The storm where a pipe lies: at a crossing, or at a relief culvert. */
    public Optional<Sized> at(CulvertLine line) {
        return Stream.concat(sized.stream(), reliefs.stream().map(SizedRelief::sized))
                .filter(each -> each.crossing().line().equals(line))
                .findFirst();
    }

    /**
     * Flow of the storm off gravel of the lane alone, m³/s.
     *
     * @param gravel m², zero or more
     */
    public double offLane(double gravel) {
        return gravel > 0 ? asked.peak(gravel, 0, Concentration.LEAST, FLATTEST).discharge() : 0;
    }

    /** Time in which water gathers, s. */
    static double time(FlowGrid.Way way) {
        double length = Math.max(SHORTEST, way.length());
        double slope = Math.max(FLATTEST, Math.min(1, way.fall() / length));
        return Concentration.kirpich(length, slope, Concentration.Surface.GRASS);
    }

    /** What the storm brings from land whose longest way of water is known. */
    public static Peak peak(StormAsked asked, double area, FlowGrid.Way way) {
        return asked.peak(0, area, time(way), slope(way));
    }

    /** Mean slope of a way, rise over run. */
    static double slope(FlowGrid.Way way) {
        return Math.max(FLATTEST, Math.min(1, way.fall() / Math.max(SHORTEST, way.length())));
    }
}
