package pressweek.data.week;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import pressweek.data.files.FamilyRow;
import pressweek.data.problem.Item;
import pressweek.data.problem.Job;
import pressweek.data.problem.Surplus;

/** Molds that make several items in each shot. */
final class Families {
  private final List<FamilyRow> rows;
  private final ItemReader items;
  private final Map<String, Attempt<ReadItem>> reads = new HashMap<>();
  private final Map<String, Map<String, FamilyRow>> byMold = new LinkedHashMap<>();

  Families(List<FamilyRow> rows, ItemReader items) {
    this.rows = rows;
    this.items = items;
    for (FamilyRow row : rows) {
      byMold
          .computeIfAbsent(row.mold(), k -> new LinkedHashMap<>())
          .putIfAbsent(items.key(row.item()), row);
    }
  }

  /** Pieces of an item in each shot of a mold; empty where the mold's own row says how many. */
  OptionalInt live(String mold, String item) {
    FamilyRow row = byMold.getOrDefault(mold, Map.of()).get(items.key(item));
    return row == null ? OptionalInt.empty() : OptionalInt.of(row.cavities());
  }

  /**
   * An item that is made beside another.
   *
   * @param item what it is
   * @param cavities pieces of it in each shot
   */
  record Beside(ReadItem item, int cavities) {}

  /** What a mold makes beside an item, as far as its codes can be read. */
  List<Beside> beside(String mold, String item) {
    List<Beside> beside = new ArrayList<>();
    Map<String, FamilyRow> all = byMold.getOrDefault(mold, Map.of());
    if (!all.containsKey(items.key(item))) {
      return beside;
    }
    all.forEach(
        (key, row) -> {
          boolean other = !key.equals(items.key(item));
          if (other && read(row.item()) instanceof Attempt.Done<ReadItem> done) {
            beside.add(new Beside(done.value(), row.cavities()));
          }
        });
    return beside;
  }

  private Attempt<ReadItem> read(String code) {
    return reads.computeIfAbsent(code, c -> items.read(BareOrder.of(c)));
  }

  /** What the molds make, items spelled as the jobs spell them. */
  List<Surplus> surplus(List<Job> jobs) {
    Map<String, String> spelled = new HashMap<>();
    jobs.forEach(job -> spelled.put(items.key(job.item().code()), job.item().code()));
    return rows.stream()
        .map(
            row ->
                new Surplus(
                    row.mold(),
                    spelled.getOrDefault(items.key(row.item()), row.item()),
                    row.cavities()))
        .toList();
  }

  /** Adds what is wrong with the items of the molds. */
  void check(Notes notes) {
    Map<String, FamilyRow> first = new HashMap<>();
    for (FamilyRow row : rows) {
      List<String> faults = items.faults(row.item());
      if (!faults.isEmpty()) {
        notes.error(row.at(), "item", String.join("; ", faults));
        continue;
      }
      twice(row, notes);
      FamilyRow before = first.putIfAbsent(row.mold(), row);
      if (before != null) {
        differs(before, row, notes);
      }
    }
  }

  private void twice(FamilyRow row, Notes notes) {
    FamilyRow before =
        byMold.getOrDefault(row.mold(), Map.of()).getOrDefault(items.key(row.item()), row);
    if (!before.at().equals(row.at())) {
      notes.error(
          row.at(),
          "item",
          "item \"%s\" of mold %s is also in line %d; expected it once"
              .formatted(row.item(), row.mold(), before.at().line()));
    }
  }

  /** A run of a family mold is of one resin and colour. */
  private void differs(FamilyRow before, FamilyRow row, Notes notes) {
    List<String> names = new ArrayList<>();
    for (String name : List.of(Item.RESIN, Item.COLOUR)) {
      String one = items.says(before.item(), name);
      String other = items.says(row.item(), name);
      if (!one.isEmpty() && !other.isEmpty() && !one.equals(other)) {
        names.add(name + " " + other + ", not " + one);
      }
    }
    if (!names.isEmpty()) {
      notes.warning(
          row.at(),
          "item",
          "item \"%s\" says %s as in line %d; a run of mold %s is of one resin and colour"
              .formatted(row.item(), String.join(" and ", names), before.at().line(), row.mold()));
    }
  }
}
