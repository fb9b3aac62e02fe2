package pressweek.app.web;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import pressweek.app.store.Store;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Answer;
import pressweek.app.store.row.Tick;

/** Adds ticks to the store, all or none, in their order; one that is there changes nothing. */
final class TickBook {
  /** Ticks on one pull that an undo takes back at most. */
  private static final int MOST = 100;

  private final Store store;

  TickBook(Store store) {
    this.store = store;
  }

  void add(List<GivenTicks.Given> ticks) throws StoreTrouble {
    store.together(
        () -> {
          for (GivenTicks.Given given : ticks) {
            if (given.undo()) {
              undo(given.tick());
            } else {
              store.ticks().add(List.of(given.tick()));
            }
          }
          return new Answer.Done<>(ticks.size());
        });
  }

  /**
   * Takes back everything that stands on a pull, as when two people have ticked it off. Where
   * nothing stands, the undo takes back itself, so that it is known when it is sent again.
   */
  private void undo(Tick undo) throws StoreTrouble {
    if (stands(undo.pull()).isEmpty()) {
      store.ticks().add(List.of(of(undo, undo.id(), undo)));
    }
    UUID id = undo.id();
    for (int i = 1; i <= MOST; i++) {
      Optional<Tick> stands = stands(undo.pull());
      if (stands.isEmpty() || store.ticks().add(List.of(of(undo, id, stands.get()))).isEmpty()) {
        return;
      }
      String next = undo.id() + "/" + i;
      id = UUID.nameUUIDFromBytes(next.getBytes(StandardCharsets.UTF_8));
    }
  }

  private Optional<Tick> stands(String pull) throws StoreTrouble {
    return Optional.ofNullable(store.ticks().standing(List.of(pull)).get(pull));
  }

  private static Tick of(Tick undo, UUID id, Tick undone) {
    return new Tick(
        id,
        undo.pull(),
        undo.planNumber(),
        0,
        0,
        undo.reason(),
        Optional.of(undone.id()),
        undo.stamp());
  }
}
