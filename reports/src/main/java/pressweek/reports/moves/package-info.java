/** What a plan moves against the one that it replaces, and why. */
@NullMarked
package pressweek.reports.moves;

import org.jspecify.annotations.NullMarked;
