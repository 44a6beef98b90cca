package lanewright.planner.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lanewright.drainage.along.Clearance;
import lanewright.ground.Ground;
import lanewright.ground.VertexField;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.shape.Stretch;
import lanewright.lane.shape.TypicalSection;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.LengthUnit;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.UnitSystem;
import lanewright.measure.Where;
import lanewright.planner.document.GradePart;
import lanewright.planner.document.Plan;
import lanewright.planner.proposal.FirstGrade;
import lanewright.planner.proposal.GradeLimits;
import lanewright.planner.proposal.GradeProposal;
import lanewright.planner.proposal.GroundAlong;

/** Lays a first grade for a plan that has none. */
final class GradeLaying {

    /** Distance between looks at the land, m. */
    private static final double STEP = 2.5;

    /** A start or end grade is taken up over this much at least, m. */
    private static final double LEAST_TIE = 6;

    /**
     * Where nothing is said of the far end, the lane ends this high over the ground there, m: under
     * the 0.15 m that would be a step. Our choice.
     */
    private static final double END_ABOVE = 0.1;

    /** A grade is laid again at most this often where ditches do not drain. Our choice. */
    private static final int ROUNDS = 3;

    /**
     * Earth that a metre of lane is worth which does not lie low beside a ditch that does not
     * drain, m³. Our choice: about a wheelbarrow load for each hand's breadth.
     */
    private static final double WORTH = 1.5;

    private GradeLaying() {}

    /**
     * What is to be thought of a grade.
     *
     * @param earth cut and fill together, m³
     * @param stretches how the edges of the lane are kept clear, as far as its sections tell
     */
    record Judged(double earth, List<Clearance.Stretch> stretches) {

        List<Clearance.Stretch> undrained() {
            return stretches.stream()
                    .filter(each -> each.state() == Clearance.State.UNDRAINED)
                    .toList();
        }

        double low() {
            double low = 0;
            for (Clearance.Stretch each : undrained()) {
                low += each.length();
            }
            return low;
        }
    }

    /** Judges a grade by the sections of the lane that it makes. */
    interface Judge {
        /** What is to be thought of it. */
        Judged of(GradeProposal proposal) throws DesignRefused;
    }

    /** A grade with what is thought of it. */
    private record Candidate(GradeProposal proposal, Judged judged) {

        double worth() {
            return judged.earth() + WORTH * judged.low();
        }
    }

    /**
     * The grade that the program suggests. Where the lane lies low beside ditches that do not
     * drain, it is laid again with no ditch counted on there, a few times over; of all, the one
     * that leaves least of it for the earth that it takes is suggested.
     *
     * @throws DesignRefused if an end without a given height lies off the surveyed ground
     */
    static GradeProposal lay(
            Plan plan,
            Alignment line,
            Ground ground,
            VertexField topsoil,
            List<Stretch<TypicalSection>> shapes,
            Judge judge)
            throws DesignRefused {
        GroundAlong land =
                GroundAlong.of(
                        line,
                        ground,
                        station -> at(shapes, station),
                        station -> depth(ground, topsoil, line, station),
                        STEP);
        GradeLimits limits = limits(plan, line, ground);
        List<Candidate> tried = new ArrayList<>();
        GroundAlong counted = land;
        for (int round = 0; round < ROUNDS; round++) {
            GradeProposal proposal = FirstGrade.of(counted, limits);
            if (round > 0
                    && (proposal.collisions().size() > tried.get(0).proposal().collisions().size()
                            || tried.stream()
                                    .anyMatch(
                                            each ->
                                                    each.proposal()
                                                            .points()
                                                            .equals(proposal.points())))) {
                break;
            }
            Judged judged = judge.of(proposal);
            tried.add(new Candidate(proposal, judged));
            if (judged.low() == 0 || proposal.mustStop()) {
                break;
            }
            for (Clearance.Stretch low : judged.undrained()) {
                counted = counted.undrained(low.from(), low.to());
            }
        }
        Candidate best = tried.get(0);
        for (Candidate each : tried) {
            best = each.worth() < best.worth() ? each : best;
        }
        GradeProposal laid = best.proposal();
        for (Saying reason : rounds(tried, best, land, limits)) {
            laid = laid.because(reason);
        }
        return laid;
    }

    /** What came of laying the grade again, and what no grade can help. */
    private static List<Saying> rounds(
            List<Candidate> tried, Candidate best, GroundAlong land, GradeLimits limits) {
        List<Saying> reasons = new ArrayList<>();
        Candidate first = tried.get(0);
        if (best.worth() < first.worth()) {
            reasons.add(
                    Saying.of(
                            "Laid higher where ditches would not drain: {} of the lane would lie"
                                    + " low beside such ditches otherwise, now {} do; it digs and"
                                    + " fills {} instead of {}.",
                            Quantity.length(first.judged().low()),
                            Quantity.length(best.judged().low()),
                            Quantity.volume(best.judged().earth()),
                            Quantity.volume(first.judged().earth())));
        } else if (tried.size() > 1) {
            Candidate other = tried.get(1);
            for (Candidate each : tried.subList(1, tried.size())) {
                other = each.judged().low() < other.judged().low() ? each : other;
            }
            reasons.add(
                    Saying.of(
                            "Laid higher where ditches do not drain, it would dig and fill {} and"
                                    + " leave {} of the lane low beside such ditches, instead of"
                                    + " {} and {}.",
                            Quantity.volume(other.judged().earth()),
                            Quantity.length(other.judged().low()),
                            Quantity.volume(first.judged().earth()),
                            Quantity.length(first.judged().low())));
        }
        double held = 0;
        for (Clearance.Stretch low : best.judged().undrained()) {
            held += low.length() * land.outOfReach(low.from(), low.to(), limits);
        }
        if (held > 0) {
            reasons.add(
                    Saying.of(
                            "Along {} of what lies low, the heights that the lane must meet are too"
                                    + " near for it to rise clear of the ground at {}.",
                            Quantity.length(held),
                            Quantity.grade(limits.steepest())));
        }
        return reasons;
    }

    private static GradeLimits limits(Plan plan, Alignment line, Ground ground)
            throws DesignRefused {
        GradePart grade = plan.grade();
        double length = line.length();
        double unit = plan.units() == UnitSystem.US ? LengthUnit.FOOT.metres() : 1;
        double start = plan.ends().road().height();
        if (Double.isNaN(start)) {
            start = neat(known(line, ground, 0, "beginning"), unit);
        }
        double end = plan.ends().far().height();
        if (Double.isNaN(end)) {
            end = neat(known(line, ground, length, "far end") + END_ABOVE, unit);
        }
        List<GradeLimits.Fixed> through = new ArrayList<>();
        for (GradePart.Through point : grade.through()) {
            through.add(new GradeLimits.Fixed(point.station(), point.height()));
        }
        through.sort(Comparator.comparingDouble(GradeLimits.Fixed::station));
        double over = Math.max(plan.ends().road().over(), plan.ends().far().over());
        return new GradeLimits(
                grade.steepest(),
                grade.flattest(),
                grade.edgeAboveGround(),
                grade.curvePerPercent() * 100,
                start,
                plan.ends().road().grade(),
                end,
                plan.ends().far().grade(),
                Math.min(Math.max(LEAST_TIE, over), Math.max(1, length / 4)),
                through,
                grade.sagOutlets().stream().map(GradePart.Outlet::station).toList(),
                unit);
    }

    /** To a hundredth of a unit, short to write. */
    private static double neat(double height, double unit) {
        return Math.rint(Math.rint(height / unit * 100) * unit / 100 * 1e6) / 1e6;
    }

    /** Height of the ground at an end of the lane, which must be known to begin a grade from. */
    private static double known(Alignment line, Ground ground, double station, String which)
            throws DesignRefused {
        double x = line.x(station);
        double y = line.y(station);
        double height = ground.heightAt(x, y);
        if (Double.isNaN(height)) {
            throw new DesignRefused(
                    List.of(
                            Finding.of(
                                    "end-outside-ground",
                                    Level.STOP,
                                    Topic.LINE,
                                    Where.station(station).at(x, y),
                                    Saying.plain(
                                            "The "
                                                    + which
                                                    + " of the lane lies outside the surveyed"
                                                    + " ground, and its height is not given."),
                                    Saying.plain(
                                            "Look whether east and north changed places or the unit"
                                                    + " is another; shoot the ground there, or give the"
                                                    + " height under ends."))));
        }
        return height;
    }

    private static TypicalSection at(List<Stretch<TypicalSection>> shapes, double station) {
        for (Stretch<TypicalSection> stretch : shapes) {
            if (stretch.holds(station)) {
                return stretch.value();
            }
        }
        return shapes.get(shapes.size() - 1).value();
    }

    private static Double depth(
            Ground ground, VertexField topsoil, Alignment line, double station) {
        double x = line.x(station);
        double y = line.y(station);
        int triangle = ground.triangleAt(x, y);
        return triangle < 0 ? Double.NaN : topsoil.inside(triangle, x, y);
    }

    /** A laid grade as it goes into the plan, its reasons in the plan's units. */
    static GradePart written(Plan plan, GradeProposal laid) {
        UnitSystem units = plan.units();
        List<GradePart.Point> points = new ArrayList<>();
        List<VerticalPoint> vertical = laid.points();
        for (int i = 0; i < vertical.size(); i++) {
            VerticalPoint point = vertical.get(i);
            boolean last = i == vertical.size() - 1;
            points.add(
                    new GradePart.Point(
                            last ? Double.POSITIVE_INFINITY : point.station(),
                            point.height(),
                            point.curve()));
        }
        List<String> reasons = new ArrayList<>();
        laid.reasons().forEach(reason -> reasons.add(reason.in(units)));
        laid.ways().forEach(way -> reasons.add(way.says().in(units)));
        laid.collisions()
                .forEach(
                        each -> reasons.add(each.says().in(units) + " " + each.remedy().in(units)));
        return plan.grade().laid(points, reasons);
    }
}
