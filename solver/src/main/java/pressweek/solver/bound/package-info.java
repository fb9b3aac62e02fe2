/** What no plan of a problem can do without: a proved lower bound of avoidable cost. */
@NullMarked
package pressweek.solver.bound;

import org.jspecify.annotations.NullMarked;
