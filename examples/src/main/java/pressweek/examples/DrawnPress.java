package pressweek.examples;

/**
 * A drawn press.
 *
 * @param id press number
 * @param vertical true for a vertical press
 * @param table table
 * @param lowerHalves lower halves a mold has there
 * @param clampKn clamp force
 * @param shotPsG shot weight in polystyrene
 * @param food {@code only}, {@code kept}, {@code open} or {@code never}
 */
record DrawnPress(
    String id,
    boolean vertical,
    String table,
    int lowerHalves,
    int clampKn,
    int shotPsG,
    String food) {
  /** True when food-grade work may run here. */
  boolean takesFood() {
    return !food.equals("never");
  }

  /** True when nothing but food-grade work may run here. */
  boolean foodOnly() {
    return food.equals("only");
  }

  /** Price of an hour in whole units of money: a base and what its size adds. */
  int ratePerHour() {
    return 16 + clampKn / 100;
  }
}
