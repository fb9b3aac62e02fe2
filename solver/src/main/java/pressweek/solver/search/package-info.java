/** Local search over the sequences of a week: moves, neighbours, annealing. */
@NullMarked
package pressweek.solver.search;

import org.jspecify.annotations.NullMarked;
