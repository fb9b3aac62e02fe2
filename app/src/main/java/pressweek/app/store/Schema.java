package pressweek.app.store;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationInfoService;

/** The tables of the books, brought up to what this program knows. */
final class Schema {
  /** Notes of Flyway on which steps were taken. */
  static final String STEPS = "schema_steps";

  private static final String FOLDER = "classpath:pressweek/app/store/";

  /** The two kinds of database that know the tables. */
  enum Dialect {
    SQLITE("sqlite", "INTEGER PRIMARY KEY AUTOINCREMENT", "BLOB", "INTEGER"),
    POSTGRESQL(
        "postgresql",
        "BIGINT GENERATED ALWAYS AS IDENTITY PRIMARY KEY",
        "BYTEA",
        "TIMESTAMP WITH TIME ZONE");

    private final String folder;
    private final Map<String, String> types;

    Dialect(String folder, String id, String bytes, String instant) {
      this.folder = folder;
      this.types = Map.of("id", id, "bytes", bytes, "instant", instant);
    }
  }

  /** What is done before an older store is upgraded; the text is the schema's version so far. */
  interface BeforeUpgrade {
    void from(String version) throws StoreTrouble;
  }

  private final Flyway flyway;
  private final Troubles troubles;

  Schema(DataSource source, Dialect dialect, Troubles troubles) {
    this(source, dialect, troubles, "latest");
  }

  Schema(DataSource source, Dialect dialect, Troubles troubles, String target) {
    this.troubles = troubles;
    this.flyway =
        Flyway.configure()
            .dataSource(source)
            .locations(FOLDER + "both", FOLDER + dialect.folder)
            .placeholders(dialect.types)
            .table(STEPS)
            .target(target)
            .validateMigrationNaming(true)
            .cleanDisabled(true)
            .load();
  }

  /** Takes the steps that are missing; none if a newer program has taken steps of its own. */
  void bringUp(BeforeUpgrade before) throws StoreTrouble {
    try {
      MigrationInfoService info = flyway.info();
      Optional<String> present =
          Optional.ofNullable(info.current()).map(step -> step.getVersion().toString());
      refuseNewer(info, present.orElse("none"));
      if (present.isPresent() && info.pending().length > 0) {
        before.from(present.get());
      }
      flyway.migrate();
    } catch (FlywayException e) {
      throw explained(e);
    }
  }

  private void refuseNewer(MigrationInfoService info, String present) throws StoreTrouble {
    boolean newer =
        Arrays.stream(info.all())
            .map(MigrationInfo::getState)
            .anyMatch(state -> state.isApplied() && !state.isResolved());
    if (newer) {
      throw troubles.newer(present, known(info));
    }
  }

  private static String known(MigrationInfoService info) {
    return Arrays.stream(info.all())
        .filter(step -> step.getState().isResolved())
        .reduce((first, second) -> second)
        .map(step -> step.getVersion().toString())
        .orElse("none");
  }

  /** What is no report of the database means that the tables are not ours. */
  private StoreTrouble explained(FlywayException thrown) {
    try {
      return troubles.of(thrown);
    } catch (FlywayException ours) {
      StoreTrouble trouble = troubles.notAStore("its tables are not ours");
      trouble.initCause(ours);
      return trouble;
    }
  }
}
