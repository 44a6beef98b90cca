/**
 * Paints drawings into PDF, SVG and PNG. Knows file formats and no lane; every painter is handed
 * the same lines, areas and words, and none of them asks the machine for a font.
 */
@NullMarked
package lanewright.sheets.paint;

import org.jspecify.annotations.NullMarked;
