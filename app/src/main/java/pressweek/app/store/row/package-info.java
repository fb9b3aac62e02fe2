/** What the books of the store hold, as values. */
@NullMarked
package pressweek.app.store.row;

import org.jspecify.annotations.NullMarked;
