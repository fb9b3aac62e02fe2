/** What happened on the floor since a plan was made: events, checked against that plan. */
@NullMarked
package pressweek.data.floor;

import org.jspecify.annotations.NullMarked;
