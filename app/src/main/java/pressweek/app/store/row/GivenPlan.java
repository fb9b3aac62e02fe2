package pressweek.app.store.row;

/**
 * A plan that was given out to the floor.
 *
 * @param number its number, given out once
 * @param body the plan itself, opaque to the store
 * @param given who gave it out, when and why
 */
public record GivenPlan(String number, Body body, Change given) {
  /**
   * What a list of plans shows of one.
   *
   * @param number its number
   * @param given who gave it out, when and why
   */
  public record Head(String number, Change given) {}
}
