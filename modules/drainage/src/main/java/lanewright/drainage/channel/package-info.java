/**
 * Steady water in a channel: shapes, Manning's formula, critical depth, shear, linings, check dams.
 * Pure hydraulics in SI; knows no lane, no ground and no culvert.
 */
@NullMarked
package lanewright.drainage.channel;

import org.jspecify.annotations.NullMarked;
