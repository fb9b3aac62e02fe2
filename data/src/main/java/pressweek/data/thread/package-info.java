/**
 * Screw threads: the standard ones with their diameters and pitches, and reading what people write
 * for them.
 */
@NullMarked
package pressweek.data.thread;

import org.jspecify.annotations.NullMarked;
