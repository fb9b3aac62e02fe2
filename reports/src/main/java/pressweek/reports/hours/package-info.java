/** The plant's clock and its shifts, as reports write them. */
@NullMarked
package pressweek.reports.hours;

import org.jspecify.annotations.NullMarked;
