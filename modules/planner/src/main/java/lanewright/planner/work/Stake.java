package lanewright.planner.work;

/**
 * One offset stake, outside the limits of work where stripping does not reach it. Distances run in
 * from the stake towards the lane; heights are NaN where no benchmark is named or the lane has no
 * such corner there.
 *
 * @param station m along the alignment
 * @param right whether it stands on the right, looking up-station
 * @param offset of the stake from the alignment, m, over zero
 * @param x local easting, m
 * @param y local northing, m
 * @param height of the ground at the stake, m above the datum
 * @param toCatch distance in to the catch point, m
 * @param toHinge distance in to the hinge, m
 * @param hingeUp height of the hinge over the ground at the stake, m: over zero fill, under zero
 *     cut
 * @param toDitch distance in to the inner end of the ditch bottom, m, NaN without ditch
 * @param ditchUp height of the ditch bottom over the ground at the stake, m, NaN without ditch
 * @param toCentre distance in to the alignment, m
 * @param centreUp finished height at the alignment over the ground at the stake, m
 * @param rodHinge reading of a rod held at the finished hinge, m, NaN without an instrument
 * @param rodDitch reading of a rod held in the finished ditch bottom, m, NaN without
 * @param rodCentre reading of a rod held on the finished surface at the alignment, m, NaN without
 */
public record Stake(
        double station,
        boolean right,
        double offset,
        double x,
        double y,
        double height,
        double toCatch,
        double toHinge,
        double hingeUp,
        double toDitch,
        double ditchUp,
        double toCentre,
        double centreUp,
        double rodHinge,
        double rodDitch,
        double rodCentre) {}
