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
            Relief.Device device = Relief.Device.NONE;
            Side to = null;
            Saying why = Saying.plain("neither side has lower ground near: line the ditch instead");
            if (inner != null) {
                double out = turnsOut(section, side, inner.height());
                if (!Double.isNaN(out)) {
                    device = Relief.Device.TURN_OUT;
                    to = side;
                    why =
                            Saying.of(
                                    "the ground beside it is lower {} beyond the slopes",
                                    Quantity.length(out));
                } else {
                    CulvertLine pipe = under(section, side, inner.height());
                    if (pipe.falls()) {
                        boolean fits = pipe.fits(limits);
                        device = Relief.Device.RELIEF_PIPE;
                        to = side.across();
                        why =
                                fits
                                        ? Saying.of(
                                                "the ground rises beside it and is lower across: a"
                                                        + " pipe {} long",
                                                Quantity.length(pipe.length()))
                                        : Saying.of(
                                                "the ground rises beside it and is lower across; a"
                                                        + " pipe {} long has too little fall or room"
                                                        + " there as drawn",
                                                Quantity.length(pipe.length()));
                    }
                }
            }
            all.add(
                    new Relief(
                            device,
                            descent.way(),
                            at,
                            to,
                            descent.grade(),
                            descent.spacing(),
                            why,
                            descent.source()));
        }
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
