/**
 * From the rows of a folder to the week's problem: items, molds, presses, amounts, and why a line
 * cannot be planned.
 */
@NullMarked
package pressweek.data.week;

import org.jspecify.annotations.NullMarked;
