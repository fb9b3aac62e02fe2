package pressweek.data.stress;

/**
 * How sure an order line of a plan is. A line that was split has one for each part.
 *
 * @param line {@code order/line}
 * @param run run number
 * @param press its press
 * @param dueMin when it is due, minutes since 1970 UTC
 * @param ready when it is ready
 * @param onTime share of replays in which it is ready by its due time
 * @param lateHours mean hours late over all replays, 0 where it is on time
 */
public record LineChance(
    String line,
    String run,
    String press,
    int dueMin,
    Ready ready,
    Chance onTime,
    double lateHours) {
  /**
   * When a line is ready, minutes since 1970 UTC.
   *
   * @param plannedMin by the plan
   * @param ninetyMin at the latest in nine replays of ten
   * @param sureMin at the latest in as many replays as the plant wants
   */
  public record Ready(int plannedMin, int ninetyMin, int sureMin) {}

  /** When the plan has it ready. */
  public int plannedMin() {
    return ready.plannedMin();
  }

  /**
   * Minutes by which it would have to be due later, or be ready earlier, to be on time in as many
   * replays as the plant wants; below 0 where it has so much to spare.
   */
  public int slackNeededMin() {
    return ready.sureMin() - dueMin;
  }
}
