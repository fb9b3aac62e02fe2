/** Tables and pages written as files. */
@NullMarked
package pressweek.reports.write;

import org.jspecify.annotations.NullMarked;
