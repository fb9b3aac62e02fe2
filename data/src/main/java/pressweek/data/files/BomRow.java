package pressweek.data.files;

/**
 * A row of {@code bom.csv}: a component of an item.
 *
 * @param at where it stands
 * @param item item code
 * @param component component's id
 * @param pieces pieces a part
 * @param kind what it is
 */
public record BomRow(At at, String item, String component, int pieces, Kind kind) {
  /** What a component is. */
  public enum Kind {
    INSERT,
    TIP,
    CARTON,
    LABEL
  }
}
