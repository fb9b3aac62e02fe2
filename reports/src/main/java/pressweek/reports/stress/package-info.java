/** How sure a plan is, in words and lists. */
@NullMarked
package pressweek.reports.stress;

import org.jspecify.annotations.NullMarked;
