/**
 * What the engine found, as rows under heads: the tables of the sheets, of the CSV files and of the
 * outcome, made once. Knows reports and no paper.
 */
@NullMarked
package lanewright.planner.listing;

import org.jspecify.annotations.NullMarked;
