package pressweek.data.week;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import pressweek.data.problem.Item;

/**
 * An item as its code, its order line and the plant's records say.
 *
 * @param item the item
 * @param inserts inserts that go into each part
 * @param components tips, cartons and labels
 */
record ReadItem(Item item, List<InsertNeed> inserts, List<ComponentNeed> components) {
  ReadItem {
    inserts = List.copyOf(inserts);
    components = List.copyOf(components);
  }

  /** An item with nothing but inserts. */
  ReadItem(Item item, List<InsertNeed> inserts) {
    this(item, inserts, List.of());
  }

  /** The same with these tips, cartons and labels. */
  ReadItem with(List<ComponentNeed> others) {
    return new ReadItem(item, inserts, others);
  }

  /** The same over a core, which is loaded as an insert is and stands out as far as it says. */
  ReadItem over(double coreStandMm) {
    List<InsertNeed> loaded = new ArrayList<>(inserts);
    loaded.add(
        new InsertNeed("", 1, OptionalDouble.empty(), coreStandMm, new InsertNeed.Fit("", "")));
    return new ReadItem(item, loaded, components);
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
