package lanewright.drainage;

import lanewright.drainage.along.Limits;
import lanewright.drainage.along.Spacing;

/**
 * The published tables that water is held against.
 *
 * @param limits limits of slopes, ditches, edges and dams
 * @param crossDrains spacing of dips and pipes across a lane, by grade
 */
record WaterTables(Limits limits, Spacing crossDrains) {}
