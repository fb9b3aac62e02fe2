/** Tables as they stand in a file, cell by cell, before anyone knows what a column means. */
@NullMarked
package pressweek.data.files.table;

import org.jspecify.annotations.NullMarked;
