package pressweek.data.problem;

import java.util.List;

/**
 * An order line as the planner sees it: what to make, by when, and every press and mold that can
 * make it.
 *
 * @param line the order line
 * @param item the decoded item
 * @param quantity pieces to make
 * @param deadline times and weight
 * @param resin resin id
 * @param colour colour id within the resin
 * @param foodGrade true when it may run only on presses kept or cleared for food-grade work
 * @param options every press and mold that can make it; never empty, a job without one is unplaced
 *     from the start
 */
public record Job(
    OrderLine line,
    Item item,
    Quantity quantity,
    Deadline deadline,
    String resin,
    String colour,
    boolean foodGrade,
    List<Option> options) {
  public Job {
    options = List.copyOf(options);
    if (options.isEmpty()) {
      throw new IllegalArgumentException("job " + line.id() + " has no press that can make it");
    }
  }

  /**
   * True for food-grade work and for whatever asks for declarations, by its order or its item code:
   * its run takes a component from one lot where one suffices, and lots are never mixed without a
   * word.
   */
  public boolean traced() {
    return foodGrade || !line.needs().isEmpty() || says(Item.FOOD) || says(Item.ROHS);
  }

  private boolean says(String need) {
    return item.value(need).filter("yes"::equals).isPresent();
  }

  /** The id of the job: {@code order/line}. */
  public String id() {
    return line.id();
  }
}
