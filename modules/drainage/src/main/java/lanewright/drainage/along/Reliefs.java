package lanewright.drainage.along;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleFunction;
import lanewright.lane.line.Place;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import org.jspecify.annotations.Nullable;

/**
 * Chooses what leads water off where it has run far enough. On the lane: a dip, or on a grade too
 * steep to drive through one, water bars. Out of a ditch: a turn-out where the ground beside it
 * falls away; else a pipe under the lane where that falls; else nothing is made up.
 */
public final class Reliefs {

    /**
     * So far beyond the slopes lower ground is looked for, m: a ditch that one digs. Our choice.
     */
    private static final double OUT = 15;

    private static final double STEP = 0.5;

    /** Basins at inlets are tried ever deeper by this, m, and no more than so many times. */
    private static final double BASIN = 0.1;

    private static final int BASINS = 10;

    private final LaneLine line;
    private final DoubleFunction<Section> sectionAt;
    private final DoubleFunction<TypicalSection> typical;
    private final DoubleBinaryOperator ground;
    private final Limits limits;

    /**
     * @param ground height of the ground as it is, m, NaN where it is not known
     */
    public Reliefs(
            LaneLine line,
            DoubleFunction<Section> sectionAt,
            DoubleFunction<TypicalSection> typical,
            DoubleBinaryOperator ground,
            Limits limits) {
        this.line = line;
        this.sectionAt = sectionAt;
        this.typical = typical;
        this.ground = ground;
        this.limits = limits;
    }

    /** What is proposed along every way that is too long, from the top of each down. */
    public List<Relief> of(List<Descents.Descent> descents) {
        List<Relief> all = new ArrayList<>();
        for (Descents.Descent descent : descents) {
            if (!descent.isTooLong()) {
                continue;
            }
            if (descent.way() == Descents.Way.LANE) {
                onLane(descent, all);
            } else {
                inDitch(descent, all);
            }
        }
        return all;
    }

    private void onLane(Descents.Descent descent, List<Relief> all) {
        double most = limits.dipMost().value();
        boolean dips = descent.steepest() <= most + 1e-9;
        for (double at : dips ? descent.turnOuts() : descent.barsAt()) {
            Section section = sectionAt.apply(at);
            Side lower = lower(section);
            all.add(
                    new Relief(
                            dips ? Relief.Device.ROLLING_DIP : Relief.Device.WATER_BAR,
                            descent.way(),
                            at,
                            lower,
                            descent.grade(),
                            dips ? descent.spacing() : descent.bars(),
                            dips
                                    ? Saying.of(
                                            "the lane falls up to {} there, which a dip still takes",
                                            Quantity.grade(descent.steepest()))
                                    : Saying.of(
                                            "the lane falls up to {}: steeper than {}, a dip cannot"
                                                    + " be driven",
                                            Quantity.grade(descent.steepest()),
                                            Quantity.grade(most)),
                            dips ? descent.source() : descent.barsSource()));
        }
    }

    /** The side on which the slopes meet lower ground, or null where either is not met. */
    private static @Nullable Side lower(Section section) {
        Corner left = section.left().catchPoint();
        Corner right = section.right().catchPoint();
        return left == null || right == null
                ? null
                : left.height() <= right.height() ? Side.LEFT : Side.RIGHT;
    }

    private void inDitch(Descents.Descent descent, List<Relief> all) {
        Side side = descent.way() == Descents.Way.LEFT_DITCH ? Side.LEFT : Side.RIGHT;
        for (double at : descent.turnOuts()) {
            Section section = sectionAt.apply(at);
            Corner inner = side.of(section).ditchInner();
            double out = inner == null ? Double.NaN : turnsOut(section, side, inner.height());
            CulvertLine pipe =
                    inner == null || !Double.isNaN(out)
                            ? null
                            : under(section, side, inner.height());
            if (!Double.isNaN(out)) {
                all.add(
                        relief(
                                descent,
                                Relief.Device.TURN_OUT,
                                at,
                                side,
                                Saying.of(
                                        "the ground beside it is lower {} beyond the slopes",
                                        Quantity.length(out))));
            } else if (pipe != null && pipe.falls()) {
                all.add(pipe(descent, section, side, pipe, pipes(all) + 1));
            } else {
                all.add(
                        relief(
                                descent,
                                Relief.Device.NONE,
                                at,
                                null,
                                Saying.plain(
                                        "neither side has lower ground near: line the ditch"
                                                + " instead")));
            }
        }
    }

    private static int pipes(List<Relief> all) {
        return (int) Relief.count(all, Relief.Device.RELIEF_PIPE);
    }

    private static Relief relief(
            Descents.Descent descent,
            Relief.Device device,
            double at,
            @Nullable Side to,
            Saying why) {
        return new Relief(
                device,
                descent.way(),
                at,
                to,
                descent.grade(),
                descent.spacing(),
                why,
                descent.source());
    }

    private Relief pipe(
            Descents.Descent descent, Section section, Side side, CulvertLine bottom, int number) {
        List<CulvertLine> pipes = new ArrayList<>();
        for (int i = 0; i <= BASINS; i++) {
            CulvertLine pipe = i == 0 ? bottom : basin(section, bottom, i * BASIN);
            if (pipe != null && pipe.fallsEnough(limits)) {
                pipes.add(pipe);
            }
        }
        CulvertLine fitting =
                pipes.stream().filter(pipe -> pipe.fits(limits)).findFirst().orElse(null);
        CulvertLine pipe = fitting == null ? bottom : fitting;
        double deep = bottom.inlet().height() - pipe.inlet().height();
        String why = "the ground rises beside it and is lower across";
        return new Relief(
                Relief.Device.RELIEF_PIPE,
                descent.way(),
                section.station(),
                side.across(),
                descent.grade(),
                descent.spacing(),
                fitting == null
                        ? Saying.of(
                                why
                                        + "; a pipe {} long has too little fall or room there as"
                                        + " drawn, from a basin too",
                                Quantity.length(pipe.length()))
                        : deep > 0
                                ? Saying.of(
                                        why
                                                + ": a pipe {} long, out of a basin {} deeper than"
                                                + " the ditch",
                                        Quantity.length(pipe.length()),
                                        Quantity.depth(deep))
                                : Saying.of(
                                        why + ": a pipe {} long", Quantity.length(pipe.length())),
                descent.source(),
                number,
                pipe,
                fitting != null,
                bottom.inlet().height(),
                pipes);
    }

    /**
     * A pipe whose inlet lies lower than the ditch, in a basin, and that comes out where the ground
     * across lies low enough; null if it does not within reach.
     */
    private @Nullable CulvertLine basin(Section section, CulvertLine bottom, double deep) {
        var inlet = new Corner(bottom.inlet().offset(), bottom.inlet().height() - deep);
        Corner foot = bottom.outlet();
        double sign = bottom.from() == Side.LEFT ? 1 : -1;
        for (double out = 0; out <= OUT; out += STEP) {
            double offset = foot.offset() + sign * out;
            var place = new Place(section.station(), offset);
            double there =
                    out == 0 ? foot.height() : ground.applyAsDouble(line.x(place), line.y(place));
            double fall = Math.abs(offset - inlet.offset()) * limits.ditchLeast().value();
            // A hair more, so that the way along the slant falls enough too.
            if (there <= inlet.height() - fall * (1 + 1e-3)) {
                return CulvertLine.between(
                        section, bottom.from(), inlet, new Corner(offset, there));
            }
        }
        return null;
    }

    private CulvertLine under(Section section, Side side, double bottom) {
        TypicalSection shape = typical.apply(section.station());
        double left = shape.left().foreslope();
        double right = shape.right().foreslope();
        return CulvertLine.under(
                section,
                side,
                bottom,
                side == Side.LEFT ? left : right,
                side == Side.LEFT ? right : left);
    }

    /**
     * How far beyond the slopes of the lane the ground lies so low that a ditch dug out to there
     * falls at least at the least grade, m; NaN if it does not within reach.
     *
     * @param height of what is to be led there, m
     */
    public double turnsOut(Section section, Side side, double height) {
        SideResult here = side.of(section);
        Corner met = here.catchPoint();
        if (met == null) {
            return Double.NaN;
        }
        double sign = side == Side.LEFT ? -1 : 1;
        double from = Math.abs(here.hinge().offset());
        for (double out = 0; out <= OUT; out += STEP) {
            double offset = met.offset() + sign * out;
            var place = new Place(section.station(), offset);
            double there = ground.applyAsDouble(line.x(place), line.y(place));
            double fall = (Math.abs(offset) - from) * limits.ditchLeast().value();
            if (there < height - fall) {
                return out;
            }
        }
        return Double.NaN;
    }
}
