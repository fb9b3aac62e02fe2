/** What runs where and when. */
@NullMarked
package pressweek.reports.schedule;

import org.jspecify.annotations.NullMarked;
