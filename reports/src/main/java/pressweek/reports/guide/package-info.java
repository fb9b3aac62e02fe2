/** A guide on paper: the sheet of a code, and practice questions with their answers. */
@NullMarked
package pressweek.reports.guide;

import org.jspecify.annotations.NullMarked;
