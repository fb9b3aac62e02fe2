/** Plans a folder's week, has it audited and writes what comes of it. */
@NullMarked
package pressweek.app.plan;

import org.jspecify.annotations.NullMarked;
