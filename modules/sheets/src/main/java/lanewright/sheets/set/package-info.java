/**
 * The sheets of a plan set, in the order in which they are read: each opens with the answer in
 * words and proves it below. Works out nothing; says what the outcome says.
 */
@NullMarked
package lanewright.sheets.set;

import org.jspecify.annotations.NullMarked;
