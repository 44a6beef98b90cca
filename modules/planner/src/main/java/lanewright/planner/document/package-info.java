/**
 * The plan document: {@code plan.json} to records and back, its schema and its upgrades. Knows what
 * a plan may say, and nothing of what comes of it: no survey is read and no figure worked out here.
 */
@NullMarked
package lanewright.planner.document;

import org.jspecify.annotations.NullMarked;
