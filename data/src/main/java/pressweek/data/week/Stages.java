package pressweek.data.week;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.StageRow;
import pressweek.data.problem.Item;

/** Items that are molded over a core. */
final class Stages {
  private final List<StageRow> rows;
  private final ItemReader items;
  private final Map<String, StageRow> byKey = new HashMap<>();

  Stages(List<StageRow> rows, ItemReader items) {
    this.rows = rows;
    this.items = items;
    rows.forEach(row -> byKey.putIfAbsent(items.key(row.item()), row));
  }

  /** How an item is molded over a core, by its code before its head; empty when it is not. */
  Optional<StageRow> of(String code) {
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    String head = items.says(code, Item.HEAD);
    return Optional.ofNullable(byKey.get(items.key(code)))
        .or(() -> Optional.ofNullable(byKey.get(items.key(head))));
  }

  /** Adds what is wrong with the cores. */
  void check(Notes notes) {
    for (StageRow row : rows) {
      List<String> faults = new ArrayList<>(items.faults(row.core()));
      if (!faults.isEmpty()) {
        notes.error(row.at(), "core", String.join("; ", faults));
      }
      of(row.core())
          .ifPresent(
              other ->
                  notes.error(
                      row.at(),
                      "core",
                      "core \"%s\" is itself molded over a core, by line %d; expected one that is molded at once"
                          .formatted(row.core(), other.at().line())));
    }
  }
}
