/**
 * Survey files read into one {@link lanewright.survey.Survey}: what was declared is obeyed, what
 * was found out is shown, what can be read in two ways is refused. Knows no triangle and no lane.
 */
@NullMarked
package lanewright.survey.read;

import org.jspecify.annotations.NullMarked;
