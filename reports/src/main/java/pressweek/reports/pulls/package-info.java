/** What the material handlers bring, from which bin, to which press, by when. */
@NullMarked
package pressweek.reports.pulls;

import org.jspecify.annotations.NullMarked;
