package lanewright.sheets.figure;

import java.util.List;
import lanewright.lane.line.VerticalPoint;
import lanewright.lane.section.Corner;
import lanewright.lane.section.Section;
import lanewright.lane.section.SectionLine;
import lanewright.measure.UnitSystem;
import org.jspecify.annotations.Nullable;

/**
 * The part of a lane that one profile shows.
 *
 * @param sections in it, in station order
 * @param points vertical points of the whole lane
 * @param pools water in it
 * @param pipes in it
 * @param road the road's ditch, or null if it is not in it
 * @param reliefs proposals in it to lead water off
 * @param units in which it is read
 * @param from first station, m
 * @param to last station, m
 */
record Stretch(
        List<Section> sections,
        List<VerticalPoint> points,
        List<StandingWater> pools,
        List<PipeUnder> pipes,
        @Nullable RoadDitch road,
        List<ReliefMark> reliefs,
        UnitSystem units,
        double from,
        double to) {

    /** Ground shown before a road's ditch that lies before the lane, m. */
    private static final double BANK = 1.5;

    static Stretch of(Unrolled lane, double from, double to) {
        if (!(from < to)) {
            throw new IllegalArgumentException("a profile runs forward: " + from + " to " + to);
        }
        return new Stretch(
                lane.sections().stream()
                        .filter(s -> s.station() >= from && s.station() <= to)
                        .toList(),
                lane.points(),
                lane.pools().stream()
                        .filter(pool -> pool.to() >= from && pool.from() <= to)
                        .toList(),
                lane.pipes().stream()
                        .filter(pipe -> pipe.station() >= from && pipe.station() <= to)
                        .toList(),
                from <= 0 ? lane.road() : null,
                lane.reliefs().stream()
                        .filter(mark -> mark.station() >= from && mark.station() <= to)
                        .toList(),
                lane.units(),
                from,
                to);
    }

    /** How much of the land before the lane is shown, m. */
    double before() {
        return road == null || road.station() > 0 ? 0 : BANK - road.station();
    }

    /** Lowest and highest height to be seen, m. */
    double[] range() {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Section section : sections) {
            for (double z :
                    new double[] {
                        ground(section),
                        section.profileHeight(),
                        subgrade(section),
                        leftDitch(section),
                        rightDitch(section)
                    }) {
                low = Double.isFinite(z) ? Math.min(low, z) : low;
                high = Double.isFinite(z) ? Math.max(high, z) : high;
            }
        }
        for (StandingWater pool : pools) {
            low = Math.min(low, pool.bottom());
        }
        for (PipeUnder pipe : pipes) {
            low = Math.min(low, pipe.low());
        }
        if (road != null) {
            low = Math.min(low, road.bottom());
        }
        if (!(low <= high)) {
            return new double[] {0, 1};
        }
        return new double[] {low, Math.max(high, low + 0.5)};
    }

    /**
     * Stations and heights of the ground along the line, m: that of the sections, and about the
     * road's ditch, which lies between sections, that of the land itself.
     */
    double[][] groundLine() {
        SectionLine near = road == null ? null : road.along();
        int more = near == null ? 0 : near.size();
        double known = near == null ? Double.NEGATIVE_INFINITY : near.offset(more - 1);
        List<Section> beyond = sections.stream().filter(s -> s.station() > known).toList();
        double[] stations = new double[more + beyond.size()];
        double[] heights = new double[stations.length];
        for (int i = 0; near != null && i < more; i++) {
            stations[i] = near.offset(i);
            heights[i] = near.height(i);
        }
        for (int i = 0; i < beyond.size(); i++) {
            stations[more + i] = beyond.get(i).station();
            heights[more + i] = ground(beyond.get(i));
        }
        return new double[][] {stations, heights};
    }

    /** Height of the finished lane between its sections, m. */
    double finishedAt(double station, double otherwise) {
        for (int i = 1; i < sections.size(); i++) {
            Section a = sections.get(i - 1);
            Section b = sections.get(i);
            if (station >= a.station() && station <= b.station() && b.station() > a.station()) {
                double part = (station - a.station()) / (b.station() - a.station());
                return a.profileHeight() + part * (b.profileHeight() - a.profileHeight());
            }
        }
        return otherwise;
    }

    static double ground(Section section) {
        return section.ground().at(0);
    }

    static double stripped(Section section) {
        return section.stripped().at(0);
    }

    static double subgrade(Section section) {
        return section.subgrade().at(0);
    }

    static double leftDitch(Section section) {
        return height(section.left().ditchInner());
    }

    static double rightDitch(Section section) {
        return height(section.right().ditchInner());
    }

    private static double height(@Nullable Corner corner) {
        return corner == null ? Double.NaN : corner.height();
    }
}
