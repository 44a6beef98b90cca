package lanewright.drainage;

import lanewright.drainage.along.CulvertLine;
import lanewright.drainage.along.Side;
import lanewright.drainage.pond.LowSpot;
import lanewright.measure.Quantity;
import lanewright.measure.Saying;
import org.jspecify.annotations.Nullable;

/**
 * A low spot, what the lane has to do with it, and the land that drains to it.
 *
 * @param spot its shape, full
 * @param fate what the lane makes of it
 * @param drained area of the land whose water reaches it, itself included, m²; from a grid of
 *     cells, and only land that was surveyed
 * @param isLeast whether some of that land lies at the survey's rim, so that more may drain here
 *     from beyond it
 * @param volumeBefore what the ground held here before the lane, m³
 * @param beside where it lies along the lane, or null if it lies off the lane's ends
 * @param spill where it runs over once it is full
 * @param across a pipe straight across the lane at its deepest point, whether or not it would fall;
 *     null where the lane does not hold it back
 * @param culvert a pipe that would drain it, or null where none would help or none is asked for:
 *     the one straight across if that falls enough, else for a ditch the nearest one up the ditch
 *     that does, else the one straight across if it falls at all
 */
public record Pool(
        LowSpot spot,
        Fate fate,
        double drained,
        boolean isLeast,
        double volumeBefore,
        @Nullable Beside beside,
        Spill spill,
        @Nullable CulvertLine across,
        @Nullable CulvertLine culvert) {

    /** What the lane makes of a low spot. */
    public enum Fate {
        /** There was none here before. */
        NEW("made by the lane"),
        /** It was here, and now holds more. */
        DEEPER("made deeper by the lane"),
        /** It is as it was. */
        AS_BEFORE("as before"),
        /** It was here, and now holds less. */
        LESS("made smaller by the lane"),
        /** It was here, and is drained or filled. */
        GONE("drained or filled by the lane");

        private final String words;

        Fate(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /**
     * Where a low spot lies along the lane.
     *
     * @param station of its deepest point, m: where its water must pass the lane; of the nearest
     *     place of its edge if the deepest point lies past an end of the lane
     * @param offset of the same point, m, positive right
     * @param from least station of its edge, m
     * @param to greatest station of its edge, m
     * @param leftmost least offset of its edge, m
     * @param rightmost greatest offset of its edge, m
     * @param inLimits whether any of it lies within the limits of work
     * @param zone what its deepest point lies in
     */
    public record Beside(
            double station,
            double offset,
            double from,
            double to,
            double leftmost,
            double rightmost,
            boolean inLimits,
            Zone zone) {

        /** The side of the lane that its deepest point lies on. */
        public Side side() {
            return Side.at(offset);
        }
    }

    /**
     * Where a low spot runs over once it is full.
     *
     * @param way what it runs over
     * @param station along the lane, m; NaN off its ends
     * @param side the side of the lane that it lies on
     */
    public record Spill(SpillWay way, double station, Side side) {
        /** In words, to follow "runs". */
        public Saying words() {
            return switch (way) {
                case LANE -> Saying.of("over the lane at {}", Quantity.station(station));
                case DITCH ->
                        Saying.of(
                                "on down the " + side.word() + " ditch from {}",
                                Quantity.station(station));
                case BESIDE ->
                        Saying.of(
                                "on over the ground on the " + side.word() + " at {}",
                                Quantity.station(station));
                case END -> Saying.plain("on past the end of the lane");
                case RIM -> Saying.plain("out over the edge of the survey");
                case PIPE -> Saying.plain("away through a pipe");
            };
        }
    }

    /** What water that runs over runs over. */
    public enum SpillWay {
        /** The lane or its shoulders. */
        LANE,
        /** A ditch of the lane, over a rise of its bottom. */
        DITCH,
        /** The ground beside the lane. */
        BESIDE,
        /** The ground past an end of the lane. */
        END,
        /** The rim of the survey: what lies beyond is not known. */
        RIM,
        /** A pipe of the plan. */
        PIPE
    }

    /** What a place lies in. */
    public enum Zone {
        /** The travelled way. */
        LANE,
        /** A ditch of the lane and its slopes. */
        DITCH,
        /** The ground beside the lane, up to the foot of a fill. */
        GROUND
    }

    /**
     * Whether the lane is to blame for it, and a pipe under the lane would let its water through.
     */
    public boolean isCrossable() {
        return isMade() && culvert != null && culvert.falls();
    }

    /** Whether the lane is to blame for it. */
    public boolean isMade() {
        return fate == Fate.NEW || fate == Fate.DEEPER;
    }
}
