package lanewright.lane.section;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lanewright.lane.section.Section.Face;
import lanewright.lane.shape.LaneAt;
import lanewright.lane.shape.LaneDesign;
import org.jspecify.annotations.Nullable;

/**
 * Walks a lane piece by piece, standing sections and looking for changes between them. Its memory
 * is used again; what it makes depends on nothing but the lane and the ground. For one thread.
 */
final class PieceWalk {

    /** Catch points that part by more than this over no distance have jumped, m. Our choice. */
    private static final double JUMP = 0.01;

    /** Changes sought between two looks at most. Our choice: two sides, each there and back. */
    private static final int MOST_CHANGES = 8;

    /** Never read farther than this, m: no lane's slope runs half a kilometre. */
    private static final double LAST_REACH = 512;

    /** What will be read of the ground, and whether it will be asked for again. */
    private enum Reading {
        ALL,
        ALL_ONCE,
        HEIGHTS,
        HEIGHTS_ONCE
    }

    private final LaneDesign design;
    private final GroundSource source;
    private final SectionCutter cutter;
    private final double[] kinks;
    private final double reach;
    private final List<Section> sections = new ArrayList<>();
    private final List<Piece.Seen> lanes = new ArrayList<>();
    private int looks;
    private int measured;

    /**
     * A walk along a lane.
     *
     * @param reach how far to read the ground on each side at first, m
     */
    PieceWalk(LaneDesign design, GroundSource source, double reach) {
        this.design = design;
        this.source = source;
        this.reach = reach;
        this.cutter = new SectionCutter(design.at(0));
        this.kinks = design.alignment().kinks();
    }

    /**
     * A piece of the lane.
     *
     * @param before the stop where it begins, or null at the start of the lane
     * @param last the piece that ends there, if it is at hand
     * @param stop the stop where it ends
     */
    Piece piece(@Nullable Stop before, @Nullable Piece last, Stop stop) {
        sections.clear();
        lanes.clear();
        looks = 0;
        measured = 0;
        double to = stop.station();
        LaneAt lane = lane(to, false);
        Section after = cut(to, false, lane);
        Look end = Look.of(cutter);
        LaneAt laneBefore = lane(to, true);
        boolean same = laneBefore.equals(lane) && !turned(to, true);
        if (before != null) {
            double from = before.station();
            LaneAt start = lane(from, false);
            Look first = last == null ? look(from, false, start, Reading.ALL) : last.end();
            Look almost = same ? end : look(to, true, laneBefore, Reading.ALL);
            between(first, almost, from, to);
        }
        stand(after, stop, same ? null : laneBefore);
        return new Piece(
                before == null ? Double.NaN : before.station(),
                stop,
                lanes,
                sections,
                end,
                new SectionWork(0, 0, looks, measured));
    }

    /** The section at a station, whatever stands near it. */
    Section single(double station) {
        lanes.clear();
        return cut(station, false, lane(station, false));
    }

    /** Stands one section at a stop, or two if it jumps. */
    private void stand(Section at, Stop stop, @Nullable LaneAt laneBefore) {
        Section after = at;
        if (!sections.isEmpty() && sections.get(sections.size() - 1).station() == stop.station()) {
            after = after.facing(Face.AFTER);
        }
        if (stop.mayJump() && laneBefore != null) {
            Section before = cut(stop.station(), true, laneBefore);
            if (!before.equals(after.facing(Face.SINGLE))) {
                sections.add(before.facing(Face.BEFORE));
                after = after.facing(Face.AFTER);
            }
        }
        sections.add(after);
    }

    /** What the lane is at a station, written down: what comes out must depend on nothing else. */
    private LaneAt lane(double station, boolean before) {
        LaneAt lane = before ? design.atBefore(station) : design.at(station);
        lanes.add(new Piece.Seen(station, before, lane));
        return lane;
    }

    private Section cut(double station, boolean before, LaneAt lane) {
        GroundAcross ground = follow(station, before, lane, Reading.ALL);
        measured++;
        return cutter.take(station, Face.SINGLE, lane, ground);
    }

    private boolean turned(double station, boolean before) {
        return before && Arrays.binarySearch(kinks, station) >= 0;
    }

    /** Follows both sides with as much ground as they need. */
    private GroundAcross follow(double station, boolean before, LaneAt lane, Reading reading) {
        boolean turned = turned(station, before);
        looks++;
        boolean glance = reading == Reading.HEIGHTS || reading == Reading.HEIGHTS_ONCE;
        for (double far = glance ? reach / 2 : reach; ; far *= 2) {
            GroundAcross ground =
                    switch (reading) {
                        case ALL -> source.across(station, turned, far);
                        case ALL_ONCE -> source.glance(station, turned, far);
                        case HEIGHTS -> source.heights(station, turned, far);
                        case HEIGHTS_ONCE -> source.glanceHeights(station, turned, far);
                    };
            cutter.follow(lane, design.margin(), ground);
            boolean more = cutter.left().isUnread() || cutter.right().isUnread();
            if (!more || far >= LAST_REACH) {
                return ground;
            }
        }
    }

    private Look look(double station, boolean before, LaneAt lane, Reading reading) {
        follow(station, before, lane, reading);
        return Look.of(cutter);
    }

    private Look look(double station, Reading reading) {
        return look(station, false, lane(station, false), reading);
    }

    /** Finds what changes between two stations and stands two sections at each change. */
    private void between(Look first, Look last, double from, double to) {
        int steps = (int) Math.ceil((to - from) / Sections.LOOK - Sections.SAME_STATION);
        Look low = first;
        double a = from;
        for (int i = 1; i <= steps; i++) {
            double b = i == steps ? to : from + (to - from) * i / steps;
            Look high = i == steps ? last : look(b, Reading.HEIGHTS);
            changes(low, high, a, b, i == steps);
            low = high;
            a = b;
        }
    }

    /**
     * Stands two sections at each change between two looks.
     *
     * @param known whether a section will stand at {@code to} in any case
     */
    private void changes(Look first, Look last, double from, double to, boolean known) {
        Look low = first;
        double a = from;
        for (int i = 0; i < MOST_CHANGES; i++) {
            boolean kinds = !low.sameKinds(last);
            if (!kinds && low.parted(last) <= Math.max(JUMP, to - a)) {
                return;
            }
            Bracket found = new Bracket(a, to, low, last);
            found.close(kinds);
            if (!kinds && found.near.parted(found.far) <= JUMP) {
                return;
            }
            sections.add(moved(found.a, found.b, Face.BEFORE));
            if (known && found.b >= to) {
                return;
            }
            sections.add(moved(found.b, found.b, Face.AFTER));
            a = found.b;
            low = found.far;
        }
    }

    /** Two stations between which something changes, closing in on it. */
    private final class Bracket {
        private double a;
        private double b;
        private Look near;
        private Look far;

        Bracket(double a, double b, Look near, Look far) {
            this.a = a;
            this.b = b;
            this.near = near;
            this.far = far;
        }

        /** Halves until the change is found; without a change of kind, the greater step is kept. */
        void close(boolean kinds) {
            while (b - a > Sections.FOUND) {
                double middle = (a + b) / 2;
                Look half = look(middle, Reading.HEIGHTS_ONCE);
                boolean beyond =
                        kinds ? !half.sameKinds(near) : half.parted(near) > half.parted(far);
                if (beyond) {
                    b = middle;
                    far = half;
                } else {
                    a = middle;
                    near = half;
                }
            }
        }
    }

    /** The section at a station {@code at}, said to stand at {@code station} a hair away. */
    private Section moved(double at, double station, Face face) {
        LaneAt lane = lane(at, false);
        GroundAcross ground = follow(at, false, lane, Reading.ALL_ONCE);
        measured++;
        return cutter.take(station, face, lane, ground);
    }
}
