/**
 * Plants to plan: those drawn at random, of any size, for benchmarks and for tests that want many.
 */
@NullMarked
package pressweek.examples;

import org.jspecify.annotations.NullMarked;
