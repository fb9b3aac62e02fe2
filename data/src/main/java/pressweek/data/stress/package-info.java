/** How sure a plan is: what came of replaying it under uncertain times. */
@NullMarked
package pressweek.data.stress;

import org.jspecify.annotations.NullMarked;
