package lanewright.drainage;

/**
 * The lowest way that water before an inlet has besides the pipe: where it goes when the pipe takes
 * too little or nothing. Headwater stops there.
 *
 * @param depth over the inlet's invert, m, over zero
 * @param spill what it runs over there, and where
 */
public record Overflow(double depth, Pool.Spill spill) {

    /** Whether it is the lane itself, whose crest is known all along. */
    public boolean isOverLane() {
        return spill.way() == Pool.SpillWay.LANE;
    }
}
