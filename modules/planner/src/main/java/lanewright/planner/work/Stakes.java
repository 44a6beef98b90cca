package lanewright.planner.work;

import java.util.ArrayList;
import java.util.List;
import lanewright.ground.Ground;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.Place;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionSet;
import lanewright.lane.section.SideResult;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import lanewright.stone.StoneReport;
import org.jspecify.annotations.Nullable;

/**
 * What is set in the field: offset stakes on both sides of the lane, outside the limits, since
 * stripping destroys everything inside; then stakes on the lane itself, and marks for the loads.
 *
 * @param stakes offset stakes in station order, left before right
 * @param marks stakes at the line and at both edges, in station order
 * @param loads where each load of stone starts and stops, by layer in the order of laying
 * @param benchmark name of the point that all heights are taken from, or null; then no height is
 *     given
 * @param benchmarkHeight its height, m, NaN without one
 * @param benchmarkX its local easting, m, NaN without one
 * @param benchmarkY its local northing, m, NaN without one
 * @param findings what is missing
 */
public record Stakes(
        List<Stake> stakes,
        List<LaneMark> marks,
        List<LoadMark> loads,
        @Nullable String benchmark,
        double benchmarkHeight,
        double benchmarkX,
        double benchmarkY,
        List<Finding> findings) {

    /** Copies the lists. */
    public Stakes {
        stakes = List.copyOf(stakes);
        marks = List.copyOf(marks);
        loads = List.copyOf(loads);
        findings = List.copyOf(findings);
    }

    /**
     * What heights are taken from.
     *
     * @param name of the benchmark
     * @param height m above the datum
     * @param instrument height of the line of sight, m above the datum, NaN if not set up
     * @param x local easting of the benchmark, m
     * @param y local northing of the benchmark, m
     */
    public record Levels(String name, double height, double instrument, double x, double y) {}

    /**
     * Stakes at every section, one row where two stand closer than stakes can, and marks for every
     * load.
     *
     * @param set the sections
     * @param ground the ground that the stakes stand on
     * @param levels what heights are taken from, or null to give none
     * @param beyond how far outside the limits the offset stakes stand, m, zero or more
     * @param stone the loads
     */
    public static Stakes of(
            SectionSet set,
            Ground ground,
            @Nullable Levels levels,
            double beyond,
            StoneReport stone) {
        List<Stake> stakes = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        if (levels == null) {
            findings.add(
                    Finding.of(
                            "no-benchmark",
                            Level.LOOK,
                            Topic.FIELD,
                            Where.ANYWHERE,
                            Saying.plain(
                                    "No benchmark is named, so stakes carry distances and no heights."),
                            Saying.plain(
                                    "Choose a fixed point, measure its height, and name it in the plan as a benchmark; until then the machine has no height to work to.")));
        }
        List<Section> staked = MarkSetting.staked(set.sections());
        for (Section section : staked) {
            add(set.design().alignment(), section, ground, levels, beyond, stakes, findings);
        }
        shared(set.sections(), staked.size(), findings);
        return new Stakes(
                stakes,
                MarkSetting.onLane(set, staked, ground, levels),
                MarkSetting.ofLoads(set, stone),
                levels == null ? null : levels.name(),
                levels == null ? Double.NaN : levels.height(),
                levels == null ? Double.NaN : levels.x(),
                levels == null ? Double.NaN : levels.y(),
                findings);
    }

    /**
     * Reading of a rod held at a height: line of sight less that height (the grade rod of field
     * practice).
     *
     * @param instrument height of the line of sight, m
     * @param height of what the rod stands on, m
     */
    public static double rod(double instrument, double height) {
        return instrument - height;
    }

    /** Says how many sections share the row of a neighbour, if any do. */
    private static void shared(List<Section> sections, int rows, List<Finding> findings) {
        long places =
                sections.stream().filter(section -> section.face() != Section.Face.AFTER).count();
        if (places > rows) {
            long left = places - rows;
            findings.add(
                    Finding.of(
                            "stakes-shared",
                            Level.NOTE,
                            Topic.FIELD,
                            Where.ANYWHERE,
                            Saying.of(
                                    "{} "
                                            + (left == 1 ? "section stands" : "sections stand")
                                            + " closer than {} to another; one row of stakes is set"
                                            + " for both.",
                                    Quantity.count((double) left),
                                    Quantity.length(MarkSetting.APART)),
                            Saying.plain("Nothing to do.")));
        }
    }

    private static void add(
            Alignment line,
            Section section,
            Ground ground,
            @Nullable Levels levels,
            double beyond,
            List<Stake> stakes,
            List<Finding> findings) {
        for (boolean right : new boolean[] {false, true}) {
            SideResult side = right ? section.right() : section.left();
            Corner meeting = side.catchPoint();
            if (meeting == null) {
                continue;
            }
            double offset = Math.abs(side.limit()) + beyond;
            Place place = new Place(section.station(), right ? offset : -offset);
            double x = line.x(place);
            double y = line.y(place);
            double height = ground.heightAt(x, y);
            if (Double.isNaN(height)) {
                findings.add(
                        Finding.of(
                                "stake-off-ground",
                                Level.LOOK,
                                Topic.FIELD,
                                Where.beside(section.station(), place.offset()).at(x, y),
                                Saying.of(
                                        "The stake at {} stands where nothing was surveyed, so it has no heights.",
                                        Quantity.station(section.station())),
                                Saying.plain(
                                        "Survey the ground there, or set stakes nearer to the limits.")));
            }
            double shown = levels == null ? Double.NaN : height;
            double sight = levels == null ? Double.NaN : levels.instrument();
            Corner ditch = side.ditchInner();
            stakes.add(
                    new Stake(
                            section.station(),
                            right,
                            offset,
                            x,
                            y,
                            shown,
                            offset - Math.abs(meeting.offset()),
                            offset - Math.abs(side.hinge().offset()),
                            side.hinge().height() - shown,
                            ditch == null ? Double.NaN : offset - Math.abs(ditch.offset()),
                            ditch == null ? Double.NaN : ditch.height() - shown,
                            offset,
                            section.profileHeight() - shown,
                            rod(sight, side.hinge().height()),
                            ditch == null ? Double.NaN : rod(sight, ditch.height()),
                            rod(sight, section.profileHeight())));
        }
    }
}
