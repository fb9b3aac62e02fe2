package pressweek.data.problem;

/**
 * An order line that is not in the plan, with the reason and what would cure it.
 *
 * @param order order number
 * @param line line number
 * @param item item code as written
 * @param pieces pieces that stay unmade
 * @param reason why, in a sentence
 * @param cure what would have to change, in a sentence; names whom to ask where a record is missing
 */
public record Unplaced(
    String order, String line, String item, int pieces, String reason, String cure) {
  /** The id of the line: {@code order/line}. */
  public String id() {
    return order + "/" + line;
  }
}
