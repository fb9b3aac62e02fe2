/** How many people each shift needs, and where there are too few. */
@NullMarked
package pressweek.reports.crew;

import org.jspecify.annotations.NullMarked;
