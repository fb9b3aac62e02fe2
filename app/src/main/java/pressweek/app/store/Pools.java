package pressweek.app.store;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.time.Duration;

/** Pools of connections. */
final class Pools {
  private static final Duration LONGEST_WAIT = Duration.ofSeconds(30);

  private Pools() {}

  /** Settings of a pool which holds at most so many connections, none of them without need. */
  static HikariConfig settings(String name, int most) {
    HikariConfig config = new HikariConfig();
    config.setPoolName("pressweek-" + name);
    config.setMaximumPoolSize(most);
    config.setMinimumIdle(1);
    config.setConnectionTimeout(LONGEST_WAIT.toMillis());
    return config;
  }

  /** The pool itself, with its first connection made. */
  static HikariDataSource open(HikariConfig config, Troubles troubles) throws StoreTrouble {
    try {
      return new HikariDataSource(config);
    } catch (RuntimeException e) {
      throw troubles.of(e);
    }
  }
}
