package pressweek.data.week;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.InsertRow;
import pressweek.data.week.Attempt.Done;
import pressweek.data.week.Attempt.Stopped;

/** Finds the insert part that an item asks for. */
final class InsertFinder {
  private static final int SHOWN = 3;
  private static final String CURE =
      "name the insert in the order's insert column or in bom.csv, or add it to inserts.csv";

  private final Map<String, InsertRow> byId = new LinkedHashMap<>();
  private final Map<String, List<InsertRow>> byKindAndThread = new HashMap<>();
  private final Map<InsertSpec, Attempt<InsertRow>> answers = new HashMap<>();

  InsertFinder(List<InsertRow> rows) {
    for (InsertRow row : rows) {
      byId.put(row.insert(), row);
      String key = InsertSpec.key(row.kind(), row.thread());
      byKindAndThread.computeIfAbsent(key, k -> new ArrayList<>()).add(row);
    }
  }

  /** True when the plant has no list of inserts. */
  boolean unknown() {
    return byId.isEmpty();
  }

  Optional<InsertRow> row(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** The insert part of this id. */
  Attempt<InsertRow> byId(String id) {
    InsertRow row = byId.get(id);
    return row == null
        ? new Stopped<>(Notes.unknown("insert", id, "inserts.csv", byId.keySet()), CURE)
        : new Done<>(row);
  }

  /** The one insert part that is what an item says. */
  Attempt<InsertRow> find(InsertSpec spec) {
    return answers.computeIfAbsent(spec, this::search);
  }

  private Attempt<InsertRow> search(InsertSpec spec) {
    List<InsertRow> alike =
        spec.thread().isEmpty()
            ? List.copyOf(byId.values())
            : byKindAndThread.getOrDefault(InsertSpec.key(spec.kind(), spec.thread()), List.of());
    List<InsertRow> fitting =
        alike.stream().filter(row -> spec.differences(row).isEmpty()).toList();
    List<InsertRow> exact = fitting.stream().filter(spec::saysAllOf).toList();
    if (fitting.size() == 1 || exact.size() == 1) {
      return new Done<>(exact.size() == 1 ? exact.get(0) : fitting.get(0));
    }
    if (fitting.isEmpty()) {
      return new Stopped<>("no insert part is a " + spec.words() + nearest(spec, alike), CURE);
    }
    List<String> ids = fitting.stream().map(InsertRow::insert).toList();
    return new Stopped<>(
        ids.size() + " insert parts are a " + spec.words() + ": " + Words.few(ids, SHOWN), CURE);
  }

  private static String nearest(InsertSpec spec, List<InsertRow> alike) {
    List<String> near =
        alike.stream()
            .sorted(Comparator.comparingInt(row -> spec.differences(row).size()))
            .limit(SHOWN)
            .filter(row -> spec.differences(row).size() <= 2)
            .map(row -> row.insert() + " has " + String.join(", ", spec.differences(row)))
            .toList();
    return near.isEmpty() ? "" : "; nearest: " + String.join("; ", near);
  }
}
