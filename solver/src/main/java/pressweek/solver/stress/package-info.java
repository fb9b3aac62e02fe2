/** A plan replayed under uncertain times, through the timing pass that made it. */
@NullMarked
package pressweek.solver.stress;

import org.jspecify.annotations.NullMarked;
