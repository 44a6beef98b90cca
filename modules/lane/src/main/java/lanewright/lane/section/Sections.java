package lanewright.lane.section;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import lanewright.ground.Ground;
import lanewright.ground.VertexField;
import lanewright.lane.section.Section.Face;
import lanewright.lane.shape.LaneAt;
import lanewright.lane.shape.LaneDesign;
import lanewright.measure.Progress;
import org.jspecify.annotations.Nullable;

/**
 * Stands sections along a lane: at zero and the end, at every multiple of the interval, at every
 * join of tangent, arc and parabola, at every limit of a stretch, and wherever a side changes
 * between cut, ditch and fill or its catch point jumps.
 *
 * <p>Changes are looked for every {@value #LOOK} m and then closed in on; one that comes and goes
 * again between two looks is not seen.
 */
public final class Sections {

    /** Distance between looks for a change of kind, m. Our choice: shorter than a machine. */
    static final double LOOK = 0.5;

    /**
     * A change is closed in on to this, m. A millimetre would do on the ground; this little keeps
     * volumes the same to one part in 10⁹ whichever way the lane is walked.
     */
    static final double FOUND = 1e-9;

    /** Stations nearer than this are one, m: room for rounding only. */
    private static final double SAME_STATION = 1e-6;

    /** Catch points that part by more than this over no distance have jumped, m. Our choice. */
    private static final double JUMP = 0.01;

    /** Changes sought between two looks at most. Our choice: two sides, each there and back. */
    private static final int MOST_CHANGES = 8;

    /** Read at least this far past the lane's width at first, m; more wherever a side needs it. */
    private static final double FIRST_REACH = 12;

    /** Reaches are this long, m, or twice, four times …: so that kept ground lines fit again. */
    private static final double LEAST_REACH = 16;

    /** Never read farther than this, m: no lane's slope runs half a kilometre. */
    private static final double LAST_REACH = 512;

    private final LaneDesign design;
    private final GroundSource source;
    private final Progress progress;
    private final SectionCutter cutter;
    private final List<Section> sections = new ArrayList<>();
    private final double[] kinks;
    private final double reach;

    private Sections(LaneDesign design, GroundSource source, Progress progress) {
        this.design = design;
        this.source = source;
        this.progress = progress;
        this.cutter = new SectionCutter(design.at(0));
        this.kinks = design.alignment().kinks();
        this.reach = reach(design.at(0).typical().width() + FIRST_REACH);
    }

    private static double reach(double needed) {
        double reach = LEAST_REACH;
        while (reach < needed) {
            reach *= 2;
        }
        return reach;
    }

    /**
     * The sections of a lane on a ground.
     *
     * @param topsoil depth of topsoil, m
     * @param bearing depth to soil that bears, m, or null if known nowhere
     */
    public static SectionSet of(
            LaneDesign design,
            Ground ground,
            VertexField topsoil,
            @Nullable VertexField bearing,
            Progress progress) {
        return of(design, new GroundLines(design.alignment(), ground, topsoil, bearing), progress);
    }

    /**
     * The sections of a lane on ground that is already cut.
     *
     * @param source ground lines across the design's alignment
     */
    public static SectionSet of(LaneDesign design, GroundSource source, Progress progress) {
        return new Sections(design, source, progress).stand();
    }

    private SectionSet stand() {
        NavigableMap<Double, Boolean> stations = stations();
        double last = Double.NaN;
        Look looked = null;
        for (var entry : stations.entrySet()) {
            double station = entry.getKey();
            if (looked != null) {
                progress.check();
                progress.report(station / design.length(), "Cutting sections");
                between(looked, look(station, true), last, station);
            }
            at(station, entry.getValue());
            looked = look(station, false);
            last = station;
        }
        return new SectionSet(design, sections, new SectionCheck(design, sections).findings());
    }

    /** All stations known beforehand, each with whether the section may jump there. */
    private NavigableMap<Double, Boolean> stations() {
        NavigableMap<Double, Boolean> stations = new TreeMap<>();
        double length = design.length();
        put(stations, 0, false);
        put(stations, length, false);
        for (double s : kinks) {
            put(stations, s, true);
        }
        for (double s : design.jumps()) {
            put(stations, s, true);
        }
        for (double s : design.joins()) {
            put(stations, s, false);
        }
        int count = (int) Math.floor(length / design.interval());
        for (int i = 1; i <= count; i++) {
            put(stations, i * design.interval(), false);
        }
        return stations;
    }

    private static void put(NavigableMap<Double, Boolean> stations, double s, boolean jump) {
        Double below = stations.floorKey(s);
        Double above = stations.ceilingKey(s);
        if (below != null && s - below < SAME_STATION) {
            stations.merge(below, jump, Boolean::logicalOr);
        } else if (above != null && above - s < SAME_STATION) {
            stations.merge(above, jump, Boolean::logicalOr);
        } else {
            stations.put(s, jump);
        }
    }

    /** Stands one section at a station, or two if it jumps. */
    private void at(double station, boolean mayJump) {
        Section after = cut(station, false, Face.SINGLE);
        if (!sections.isEmpty() && sections.get(sections.size() - 1).station() == station) {
            after = after.facing(Face.AFTER);
        }
        if (mayJump) {
            Section before = cut(station, true, Face.SINGLE);
            if (!before.equals(after.facing(Face.SINGLE))) {
                sections.add(before.facing(Face.BEFORE));
                after = after.facing(Face.AFTER);
            }
        }
        sections.add(after);
    }

    private Section cut(double station, boolean before, Face face) {
        LaneAt lane = before ? design.atBefore(station) : design.at(station);
        GroundAcross ground = follow(station, before, lane, false);
        return cutter.take(station, face, lane, ground);
    }

    /** Follows both sides with as much ground as they need. */
    private GroundAcross follow(double station, boolean before, LaneAt lane, boolean glance) {
        boolean turned = before && Arrays.binarySearch(kinks, station) >= 0;
        for (double far = reach; ; far *= 2) {
            GroundAcross ground =
                    glance
                            ? source.glance(station, turned, far)
                            : source.across(station, turned, far);
            cutter.follow(lane, design.margin(), ground);
            boolean more = cutter.left().isUnread() || cutter.right().isUnread();
            if (!more || far >= LAST_REACH) {
                return ground;
            }
        }
    }

    /** What kinds of side a station has, and where they catch. */
    private record Look(
            SideResult.Kind left, SideResult.Kind right, double leftCatch, double rightCatch) {

        boolean sameKinds(Look other) {
            return left == other.left && right == other.right;
        }

        /** How far the catch points of two looks lie apart, m. */
        double parted(Look other) {
            return Math.max(
                    Math.abs(leftCatch - other.leftCatch), Math.abs(rightCatch - other.rightCatch));
        }
    }

    private Look look(double station, boolean before) {
        return look(station, before, false);
    }

    private Look look(double station, boolean before, boolean glance) {
        LaneAt lane = before ? design.atBefore(station) : design.at(station);
        follow(station, before, lane, glance);
        return new Look(
                cutter.left().kind(),
                cutter.right().kind(),
                cutter.left().catchOut(),
                cutter.right().catchOut());
    }

    /** Finds what changes between two stations and stands two sections at each change. */
    private void between(Look first, Look last, double from, double to) {
        int steps = (int) Math.ceil((to - from) / LOOK - SAME_STATION);
        Look low = first;
        double a = from;
        for (int i = 1; i <= steps; i++) {
            double b = i == steps ? to : from + (to - from) * i / steps;
            Look high = i == steps ? last : look(b, false);
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
            while (b - a > FOUND) {
                double middle = (a + b) / 2;
                Look half = look(middle, false, true);
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
        LaneAt lane = design.at(at);
        GroundAcross ground = follow(at, false, lane, true);
        return cutter.take(station, face, lane, ground);
    }
}
