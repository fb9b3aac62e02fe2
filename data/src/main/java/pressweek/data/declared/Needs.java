package pressweek.data.declared;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import pressweek.data.problem.Item;
import pressweek.data.problem.Job;

/** What an order asks of its material. */
public final class Needs {
  /** Contact with food. */
  public static final String FOOD = Item.FOOD;

  /** No restricted substances: Directive 2011/65/EU (RoHS), Annex II. */
  public static final String ROHS = Item.ROHS;

  private Needs() {}

  /** What an order line asks for: its own needs, and those that the item says. */
  public static Set<String> of(List<String> ordered, Item item) {
    Set<String> needs = new LinkedHashSet<>(ordered);
    for (String need : List.of(FOOD, ROHS)) {
      if (item.value(need).filter("yes"::equals).isPresent()) {
        needs.add(need);
      }
    }
    return needs;
  }

  /** What the order line of a job asks for. */
  public static Set<String> of(Job job) {
    return of(job.line().needs(), job.item());
  }
}
