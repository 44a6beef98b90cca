package lanewright.drainage.along;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;

/** Ditches against published limits: their grade, their depth below the stone, their outlets. */
public final class DitchChecks {

    /** Grades are compared to this, so that a plan's own 0.5 % is not "under" by rounding. */
    private static final double SAME = 1e-9;

    /** A ditch that falls less than this is told of as level, rise over run. */
    private static final double LEVEL = 5e-5;

    private final DitchReach reach;
    private final Limits limits;
    private final List<Finding> findings = new ArrayList<>();

    private DitchChecks(DitchReach reach, Limits limits) {
        this.reach = reach;
        this.limits = limits;
    }

    /**
     * Where ditches cannot run out, in their order: low points without a way out, and level
     * stretches.
     */
    public static List<WetStretch> wet(List<DitchReach> reaches, Limits limits) {
        List<WetStretch> wet = new ArrayList<>();
        for (DitchReach reach : reaches) {
            var checks = new DitchChecks(reach, limits);
            checks.deadEnds(wet);
            checks.tooFlat(wet);
        }
        return wet;
    }

    /**
     * What else is wrong with the ditches, in their order.
     *
     * @param told where standing water is told of by itself, so that the end of a ditch in it need
     *     not be
     */
    public static List<Finding> check(
            List<DitchReach> reaches, Limits limits, Ditches.Standing told) {
        List<Finding> findings = new ArrayList<>();
        for (DitchReach reach : reaches) {
            var checks = new DitchChecks(reach, limits);
            checks.ends(told);
            checks.tooSteep();
            checks.againstStone();
            findings.addAll(checks.findings);
        }
        return findings;
    }

    private void ends(Ditches.Standing told) {
        for (DitchReach.Outlet outlet : reach.outlets()) {
            Where where = Where.station(outlet.station()).at(outlet.x(), outlet.y());
            boolean stands = reach.standsIn(outlet, told);
            switch (outlet.kind()) {
                case ROAD ->
                        findings.add(
                                Finding.of(
                                        "ditch-to-road",
                                        Level.LOOK,
                                        Topic.WATER,
                                        where,
                                        Saying.of(
                                                "The "
                                                        + reach.side().word()
                                                        + " ditch falls to the public road at {}.",
                                                Quantity.station(outlet.station())),
                                        Saying.plain(
                                                "Lane water may not run onto the road. Turn the"
                                                        + " ditch out to lower ground before it"
                                                        + " gets there, by a pipe under the lane if"
                                                        + " that ground lies across; or lead it"
                                                        + " into the road's own ditch, with the"
                                                        + " leave of the road's owner.")));
                case FAR_END -> {
                    if (!stands) {
                        findings.add(
                                Finding.of(
                                        "ditch-at-far-end",
                                        Level.NOTE,
                                        Topic.WATER,
                                        where,
                                        Saying.of(
                                                "The "
                                                        + reach.side().word()
                                                        + " ditch runs out at the far end, {}.",
                                                Quantity.station(outlet.station())),
                                        Saying.plain(
                                                "Follow its water from there on foot: it must not"
                                                        + " run against a building, a well or a"
                                                        + " neighbor's land.")));
                    }
                }
                case DAYLIGHT, PIPE, PIPE_TO_LAY, CROSSING, DEAD_END -> {
                    // The water gets away, or the place is in the list of wet places.
                }
            }
        }
    }

    private void deadEnds(List<WetStretch> wet) {
        for (DitchReach.Outlet outlet : reach.outlets()) {
            if (outlet.kind() != DitchReach.Kind.DEAD_END) {
                continue;
            }
            wet.add(
                    new WetStretch(
                            WetStretch.Kind.DEAD_END,
                            reach.side(),
                            outlet.station(),
                            outlet.station(),
                            reach,
                            outlet,
                            Saying.of(
                                    "The "
                                            + reach.side().word()
                                            + " ditch is lowest at {}, and its water has nowhere to"
                                            + " go from there.",
                                    Quantity.station(outlet.station())),
                            null,
                            null));
        }
    }

    private void tooFlat(List<WetStretch> wet) {
        Limit least = limits.ditchLeast();
        for (List<DitchReach.Leg> run : reach.flat(least.value())) {
            DitchReach.Leg worst = run.get(0);
            for (DitchReach.Leg leg : run) {
                if (Math.abs(leg.grade()) < Math.abs(worst.grade())) {
                    worst = leg;
                }
            }
            boolean level = Math.abs(worst.grade()) < LEVEL;
            Saying says =
                    level
                            ? Saying.of(
                                    "The "
                                            + reach.side().word()
                                            + " ditch is level over {}: water will stand in it.",
                                    Quantity.length(length(run)))
                            : Saying.of(
                                    "The "
                                            + reach.side().word()
                                            + " ditch falls only {} over {}: water will stand in"
                                            + " it.",
                                    Quantity.grade(Math.abs(worst.grade())),
                                    Quantity.length(length(run)));
            wet.add(
                    new WetStretch(
                            WetStretch.Kind.LEVEL,
                            reach.side(),
                            run.get(0).from(),
                            run.get(run.size() - 1).to(),
                            reach,
                            reach.outletFrom(run.get(0).from()),
                            says,
                            Quantity.grade(Math.abs(worst.grade())),
                            least));
        }
    }

    private void tooSteep() {
        Limit lined = limits.ditchLined();
        Limit checked = limits.ditchChecked();
        steep(
                "ditch-wants-lining",
                lined,
                runs(leg -> Math.abs(leg.grade()) > lined.value() + SAME),
                Saying.plain("Line it with stone that the water cannot move."));
        steep(
                "ditch-wants-checks",
                checked,
                runs(
                        leg ->
                                Math.abs(leg.grade()) > checked.value() + SAME
                                        && Math.abs(leg.grade()) <= lined.value() + SAME),
                Saying.plain("Set stone check dams across it, or let grass hold it."));
    }

    private void steep(String code, Limit limit, List<List<DitchReach.Leg>> runs, Saying remedy) {
        for (List<DitchReach.Leg> run : runs) {
            double steepest = 0;
            for (DitchReach.Leg leg : run) {
                steepest = Math.max(steepest, Math.abs(leg.grade()));
            }
            findings.add(
                    new Finding(
                            code,
                            Level.NOTE,
                            Topic.WATER,
                            where(run),
                            Saying.of(
                                    "The "
                                            + reach.side().word()
                                            + " ditch falls up to {} over {}: bare soil will wash.",
                                    Quantity.grade(steepest),
                                    Quantity.length(length(run))),
                            Quantity.grade(steepest),
                            Quantity.grade(limit.value()),
                            limit.source(),
                            remedy));
        }
    }

    private void againstStone() {
        List<DitchReach.Point> points = reach.points();
        double wanted = limits.belowStone().value();
        for (Run run : Run.of(points.size(), i -> !(points.get(i).belowStone() > SAME))) {
            DitchReach.Point worst = worst(run);
            findings.add(
                    new Finding(
                            "ditch-above-stone",
                            Level.LOOK,
                            Topic.WATER,
                            where(run),
                            Saying.of(
                                    "The bottom of the "
                                            + reach.side().word()
                                            + " ditch lies {} above the lowest stone at {}: the"
                                            + " ditch will drain into the stone.",
                                    Quantity.depth(-worst.belowStone()),
                                    Quantity.station(worst.station())),
                            Quantity.depth(worst.belowStone()),
                            Quantity.depth(wanted),
                            limits.belowStone().source(),
                            deeper(wanted)));
        }
        for (Run run :
                Run.of(
                        points.size(),
                        i ->
                                points.get(i).belowStone() > SAME
                                        && points.get(i).belowStone() < wanted - SAME)) {
            DitchReach.Point worst = worst(run);
            findings.add(
                    new Finding(
                            "ditch-shallow",
                            Level.NOTE,
                            Topic.WATER,
                            where(run),
                            Saying.of(
                                    "The bottom of the "
                                            + reach.side().word()
                                            + " ditch lies only {} below the lowest stone at {}.",
                                    Quantity.depth(worst.belowStone()),
                                    Quantity.station(worst.station())),
                            Quantity.depth(worst.belowStone()),
                            Quantity.depth(wanted),
                            limits.belowStone().source(),
                            deeper(wanted)));
        }
    }

    private static Saying deeper(double wanted) {
        return Saying.of(
                "Dig the ditch to at least {} below the underside of the stone.",
                Quantity.depth(wanted));
    }

    private DitchReach.Point worst(Run run) {
        DitchReach.Point worst = reach.points().get(run.first());
        for (int i = run.first(); i <= run.last(); i++) {
            if (reach.points().get(i).belowStone() < worst.belowStone()) {
                worst = reach.points().get(i);
            }
        }
        return worst;
    }

    private Where where(Run run) {
        List<DitchReach.Point> points = reach.points();
        return Where.stretch(
                        run.from(i -> points.get(i).station()),
                        run.to(i -> points.get(i).station(), points.size()))
                .at(points.get(run.first()).x(), points.get(run.first()).y());
    }

    private List<List<DitchReach.Leg>> runs(Predicate<DitchReach.Leg> holds) {
        List<DitchReach.Leg> legs = reach.legs();
        return Run.of(legs.size(), i -> holds.test(legs.get(i))).stream()
                .map(run -> legs.subList(run.first(), run.last() + 1))
                .toList();
    }

    private static double length(List<DitchReach.Leg> run) {
        double sum = 0;
        for (DitchReach.Leg leg : run) {
            sum += leg.length();
        }
        return sum;
    }

    private static Where where(List<DitchReach.Leg> run) {
        return Where.stretch(run.get(0).from(), run.get(run.size() - 1).to());
    }
}
