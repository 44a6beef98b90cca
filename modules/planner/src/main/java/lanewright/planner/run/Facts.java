package lanewright.planner.run;

import java.util.ArrayList;
import java.util.List;
import lanewright.drainage.WaterReport;
import lanewright.drainage.WetPlace;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Side;
import lanewright.earthwork.EarthworkReport;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionSet;
import lanewright.lane.volume.LaneVolumes;
import lanewright.measure.Saying;
import lanewright.planner.document.Plan;
import lanewright.planner.document.WaterPart;
import lanewright.planner.listing.PipeListings;
import lanewright.planner.listing.WaterListings;
import lanewright.planner.pipes.PipeJob;
import lanewright.planner.work.Hazard;
import lanewright.planner.work.Hazards;
import lanewright.planner.work.HeapPlaces;
import lanewright.planner.work.WorkFacts;
import lanewright.stone.StoneReport;

/** Gathers from all rooms what the order of work is written from. */
final class Facts {

    private Facts() {}

    static WorkFacts of(
            Plan plan,
            SectionSet sections,
            LaneVolumes volumes,
            EarthworkReport earth,
            WaterReport water,
            List<PipeJob> pipes,
            StoneReport stone,
            List<Hazard> hazards,
            Hazards met,
            HeapPlaces heaps,
            boolean stripAtLeast) {
        double stoneLand = stoneLand(sections.sections());
        double disturbed = volumes.disturbed().corrected();
        return new WorkFacts(
                sections.design().length(),
                disturbed,
                volumes.strip().corrected(),
                stripAtLeast,
                heaps,
                volumes.cut().corrected(),
                volumes.earthFill(),
                plan.earth().lift(),
                earth.deepestFill(),
                volumes.undercut().corrected(),
                ditches(water, Side.LEFT),
                ditches(water, Side.RIGHT),
                waterWork(water),
                (int)
                        plan.water().pipes().stream()
                                .filter(pipe -> pipe.state() == WaterPart.PipeState.THERE)
                                .count(),
                toLay(water, pipes),
                plan.stone().fabric() ? stoneLand : 0,
                stone.layers(),
                volumes.topsoilBack().corrected(),
                Math.max(0, disturbed - stoneLand),
                has(hazards, Hazard.Kind.BURIED_PUBLIC),
                has(hazards, Hazard.Kind.BURIED_PRIVATE),
                met.belowWires(),
                true);
    }

    /** What each pipe of the plan is, and what is dug, bedded and laid for it. */
    private static List<Saying> toLay(WaterReport water, List<PipeJob> pipes) {
        List<Saying> lines = new ArrayList<>(WaterListings.toLay(water, pipes));
        for (PipeJob job : pipes) {
            if (job.planned() && job.fits()) {
                lines.addAll(PipeListings.steps(job));
            }
        }
        return lines;
    }

    private static boolean has(List<Hazard> hazards, Hazard.Kind kind) {
        return hazards.stream().anyMatch(each -> each.kind() == kind);
    }

    /** Area in plan under the stone, m². */
    private static double stoneLand(List<Section> sections) {
        double area = 0;
        for (int i = 1; i < sections.size(); i++) {
            Section a = sections.get(i - 1);
            Section b = sections.get(i);
            area += (b.station() - a.station()) * (stoneWidth(a) + stoneWidth(b)) / 2;
        }
        return area;
    }

    private static double stoneWidth(Section section) {
        return section.right().stoneLow().offset() - section.left().stoneLow().offset();
    }

    private static double ditches(WaterReport water, Side side) {
        double length = 0;
        for (DitchReach reach : water.ditches()) {
            if (reach.side() == side) {
                length += reach.to() - reach.from();
            }
        }
        return length;
    }

    /** What to do at each wet place, in station order. */
    static List<Saying> waterWork(WaterReport water) {
        List<Saying> work = new ArrayList<>();
        for (WetPlace place : water.places()) {
            if (place.kind() != WetPlace.Kind.HOLLOW) {
                work.add(WaterListings.work(place));
            }
        }
        return work;
    }

    /** Greatest depth of water that the lane holds back as a dam would, m; zero if none. */
    static double dammed(WaterReport water) {
        double deepest = 0;
        for (WetPlace place : water.places()) {
            if (place.kind() == WetPlace.Kind.DAMMED) {
                deepest = Math.max(deepest, place.depth());
            }
        }
        return deepest;
    }
}
