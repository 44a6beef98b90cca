package lanewright.lane.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import lanewright.lane.line.Alignment;
import lanewright.lane.line.DesignRefused;
import lanewright.lane.line.Profile;
import org.jspecify.annotations.Nullable;

/**
 * The whole lane as it was asked for, before it meets any ground: its line, its grade, its shape by
 * stretches of stations, and how its ends fit. Immutable, and equal to another made from equal
 * parts.
 *
 * <p>Where stretches meet, {@link #at} tells what holds just after the station and {@link
 * #atBefore} what holds just before.
 */
public final class LaneDesign {

    /** Stations nearer than this are one, m: room for rounding only. */
    private static final double SAME = 1e-6;

    private final Alignment alignment;
    private final Profile profile;
    private final List<Stretch<TypicalSection>> typical;
    private final List<Stretch<DitchBottom>> leftBottoms;
    private final List<Stretch<DitchBottom>> rightBottoms;
    private final double margin;
    private final double interval;
    private final @Nullable TieIn start;
    private final @Nullable TieIn end;

    private LaneDesign(Builder from) {
        alignment = from.alignment;
        profile = from.profile;
        typical = from.typical;
        leftBottoms = from.leftBottoms;
        rightBottoms = from.rightBottoms;
        margin = from.margin;
        interval = from.interval;
        start = from.start;
        end = from.end;
    }

    /** Begins a design on a line and a grade. */
    public static Builder on(Alignment alignment, Profile profile) {
        return new Builder(alignment, profile);
    }

    /** The line in plan. */
    public Alignment alignment() {
        return alignment;
    }

    /** The grade. */
    public Profile profile() {
        return profile;
    }

    /** Length in plan, m. */
    public double length() {
        return alignment.length();
    }

    /** Typical sections, from station zero to the end without a gap. */
    public List<Stretch<TypicalSection>> typical() {
        return typical;
    }

    /** Stretches where the left ditch bottom has its own grade. */
    public List<Stretch<DitchBottom>> leftBottoms() {
        return leftBottoms;
    }

    /** Stretches where the right ditch bottom has its own grade. */
    public List<Stretch<DitchBottom>> rightBottoms() {
        return rightBottoms;
    }

    /** How far the limits of work reach beyond the catch points, m. */
    public double margin() {
        return margin;
    }

    /** Distance between sections, m. */
    public double interval() {
        return interval;
    }

    /** What the start of the lane must fit, or null. */
    public @Nullable TieIn start() {
        return start;
    }

    /** What the far end must fit, or null. */
    public @Nullable TieIn end() {
        return end;
    }

    /** What the lane is at a station, just after it where it changes there. */
    public LaneAt at(double station) {
        return lane(station, find(typical, station, false), false);
    }

    /** What the lane is just before a station. */
    public LaneAt atBefore(double station) {
        return lane(station, find(typical, station, true), true);
    }

    private LaneAt lane(double station, int i, boolean before) {
        TypicalSection shape = typical.get(i).value();
        double left = shape.leftFall();
        double right = shape.rightFall();
        double leftUnder = shape.leftUnder();
        double rightUnder = shape.rightUnder();
        double across = 0;
        double own = 1;
        double fromStart = share(start, station);
        double fromEnd = share(end, length() - station);
        if (fromStart < 1 || fromEnd < 1) {
            TieIn near = fromStart <= fromEnd ? start : end;
            own = Math.min(fromStart, fromEnd);
            across = near == null ? 0 : near.crossSlope();
        }
        return new LaneAt(
                profile.height(station),
                shape,
                blend(left, -across, own),
                blend(right, across, own),
                blend(leftUnder, -across, own),
                blend(rightUnder, across, own),
                bottom(leftBottoms, station, before),
                bottom(rightBottoms, station, before));
    }

    /** Exactly the lane's own fall away from the ends, and exactly the tie-in's at them. */
    private static double blend(double lane, double tieIn, double own) {
        return own >= 1 ? lane : own * lane + (1 - own) * tieIn;
    }

    /** How much of the cross slope is the lane's own, 0 at the tie-in to 1. */
    private static double share(@Nullable TieIn tieIn, double away) {
        if (tieIn == null || Double.isNaN(tieIn.crossSlope()) || away >= tieIn.over()) {
            return 1;
        }
        return Math.max(away, 0) / tieIn.over();
    }

    private static double bottom(
            List<Stretch<DitchBottom>> stretches, double station, boolean before) {
        for (Stretch<DitchBottom> s : stretches) {
            boolean holds =
                    before
                            ? station > s.from() + SAME && station <= s.to() + SAME
                            : station >= s.from() - SAME && station < s.to() - SAME;
            if (holds) {
                double part = (station - s.from()) / (s.to() - s.from());
                return s.value().start() + part * (s.value().end() - s.value().start());
            }
        }
        return Double.NaN;
    }

    /**
     * Index of the stretch that holds a station; past the last one by rounding, the last.
     *
     * @param before whether the earlier of two that meet there is meant
     */
    private static <T> int find(List<Stretch<T>> stretches, double station, boolean before) {
        int i = 0;
        while (i < stretches.size() - 1
                && (before
                        ? station > stretches.get(i).to() + SAME
                        : station >= stretches.get(i).to() - SAME)) {
            i++;
        }
        return i;
    }

    /**
     * Stations inside the lane where its shape may jump: limits of stretches, of ditch bottoms, and
     * sharp angles of the line. In order, without the ends.
     */
    public double[] jumps() {
        List<Double> found = new ArrayList<>();
        for (Stretch<TypicalSection> stretch : typical) {
            found.add(stretch.from());
        }
        for (List<Stretch<DitchBottom>> side : List.of(leftBottoms, rightBottoms)) {
            for (Stretch<DitchBottom> stretch : side) {
                found.add(stretch.from());
                found.add(stretch.to());
            }
        }
        for (double kink : alignment.kinks()) {
            found.add(kink);
        }
        return sorted(found);
    }

    /**
     * Stations inside the lane where something begins or ends without a jump: joins of tangents,
     * arcs and parabolas, ends of cross slope transitions. In order, without the ends.
     */
    public double[] joins() {
        List<Double> found = new ArrayList<>();
        for (double join : alignment.joins()) {
            found.add(join);
        }
        for (double join : profile.joins()) {
            found.add(join);
        }
        if (start != null && !Double.isNaN(start.crossSlope())) {
            found.add(start.over());
        }
        if (end != null && !Double.isNaN(end.crossSlope())) {
            found.add(length() - end.over());
        }
        return sorted(found);
    }

    private double[] sorted(List<Double> found) {
        double length = length();
        return found.stream()
                .mapToDouble(Double::doubleValue)
                .filter(s -> s > 0 && s < length)
                .sorted()
                .distinct()
                .toArray();
    }

    /** The same lane on another grade. */
    public LaneDesign withProfile(Profile other) throws DesignRefused {
        return on(alignment, other)
                .typical(typical)
                .leftBottoms(leftBottoms)
                .rightBottoms(rightBottoms)
                .margin(margin)
                .interval(interval)
                .start(start)
                .end(end)
                .build();
    }

    /** Equal if made from equal parts. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof LaneDesign that
                && alignment.equals(that.alignment)
                && profile.equals(that.profile)
                && typical.equals(that.typical)
                && leftBottoms.equals(that.leftBottoms)
                && rightBottoms.equals(that.rightBottoms)
                && margin == that.margin
                && interval == that.interval
                && Objects.equals(start, that.start)
                && Objects.equals(end, that.end);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(new Object[] {alignment, profile, typical, margin, interval});
    }

    /** Takes the parts of a design; those not given have the value that their method names. */
    public static final class Builder {
        private final Alignment alignment;
        private final Profile profile;
        private List<Stretch<TypicalSection>> typical = List.of();
        private List<Stretch<DitchBottom>> leftBottoms = List.of();
        private List<Stretch<DitchBottom>> rightBottoms = List.of();
        private double margin;
        private double interval = 10;
        private @Nullable TieIn start;
        private @Nullable TieIn end;

        private Builder(Alignment alignment, Profile profile) {
            this.alignment = alignment;
            this.profile = profile;
        }

        /** Typical sections in order, from station zero to the end without a gap. */
        public Builder typical(List<Stretch<TypicalSection>> stretches) {
            typical = List.copyOf(stretches);
            return this;
        }

        /** One typical section for the whole lane. */
        public Builder typical(TypicalSection all) {
            return typical(List.of(new Stretch<>(0, alignment.length(), all)));
        }

        /** Left ditch bottoms with their own grade, in order; none if not given. */
        public Builder leftBottoms(List<Stretch<DitchBottom>> stretches) {
            leftBottoms = List.copyOf(stretches);
            return this;
        }

        /** Right ditch bottoms with their own grade, in order; none if not given. */
        public Builder rightBottoms(List<Stretch<DitchBottom>> stretches) {
            rightBottoms = List.copyOf(stretches);
            return this;
        }

        /** How far the limits reach beyond the catch points, m, 0 to 100; zero if not given. */
        public Builder margin(double metres) {
            margin = metres;
            return this;
        }

        /** Distance between sections, m, 0.1 to 1000; 10 m if not given. */
        public Builder interval(double metres) {
            interval = metres;
            return this;
        }

        /** What the start must fit; nothing if not given. */
        public Builder start(@Nullable TieIn tieIn) {
            start = tieIn;
            return this;
        }

        /** What the far end must fit; nothing if not given. */
        public Builder end(@Nullable TieIn tieIn) {
            end = tieIn;
            return this;
        }

        /**
         * The design.
         *
         * @throws DesignRefused if stretches leave gaps or overlap, the grade does not cover the
         *     line, a curve is tighter than half the lane, or stone does not fit on what is below
         * @throws IllegalArgumentException if margin or interval is out of range
         */
        public LaneDesign build() throws DesignRefused {
            if (!(margin >= 0 && margin <= 100 && interval >= 0.1 && interval <= 1000)) {
                throw new IllegalArgumentException(
                        "margin must be 0 to 100 m and interval 0.1 to 1000 m, were "
                                + margin
                                + " / "
                                + interval);
            }
            LaneDesign design = new LaneDesign(this);
            DesignCheck.check(design);
            return design;
        }
    }
}
