/** The command line: what was asked, and what is answered on the terminal. */
@NullMarked
package pressweek.app.cli;

import org.jspecify.annotations.NullMarked;
