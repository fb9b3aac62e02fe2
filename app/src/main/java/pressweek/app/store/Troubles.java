package pressweek.app.store;

import static pressweek.app.store.StoreTrouble.Kind.DAMAGED;
import static pressweek.app.store.StoreTrouble.Kind.FULL;
import static pressweek.app.store.StoreTrouble.Kind.LOCKED;
import static pressweek.app.store.StoreTrouble.Kind.NEWER;
import static pressweek.app.store.StoreTrouble.Kind.NOT_A_STORE;
import static pressweek.app.store.StoreTrouble.Kind.REFUSED;
import static pressweek.app.store.StoreTrouble.Kind.UNREACHABLE;

import java.io.IOException;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.sqlite.SQLiteException;

/**
 * Turns what a database reports into words for a person. What is no trouble of the store but a
 * fault of the program is left as it was thrown.
 *
 * @param store the store as a person named it, without a password
 */
record Troubles(String store) {
  private static final int MOST_CAUSES = 20;
  static final String RESTORE =
      "Close Pressweek and restore the last back-up in its place; the damaged file is then kept"
          + " beside it";

  /** The trouble behind an exception; throws the exception itself if there is none. */
  StoreTrouble of(RuntimeException thrown) {
    List<SQLException> reports = reports(thrown);
    for (SQLException report : reports) {
      Optional<StoreTrouble> trouble = of(report, thrown);
      if (trouble.isPresent()) {
        return trouble.get();
      }
    }
    if (reports.stream().anyMatch(SQLTransientConnectionException.class::isInstance)) {
      return new StoreTrouble(
          LOCKED,
          store + " was too busy: no connection became free",
          "Try again in a minute",
          thrown);
    }
    throw thrown;
  }

  /** As {@link #of(RuntimeException)}, for a report that comes without a wrapping. */
  StoreTrouble of(SQLException report) {
    return of(new IllegalStateException(report));
  }

  /** A file or folder that could not be read or written. */
  StoreTrouble of(IOException thrown) {
    return new StoreTrouble(
        REFUSED,
        store + " could not be read or written: " + thrown,
        "Check that the folder exists, that its disk has room, and that you may write there",
        thrown);
  }

  StoreTrouble damaged(String where) {
    return new StoreTrouble(DAMAGED, store + " is damaged: " + where, RESTORE);
  }

  StoreTrouble notAStore(String why) {
    return new StoreTrouble(
        NOT_A_STORE,
        store + " is not a store of Pressweek: " + why,
        "Name another one; if it was a store of Pressweek, restore the last back-up in its place");
  }

  StoreTrouble newer(String theirs, String ours) {
    return new StoreTrouble(
        NEWER,
        store
            + " was written by a newer Pressweek (schema "
            + theirs
            + "; this one knows "
            + ours
            + ")",
        "Open it with that version, or restore a back-up from before the upgrade; nothing was"
            + " changed");
  }

  /** Whether two writers got in each other's way, so that the same again may well succeed. */
  static boolean passes(RuntimeException thrown) {
    return reports(thrown).stream()
        .map(SQLException::getSQLState)
        .anyMatch(state -> "40001".equals(state) || "40P01".equals(state));
  }

  private Optional<StoreTrouble> of(SQLException report, Throwable thrown) {
    if (report instanceof Rows.BrokenSeal seal) {
      return Optional.of(caused(damaged(String.valueOf(seal.getMessage())), thrown));
    }
    return report instanceof SQLiteException
        ? ofSqlite(report.getErrorCode() & 0xff, thrown)
        : ofState(Optional.ofNullable(report.getSQLState()).orElse(""), thrown);
  }

  private static List<SQLException> reports(Throwable thrown) {
    List<SQLException> reports = new ArrayList<>();
    Throwable cause = thrown;
    for (int i = 0; cause != null && i < MOST_CAUSES; i++) {
      if (cause instanceof SQLException report) {
        reports.add(report);
      }
      cause = cause.getCause();
    }
    return reports;
  }

  /** By the primary result codes of SQLite (sqlite.org/rescode.html). */
  private Optional<StoreTrouble> ofSqlite(int code, Throwable thrown) {
    return switch (code) {
      case 3, 8, 23 ->
          trouble(
              REFUSED,
              store + " may not be written",
              "Give this user the right to write the file and its folder",
              thrown);
      case 5, 6 ->
          trouble(
              LOCKED,
              store + " is locked by another program",
              "Close the program that has it open, such as another Pressweek, and try again",
              thrown);
      case 10 ->
          trouble(
              UNREACHABLE,
              store + " could not be read or written: the disk reports an error",
              "Check the disk and the network drive; the last change was not taken",
              thrown);
      case 11 -> Optional.of(caused(damaged("its pages do not fit together"), thrown));
      case 13 ->
          trouble(
              FULL,
              "The disk of " + store + " is full: the last change was not taken",
              "Make room on the disk and try again; all earlier changes are kept",
              thrown);
      case 14 ->
          trouble(
              UNREACHABLE,
              store + " cannot be opened",
              "Check that it is a file, that its folder exists, and that you may read and write it",
              thrown);
      case 26 -> Optional.of(caused(notAStore("it is no SQLite file"), thrown));
      default -> Optional.empty();
    };
  }

  /** By SQLSTATE (PostgreSQL 17, appendix A). */
  private Optional<StoreTrouble> ofState(String state, Throwable thrown) {
    if (state.startsWith("08") || state.startsWith("57P")) {
      return trouble(
          UNREACHABLE,
          "The database server of " + store + " does not answer",
          "Check the address and that the server runs; then try again",
          thrown);
    }
    if (state.startsWith("28")) {
      return trouble(
          REFUSED,
          store + " does not let this user in",
          "Check the user and the password in the address",
          thrown);
    }
    if (state.startsWith("XX0")) {
      return Optional.of(caused(damaged("the server reports " + state), thrown));
    }
    return ofWholeState(state, thrown);
  }

  private Optional<StoreTrouble> ofWholeState(String state, Throwable thrown) {
    return switch (state) {
      case "3D000" ->
          trouble(
              UNREACHABLE,
              "There is no database " + store,
              "Create it on the server first, or correct the address",
              thrown);
      case "42501", "25006" ->
          trouble(
              REFUSED,
              store + " may not be written",
              "Give this user the right to create and write tables there",
              thrown);
      case "53100" ->
          trouble(
              FULL,
              "The disk of " + store + " is full: the last change was not taken",
              "Make room on the server and try again; all earlier changes are kept",
              thrown);
      case "40001", "40P01", "55P03", "53300" ->
          trouble(
              LOCKED,
              store + " is too busy: others write the same or hold all connections",
              "Try again in a minute",
              thrown);
      default -> Optional.empty();
    };
  }

  private static Optional<StoreTrouble> trouble(
      StoreTrouble.Kind kind, String seen, String cure, Throwable cause) {
    return Optional.of(new StoreTrouble(kind, seen, cure, cause));
  }

  private static StoreTrouble caused(StoreTrouble trouble, Throwable cause) {
    trouble.initCause(cause);
    return trouble;
  }
}
