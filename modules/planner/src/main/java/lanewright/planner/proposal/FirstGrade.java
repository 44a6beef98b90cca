package lanewright.planner.proposal;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.line.Profile;
import lanewright.lane.line.TurningPoint;
import lanewright.lane.line.VerticalPoint;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.planner.proposal.GroundAlong.Look;
import org.jspecify.annotations.Nullable;

/**
 * Lays a first grade: through the fixed heights, no steeper and no flatter than allowed but at the
 * turning points of curves, with a way out for every low point, its edge aimed above the higher
 * ground beside it, and otherwise moving as little earth as it can.
 *
 * <p>Where the limits collide, it says which, and lays the nearest grade that keeps the others.
 */
public final class FirstGrade {

    /** Heights and curves are kept to this part of a metre, so that they are short to write. */
    private static final double PER_METRE = 1e6;

    /** A change of grade under this needs no curve: 0.1 %, our choice. */
    private static final double NO_CURVE = 0.001;

    /** The steepest grade is let go in steps of this, after a first small one. */
    private static final double STEEPER = 1.08;

    /** How often a low point without a way out is moved before the limits are said to collide. */
    private static final int TRIES = 12;

    private final GroundAlong land;
    private final GradeLimits limits;
    private final double length;

    private FirstGrade(GroundAlong land, GradeLimits limits) {
        this.land = land;
        this.limits = limits;
        this.length = land.length();
    }

    /**
     * Lays a grade.
     *
     * @param land the land under and beside the lane
     * @param limits what the grade must keep to
     */
    public static GradeProposal of(GroundAlong land, GradeLimits limits) {
        return new FirstGrade(land, limits).lay();
    }

    /** The grade with the limits that it keeps. */
    private record Laid(List<VerticalPoint> points, GradeLimits kept, boolean sagsAnywhere) {}

    private GradeProposal lay() {
        if (straightest() > limits.steepest()) {
            return steeper(straightest());
        }
        Laid all = laid(limits, false);
        return all != null ? proposal(all, List.of()) : relaxed();
    }

    /** Greatest grade of straight lines from one fixed height to the next: no grade is gentler. */
    private double straightest() {
        double greatest = 0;
        double station = 0;
        double height = limits.start();
        List<GradeLimits.Fixed> fixed = new ArrayList<>(limits.through());
        if (!Double.isNaN(limits.end())) {
            fixed.add(new GradeLimits.Fixed(length, limits.end()));
        }
        for (GradeLimits.Fixed next : fixed) {
            double run = next.station() - station;
            if (run > 0) {
                greatest = Math.max(greatest, Math.abs(next.height() - height) / run);
            }
            station = next.station();
            height = next.height();
        }
        return greatest;
    }

    /** Gives up one limit after the other, gentlest first, until a grade can be laid. */
    private GradeProposal relaxed() {
        Laid flat = laid(limits.flattest(0), false);
        if (flat != null) {
            return proposal(flat, List.of(tooFlat()));
        }
        Laid sags = laid(limits, true);
        if (sags != null) {
            return proposal(sags, List.of(noWayOut(sags)));
        }
        Laid sharp = laid(limits.curve(0), false);
        if (sharp != null) {
            return proposal(sharp, List.of(tooSharp()));
        }
        return steeper(limits.steepest());
    }

    /** Lets the steepest grade go, from a grade on, until one can be laid. */
    private GradeProposal steeper(double from) {
        for (boolean anywhere : new boolean[] {false, true}) {
            for (double steep = from * 1.01; steep < 1.5; steep *= STEEPER) {
                Laid steeper = laid(limits.flattest(0).steepest(steep), anywhere);
                if (steeper != null) {
                    List<Finding> collisions = new ArrayList<>();
                    collisions.add(tooSteep(steeper));
                    if (anywhere) {
                        collisions.add(noWayOut(steeper));
                    }
                    return proposal(steeper, collisions);
                }
            }
        }
        return straight();
    }

    /** A grade that keeps these limits, or null. */
    private @Nullable Laid laid(GradeLimits kept, boolean sagsAnywhere) {
        Look last = land.looks().get(land.looks().size() - 1);
        double higher = last.higher();
        double free =
                Double.isNaN(higher)
                        ? Double.isNaN(last.level()) ? kept.start() : last.level()
                        : higher + kept.edgeAbove() + last.drop();
        Optional<Knots> knots = Knots.of(kept, length, free);
        if (knots.isEmpty()) {
            return null;
        }
        var noSag = new BitSet();
        for (int trial = 0; trial < TRIES; trial++) {
            List<VerticalPoint> points = neat(knots.get(), kept, sagsAnywhere, noSag);
            if (points == null) {
                return null;
            }
            int trapped = sagsAnywhere ? -1 : trapped(points, knots.get());
            if (trapped < 0) {
                return new Laid(points, kept, sagsAnywhere);
            }
            noSag.set(trapped);
        }
        return null;
    }

    /** First with heights that are good to read, then, if the limits leave no room, without. */
    private @Nullable List<VerticalPoint> neat(
            Knots knots, GradeLimits kept, boolean sagsAnywhere, BitSet noSag) {
        double shortest = Double.POSITIVE_INFINITY;
        for (int i = 0; i + 1 < knots.size(); i++) {
            shortest = Math.min(shortest, knots.length(i));
        }
        double neat = kept.unit() / 100;
        double slack = neat / shortest;
        if (kept.steepest() - slack > kept.flattest() + slack) {
            double flattest = kept.flattest() == 0 ? 0 : kept.flattest() + slack;
            GradeLimits narrower = kept.steepest(kept.steepest() - slack).flattest(flattest);
            double[] heights =
                    new GradeSearch(knots, narrower, land, sagsAnywhere, noSag).heights();
            if (heights != null) {
                round(knots, heights, neat);
                return points(knots, heights, kept);
            }
        }
        double[] heights = new GradeSearch(knots, kept, land, sagsAnywhere, noSag).heights();
        return heights == null ? null : points(knots, heights, kept);
    }

    /** Rounds heights that are free; two round a fixed height in their middle stay even to it. */
    private static void round(Knots knots, double[] heights, double neat) {
        for (int i = 0; i < heights.length; i++) {
            if (knots.pinned[i]) {
                double pin = (knots.base[i] + knots.base[i + 1]) / 2;
                double over = multiple(Math.rint((heights[i] - pin) / neat), neat);
                heights[i] = multiple(pin + over, 1);
                heights[i + 1] = multiple(pin - over, 1);
            } else if (!knots.fixed[i] && !(i > 0 && knots.pinned[i - 1])) {
                heights[i] = multiple(Math.rint(heights[i] / neat), neat);
            }
        }
    }

    private static List<VerticalPoint> points(Knots knots, double[] heights, GradeLimits kept) {
        List<Integer> stay = Thinning.of(knots, heights, kept);
        List<VerticalPoint> points = new ArrayList<>();
        for (int k = 0; k < stay.size(); k++) {
            int i = stay.get(k);
            double curve = 0;
            if (k > 0 && k + 1 < stay.size()) {
                int last = stay.get(k - 1);
                int next = stay.get(k + 1);
                double back = knots.station[i] - knots.station[last];
                double ahead = knots.station[next] - knots.station[i];
                double change =
                        Math.abs(
                                (heights[next] - heights[i]) / ahead
                                        - (heights[i] - heights[last]) / back);
                double room = Math.floor(Math.min(back, ahead) / kept.unit() + 1e-6);
                if (change > NO_CURVE && kept.curve() > 0) {
                    double whole = Math.ceil(kept.curve() * change / kept.unit() - 1e-6);
                    curve = multiple(Math.min(whole, room), kept.unit());
                }
            }
            points.add(new VerticalPoint(knots.station[i], heights[i], curve));
        }
        return points;
    }

    /** A whole multiple of a unit, without the tail that multiplying leaves. */
    private static double multiple(double times, double unit) {
        return Math.rint(times * unit * PER_METRE) / PER_METRE;
    }

    private static Profile profile(List<VerticalPoint> points) {
        try {
            return Profile.of(points);
        } catch (DesignRefused e) {
            throw new IllegalStateException("a grade was laid that is none", e);
        }
    }

    /** The knot nearest to a low point without a way out, or -1. */
    private int trapped(List<VerticalPoint> points, Knots knots) {
        for (TurningPoint turn : profile(points).turningPoints()) {
            if (turn.sag() && way(turn).isEmpty()) {
                int nearest = 0;
                for (int i = 1; i < knots.size(); i++) {
                    if (Math.abs(knots.station[i] - turn.station())
                            < Math.abs(knots.station[nearest] - turn.station())) {
                        nearest = i;
                    }
                }
                return nearest;
            }
        }
        return -1;
    }

    /** How water leaves a low point of the lane. */
    private Optional<GradeProposal.WayOut> way(TurningPoint sag) {
        double station = sag.station();
        for (double outlet : limits.outlets()) {
            if (Math.abs(outlet - station) <= Knots.APART) {
                return Optional.of(
                        new GradeProposal.WayOut(
                                station,
                                Saying.of(
                                        "Low point at {}: its water leaves by the outlet that the"
                                                + " plan names at {}.",
                                        Quantity.station(station),
                                        Quantity.station(outlet))));
            }
        }
        Look look = land.nearest(station);
        if (!GradeSearch.waterLeaves(look, sag.height())) {
            return Optional.empty();
        }
        boolean left = !(look.left() > look.right());
        double below = sag.height() - look.drop() - look.lower();
        return Optional.of(
                new GradeProposal.WayOut(
                        station,
                        Saying.of(
                                "Low point at {}: its water leaves over the "
                                        + (left ? "left" : "right")
                                        + " edge, which stands {} over the ground beside it.",
                                Quantity.station(station),
                                Quantity.depth(below))));
    }

    private GradeProposal proposal(Laid laid, List<Finding> collisions) {
        Profile profile = profile(laid.points());
        List<GradeProposal.WayOut> ways = new ArrayList<>();
        for (TurningPoint turn : profile.turningPoints()) {
            if (turn.sag()) {
                way(turn).ifPresent(ways::add);
            }
        }
        return new GradeProposal(
                laid.points(), ways, new GradeReasons(limits, profile).list(), collisions);
    }

    /** Nothing can be laid: from end to end, so that something can be looked at. */
    private GradeProposal straight() {
        double end = Double.isNaN(limits.end()) ? limits.start() : limits.end();
        List<VerticalPoint> points =
                List.of(new VerticalPoint(0, limits.start(), 0), new VerticalPoint(length, end, 0));
        Finding finding =
                Finding.of(
                        "grade-fixed-heights",
                        Level.STOP,
                        Topic.GRADE,
                        Where.stretch(0, length),
                        Saying.plain(
                                "The heights that the lane must meet lie too near each other for"
                                        + " any grade with curves between them."),
                        Saying.plain(
                                "Take out a height that the lane must pass through, or let it lie"
                                        + " further from the next one."));
        return new GradeProposal(points, List.of(), List.of(), List.of(finding));
    }

    private Finding tooFlat() {
        return new Finding(
                "grade-flattest-collides",
                Level.LOOK,
                Topic.GRADE,
                Where.stretch(0, length),
                Saying.of(
                        "No grade keeps at least {} everywhere and meets the fixed heights without"
                                + " a low point that has no way out.",
                        Quantity.grade(limits.flattest())),
                null,
                Quantity.grade(limits.flattest()),
                "your plan",
                Saying.plain(
                        "Allow a flatter grade, move an end, or name where water is led out of a"
                                + " low point."));
    }

    private Finding noWayOut(Laid laid) {
        TurningPoint worst = null;
        for (TurningPoint turn : profile(laid.points()).turningPoints()) {
            if (turn.sag() && way(turn).isEmpty()) {
                worst = turn;
                break;
            }
        }
        double station = worst == null ? 0 : worst.station();
        return Finding.of(
                "grade-sag-no-way-out",
                Level.LOOK,
                Topic.GRADE,
                Where.station(station),
                Saying.of(
                        "The grade limits and the fixed heights force a low point at {} from which"
                                + " no water leaves: the ground beside it is higher on both sides.",
                        Quantity.station(station)),
                Saying.of(
                        "Lead its water away there (a pipe, or a ditch cut through) and say so in"
                                + " the plan at {}, or allow a steeper or flatter grade.",
                        Quantity.station(station)));
    }

    private Finding tooSharp() {
        return new Finding(
                "grade-curve-collides",
                Level.LOOK,
                Topic.GRADE,
                Where.stretch(0, length),
                Saying.of(
                        "No grade meets the fixed heights with {} of vertical curve for each"
                                + " percent of change.",
                        Quantity.length(limits.curve() / 100)),
                null,
                Quantity.length(limits.curve() / 100),
                "your plan",
                Saying.plain("Allow shorter curves, or move one of the fixed heights."));
    }

    private Finding tooSteep(Laid laid) {
        double steepest = 0;
        double at = 0;
        for (int i = 1; i < laid.points().size(); i++) {
            VerticalPoint a = laid.points().get(i - 1);
            VerticalPoint b = laid.points().get(i);
            double grade = Math.abs(b.height() - a.height()) / (b.station() - a.station());
            if (grade > steepest) {
                steepest = grade;
                at = a.station();
            }
        }
        return new Finding(
                "grade-steepest-collides",
                Level.STOP,
                Topic.GRADE,
                Where.station(at),
                Saying.of(
                        "The fixed heights cannot be met at {} or less: it takes about {}.",
                        Quantity.grade(limits.steepest()),
                        Quantity.grade(steepest)),
                Quantity.grade(steepest),
                Quantity.grade(limits.steepest()),
                "your plan",
                Saying.plain(
                        "Make the lane longer so that it climbs more gently, move an end, or allow"
                                + " the steeper grade if your vehicles can take it."));
    }
}
