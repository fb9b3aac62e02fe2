package pressweek.data.files;

/**
 * A row of {@code bom.csv}: a component of an item, or an attribute that the code alone does not
 * say.
 *
 * @param at where it stands
 * @param item item code
 * @param component component's id; empty when the row says an attribute
 * @param pieces pieces a part, or for every {@code per} parts
 * @param per parts that the pieces serve, the last ones in full; 1 for inserts and tips
 * @param kind what it is
 * @param attribute attribute that the row says; empty when it names a component
 * @param value its value
 */
public record BomRow(
    At at,
    String item,
    String component,
    int pieces,
    int per,
    Kind kind,
    String attribute,
    String value) {
  /** What a component is. */
  public enum Kind {
    INSERT,
    TIP,
    CARTON,
    LABEL
  }
}
