/** The second opinion: every hard rule and figure of a plan, worked out anew. */
@NullMarked
package pressweek.solver.audit;

import org.jspecify.annotations.NullMarked;
