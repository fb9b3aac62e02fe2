/** The arithmetic of molding: pure functions with units in their names. */
@NullMarked
package pressweek.data.molding;

import org.jspecify.annotations.NullMarked;
