/** Papers of work that asks for more than pieces: line clearance of food runs, and lots. */
@NullMarked
package pressweek.reports.trace;

import org.jspecify.annotations.NullMarked;
