/** From sequences to clock times, with the cause of every wait. */
@NullMarked
package pressweek.solver.timing;

import org.jspecify.annotations.NullMarked;
