package lanewright.planner.run;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import lanewright.drainage.LaneDrainage;
import lanewright.drainage.along.DitchEnd;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Side;
import lanewright.drainage.channel.Lining;
import lanewright.drainage.storm.SizedDitch;
import lanewright.drainage.storm.SizedReach;
import lanewright.drainage.storm.StormReport;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;

/** What deserves a look where a storm runs down the ditches. */
final class DitchFindings {

    private static final String MANNING =
            "Manning, uniform flow; room after FHWA, HEC-15, 2005 (from memory)";

    /** Stations closer than this are one, m. */
    private static final double SAME = 0.01;

    private final DitchReach ditch;
    private final List<SizedReach> reaches;
    private final List<Finding> findings = new ArrayList<>();

    private DitchFindings(SizedDitch sized) {
        ditch = sized.water().ditch();
        reaches = sized.reaches().stream().filter(SizedReach::runs).toList();
    }

    /**
     * Findings in every ditch, and at the public road.
     *
     * @param drainage where the ditches end, and where water can be caught before the road
     */
    static List<Finding> of(StormReport storm, LaneDrainage drainage) {
        List<Finding> all = new ArrayList<>();
        road(storm, drainage, all);
        for (SizedDitch sized : storm.ditches()) {
            var found = new DitchFindings(sized);
            found.washes();
            found.overflows();
            found.tight();
            found.lining();
            all.addAll(found.findings);
        }
        for (SizedDitch sized : storm.receiving()) {
            received(storm, sized, all);
        }
        return all;
    }

    /** What a ditch has to carry once relief culverts come out in it. */
    private static void received(StormReport storm, SizedDitch ditch, List<Finding> all) {
        List<String> signs =
                storm.reliefs().stream()
                        .filter(each -> each.comesOutIn(ditch) && !each.sized().isDry())
                        .map(each -> each.relief().sign())
                        .toList();
        SizedReach most = null;
        boolean holds = true;
        Set<String> linings = new LinkedHashSet<>();
        double first = Double.POSITIVE_INFINITY;
        double last = Double.NEGATIVE_INFINITY;
        for (SizedReach reach : ditch.reaches()) {
            if (!reach.runs() || !storm.carriesMore(ditch, reach)) {
                continue;
            }
            most = most == null || reach.flow() > most.flow() ? reach : most;
            holds &= !reach.washes() && !over(reach);
            if (reach.wantsLining()) {
                linings.add(lining(reach));
            }
            first = Math.min(first, reach.from());
            last = Math.max(last, reach.to());
        }
        if (signs.isEmpty() || most == null) {
            return;
        }
        double before = storm.before(ditch, most).map(SizedReach::flow).orElse(0.0);
        all.add(
                new Finding(
                        "relief-into-ditch",
                        holds ? Level.NOTE : Level.LOOK,
                        Topic.WATER,
                        Where.stretch(first, last),
                        Saying.of(
                                "Once they are built, "
                                        + String.join(", ", signs)
                                        + (signs.size() == 1 ? " comes" : " come")
                                        + " out in the "
                                        + ditch.water().ditch().side().word()
                                        + " ditch: in the storm of your plan it then carries up to"
                                        + " {}, by {}, and not {}"
                                        + (holds ? "" : "; it does not hold that")
                                        + (linings.isEmpty()
                                                ? "."
                                                : "; it wants " + String.join(", ", linings) + "."),
                                Quantity.flow(most.flow()),
                                Quantity.station(most.foot()),
                                Quantity.flow(before)),
                        Quantity.flow(most.flow()),
                        Quantity.flow(before),
                        MANNING,
                        Saying.plain(
                                holds
                                        ? "Make that ditch ready before the pipe: its reaches with"
                                                + " all proposals built stand on the water sheet."
                                        : "Before the pipe make that ditch deeper or wider, or lead"
                                                + " part of its water off; its reaches with all"
                                                + " proposals built stand on the water sheet.")));
    }

    private static String lining(SizedReach reach) {
        return reach.steep().map(each -> each.lining().name()).orElse("");
    }

    /** What arrives at the public road, and whether something catches it. */
    private static void road(StormReport storm, LaneDrainage drainage, List<Finding> all) {
        double ditches = 0;
        boolean permitted = true;
        for (int i = 0; i < storm.ditches().size(); i++) {
            SizedDitch sized = storm.ditches().get(i);
            List<DitchReach.Outlet> outlets = sized.water().ditch().outlets();
            for (int k = 0; k < outlets.size(); k++) {
                DitchReach.Outlet outlet = outlets.get(k);
                if (outlet.kind() != DitchReach.Kind.ROAD) {
                    continue;
                }
                ditches += sized.ends().get(k).flow();
                int ditch = i;
                permitted &=
                        drainage.ends().stream()
                                .filter(end -> end.ditch() == ditch && end.outlet().equals(outlet))
                                .allMatch(DitchEnd::isPermitted);
            }
        }
        LaneDrainage.RoadCatch road = drainage.road();
        double lane = storm.offLane(road.lane());
        if (!(ditches + lane > 0)) {
            return;
        }
        boolean caught = permitted && lane == 0;
        Side side = road.side();
        Saying remedy =
                caught
                        ? Saying.plain(
                                "Build it as those who permitted it want it, and keep it open.")
                        : side == null
                                ? Saying.plain(
                                        "Nothing catches it, and the ground beside the lane is no"
                                                + " lower there. Let the lane fall away from the"
                                                + " road over its first length, or lead the water"
                                                + " into the road's own ditch with the leave of the"
                                                + " road's owner.")
                                : Saying.of(
                                        "Nothing catches it. Turn it out to the "
                                                + side.word()
                                                + " at {}, where the ground is lower: a dip across"
                                                + " the lane and a turn-out of the ditch, with"
                                                + " stone where it leaves. The road's owner and the"
                                                + " neighbor below have a say.",
                                        Quantity.station(road.station()));
        all.add(
                new Finding(
                        "water-at-road",
                        caught ? Level.NOTE : Level.LOOK,
                        Topic.WATER,
                        Where.station(0),
                        Saying.of(
                                "In the storm of your plan {} arrive at the public road: {} in"
                                        + " ditches and {} on the lane"
                                        + (caught ? "; a permitted outlet takes it." : "."),
                                Quantity.flow(ditches + lane),
                                Quantity.flow(ditches),
                                Quantity.flow(lane)),
                        Quantity.flow(ditches + lane),
                        Quantity.flow(0),
                        "Lane water is kept off public roads: common practice, and law in most"
                                + " places",
                        remedy));
    }

    /** Reaches that follow each other, for which something holds and is the same. */
    private List<List<SizedReach>> runs(
            Predicate<SizedReach> holds, Function<SizedReach, String> same) {
        List<List<SizedReach>> runs = new ArrayList<>();
        List<SizedReach> run = new ArrayList<>();
        for (SizedReach reach : reaches) {
            boolean joins =
                    holds.test(reach)
                            && !run.isEmpty()
                            && reach.from() - run.get(run.size() - 1).to() < SAME
                            && same.apply(run.get(0)).equals(same.apply(reach));
            if (!joins && !run.isEmpty()) {
                runs.add(List.copyOf(run));
                run.clear();
            }
            if (holds.test(reach)) {
                run.add(reach);
            }
        }
        if (!run.isEmpty()) {
            runs.add(List.copyOf(run));
        }
        return runs;
    }

    private static Where where(List<SizedReach> run) {
        return Where.stretch(run.get(0).from(), run.get(run.size() - 1).to());
    }

    private String side() {
        return "The " + ditch.side().word() + " ditch";
    }

    private void washes() {
        for (List<SizedReach> run : runs(SizedReach::washes, reach -> "")) {
            SizedReach worst = run.get(0);
            for (SizedReach reach : run) {
                worst = reach.flow() > worst.flow() ? reach : worst;
            }
            findings.add(
                    Finding.of(
                            "ditch-washes",
                            Level.LOOK,
                            Topic.WATER,
                            where(run),
                            Saying.of(
                                    side()
                                            + " washes out in the storm of your plan: {} run down"
                                            + " {} by {}, and no published lining holds that.",
                                    Quantity.flow(worst.flow()),
                                    Quantity.grade(worst.steepest()),
                                    Quantity.station(worst.foot())),
                            Saying.plain(
                                    "Lead part of its water off farther up, or have it designed by"
                                            + " a licensed engineer.")));
        }
    }

    private static boolean overLane(SizedReach reach) {
        return reach.left() < 0;
    }

    private static boolean over(SizedReach reach) {
        return overLane(reach) || reach.leftOutside() < 0;
    }

    private void overflows() {
        for (List<SizedReach> run :
                runs(DitchFindings::over, reach -> overLane(reach) ? "lane" : "land")) {
            boolean lane = overLane(run.get(0));
            SizedReach worst = run.get(0);
            for (SizedReach reach : run) {
                worst = room(reach, lane) < room(worst, lane) ? reach : worst;
            }
            double holds = lane ? worst.depth() : worst.bank();
            findings.add(
                    new Finding(
                            lane ? "ditch-overflows" : "ditch-spills-out",
                            lane ? Level.LOOK : Level.NOTE,
                            Topic.WATER,
                            where(run),
                            Saying.of(
                                    side()
                                            + " is too small for the storm of your plan: by {}"
                                            + " water stands {} deep in it, and it holds {} before"
                                            + " it runs over "
                                            + (lane ? "onto the lane." : "its outer bank."),
                                    Quantity.station(worst.foot()),
                                    Quantity.depth(worst.deep()),
                                    Quantity.depth(holds)),
                            Quantity.depth(worst.deep()),
                            Quantity.depth(holds),
                            MANNING,
                            Saying.plain(
                                    lane
                                            ? "Make it deeper or wider, give it more fall there, or"
                                                    + " lead part of its water off farther up."
                                            : "See that water may run over the land there and does"
                                                    + " not come back to the lane; else raise that"
                                                    + " bank, or make the ditch deeper or wider.")));
        }
    }

    private static double room(SizedReach reach, boolean lane) {
        return lane ? reach.left() : reach.leftOutside();
    }

    private void tight() {
        for (List<SizedReach> run :
                runs(reach -> !over(reach) && reach.left() < SizedReach.ROOM, reach -> "")) {
            SizedReach worst = run.get(0);
            for (SizedReach reach : run) {
                worst = reach.left() < worst.left() ? reach : worst;
            }
            findings.add(
                    new Finding(
                            "ditch-little-room",
                            Level.NOTE,
                            Topic.WATER,
                            where(run),
                            Saying.of(
                                    side()
                                            + " is left with only {} between the storm of your plan"
                                            + " and the lane, by {}.",
                                    Quantity.depth(worst.left()),
                                    Quantity.station(worst.foot())),
                            Quantity.depth(worst.left()),
                            Quantity.depth(SizedReach.ROOM),
                            MANNING,
                            Saying.plain(
                                    "Leaves and snow fill so much: keep it clear, or dig it deeper"
                                            + " or wider.")));
        }
    }

    private void lining() {
        for (List<SizedReach> run :
                runs(
                        SizedReach::wantsLining,
                        reach ->
                                reach.steep().map(each -> each.lining().name()).orElse("")
                                        + reach.dams().isPresent())) {
            SizedReach worst = run.get(0);
            for (SizedReach reach : run) {
                worst = speed(reach) > speed(worst) ? reach : worst;
            }
            Lining.Flow flow = worst.steep().orElseThrow();
            findings.add(
                    Finding.of(
                            "ditch-wants-lining",
                            Level.NOTE,
                            Topic.WATER,
                            where(run),
                            Saying.of(
                                    "In the storm of your plan up to {} run {} fast down the "
                                            + ditch.side().word()
                                            + " ditch, by {}: its bare soil would wash, "
                                            + flow.lining().name()
                                            + " holds.",
                                    Quantity.flow(worst.flow()),
                                    Quantity.speed(flow.velocity()),
                                    Quantity.station(worst.foot())),
                            remedy(run)));
        }
    }

    private static double speed(SizedReach reach) {
        return reach.steep().map(Lining.Flow::velocity).orElse(0.0);
    }

    private static Saying remedy(List<SizedReach> run) {
        String line =
                "Line it so before the first rain; until grass stands, nets and straw hold it.";
        double spacing = Double.POSITIVE_INFINITY;
        double height = Double.POSITIVE_INFINITY;
        for (SizedReach reach : run) {
            if (reach.dams().isPresent()) {
                spacing = Math.min(spacing, reach.dams().get().spacing().spacing());
                height = Math.min(height, reach.dams().get().height());
            }
        }
        return Double.isInfinite(spacing)
                ? Saying.plain(line)
                : Saying.of(
                        line
                                + " Or set stone check dams in it, {} high and no farther than {} apart.",
                        Quantity.depth(height),
                        Quantity.length(spacing));
    }
}
