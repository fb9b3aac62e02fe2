/** The planner: from a problem to a plan within a time limit. */
@NullMarked
package pressweek.solver;

import org.jspecify.annotations.NullMarked;
