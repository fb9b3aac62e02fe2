/** What runs short in the week, when, what that stops, and what would cure it. */
@NullMarked
package pressweek.reports.stock;

import org.jspecify.annotations.NullMarked;
