/** What a new order line can be promised for, what that costs, and who pays. */
@NullMarked
package pressweek.solver.offer;

import org.jspecify.annotations.NullMarked;
