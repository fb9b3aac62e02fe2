/** Scenarios planned beside the folder as it stands, with the same effort and seeds. */
@NullMarked
package pressweek.app.compare;

import org.jspecify.annotations.NullMarked;
