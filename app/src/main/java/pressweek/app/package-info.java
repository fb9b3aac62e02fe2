/** The program: the one place that knows every other. */
@NullMarked
package pressweek.app;

import org.jspecify.annotations.NullMarked;
