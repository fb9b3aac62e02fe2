/** The code guide: from an order code or words to an item and back. */
@NullMarked
package pressweek.data.guide;

import org.jspecify.annotations.NullMarked;
