package pressweek.data.files;

import java.util.Optional;
import java.util.OptionalInt;

/** What happened on the floor since the plan was made. */
final class EventTables {
  static final TableSpec<EventRow> EVENTS =
      new TableSpec<>(
          Columns.of(InputFile.EVENTS)
              .choice("!event", Columns.words(EventKind.values()))
              .text("!what", "line")
              .time("at", "until")
              .whole("count")
              .text("note", "item")
              .whole("quantity")
              .time("due")
              .text("needs")
              .build(),
          EventTables::event,
          r -> "");

  private EventTables() {}

  private static EventRow event(Fields f) {
    EventKind kind = f.requiredChoice("event", EventKind.class);
    Optional<When> at = f.time("at");
    if (kind.away() || kind == EventKind.FINISHED) {
      f.required("at");
    }
    OptionalInt count = f.whole("count", 0, Fields.MOST_PIECES);
    if (kind == EventKind.COUNT_SHORT) {
      f.required("count");
    }
    if (kind == EventKind.RUSH) {
      f.required("item");
      f.required("quantity");
      f.required("due");
    }
    return new EventRow(
        f.at(),
        kind,
        f.id("what"),
        f.text("line"),
        at,
        f.time("until"),
        count,
        f.text("note"),
        f.text("item"),
        f.whole("quantity", 1, Fields.MOST_PIECES),
        f.time("due"),
        OrderTables.needs(f));
  }
}
