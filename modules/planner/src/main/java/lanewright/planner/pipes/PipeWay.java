package lanewright.planner.pipes;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import lanewright.drainage.along.CulvertLine;
import lanewright.ground.Ground;
import lanewright.ground.VertexField;
import lanewright.lane.line.Place;
import lanewright.lane.section.Corner;
import lanewright.lane.section.GroundLines;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionCutter;
import lanewright.lane.section.SectionLine;
import lanewright.lane.section.SectionSet;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.TypicalSection;

/**
 * What lies over a pipe along its barrel: ground, stripped ground, subgrade and finished surface,
 * straight between the places where it stands.
 *
 * <p>Where the pipe lies square to the lane, it stands at every corner of the section there, so
 * that nothing is lost; where it is slanted, every quarter of a metre.
 *
 * @param stands in the order of the water, beginning at the upper end of the barrel
 * @param plan distance from foot to foot seen from above, m
 * @param inlet height of the invert at the upper foot, m
 * @param grade fall of the invert, rise over run in plan
 */
public record PipeWay(List<Stand> stands, double plan, double inlet, double grade) {

    /** Slanted pipes are looked at every so often, m. Our choice. */
    private static final double STEP = 0.25;

    /** To both sides of a corner, m, so that an upright step stays upright. */
    private static final double BESIDE = 1e-6;

    /** The ground is read this much farther out than the slopes reach, m. Our choice. */
    private static final double ROOM = 20;

    /**
     * One place along a barrel.
     *
     * @param along distance from the foot at the inlet, seen from above, m; negative before it
     * @param station of the place, m
     * @param offset of the place, m
     * @param ground height of the ground as it is, m
     * @param stripped height of the ground less its topsoil, m
     * @param subgrade height of the earth as shaped, m
     * @param finished height of the finished surface, m
     * @param driven whether it lies under the travelled way
     */
    public record Stand(
            double along,
            double station,
            double offset,
            double ground,
            double stripped,
            double subgrade,
            double finished,
            boolean driven) {}

    /** Copies the list. */
    public PipeWay {
        stands = List.copyOf(stands);
    }

    /** Height of the invert, m. */
    public double invert(double along) {
        return inlet - grade * along;
    }

    /**
     * How far from the foot at its inlet or outlet the finished surface first stands a height above
     * the invert, seen from above, m; NaN where it does not before the travelled way.
     *
     * @param over above the invert, m
     * @param isInlet whether to go from the inlet; else from the outlet
     */
    public double reaches(double over, boolean isInlet) {
        double lastAt = Double.NaN;
        double last = Double.NaN;
        for (int i = 0; i < stands.size(); i++) {
            Stand stand = stands.get(isInlet ? i : stands.size() - 1 - i);
            double at = isInlet ? stand.along() : plan - stand.along();
            double above = stand.finished() - invert(stand.along());
            if (at >= 0 && above >= over) {
                boolean between = last < over && above > last;
                double share = between ? (over - last) / (above - last) : 1;
                return Math.max(0, between ? lastAt + share * (at - lastAt) : at);
            }
            if (stand.driven()) {
                return Double.NaN;
            }
            last = above;
            lastAt = at;
        }
        return Double.NaN;
    }

    /**
     * The same with the slopes cut away down to the invert in front of headwalls.
     *
     * @param first how far the wall stands inside the foot at the inlet, seen from above, m
     * @param last the same at the outlet, m
     */
    public PipeWay walled(double first, double last) {
        List<Stand> cut = new ArrayList<>();
        for (int i = 0; i < stands.size(); i++) {
            Stand stand = stands.get(i);
            if (i > 0) {
                for (double at : new double[] {first, plan - last}) {
                    for (double side : new double[] {at - BESIDE, at + BESIDE}) {
                        if (side > stands.get(i - 1).along() && side < stand.along()) {
                            cut.add(down(between(stands.get(i - 1), stand, side), first, last));
                        }
                    }
                }
            }
            cut.add(down(stand, first, last));
        }
        return new PipeWay(cut, plan, inlet, grade);
    }

    private Stand down(Stand stand, double first, double last) {
        double at = stand.along();
        boolean before = (at >= 0 && at < first) || (at <= plan && at > plan - last);
        double most = before ? invert(at) : Double.POSITIVE_INFINITY;
        return new Stand(
                at,
                stand.station(),
                stand.offset(),
                stand.ground(),
                Math.min(most, stand.stripped()),
                Math.min(most, stand.subgrade()),
                Math.min(most, stand.finished()),
                stand.driven());
    }

    private static Stand between(Stand a, Stand b, double along) {
        double share = (along - a.along()) / (b.along() - a.along());
        return new Stand(
                along,
                a.station() + share * (b.station() - a.station()),
                a.offset() + share * (b.offset() - a.offset()),
                a.ground() + share * (b.ground() - a.ground()),
                a.stripped() + share * (b.stripped() - a.stripped()),
                a.subgrade() + share * (b.subgrade() - a.subgrade()),
                a.finished() + share * (b.finished() - a.finished()),
                a.driven() && b.driven());
    }

    /** Length along the barrel of one metre seen from above. */
    public double slant() {
        return Math.sqrt(1 + grade * grade);
    }

    /**
     * What lies over a pipe.
     *
     * @param sections of the lane
     * @param ground as it is
     * @param topsoil its depth, m
     * @param line how the pipe lies, from foot to foot
     * @param before how far it goes on beyond the foot at its inlet, m
     * @param after how far it goes on beyond the foot at its outlet, m
     */
    public static PipeWay of(
            SectionSet sections,
            Ground ground,
            VertexField topsoil,
            CulvertLine line,
            double before,
            double after) {
        return of(sections, ground, topsoil, line, before, after, 0);
    }

    /**
     * The same under the lane raised: what lies between its hinges goes up, its foreslopes run on
     * down to what is there now, and the ditches stay.
     *
     * @param raise m, zero or more
     */
    public static PipeWay of(
            SectionSet sections,
            Ground ground,
            VertexField topsoil,
            CulvertLine line,
            double before,
            double after,
            double raise) {
        double plan = Math.sqrt(Math.max(0, line.length() * line.length() - sq(line.fall())));
        var walk = new Walk(sections, ground, topsoil, line, plan, raise);
        var alongs = new TreeSet<Double>();
        alongs.add(-before);
        alongs.add(plan + after);
        for (double foot : raise > 0 ? new double[] {0, plan} : new double[0]) {
            if (foot > -before && foot < plan + after) {
                alongs.add(foot);
            }
        }
        if (line.isSlanted()) {
            int parts = (int) Math.ceil((plan + before + after) / STEP);
            for (int i = 1; i < parts; i++) {
                alongs.add(-before + i * (plan + before + after) / parts);
            }
        } else {
            Section section = walk.section(line.station());
            for (SectionLine each :
                    List.of(
                            section.ground(),
                            section.stripped(),
                            section.subgrade(),
                            section.finished())) {
                for (int i = 0; i < each.size(); i++) {
                    double along = walk.along(each.offset(i));
                    if (along - BESIDE > -before && along + BESIDE < plan + after) {
                        alongs.add(along - BESIDE);
                        alongs.add(along + BESIDE);
                    }
                }
            }
        }
        List<Stand> stands = new ArrayList<>();
        for (double along : alongs) {
            Stand stand = walk.stand(along);
            if (!Double.isNaN(stand.ground())) {
                stands.add(stand);
            }
        }
        return new PipeWay(stands, plan, line.inlet().height(), line.fall() / plan);
    }

    private static double sq(double value) {
        return value * value;
    }

    /** Looks along one pipe; lives for one call. */
    private static final class Walk {
        private final SectionSet sections;
        private final Ground ground;
        private final CulvertLine line;
        private final double plan;
        private final double raise;
        private final GroundLines lines;
        private Section last;

        Walk(
                SectionSet sections,
                Ground ground,
                VertexField topsoil,
                CulvertLine line,
                double plan,
                double raise) {
            this.sections = sections;
            this.ground = ground;
            this.line = line;
            this.plan = plan;
            this.raise = raise;
            this.lines = new GroundLines(sections.design().alignment(), ground, topsoil, null);
            this.last = cut(line.station());
        }

        double along(double offset) {
            double across = line.outlet().offset() - line.inlet().offset();
            return (offset - line.inlet().offset()) / across * plan;
        }

        Stand stand(double along) {
            double share = along / plan;
            double station = line.station() + share * (line.outletStation() - line.station());
            double length = sections.design().length();
            double kept = Math.max(0, Math.min(length, station));
            double offset =
                    line.inlet().offset()
                            + share * (line.outlet().offset() - line.inlet().offset());
            Section section = section(kept);
            double land = section.ground().at(offset);
            if (Double.isNaN(land)) {
                var place = new Place(kept, offset);
                land =
                        ground.heightAt(
                                sections.design().alignment().x(place),
                                sections.design().alignment().y(place));
            }
            double stripped = or(section.stripped().at(offset), land);
            double subgrade = or(section.subgrade().at(offset), stripped);
            double finished = or(section.finished().at(offset), land);
            TypicalSection shape = sections.design().at(kept).typical();
            double lifted = lifted(section, shape, offset);
            double back = shape.topsoilBack();
            return new Stand(
                    along,
                    kept,
                    offset,
                    land,
                    stripped,
                    Double.isNaN(lifted) ? subgrade + raise : Math.max(subgrade, lifted - back),
                    Double.isNaN(lifted) ? finished + raise : Math.max(finished, lifted),
                    offset >= section.left().edge().offset()
                            && offset <= section.right().edge().offset());
        }

        /** Height of the raised foreslope outside a hinge, m; NaN between the hinges. */
        private double lifted(Section section, TypicalSection shape, double offset) {
            Corner left = section.left().hinge();
            Corner right = section.right().hinge();
            if (raise > 0 && offset < left.offset()) {
                return left.height() + raise - (left.offset() - offset) / shape.left().foreslope();
            }
            if (raise > 0 && offset > right.offset()) {
                return right.height()
                        + raise
                        - (offset - right.offset()) / shape.right().foreslope();
            }
            return Double.NaN;
        }

        private static double or(double height, double otherwise) {
            return Double.isNaN(height) ? otherwise : height;
        }

        Section section(double station) {
            if (last.station() != station) {
                last = cut(station);
            }
            return last;
        }

        /** The section at a station, or the nearest one where it does not meet the ground. */
        private Section cut(double station) {
            Section nearest = sections.sections().get(0);
            for (Section section : sections.sections()) {
                if (Math.abs(section.station() - station) < Math.abs(nearest.station() - station)) {
                    nearest = section;
                }
            }
            LaneDesign design = sections.design();
            double reach = ROOM + Math.max(nearest.right().limit(), -nearest.left().limit());
            Section section =
                    new SectionCutter(design.at(station))
                            .cut(
                                    station,
                                    Section.Face.SINGLE,
                                    design.at(station),
                                    design.margin(),
                                    lines.across(station, false, reach));
            return section.complete() ? section : nearest;
        }
    }
}
