/** What goes with a run: one kit each, to be laid out before its change begins. */
@NullMarked
package pressweek.reports.kits;

import org.jspecify.annotations.NullMarked;
