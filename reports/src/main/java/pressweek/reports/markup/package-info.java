/** Elements of pages and pictures, in which every text is escaped. */
@NullMarked
package pressweek.reports.markup;

import org.jspecify.annotations.NullMarked;
