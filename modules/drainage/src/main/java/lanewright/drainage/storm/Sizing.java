package lanewright.drainage.storm;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import lanewright.drainage.Crossing;
import lanewright.drainage.DitchWater;
import lanewright.drainage.Overflow;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.DitchReach;
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
import lanewright.drainage.runoff.Peak;

/** Finds the pipe that carries a storm, where water is led under the lane. */
final class Sizing {

    /** The lane is tried higher in such steps, and no more than so many of them, m. */
    private static final double STEP = 0.025;

    private static final int STEPS = 60;

    /** A head of water over the lane for which the weir's coefficient is taken, m. */
    private static final double OVER = 0.15;

    private static final List<Material> SOLD = List.of(Material.PLASTIC, Material.METAL);

    private final StormAsked asked;
    private final List<DitchWater> channels;

    Sizing(StormAsked asked, List<DitchWater> channels) {
        this.asked = asked;
        this.channels = channels;
    }

    /** What stands over the outlet: as it is known, or of the ditch that the outlet runs into. */
    private Crossing.Tailwater tailwater(Crossing crossing, double discharge) {
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
    static double bottom(DitchWater water, double station) {
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

    /** The storm at a crossing. */
    Sized of(Crossing crossing) {
        double time = StormReport.time(crossing.way());
        Peak peak = asked.peak(0, crossing.drained(), time, StormReport.slope(crossing.way()));
        double fall = fall(crossing);
        double tail = tail(tailwater(crossing, peak.discharge()));
        Sized found = sized(crossing, time, peak, Double.POSITIVE_INFINITY, true);
        boolean none = !found.isDry() && found.least().isEmpty();
        Optional<Sized.Raised> higher =
                none ? raised(crossing, peak.discharge(), fall, tail) : Optional.empty();
        return found.with(higher, ford(crossing, peak.discharge(), none ? by(higher) : 0));
    }

    /** The storm at a relief culvert. */
    SizedRelief of(DitchStorm.AtRelief at) {
        CulvertLine first = Objects.requireNonNull(at.relief().pipe());
        List<CulvertLine> lines = at.relief().pipes();
        SizedRelief none = null;
        for (CulvertLine line : lines) {
            double basin = at.relief().bottom() - line.inlet().height();
            SizedRelief found = of(at, line, basin, at.brim() + basin);
            if (found.sized().isDry() || found.sized().least().isPresent()) {
                return found;
            }
            none = none == null || line.equals(first) ? found : none;
        }
        // Where none falls enough nothing may stand: then no size is looked for.
        return none == null ? of(at, first, 0, 0) : none;
    }

    private SizedRelief of(
            DitchStorm.AtRelief at, CulvertLine line, double basin, double standing) {
        var crossing =
                new Crossing(
                        at.relief().name(),
                        line,
                        Double.NaN,
                        null,
                        true,
                        0,
                        at.drained(),
                        at.isLeast(),
                        at.way(),
                        List.of(),
                        List.of(),
                        Crossing.Tailwater.FREE);
        return new SizedRelief(
                at.relief(),
                sized(crossing, at.time(), at.peak(), standing, at.intoDitch(line)),
                at.brim(),
                basin,
                at.intoDitch(line));
    }

    private static double fall(Crossing crossing) {
        return Math.max(0, Math.min(1, crossing.line().grade()));
    }

    private static double tail(Crossing.Tailwater below) {
        return Double.isNaN(below.depth()) ? 0 : below.depth();
    }

    /**
     * The storm as the lane is drawn.
     *
     * @param brim how deep water may stand before it runs elsewhere than over the lane, m; infinite
     *     where it does not
     * @param ditched whether a ditch below its outlet takes its water, if there is one
     */
    private Sized sized(Crossing crossing, double time, Peak peak, double brim, boolean ditched) {
        double allowed = Math.min(brim, crossing.line().room() - StormReport.FREEBOARD);
        double fall = fall(crossing);
        double discharge = peak.discharge();
        Crossing.Tailwater below = ditched ? tailwater(crossing, discharge) : crossing.tailwater();
        double tail = tail(below);
        if (!(discharge > 0) || allowed <= 0) {
            return new Sized(
                    crossing,
                    time,
                    peak,
                    allowed,
                    Optional.empty(),
                    crossing.isGiven() ? 0 : Double.NaN,
                    List.of(),
                    Optional.empty(),
                    List.of(),
                    Optional.empty(),
                    Optional.empty(),
                    below);
        }
        List<PipeChoice> choices =
                PipeChoice.of(wanted(crossing, discharge, allowed, fall, 0, tail), SOLD);
        Optional<Culvert> own = own(crossing, fall);
        Optional<Culvert> laid =
                own.isPresent()
                        ? own
                        : choices.stream()
                                .flatMap(choice -> choice.chosen().stream())
                                .findFirst()
                                .map(option -> culvert(option, crossing, fall));
        Optional<Headwater> given = own.map(pipe -> Headwater.of(pipe, tail, discharge));
        return new Sized(
                crossing,
                time,
                peak,
                allowed,
                given,
                own.map(pipe -> new Performance(pipe, tail).discharge(allowed)).orElse(Double.NaN),
                choices,
                Optional.empty(),
                laid.map(pipe -> blocked(pipe, crossing, discharge, tail)).orElse(List.of()),
                laid.map(
                        pipe ->
                                Apron.of(
                                        pipe,
                                        Double.isNaN(below.depth())
                                                ? OptionalDouble.empty()
                                                : OptionalDouble.of(below.depth()),
                                        discharge,
                                        Headwater.of(pipe, tail, discharge))),
                Optional.empty(),
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
            Crossing crossing,
            double discharge,
            double allowed,
            double fall,
            double raise,
            double tail) {
        double room = crossing.line().room() + raise;
        return new PipeChoice.Wanted(
                discharge,
                allowed,
                tail,
                fall,
                crossing.line().length(),
                room,
                Load.ROAD,
                crossing.ends());
    }

    /** The least raise with which a pipe does. That it gets a little longer then is left out. */
    private static Optional<Sized.Raised> raised(
            Crossing crossing, double discharge, double fall, double tail) {
        for (int step = 1; step <= STEPS; step++) {
            double by = step * STEP;
            double allowed = crossing.line().room() + by - StormReport.FREEBOARD;
            if (allowed <= 0) {
                continue;
            }
            for (Material material : SOLD) {
                PipeChoice choice =
                        PipeChoice.of(
                                wanted(crossing, discharge, allowed, fall, by, tail), material);
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
                        Inlet.of(barrel, crossing.ends()),
                        crossing.line().length(),
                        fall,
                        1));
    }

    private static Culvert culvert(PipeChoice.Option option, Crossing crossing, double fall) {
        Barrel barrel = option.size().barrel();
        return new Culvert(
                barrel,
                Inlet.of(barrel, crossing.ends()),
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
        Overflow other = crossing.overflow();
        double overflow =
                other == null || other.isOverLane() ? Double.POSITIVE_INFINITY : other.depth();
        List<Blocked> shares = new ArrayList<>();
        for (Blocked.Share share : Blocked.Share.values()) {
            shares.add(Blocked.of(pipe, tail, crest, overflow, discharge, share));
        }
        return List.copyOf(shares);
    }
}
