/** What can be promised to a customer who asks: read, planned, and said. */
@NullMarked
package pressweek.app.offer;

import org.jspecify.annotations.NullMarked;
