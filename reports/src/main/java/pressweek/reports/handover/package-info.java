/** What a plan changes against the one that it replaces. */
@NullMarked
package pressweek.reports.handover;

import org.jspecify.annotations.NullMarked;
