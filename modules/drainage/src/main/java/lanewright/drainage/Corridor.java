package lanewright.drainage;

import java.util.List;
import lanewright.drainage.along.LaneLine;
import lanewright.drainage.along.Side;
import lanewright.lane.line.Place;
import lanewright.lane.section.Section;
import lanewright.lane.section.SideResult;
import org.jspecify.annotations.Nullable;

/** The limits of work on the map, straight from section to section. */
final class Corridor {

    private final LaneLine line;
    private final List<Section> sections;

    Corridor(LaneLine line, List<Section> sections) {
        if (sections.isEmpty()) {
            throw new IllegalArgumentException("a lane without sections has no limits");
        }
        this.line = line;
        this.sections = sections;
    }

    /** The place of a point beside the lane, or null off its ends. */
    @Nullable Place place(double x, double y) {
        return line.place(x, y);
    }

    /** Whether a place lies within the limits of work. */
    boolean holds(Place place) {
        return place.offset() >= between(place.station(), Bound.LEFT_LIMIT)
                && place.offset() <= between(place.station(), Bound.RIGHT_LIMIT);
    }

    /** What part of the land a place lies in. */
    Pool.Zone zone(Place place) {
        double station = place.station();
        double offset = place.offset();
        if (offset >= between(station, Bound.LEFT_EDGE)
                && offset <= between(station, Bound.RIGHT_EDGE)) {
            return Pool.Zone.LANE;
        }
        boolean shaped =
                offset >= between(station, Bound.LEFT_CATCH) - HAIR
                        && offset <= between(station, Bound.RIGHT_CATCH) + HAIR;
        boolean ditched = Side.at(offset).of(nearest(station)).ditchInner() != null;
        return shaped && ditched ? Pool.Zone.DITCH : Pool.Zone.GROUND;
    }

    /** Whether a place lies on the lane, its shoulders included: water there runs over it. */
    boolean onTop(Place place) {
        return place.offset() >= between(place.station(), Bound.LEFT_HINGE) - HAIR
                && place.offset() <= between(place.station(), Bound.RIGHT_HINGE) + HAIR;
    }

    /**
     * A point on the catch line belongs to the side that made it; so near it is on it, m. The catch
     * line runs on between the sections where this takes it as straight.
     */
    private static final double HAIR = 0.05;

    private enum Bound {
        LEFT_LIMIT,
        LEFT_CATCH,
        LEFT_HINGE,
        LEFT_EDGE,
        RIGHT_EDGE,
        RIGHT_HINGE,
        RIGHT_CATCH,
        RIGHT_LIMIT;

        double of(Section section) {
            return switch (this) {
                case LEFT_LIMIT -> section.left().limit();
                case LEFT_CATCH -> caught(section.left());
                case LEFT_HINGE -> section.left().hinge().offset();
                case LEFT_EDGE -> section.left().edge().offset();
                case RIGHT_EDGE -> section.right().edge().offset();
                case RIGHT_HINGE -> section.right().hinge().offset();
                case RIGHT_CATCH -> caught(section.right());
                case RIGHT_LIMIT -> section.right().limit();
            };
        }

        private static double caught(SideResult side) {
            return side.catchPoint() == null ? side.limit() : side.catchPoint().offset();
        }
    }

    private double between(double station, Bound bound) {
        int after = 0;
        int end = sections.size();
        while (after < end) {
            int middle = (after + end) / 2;
            if (sections.get(middle).station() < station) {
                after = middle + 1;
            } else {
                end = middle;
            }
        }
        if (after == 0) {
            return bound.of(sections.get(0));
        }
        if (after == sections.size()) {
            return bound.of(sections.get(after - 1));
        }
        Section a = sections.get(after - 1);
        Section b = sections.get(after);
        double share = (station - a.station()) / (b.station() - a.station());
        return bound.of(a) + share * (bound.of(b) - bound.of(a));
    }

    /** The section nearest to a station. */
    Section nearest(double station) {
        Section nearest = sections.get(0);
        for (Section section : sections) {
            if (Math.abs(section.station() - station) < Math.abs(nearest.station() - station)) {
                nearest = section;
            }
        }
        return nearest;
    }
}
