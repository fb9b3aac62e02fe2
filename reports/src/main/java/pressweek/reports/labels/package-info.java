/** Labels for what is brought to a press, with bar codes drawn as pictures. */
@NullMarked
package pressweek.reports.labels;

import org.jspecify.annotations.NullMarked;
