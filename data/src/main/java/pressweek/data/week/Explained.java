package pressweek.data.week;

import java.util.List;
import pressweek.data.problem.Attribute;

/**
 * What an item code leads to.
 *
 * @param code the code
 * @param family kind of item by the guide; empty when the code cannot be read
 * @param attributes what is known of the item, each with its origin; what cannot be read has none
 * @param makers molds that can make it and their presses
 * @param trouble why no order of it could be planned; empty when one could
 * @param cure what would have to change; empty likewise
 */
public record Explained(
    String code,
    String family,
    List<Attribute> attributes,
    List<Maker> makers,
    String trouble,
    String cure) {
  public Explained {
    attributes = List.copyOf(attributes);
    makers = List.copyOf(makers);
  }

  /**
   * A mold that can make an item.
   *
   * @param mold mold
   * @param presses presses that it may run on for this item, the best liked first
   * @param objections why it may not run on the others, when it may run on none
   */
  public record Maker(String mold, List<String> presses, List<String> objections) {
    public Maker {
      presses = List.copyOf(presses);
      objections = List.copyOf(objections);
    }
  }
}
