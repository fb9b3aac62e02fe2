/** Many plans at once, computed by any number of programs on one store, each of them once. */
@NullMarked
package pressweek.app.sweep;

import org.jspecify.annotations.NullMarked;
