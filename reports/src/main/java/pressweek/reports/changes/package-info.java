/** What the setters change, in order of time. */
@NullMarked
package pressweek.reports.changes;

import org.jspecify.annotations.NullMarked;
