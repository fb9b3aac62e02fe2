/** Plans side by side: their figures, and which differences are more than the search's own. */
@NullMarked
package pressweek.reports.compare;

import org.jspecify.annotations.NullMarked;
