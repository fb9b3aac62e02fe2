/** What past runs propose, as files to be looked at. */
@NullMarked
package pressweek.app.learn;

import org.jspecify.annotations.NullMarked;
