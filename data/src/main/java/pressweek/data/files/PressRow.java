package pressweek.data.files;

import java.util.List;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.Press;

/**
 * A row of {@code presses.csv}: a press.
 *
 * @param at where it stands
 * @param press press number
 * @param cell cell; may be empty
 * @param build what it is
 * @param size what it can take; what is empty is not checked
 * @param calendar calendar of {@code plant.json}; empty for all shifts
 * @param food what it may do for food-grade work
 * @param ratePerHour what an hour of running costs, thousandths of a cent
 * @param dryers dryers that feed it, beside those whose own row says so
 */
public record PressRow(
    At at,
    String press,
    String cell,
    Press.Build build,
    Press.Size size,
    String calendar,
    FoodUse food,
    long ratePerHour,
    List<String> dryers) {
  public PressRow {
    dryers = List.copyOf(dryers);
  }
}
