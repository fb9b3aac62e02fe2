package pressweek.data.problem;

import java.util.List;
import java.util.Optional;

/**
 * An item as its code (or its order line) describes it.
 *
 * @param code the item code as written in the order
 * @param attributes what is known of it, each with its origin, in the order in which a person reads
 *     them; a name occurs once
 */
public record Item(String code, List<Attribute> attributes) {
  /** Attribute names that the planner itself looks at. A guide may add any others. */
  public static final String HEAD = "head";

  public static final String HUB = "hub";
  public static final String INSERT = "insert";
  public static final String INSERT_KIND = "insert_kind";
  public static final String THREAD = "thread";
  public static final String LENGTH_MM = "length_mm";
  public static final String INSERT_MATERIAL = "insert_material";
  public static final String FINISH = "finish";
  public static final String RESIN = "resin";
  public static final String COLOUR = "colour";
  public static final String MOLD = "mold";
  public static final String FOOD = "food";
  public static final String ROHS = "rohs";

  public Item {
    attributes = List.copyOf(attributes);
  }

  /** The value of the named attribute; empty when the item does not have it. */
  public Optional<String> value(String name) {
    return attributes.stream().filter(a -> a.name().equals(name)).map(Attribute::value).findFirst();
  }
}
