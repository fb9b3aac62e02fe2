/** Plant folders, scenarios and plans, read and written here and nowhere else. */
@NullMarked
package pressweek.data.files;

import org.jspecify.annotations.NullMarked;
