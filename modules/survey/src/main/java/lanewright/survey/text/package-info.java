/**
 * Lines, fields and numbers of text files, read straight from bytes, bounded and strict; knows
 * nothing of what the fields mean.
 */
@NullMarked
package lanewright.survey.text;

import org.jspecify.annotations.NullMarked;
