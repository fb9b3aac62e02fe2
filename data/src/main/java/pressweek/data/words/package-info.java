/**
 * From a customer's words to an item: ranked readings, each with what was understood and assumed.
 */
@NullMarked
package pressweek.data.words;

import org.jspecify.annotations.NullMarked;
