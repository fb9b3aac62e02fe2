package pressweek.app.sweep;

import com.github.kagkarlsson.scheduler.jdbc.AutodetectJdbcCustomization;
import com.github.kagkarlsson.scheduler.jdbc.DefaultJdbcCustomization;
import com.github.kagkarlsson.scheduler.jdbc.JdbcCustomization;
import com.github.kagkarlsson.scheduler.serializer.Serializer;
import java.nio.charset.StandardCharsets;
import pressweek.app.store.Store;

/** How db-scheduler is set up for the queue of sweeps. */
final class Queue {
  /** The name of the only kind of task. */
  static final String TASK = "plan";

  /** What a task holds is text, which a person can read in the table as well. */
  static final Serializer TEXT =
      new Serializer() {
        @Override
        public byte[] serialize(Object data) {
          return data == null ? new byte[0] : data.toString().getBytes(StandardCharsets.UTF_8);
        }

        @Override
        public <T> T deserialize(Class<T> type, byte[] bytes) {
          return type.cast(new String(bytes, StandardCharsets.UTF_8));
        }
      };

  private Queue() {}

  /** The way of speaking to the store's kind of database. */
  static JdbcCustomization customization(Store store) {
    return store.isShared()
        ? new AutodetectJdbcCustomization(store.queue())
        : new SqliteCustomization();
  }

  /**
   * SQLite knows no {@code SKIP LOCKED}, so tasks are fetched and then taken one by one by their
   * version; times are whole milliseconds of UTC; and the limit of a query is written its own way.
   */
  private static final class SqliteCustomization extends DefaultJdbcCustomization {
    SqliteCustomization() {
      super(true);
    }

    @Override
    public String getName() {
      return "SQLite";
    }

    @Override
    public String getQueryLimitPart(int limit) {
      return " LIMIT " + limit;
    }
  }
}
