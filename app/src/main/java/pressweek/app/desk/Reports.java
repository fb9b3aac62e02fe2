package pressweek.app.desk;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import pressweek.app.plan.Replanner;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;
import pressweek.app.store.row.FloorNote;
import pressweek.data.files.EventKind;
import pressweek.data.files.OrderRow;
import pressweek.data.floor.FloorEvent;

/** What the floor reported, kept with the plan into which it was taken. */
final class Reports {
  private Reports() {}

  /** Keeps what happened; answers the numbers of the reports. */
  static List<Long> keep(Desk desk, Replanner.Happened happened, String by) throws StoreTrouble {
    List<FloorNote.Event> events = new ArrayList<>();
    happened.events().forEach(e -> events.add(event(e)));
    happened.rush().forEach(r -> events.add(rush(r)));
    return desk.store().floorNotes().add(events, Change.of(by, desk.now()));
  }

  private static FloorNote.Event event(FloorEvent event) {
    return new FloorNote.Event(
        event.kind().word(),
        event.what(),
        Optional.of(instant(event.fromMin())),
        event.kind().away() ? Optional.of(instant(event.toMin())) : Optional.empty(),
        OptionalInt.of(event.count()),
        event.note());
  }

  private static FloorNote.Event rush(OrderRow row) {
    return new FloorNote.Event(
        EventKind.RUSH.word(),
        row.id(),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.of(row.quantity()),
        row.note());
  }

  private static Instant instant(int minute) {
    return Instant.ofEpochSecond(minute * 60L);
  }

  /** Says into which plan the reports were taken that a proposal answers. */
  static void takenInto(Desk desk, String number, Proposal found, Change change)
      throws StoreTrouble {
    if (!found.reported().isEmpty()) {
      desk.store().floorNotes().takeInto(number, found.reported(), change);
    }
  }
}
