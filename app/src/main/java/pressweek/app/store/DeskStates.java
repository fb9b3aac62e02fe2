package pressweek.app.store;

import java.util.Optional;
import org.jdbi.v3.core.Handle;
import pressweek.app.store.row.Answer;
import pressweek.app.store.row.Change;
import pressweek.app.store.row.DeskState;
import pressweek.app.store.row.NewState;

/**
 * The states of the week on the desk: a tree in which undo goes to the parent and redo to its
 * latest child. Each change names the version that it starts from, so that two people never
 * overwrite each other unseen.
 */
public final class DeskStates {
  private static final String ABOUT = "week";

  private final Database database;

  DeskStates(Database database) {
    this.database = database;
  }

  /** What lies on the desk; empty before the first state. */
  public Optional<DeskState> current() throws StoreTrouble {
    return database.read(DeskRows::current);
  }

  /** The version of the desk: 0 before the first state. */
  public long version() throws StoreTrouble {
    return database.read(handle -> DeskRows.desk(handle).version());
  }

  /** Lays a state on the desk, its parent being what lay there. */
  public Answer<DeskState> put(NewState state, long expectedVersion) throws StoreTrouble {
    return database.write(
        handle -> {
          if (!DeskRows.step(handle, expectedVersion, state.what(), state.made())) {
            return stale(handle);
          }
          DeskRows.point(handle, DeskRows.insert(handle, state));
          History.write(handle, state.what(), ABOUT, state.made());
          return done(handle);
        });
  }

  /** Goes back to the state before; {@link Answer.Nothing} if there is none. */
  public Answer<DeskState> undo(long expectedVersion, Change change) throws StoreTrouble {
    return database.write(
        handle -> {
          Optional<DeskRows.Place> parent = DeskRows.parent(handle);
          return move(handle, expectedVersion, change, parent, "took back: ");
        });
  }

  /**
   * Goes forward to the state from which the last undo came; {@link Answer.Nothing} if there is
   * none.
   */
  public Answer<DeskState> redo(long expectedVersion, Change change) throws StoreTrouble {
    return database.write(
        handle -> {
          Optional<DeskRows.Place> child = DeskRows.latestChild(handle);
          return move(handle, expectedVersion, change, child, "did again: ");
        });
  }

  /**
   * Forgets all but what undo and redo can reach in so many steps from the desk.
   *
   * @param steps how many states to keep each way, the one on the desk being the first; at least 1
   * @return how many were forgotten
   */
  public int prune(int steps) throws StoreTrouble {
    return database.write(handle -> DeskPruning.prune(handle, steps));
  }

  private static Answer<DeskState> move(
      Handle handle,
      long expectedVersion,
      Change change,
      Optional<DeskRows.Place> place,
      String verb) {
    if (DeskRows.desk(handle).version() != expectedVersion) {
      return stale(handle);
    }
    if (place.isEmpty()) {
      return new Answer.Nothing<>();
    }
    String what = verb + place.get().what();
    if (!DeskRows.step(handle, expectedVersion, what, change)) {
      return stale(handle);
    }
    DeskRows.point(handle, place.get().id());
    History.write(handle, what, ABOUT, change);
    return done(handle);
  }

  private static Answer<DeskState> done(Handle handle) {
    return new Answer.Done<>(DeskRows.current(handle).orElseThrow());
  }

  private static Answer<DeskState> stale(Handle handle) {
    DeskRows.Desk desk = DeskRows.desk(handle);
    return new Answer.Stale<>(desk.version(), desk.what(), desk.by(), desk.at());
  }
}
