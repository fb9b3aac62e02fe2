/** What a plan is once it is made: runs, changes, pulls, unplaced lines and figures. */
@NullMarked
package pressweek.data.plan;

import org.jspecify.annotations.NullMarked;
