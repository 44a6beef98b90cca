/**
 * The files of a plan: tables, map layers and the folder that holds them all. Knows file formats
 * and how to write a folder whole or not at all.
 */
@NullMarked
package lanewright.sheets.folder;

import org.jspecify.annotations.NullMarked;
