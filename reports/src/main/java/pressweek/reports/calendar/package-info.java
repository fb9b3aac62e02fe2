/** Runs and changes as calendars that other programs can show. */
@NullMarked
package pressweek.reports.calendar;

import org.jspecify.annotations.NullMarked;
