package pressweek.data.files;

import java.util.List;

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
    if (f.faults().isEmpty()) {
      needed(kind).forEach(f::required);
    }
    return new EventRow(
        f.at(),
        kind,
        f.id("what"),
        f.text("line"),
        f.time("at"),
        f.time("until"),
        f.whole("count", 0, Fields.MOST_PIECES),
        f.text("note"),
        f.text("item"),
        f.whole("quantity", 1, Fields.MOST_PIECES),
        f.time("due"),
        OrderTables.needs(f));
  }

  /** Cells that an event of this kind must have. */
  private static List<String> needed(EventKind kind) {
    return switch (kind) {
      case PRESS_AWAY, MOLD_AWAY, PERSON_AWAY, FINISHED -> List.of("at");
      case COUNT_SHORT -> List.of("count");
      case RUSH -> List.of("item", "quantity", "due");
      case LOT_HELD, DROPPED, ON_HOLD -> List.of();
    };
  }
}
