/**
 * The planning problem as immutable records: presses, molds, resins, inserts, orders, calendars.
 */
@NullMarked
package pressweek.data.problem;

import org.jspecify.annotations.NullMarked;
