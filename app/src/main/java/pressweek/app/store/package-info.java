/** What Pressweek keeps between one day and the next: books in SQLite or PostgreSQL. */
@NullMarked
package pressweek.app.store;

import org.jspecify.annotations.NullMarked;
