package lanewright.drainage;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleFunction;
import lanewright.drainage.along.Clearance;
import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.DitchReach;
import lanewright.drainage.along.Ditches;
import lanewright.drainage.along.EdgeHeights;
import lanewright.drainage.along.LaneLine;
import lanewright.drainage.along.Side;
import lanewright.drainage.pond.GivenPipe;
import lanewright.lane.line.Place;
import lanewright.lane.section.Section;
import lanewright.lane.shape.LaneDesign;
import lanewright.lane.shape.TypicalSection;

/**
 * A first look at the ditches of a lane from its sections alone, before any surface is built: good
 * enough to choose between grades. What stands where is found by {@link WaterReport}, and overrules
 * it.
 */
public final class DitchLook {

    /** About how deep water stands over the bottom where it must pass the lane, m. Our choice. */
    private static final double HELD = 0.3;

    private final List<Section> sections;
    private final LaneLine line;
    private final DoubleFunction<TypicalSection> typical;

    private DitchLook(
            List<Section> sections, LaneLine line, DoubleFunction<TypicalSection> typical) {
        this.sections = sections;
        this.line = line;
        this.typical = typical;
    }

    /**
     * How the edges of a lane are kept clear, as far as its sections tell.
     *
     * @param sections in station order, at least one
     * @param pipes pipes that are there already and stay
     * @param edgeAbove wanted height of the edge over the ground beside it, m
     */
    public static List<Clearance.Stretch> of(
            LaneDesign design, List<Section> sections, List<GivenPipe> pipes, double edgeAbove) {
        var look =
                new DitchLook(
                        sections,
                        new OnAlignment(design.alignment()),
                        station -> design.at(station).typical());
        Ditches.Standing dry = (x, y) -> false;
        List<DitchReach> ditches = Ditches.of(sections, look.line, dry, look::passes, pipes);
        Set<DitchReach.Point> held = new HashSet<>();
        for (DitchReach ditch : ditches) {
            for (DitchReach.Point point : ditch.points()) {
                DitchReach.Outlet outlet = ditch.outletFrom(point.station());
                if (outlet != null
                        && outlet.kind() == DitchReach.Kind.CROSSING
                        && point.height() < outlet.height() + HELD) {
                    held.add(point);
                }
            }
        }
        Ditches.Standing standing =
                (x, y) -> held.stream().anyMatch(point -> point.x() == x && point.y() == y);
        return Clearance.of(
                sections,
                EdgeHeights.of(sections, ditches, standing),
                ditches,
                standing,
                edgeAbove,
                WaterTables.published().limits().ditchLeast().value());
    }

    /** Whether a pipe under the lane would fall away from the bottom of a ditch. */
    private boolean passes(double x, double y) {
        Place place = line.place(x, y);
        if (place == null) {
            return false;
        }
        Section section = sections.get(0);
        for (Section each : sections) {
            if (Math.abs(each.station() - place.station())
                    < Math.abs(section.station() - place.station())) {
                section = each;
            }
        }
        TypicalSection shape = typical.apply(section.station());
        Side side = Side.at(place.offset());
        double left = shape.left().foreslope();
        double right = shape.right().foreslope();
        var ditch = side.of(section).ditchInner();
        return ditch != null
                && CulvertLine.under(
                                section,
                                side,
                                ditch.height(),
                                side == Side.LEFT ? left : right,
                                side == Side.LEFT ? right : left)
                        .falls();
    }
}
