package pressweek.data.problem;

import java.util.Optional;

/**
 * An order line that is not in the plan, with the reason and what would cure it.
 *
 * @param order order number
 * @param line line number
 * @param item item code as written
 * @param pieces pieces that stay unmade
 * @param reason why, in a sentence
 * @param cure what would have to change, in a sentence; names whom to ask where a record is missing
 * @param lacks components that are not in the house in time, separated by {@code |}, where that is
 *     the reason
 */
public record Unplaced(
    String order,
    String line,
    String item,
    int pieces,
    String reason,
    String cure,
    Optional<String> lacks) {
  /** A line that is unplaced for another reason than the stock of a component. */
  public Unplaced(String order, String line, String item, int pieces, String reason, String cure) {
    this(order, line, item, pieces, reason, cure, Optional.empty());
  }

  /** The id of the line: {@code order/line}. */
  public String id() {
    return order + "/" + line;
  }
}
