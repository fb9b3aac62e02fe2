/** The week wall: the presses by time, one strip a press, a change as a gap with its minutes. */
@NullMarked
package pressweek.reports.wall;

import org.jspecify.annotations.NullMarked;
