package lanewright.sheets.set;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import lanewright.drainage.PipeCourse;
import lanewright.drainage.Pool;
import lanewright.drainage.RoadEnd;
import lanewright.drainage.WaterReport;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.Relief;
import lanewright.ground.Ground;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.lane.line.Profile;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionLine;
import lanewright.measure.Quantity;
import lanewright.measure.UnitSystem;
import lanewright.measure.Words;
import lanewright.sheets.figure.PipeUnder;
import lanewright.sheets.figure.ReliefMark;
import lanewright.sheets.figure.RoadDitch;
import lanewright.sheets.figure.StandingWater;
import lanewright.sheets.figure.Unrolled;
import org.jspecify.annotations.Nullable;

/** Gathers what profile and cross-sections show of a lane. */
final class Unrolling {

    /** Water this far from the lane's limits is not the lane's, m. */
    private static final double NEAR = 3;

    /** Ground shown on either side of the road's ditch, m. */
    private static final double BANKS = 6;

    /** The ground about the road's ditch is read so often, m. */
    private static final double STEP = 0.1;

    private Unrolling() {}

    /** What is shown of a lane. */
    static Unrolled of(
            Alignment line,
            Profile profile,
            List<Section> sections,
            Ground ground,
            WaterReport water,
            UnitSystem units) {
        return new Unrolled(
                sections,
                profile.points(),
                pools(water, units),
                pipes(water, units),
                road(line, ground, water.roadEnd()),
                reliefs(water),
                units);
    }

    /**
     * Where water is proposed to be led off, each with its sign and the side it takes water from.
     */
    private static List<ReliefMark> reliefs(WaterReport water) {
        return water.drainage().reliefs().stream()
                .filter(relief -> relief.device() != Relief.Device.NONE)
                .map(
                        relief ->
                                new ReliefMark(
                                        relief.station(),
                                        relief.sign()
                                                + switch (relief.way()) {
                                                    case LANE -> "";
                                                    case LEFT_DITCH -> " left";
                                                    case RIGHT_DITCH -> " right";
                                                }))
                .toList();
    }

    /**
     * Pipes of the plan, and those that the water report proposes and that fit under the lane as
     * drawn.
     */
    private static List<PipeUnder> pipes(WaterReport water, UnitSystem units) {
        var pipes = new ArrayList<PipeUnder>();
        for (PipeCourse course : water.pipes()) {
            CulvertLine under = course.under();
            if (under != null) {
                pipes.add(
                        new PipeUnder(
                                course.pipe().name()
                                        + (course.isToLay() ? ", to lay" : "")
                                        + bottoms(under, units),
                                under.crossing(),
                                under.inlet(),
                                under.outlet(),
                                course.pipe().diameter()));
            }
        }
        for (WetPlace place : water.places()) {
            CulvertLine pipe = place.cure().pipe();
            if (pipe != null && place.cure().hasPipeNow()) {
                pipes.add(
                        new PipeUnder(
                                "proposed pipe at "
                                        + Words.fine(Quantity.station(pipe.station()), units)
                                        + bottoms(pipe, units),
                                pipe.crossing(),
                                pipe.inlet(),
                                pipe.outlet(),
                                Double.NaN));
            }
        }
        return pipes;
    }

    /** Heights of the bottom of a pipe at both ends, after its name. */
    private static String bottoms(CulvertLine pipe, UnitSystem units) {
        return ": in "
                + Words.number(Quantity.height(pipe.inlet().height()), units)
                + ", out "
                + Words.number(Quantity.height(pipe.outlet().height()), units);
    }

    /**
     * The road's own ditch as ground, along the lane's line and across it; null if there is none.
     */
    private static @Nullable RoadDitch road(Alignment line, Ground ground, RoadEnd end) {
        RoadEnd.RoadDitch ditch = end.ditch();
        if (ditch == null) {
            return null;
        }
        double at = ditch.station();
        SectionLine along =
                known(
                        at,
                        at - BANKS,
                        Math.min(at + BANKS, line.length()),
                        station -> ground.heightAt(x(line, station), y(line, station)));
        SectionLine across =
                at < 0
                        ? SectionLine.of(new double[0], new double[0])
                        : known(
                                0,
                                -BANKS,
                                BANKS,
                                offset -> {
                                    var place = new Place(at, offset);
                                    return ground.heightAt(line.x(place), line.y(place));
                                });
        return along.size() < 2 ? null : new RoadDitch(at, along, across);
    }

    /** Eastings along the line, which goes on straight before its beginning. */
    private static double x(Alignment line, double station) {
        return station >= 0 ? line.x(station) : line.x(0) + station * line.directionX(0);
    }

    private static double y(Alignment line, double station) {
        return station >= 0 ? line.y(station) : line.y(0) + station * line.directionY(0);
    }

    /** Heights from a place on both ways, as far as they are known without a gap. */
    private static SectionLine known(
            double middle, double from, double to, DoubleUnaryOperator height) {
        var places = new ArrayList<Double>();
        for (double at = middle;
                at >= from && Double.isFinite(height.applyAsDouble(at));
                at -= STEP) {
            places.add(0, at);
        }
        for (double at = middle + STEP;
                at <= to && Double.isFinite(height.applyAsDouble(at));
                at += STEP) {
            places.add(at);
        }
        double[] heights = places.stream().mapToDouble(height::applyAsDouble).toArray();
        return SectionLine.of(LandGround.flat(places), heights);
    }

    /** Water that touches the lane's limits or nearly so. */
    private static List<StandingWater> pools(WaterReport water, UnitSystem units) {
        var pools = new ArrayList<StandingWater>();
        for (Pool pool : water.after()) {
            Pool.Beside beside = pool.beside();
            WetPlace place = water.placeOf(pool);
            if (beside != null
                    && (beside.inLimits()
                            || (beside.leftmost() < NEAR && beside.rightmost() > -NEAR))) {
                pools.add(
                        new StandingWater(
                                beside.from(),
                                beside.to(),
                                beside.leftmost(),
                                beside.rightmost(),
                                pool.spot().bottom(),
                                pool.spot().level(),
                                Words.of(Quantity.depth(pool.spot().depth()), units)
                                        + " of water, "
                                        + beside.side().word()
                                        + (place == null ? "" : " (" + place.name() + ")")));
            }
        }
        return together(pools);
    }

    /** Water that stands equally deep on both sides at one place is spoken of once. */
    private static List<StandingWater> together(List<StandingWater> pools) {
        var joined = new ArrayList<>(pools);
        for (int i = 0; i < joined.size(); i++) {
            for (int k = i + 1; k < joined.size(); k++) {
                StandingWater a = joined.get(i);
                StandingWater b = joined.get(k);
                boolean meet = a.from() <= b.to() && b.from() <= a.to();
                if (meet
                        && !deep(a).isEmpty()
                        && deep(a).equals(deep(b))
                        && !a.words().equals(b.words())) {
                    joined.set(i, a.saying(deep(a) + ", left and right" + names(a, b)));
                    joined.set(k, b.saying(""));
                }
            }
        }
        return joined;
    }

    /** The names of two wet places in brackets, or nothing where one has none. */
    private static String names(StandingWater a, StandingWater b) {
        int first = a.words().lastIndexOf(" (");
        int second = b.words().lastIndexOf(" (");
        return first < 0 || second < 0
                ? ""
                : a.words().substring(first, a.words().length() - 1)
                        + ", "
                        + b.words().substring(second + 2);
    }

    /** The words without the side. */
    private static String deep(StandingWater pool) {
        int comma = pool.words().lastIndexOf(", ");
        return comma < 0 ? "" : pool.words().substring(0, comma);
    }
}
