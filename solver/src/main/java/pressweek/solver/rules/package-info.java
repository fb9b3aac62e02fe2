/** What counts and what it costs, one place a rule. */
@NullMarked
package pressweek.solver.rules;

import org.jspecify.annotations.NullMarked;
