/**
 * The working of a run as a handbook shows it: each figure with its formula, its numbers and what
 * it rests on. It computes nothing by itself; the formulas are those of {@code data.molding}.
 */
@NullMarked
package pressweek.data.working;

import org.jspecify.annotations.NullMarked;
