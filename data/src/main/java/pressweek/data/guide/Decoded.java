package pressweek.data.guide;

import java.util.List;
import pressweek.data.problem.Attribute;
import pressweek.data.problem.Item;

/**
 * What an item code means, or why it means nothing.
 *
 * @param code the code as it was given
 * @param family kind of item; empty when the code fits none
 * @param attributes what the code, the rules and the defaults say, in that order; empty when there
 *     is a fault in the writing
 * @param faults why the code is not good, each in a sentence; empty when it is
 * @param special true when the code says that the item has a record of its own
 */
public record Decoded(
    String code, String family, List<Attribute> attributes, List<String> faults, boolean special) {
  public Decoded {
    attributes = List.copyOf(attributes);
    faults = List.copyOf(faults);
  }

  /** True when the code means an item. */
  public boolean good() {
    return faults.isEmpty();
  }

  /** The item that a good code means. */
  public Item item() {
    if (!good()) {
      throw new IllegalStateException("no item: " + faults);
    }
    return new Item(code, attributes);
  }
}
