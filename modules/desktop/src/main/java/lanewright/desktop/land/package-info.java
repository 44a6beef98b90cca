/** The owner's land from above, always there: what is measured, what is built, where water sits. */
@NullMarked
package lanewright.desktop.land;

import org.jspecify.annotations.NullMarked;
