/**
 * Figures that standards and laws print: strength grades, limits of substances. They are typed in
 * as tables, with the source named at their head, and read once.
 */
@NullMarked
package pressweek.data.published;

import org.jspecify.annotations.NullMarked;
