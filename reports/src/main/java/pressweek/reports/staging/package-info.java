/** What the material handler gets ready: resin, masterbatch and drying by shift. */
@NullMarked
package pressweek.reports.staging;

import org.jspecify.annotations.NullMarked;
