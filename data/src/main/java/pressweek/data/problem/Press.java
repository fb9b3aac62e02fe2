package pressweek.data.problem;

import java.util.OptionalDouble;

/**
 * A press.
 *
 * @param id press number
 * @param cell cell in which it stands; may be empty
 * @param build what it is
 * @param size what it can take; what is empty is not checked
 * @param calendar name of the calendar it works by
 * @param food what it may do for food-grade work
 * @param ratePerHour what an hour of running costs, thousandths of a cent
 */
public record Press(
    String id,
    String cell,
    Build build,
    Size size,
    String calendar,
    FoodUse food,
    long ratePerHour) {
  /**
   * What a press is.
   *
   * @param orientation how it clamps
   * @param table what carries the lower mold half
   * @param lowerHalves lower halves per mold; loading overlaps molding only with 2 or more
   * @param barrel what the barrel is made for
   */
  public record Build(Orientation orientation, Table table, int lowerHalves, Barrel barrel) {}

  /**
   * What a press can take: clamp force in kN, shot in grams of polystyrene, the rest in mm. Tie
   * bars as the clear width and height between them; the opening is the stroke between the open
   * mold halves.
   */
  public record Size(
      OptionalDouble clampKn,
      OptionalDouble shotPsG,
      OptionalDouble tieBarXMm,
      OptionalDouble tieBarYMm,
      OptionalDouble moldMinMm,
      OptionalDouble moldMaxMm,
      OptionalDouble openingMm) {}
}
