/** The proof of a guide: what in it cannot be told apart, read, reached, or made. */
@NullMarked
package pressweek.data.proof;

import org.jspecify.annotations.NullMarked;
