package pressweek.data.week;

import java.util.List;
import pressweek.data.guide.CodeReading;
import pressweek.data.problem.Attribute;

/**
 * What an item code leads to.
 *
 * @param code the code
 * @param canonical the same code in the guide's own spelling; the code itself when it cannot be
 *     read
 * @param reading what each of its parts says, or the place of its fault
 * @param attributes what is known of the item, each with its origin; what cannot be read has none
 * @param makers molds that can make it and their presses
 * @param trouble why no order of it could be planned; empty when one could
 * @param cure what would have to change; empty likewise
 */
public record Explained(
    String code,
    String canonical,
    CodeReading reading,
    List<Attribute> attributes,
    List<Maker> makers,
    String trouble,
    String cure) {
  public Explained {
    attributes = List.copyOf(attributes);
    makers = List.copyOf(makers);
  }

  /** Kind of item by the guide; empty when the code cannot be read. */
  public String family() {
    return reading.decoded().family();
  }

  /** True when an order of it could be planned. */
  public boolean good() {
    return trouble.isEmpty();
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
