package pressweek.data.week;

import java.util.List;
import pressweek.data.problem.Item;

/**
 * An item as its code, its order line and the plant's records say.
 *
 * @param item the item
 * @param inserts inserts that go into each part
 */
record ReadItem(Item item, List<InsertNeed> inserts) {
  ReadItem {
    inserts = List.copyOf(inserts);
  }

  /** The value of an attribute; empty when the item does not have it. */
  String value(String name) {
    return item.value(name).orElse("");
  }

  /** How far the longest insert stands out, mm. */
  double standMm() {
    return inserts.stream().mapToDouble(InsertNeed::standMm).max().orElse(0);
  }
}
