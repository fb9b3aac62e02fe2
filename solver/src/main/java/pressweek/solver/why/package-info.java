/**
 * Why a line is where it is in a plan, where else it could go, and what would cure its lateness.
 */
@NullMarked
package pressweek.solver.why;

import org.jspecify.annotations.NullMarked;
