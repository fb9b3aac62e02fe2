package pressweek.data.files;

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
 * @param dryer dryer; may be empty
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
    String dryer) {}
