/**
 * What suppliers have declared of the materials in an item, and what to ask for where they have
 * not. Nothing here certifies anything.
 */
@NullMarked
package pressweek.data.declared;

import org.jspecify.annotations.NullMarked;
