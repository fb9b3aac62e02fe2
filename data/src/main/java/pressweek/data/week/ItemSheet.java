package pressweek.data.week;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.problem.Attribute;
import pressweek.data.problem.Item;
import pressweek.data.problem.Origin;

/**
 * The attributes of one item while they are gathered; what comes later overrules what came before.
 */
final class ItemSheet {
  /** Attributes beside those that {@link Item} names. */
  static final String PASSIVATION = "passivation";

  static final String INSERT_PIECES = "insert_pieces";
  static final String ROHS = Item.ROHS;

  /** The prefix of the attributes of another insert in the same part. */
  static final String SECOND = "second_";

  private final String code;
  private final Map<String, Attribute> attributes = new LinkedHashMap<>();

  ItemSheet(String code, List<Attribute> attributes) {
    this.code = code;
    attributes.forEach(attribute -> this.attributes.put(attribute.name(), attribute));
  }

  /** Sets an attribute, unless the value is empty or the item says the same already. */
  void set(String name, String value, Origin origin, String because) {
    if (!value.isEmpty() && !value.equals(value(name))) {
      attributes.put(name, new Attribute(name, value, origin, because));
    }
  }

  /** The value of an attribute; empty when the item does not have it. */
  String value(String name) {
    Attribute attribute = attributes.get(name);
    return attribute == null ? "" : attribute.value();
  }

  Item item() {
    return new Item(code, List.copyOf(attributes.values()));
  }
}
