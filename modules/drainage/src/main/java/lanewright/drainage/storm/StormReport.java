package lanewright.drainage.storm;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lanewright.drainage.Crossing;
import lanewright.drainage.DitchWater;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.channel.Imperial;
import lanewright.drainage.channel.Lining;
import lanewright.drainage.culvert.Apron;
import lanewright.drainage.culvert.Barrel;
import lanewright.drainage.culvert.Blocked;
import lanewright.drainage.culvert.Culvert;
import lanewright.drainage.culvert.Headwater;
import lanewright.drainage.culvert.Inlet;
import lanewright.drainage.culvert.Load;
import lanewright.drainage.culvert.Material;
import lanewright.drainage.culvert.Overtopping;
import lanewright.drainage.culvert.Performance;
import lanewright.drainage.culvert.PipeChoice;
import lanewright.drainage.culvert.Size;
import lanewright.drainage.flow.FlowGrid;
import lanewright.drainage.runoff.Concentration;
import lanewright.drainage.runoff.Peak;
import lanewright.measure.Assumption;

/**
 * One storm at every crossing.
 *
 * <p>The flow at its height comes by curve number and the graphical method (TR-55, 1986), or by the
 * rational method where the plan has a table of short rains; the time in which water gathers by
 * Kirpich over grass along the longest way. Pipes stick out of the fill. They run out freely,
 * unless their owner says how deep water stands below them, or they run into a pool, which then is
 * full, or into a ditch, which then carries their water. Water may stand up to {@link #FREEBOARD}
 * below the lower edge of the lane.
 *
 * @param asked the storm
 * @param sized every crossing, those that wet places want first
 * @param ditches every ditch that has land draining through it
 * @param assumptions what the answers rest on
 */
public record StormReport(
        StormAsked asked,
        List<Sized> sized,
        List<SizedDitch> ditches,
        List<Assumption> assumptions) {

    /** Water is kept this far below the edge of the lane, m: half a foot. Our choice. */
    public static final double FREEBOARD = 0.5 * Imperial.FOOT;

    /** Flatter ways are taken as this steep, rise over run. Our choice. */
    private static final double FLATTEST = 0.001;

    /** Ways shorter than this are taken as this long, m. Our choice: they gather in no time. */
    private static final double SHORTEST = 1;

    /** The lane is tried higher in such steps, and no more than so many of them, m. */
    private static final double STEP = 0.025;

    private static final int STEPS = 60;

    /** A head of water over the lane for which the weir's coefficient is taken, m. */
    private static final double OVER = 0.15;

    private static final List<Material> SOLD = List.of(Material.PLASTIC, Material.METAL);

    /** Copies the lists. */
    public StormReport {
        sized = List.copyOf(sized);
        ditches = List.copyOf(ditches);
        assumptions = List.copyOf(assumptions);
    }

    /** The storm at all crossings and in all ditches. */
    public static StormReport of(
            StormAsked asked, List<Crossing> crossings, List<DitchWater> channels) {
        List<Sized> sized = new ArrayList<>();
        for (Crossing crossing : crossings) {
            sized.add(sized(asked, crossing, channels));
        }
        List<SizedDitch> ditches = DitchStorm.of(asked, channels);
        boolean none = sized.isEmpty() && ditches.isEmpty();
        return new StormReport(
                asked, sized, ditches, none ? List.of() : StormAssumptions.of(asked));
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
    private static double slope(FlowGrid.Way way) {
        return Math.max(FLATTEST, Math.min(1, way.fall() / Math.max(SHORTEST, way.length())));
    }

    /** What stands over the outlet: as it is known, or of the ditch that the outlet runs into. */
    private static Crossing.Tailwater tailwater(
            StormAsked asked, Crossing crossing, double discharge, List<DitchWater> channels) {
        if (crossing.tailwater().from() != Crossing.Tailwater.From.NOWHERE || !(discharge > 0)) {
            return crossing.tailwater();
        }
        CulvertLine line = crossing.line();
        for (DitchWater water : channels) {
            boolean meets =
                    water.ditch().side() == line.from().across()
                            && line.outletStation() >= water.ditch().from()
                            && line.outletStation() <= water.ditch().to();
            if (meets && !Double.isNaN(water.flattest())) {
                double bottom = bottom(water, line.outletStation());
                double depth =
                        Lining.named(asked.soil())
                                .flow(
                                        water.shapeAt(line.outletStation()),
                                        discharge,
                                        Math.min(1, water.flattest()))
                                .depth();
                double over = bottom + depth - line.outlet().height();
                if (over > 0) {
                    return new Crossing.Tailwater(Crossing.Tailwater.From.DITCH, over);
                }
            }
        }
        return crossing.tailwater();
    }

    /** Height of a ditch's bottom at a station between its ends, m. */
    private static double bottom(DitchWater water, double station) {
        List<DitchReach.Point> points = water.ditch().points();
        DitchReach.Point before = points.get(0);
        for (DitchReach.Point point : points) {
            if (point.station() >= station) {
                double span = point.station() - before.station();
                double share = span > 0 ? (station - before.station()) / span : 0;
                return before.height() + share * (point.height() - before.height());
            }
            before = point;
        }
        return before.height();
    }

    private static Sized sized(StormAsked asked, Crossing crossing, List<DitchWater> channels) {
        double time = time(crossing.way());
        Peak peak = asked.peak(0, crossing.drained(), time, slope(crossing.way()));
        double allowed = crossing.line().room() - FREEBOARD;
        double fall = Math.max(0, Math.min(1, crossing.line().grade()));
        Crossing.Tailwater below = tailwater(asked, crossing, peak.discharge(), channels);
        double tail = Double.isNaN(below.depth()) ? 0 : below.depth();
        if (!(peak.discharge() > 0) || allowed <= 0) {
            Optional<Sized.Raised> higher =
                    peak.discharge() > 0
                            ? raised(crossing, peak.discharge(), fall, tail)
                            : Optional.empty();
            return new Sized(
                    crossing,
                    time,
                    peak,
                    allowed,
                    Optional.empty(),
                    crossing.isGiven() ? 0 : Double.NaN,
                    List.of(),
                    higher,
                    List.of(),
                    Optional.empty(),
                    ford(crossing, peak.discharge(), by(higher)),
                    below);
        }
        List<PipeChoice> choices =
                PipeChoice.of(wanted(crossing, peak.discharge(), fall, 0, tail), SOLD);
        boolean none = choices.stream().allMatch(choice -> choice.chosen().isEmpty());
        Optional<Sized.Raised> higher =
                none ? raised(crossing, peak.discharge(), fall, tail) : Optional.empty();
        Optional<Culvert> own = own(crossing, fall);
        Optional<Culvert> laid =
                own.isPresent()
                        ? own
                        : choices.stream()
                                .flatMap(choice -> choice.chosen().stream())
                                .findFirst()
                                .map(option -> culvert(option, crossing, fall));
        Optional<Headwater> given = own.map(pipe -> Headwater.of(pipe, tail, peak.discharge()));
        return new Sized(
                crossing,
                time,
                peak,
                allowed,
                given,
                own.map(pipe -> new Performance(pipe, tail).discharge(allowed)).orElse(Double.NaN),
                choices,
                higher,
                laid.map(pipe -> blocked(pipe, crossing, peak.discharge(), tail)).orElse(List.of()),
                laid.map(
                        pipe ->
                                Apron.of(
                                        pipe,
                                        Double.isNaN(below.depth())
                                                ? OptionalDouble.empty()
                                                : OptionalDouble.of(below.depth()),
                                        peak.discharge(),
                                        Headwater.of(pipe, tail, peak.discharge()))),
                ford(crossing, peak.discharge(), none ? by(higher) : 0),
                below);
    }

    /**
     * A ford, unless the lane has to be raised but little for a pipe.
     *
     * @param more how much the lane is raised besides what the crossing asks for, m; infinite where
     *     raising does not help
     */
    private static Optional<Ford> ford(Crossing crossing, double discharge, double more) {
        return discharge > 0 && crossing.raise() + more > Ford.HIGH
                ? Ford.at(crossing, discharge)
                : Optional.empty();
    }

    private static double by(Optional<Sized.Raised> higher) {
        return higher.map(Sized.Raised::by).orElse(Double.POSITIVE_INFINITY);
    }

    private static PipeChoice.Wanted wanted(
            Crossing crossing, double discharge, double fall, double raise, double tail) {
        double room = crossing.line().room() + raise;
        return new PipeChoice.Wanted(
                discharge,
                room - FREEBOARD,
                tail,
                fall,
                crossing.line().length(),
                room,
                Load.ROAD,
                Inlet.End.PROJECTING);
    }

    /** The least raise with which a pipe does. That it gets a little longer then is left out. */
    private static Optional<Sized.Raised> raised(
            Crossing crossing, double discharge, double fall, double tail) {
        for (int step = 1; step <= STEPS; step++) {
            double by = step * STEP;
            if (crossing.line().room() + by <= FREEBOARD) {
                continue;
            }
            for (Material material : SOLD) {
                PipeChoice choice =
                        PipeChoice.of(wanted(crossing, discharge, fall, by, tail), material);
                if (choice.chosen().isPresent()) {
                    return Optional.of(new Sized.Raised(by, choice.chosen().get()));
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Culvert> own(Crossing crossing, double fall) {
        if (!crossing.isGiven()) {
            return Optional.empty();
        }
        Material stated = crossing.material();
        Barrel barrel = Size.round(stated == null ? Material.METAL : stated, crossing.diameter());
        return Optional.of(
                new Culvert(
                        barrel,
                        Inlet.of(barrel, Inlet.End.PROJECTING),
                        crossing.line().length(),
                        fall,
                        1));
    }

    private static Culvert culvert(PipeChoice.Option option, Crossing crossing, double fall) {
        Barrel barrel = option.size().barrel();
        return new Culvert(
                barrel,
                Inlet.of(barrel, Inlet.End.PROJECTING),
                crossing.line().length(),
                fall,
                option.barrels());
    }

    /**
     * Where water goes over the lane as drawn; where the lane is raised first that is not known.
     */
    private static List<Blocked> blocked(
            Culvert pipe, Crossing crossing, double discharge, double tail) {
        boolean low = crossing.crestHeights().stream().anyMatch(height -> height <= 0);
        if (crossing.raise() > 0 || crossing.crestStations().size() < 2 || low) {
            return List.of();
        }
        var crest =
                new Overtopping(
                        crossing.crestStations(),
                        crossing.crestHeights(),
                        Overtopping.gravel(OVER));
        return List.of(
                Blocked.of(pipe, tail, crest, discharge, Blocked.Share.HALF),
                Blocked.of(pipe, tail, crest, discharge, Blocked.Share.WHOLLY));
    }
}
