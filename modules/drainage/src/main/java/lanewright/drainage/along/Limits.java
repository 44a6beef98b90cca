package lanewright.drainage.along;

/**
 * Limits of water beside a lane. Slopes and grades are rise over run, heights m, volumes m³.
 *
 * @param crossLeast least cross slope of a stone surface
 * @param crossMost greatest cross slope of a stone surface
 * @param ditchLeast least grade of a ditch
 * @param ditchChecked grade over which an unlined ditch wants check dams
 * @param ditchLined grade over which a ditch wants a lining
 * @param belowStone depth of a ditch bottom below the underside of the stone
 * @param edgeAbove height of the lane's edge above the ground beside it
 * @param pipeRoom height that the smallest pipe and the earth over it need under the lane's edge
 * @param damHeight height of a barrier from which dam law must be asked about
 * @param damVolume volume of a pool from which dam law must be asked about
 * @param outslopeMost greatest grade on which a lane may fall outward in one plane
 * @param outslopeOver how much steeper than the grade an outward fall must be
 * @param dipMost greatest grade for a dip across the lane
 * @param slopeAcross least fall of the ground across that makes a side slope of it
 */
public record Limits(
        Limit crossLeast,
        Limit crossMost,
        Limit ditchLeast,
        Limit ditchChecked,
        Limit ditchLined,
        Limit belowStone,
        Limit edgeAbove,
        Limit pipeRoom,
        Limit damHeight,
        Limit damVolume,
        Limit outslopeMost,
        Limit outslopeOver,
        Limit dipMost,
        Limit slopeAcross) {}
