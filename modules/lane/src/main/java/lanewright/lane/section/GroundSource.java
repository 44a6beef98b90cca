package lanewright.lane.section;

/** Where sections get the ground across the lane from. */
public interface GroundSource {

    /**
     * The ground across the lane.
     *
     * @param station m along the alignment
     * @param before whether the line lies square to what comes before a sharp angle
     * @param reach how far to read on each side, m
     * @return the ground from {@code -reach} to {@code reach}; a side says that it ends if the
     *     ground itself ends there. The same for the same arguments, to the last bit
     */
    GroundAcross across(double station, boolean before, double reach);

    /** The same for a station that will not be asked for again. */
    default GroundAcross glance(double station, boolean before, double reach) {
        return across(station, before, reach);
    }

    /** The same where only heights will be read: of what lies in the ground nothing is told. */
    default GroundAcross heights(double station, boolean before, double reach) {
        return across(station, before, reach);
    }

    /** Only heights, for a station that will not be asked for again. */
    default GroundAcross glanceHeights(double station, boolean before, double reach) {
        return glance(station, before, reach);
    }
}
