package pressweek.data.problem;

import java.util.List;

/**
 * An order line as the customer placed it.
 *
 * @param order order number
 * @param line line number within the order
 * @param customer who ordered; may be empty
 * @param item item code as written
 * @param quantity pieces ordered
 * @param requestedMin when the customer asked for it, minutes since 1970 UTC (the due time where
 *     nothing else is known)
 * @param needs what the order demands of its material, for example {@code food}, {@code rohs}
 * @param note free text for the floor; may be empty
 */
public record OrderLine(
    String order,
    String line,
    String customer,
    String item,
    int quantity,
    int requestedMin,
    List<String> needs,
    String note) {
  public OrderLine {
    needs = List.copyOf(needs);
  }

  /** The id of the line in lists, plans and messages: {@code order/line}. */
  public String id() {
    return order + "/" + line;
  }
}
