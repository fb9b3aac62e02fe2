package pressweek.data.files;

/**
 * A row of {@code promised.csv}: what has been promised to the floor.
 *
 * @param at where it stands
 * @param order order number
 * @param line line within the order
 * @param press press
 * @param start start of its run
 */
public record PromisedRow(At at, String order, String line, String press, When start) {
  /** The id of the order line: {@code order/line}. */
  public String id() {
    return order + "/" + line;
  }
}
