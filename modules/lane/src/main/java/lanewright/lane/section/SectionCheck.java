package lanewright.lane.section;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import lanewright.lane.line.Alignment;
import lanewright.lane.shape.LaneAt;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.TieIn;
import lanewright.measure.Finding;
import lanewright.measure.Finding.Level;
import lanewright.measure.Finding.Topic;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import lanewright.measure.Where;
import org.jspecify.annotations.Nullable;

/** What is wrong with a lane once its sections stand on the ground. Lives for one check. */
final class SectionCheck {

    /** A step at the end of the lane that is worth a finding, m. */
    private static final double END_STEP = 0.15;

    /** A tie-in that misses by this much is missed, m: what a level and staff can tell. */
    private static final double SAME_HEIGHT = 0.01;

    private final LaneDesign design;
    private final List<Section> sections;
    private final List<Finding> findings = new ArrayList<>();

    SectionCheck(LaneDesign design, List<Section> sections) {
        this.design = design;
        this.sections = sections;
    }

    List<Finding> findings() {
        noGround();
        open(false);
        open(true);
        folded(false);
        folded(true);
        bottoms(false);
        bottoms(true);
        ends();
        tieIn(design.start(), 0);
        tieIn(design.end(), design.length());
        kinks();
        return findings;
    }

    private void noGround() {
        for (double[] run : runs(s -> s.ground().size() == 0)) {
            add(
                    "lane-off-the-ground",
                    Level.STOP,
                    Topic.GROUND,
                    stretch(run),
                    Saying.of(
                            "No ground is known under the lane from {} to {}: no earth is counted"
                                    + " there.",
                            Quantity.station(run[0]),
                            Quantity.station(run[1])),
                    Saying.plain("Survey there, or move the lane onto the surveyed ground."));
        }
    }

    private void open(boolean right) {
        String side = right ? "right" : "left";
        for (double[] run :
                runs(s -> s.ground().size() > 0 && side(s, right).kind() == SideResult.Kind.OPEN)) {
            add(
                    "no-catch-point",
                    Level.STOP,
                    Topic.GROUND,
                    stretch(run),
                    Saying.of(
                            "On the "
                                    + side
                                    + " from {} to {} the slope does not meet the ground before the"
                                    + " survey ends: no earth is counted on that side.",
                            Quantity.station(run[0]),
                            Quantity.station(run[1])),
                    Saying.plain(
                            "Survey farther out on that side, or give it a steeper slope where the"
                                    + " soil allows one."));
        }
    }

    /** The side inside a curve that reaches the centre, where section lines cross one another. */
    private void folded(boolean right) {
        for (double[] run : runs(s -> reachesCentre(s, right))) {
            add(
                    "side-past-curve-centre",
                    Level.STOP,
                    Topic.LINE,
                    stretch(run),
                    Saying.of(
                            "From {} to {} the "
                                    + (right ? "right" : "left")
                                    + " side reaches past the centre of the curve: slopes would"
                                    + " overlap, and volumes there are not true.",
                            Quantity.station(run[0]),
                            Quantity.station(run[1])),
                    Saying.plain(
                            "Make the radius larger, or the slopes on the inside steeper where"
                                    + " the soil allows it."));
        }
    }

    private boolean reachesCentre(Section section, boolean right) {
        double limit = side(section, right).limit();
        Alignment line = design.alignment();
        return limit * line.curvature(section.station()) >= 1
                || limit * line.curvatureBefore(section.station()) >= 1;
    }

    private void bottoms(boolean right) {
        for (double[] run :
                runs(
                        s -> {
                            LaneAt lane = lane(s);
                            double bottom = right ? lane.rightBottom() : lane.leftBottom();
                            return bottom >= side(s, right).hinge().height();
                        })) {
            add(
                    "ditch-bottom-too-high",
                    Level.STOP,
                    Topic.SHAPE,
                    stretch(run),
                    Saying.of(
                            "The bottom given for the "
                                    + (right ? "right" : "left")
                                    + " ditch lies at or above the edge of the shoulder from {} to"
                                    + " {}; no ditch is dug there.",
                            Quantity.station(run[0]),
                            Quantity.station(run[1])),
                    Saying.plain("Lower the ditch bottom, or let it follow the lane there."));
        }
    }

    private LaneAt lane(Section section) {
        return section.face() == Section.Face.BEFORE
                ? design.atBefore(section.station())
                : design.at(section.station());
    }

    private void ends() {
        if (sections.isEmpty()) {
            return;
        }
        step(sections.get(0), "start");
        step(sections.get(sections.size() - 1), "far end");
    }

    /** The greatest step over the travelled way; both lines are straight between these corners. */
    private void step(Section section, String name) {
        double worst = 0;
        double from = section.left().edge().offset();
        double to = section.right().edge().offset();
        for (SectionLine line : List.of(section.ground(), section.finished())) {
            for (int i = 0; i < line.size(); i++) {
                double at = Math.min(Math.max(line.offset(i), from), to);
                double up = section.finished().at(at) - section.ground().at(at);
                worst = Math.abs(up) > Math.abs(worst) ? up : worst;
            }
        }
        if (Math.abs(worst) > END_STEP) {
            double left = section.left().edge().height() - section.ground().at(from);
            double middle = section.profileHeight() - section.ground().at(0);
            double right = section.right().edge().height() - section.ground().at(to);
            boolean twisted = Math.abs(middle) <= END_STEP;
            findings.add(
                    new Finding(
                            "step-at-end",
                            Level.LOOK,
                            Topic.GRADE,
                            Where.station(section.station()),
                            Saying.of(
                                    "At its "
                                            + name
                                            + " the finished lane makes a step: its left edge lies {} "
                                            + up(left)
                                            + " the ground as it is now, its line {} "
                                            + up(middle)
                                            + ", its right edge {} "
                                            + up(right)
                                            + ".",
                                    Quantity.height(Math.abs(left)),
                                    Quantity.height(Math.abs(middle)),
                                    Quantity.height(Math.abs(right))),
                            Quantity.height(Math.abs(worst)),
                            Quantity.height(END_STEP),
                            "our choice: what a wheel takes without a ramp",
                            Saying.plain(
                                    twisted
                                            ? "The line meets the ground; the fall across does not"
                                                    + " fit it. Have the cross slope of what lies"
                                                    + " there put into the plan, and the lane goes"
                                                    + " over into it; or grade a ramp at the edge."
                                            : "Bring the grade to the ground there, or have the"
                                                    + " height and cross slope of what the lane"
                                                    + " meets put into the plan.")));
        }
    }

    private static String up(double height) {
        return height >= 0 ? "above" : "below";
    }

    private void tieIn(@Nullable TieIn tieIn, double station) {
        if (tieIn == null || !(Math.abs(miss(tieIn, station)) > SAME_HEIGHT)) {
            return;
        }
        double miss = miss(tieIn, station);
        findings.add(
                new Finding(
                        "tie-in-missed",
                        Level.STOP,
                        Topic.GRADE,
                        Where.station(station),
                        Saying.of(
                                "At {} the grade lies {} "
                                        + (miss > 0 ? "above" : "below")
                                        + " what the lane must meet.",
                                Quantity.station(station),
                                Quantity.height(Math.abs(miss))),
                        Quantity.height(Math.abs(miss)),
                        Quantity.height(SAME_HEIGHT),
                        "our choice: what a level and staff can tell",
                        Saying.of(
                                "Put the grade point at {} at a height of {}.",
                                Quantity.station(station),
                                Quantity.height(tieIn.height()))));
    }

    private double miss(TieIn tieIn, double station) {
        return design.profile().height(station) - tieIn.height();
    }

    private void kinks() {
        for (double station : design.alignment().kinks()) {
            double angle = Math.abs(StrictMath.toDegrees(design.alignment().kinkAngle(station)));
            add(
                    "sharp-angle",
                    Level.NOTE,
                    Topic.LINE,
                    Where.station(station),
                    Saying.of(
                            "The lane turns by {} at {} without a curve; volumes there leave out"
                                    + " the wedge outside the angle and count the one inside twice.",
                            Quantity.angle(angle),
                            Quantity.station(station)),
                    Saying.plain("Give the point a radius that your longest vehicle can take."));
        }
    }

    private static SideResult side(Section section, boolean right) {
        return right ? section.right() : section.left();
    }

    /** First and last station of each run of sections that the test holds for. */
    private List<double[]> runs(Predicate<Section> test) {
        List<double[]> runs = new ArrayList<>();
        double[] run = null;
        for (Section section : sections) {
            if (!test.test(section)) {
                run = null;
            } else if (run == null) {
                run = new double[] {section.station(), section.station()};
                runs.add(run);
            } else {
                run[1] = section.station();
            }
        }
        return runs;
    }

    private static Where stretch(double[] run) {
        return Where.stretch(run[0], run[1]);
    }

    private void add(
            String code, Level level, Topic topic, Where where, Saying says, Saying remedy) {
        findings.add(Finding.of(code, level, topic, where, says, remedy));
    }
}
