/** The week on the scheduler's desk: what stands, what is tried, solved, repaired and given out. */
@NullMarked
package pressweek.app.desk;

import org.jspecify.annotations.NullMarked;
