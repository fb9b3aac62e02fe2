package pressweek.data.week;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import pressweek.data.files.BomRow;
import pressweek.data.files.InsertRow;
import pressweek.data.problem.Tip;

/** The tips of inserts, by {@code inserts.csv}, and of items, by {@code bom.csv}. */
final class Tips {
  private final Map<String, List<String>> byInsert = new LinkedHashMap<>();
  private final Map<String, List<String>> byItem = new LinkedHashMap<>();
  private final UnaryOperator<String> key;

  /**
   * The tips of a plant.
   *
   * @param key what an item code is looked up by
   */
  Tips(List<InsertRow> inserts, List<BomRow> bom, UnaryOperator<String> key) {
    this.key = key;
    for (InsertRow row : inserts) {
      if (!row.tip().isEmpty()) {
        byInsert.computeIfAbsent(row.insert(), k -> new ArrayList<>()).add(row.tip());
      }
    }
    for (BomRow row : bom) {
      if (row.kind() == BomRow.Kind.TIP && !row.component().isEmpty()) {
        byItem.computeIfAbsent(key.apply(row.item()), k -> new ArrayList<>()).add(row.component());
      }
    }
  }

  /** Tips of an insert part. */
  List<String> of(String insert) {
    return byInsert.getOrDefault(insert, List.of());
  }

  /** Tips of an item, beside those of its inserts. */
  List<String> ofItem(String code) {
    return byItem.getOrDefault(key.apply(code), List.of());
  }

  /** All tips of these inserts and items, by the codes as they are given. */
  List<Tip> all(List<String> inserts, List<String> codes) {
    List<Tip> all = new ArrayList<>();
    inserts.forEach(insert -> of(insert).forEach(tip -> all.add(new Tip(insert, tip))));
    codes.forEach(code -> ofItem(code).forEach(tip -> all.add(new Tip(code, tip))));
    return List.copyOf(all);
  }
}
