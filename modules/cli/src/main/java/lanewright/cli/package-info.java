/**
 * The command line: words in, words and exit codes out; knows no geometry, no drawing library and
 * no window, and works out no figure of its own.
 */
@NullMarked
package lanewright.cli;

import org.jspecify.annotations.NullMarked;
