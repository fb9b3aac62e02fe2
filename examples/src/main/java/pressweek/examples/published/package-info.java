/** Published scheduling problems as weeks of a plant, and how near the planner comes to them. */
@NullMarked
package pressweek.examples.published;

import org.jspecify.annotations.NullMarked;
