/** From a plan and what happened since to the problem that is left, and back to a plan. */
@NullMarked
package pressweek.solver.repair;

import org.jspecify.annotations.NullMarked;
