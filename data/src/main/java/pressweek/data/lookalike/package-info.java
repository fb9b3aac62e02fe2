/** Insert parts that a person could take for each other, and what tells them apart. */
@NullMarked
package pressweek.data.lookalike;

import org.jspecify.annotations.NullMarked;
