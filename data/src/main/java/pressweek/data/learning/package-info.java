/** What past runs say of the plant's standards: proposals by robust statistics. */
@NullMarked
package pressweek.data.learning;

import org.jspecify.annotations.NullMarked;
