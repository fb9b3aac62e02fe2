/** A list of a plan, defined once and written as CSV, as a sheet of a workbook and on paper. */
@NullMarked
package pressweek.reports.listing;

import org.jspecify.annotations.NullMarked;
