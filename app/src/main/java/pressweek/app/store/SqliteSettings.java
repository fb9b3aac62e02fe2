package pressweek.app.store;

import java.time.Duration;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/**
 * How SQLite is opened.
 *
 * @param mostPages the file's largest size in pages, as if the disk ended there
 * @param patience how long to wait for a lock of another program
 */
record SqliteSettings(int mostPages, Duration patience) {
  private static final int WAL_KEPT_BYTES = 64 << 20;

  /** As large as the disk allows (SQLite's own limit), waiting ten seconds. */
  static SqliteSettings usual() {
    return new SqliteSettings(Integer.MAX_VALUE, Duration.ofSeconds(10));
  }

  /**
   * Connections that write ahead, and wait for the disk at each commit: {@code synchronous=FULL}
   * with WAL is what keeps a commit through a loss of power
   * (sqlite.org/pragma.html#pragma_synchronous).
   */
  SQLiteDataSource source(String url) {
    SQLiteConfig config = new SQLiteConfig();
    config.setJournalMode(SQLiteConfig.JournalMode.WAL);
    config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
    config.enforceForeignKeys(true);
    config.setBusyTimeout(Math.toIntExact(patience.toMillis()));
    config.setJournalSizeLimit(WAL_KEPT_BYTES);
    if (mostPages != Integer.MAX_VALUE) {
      config.setMaxPageCount(mostPages);
    }
    SQLiteDataSource source = new SQLiteDataSource(config);
    source.setUrl(url);
    return source;
  }
}
