package pressweek.data.problem;

/**
 * How long a job runs and whom it needs.
 *
 * @param cycleMillis cycle time, milliseconds a shot, before the plant's efficiency
 * @param runMin working minutes of the run, rounded up, efficiency counted in
 * @param startupMin further working minutes for the start-up shots after a change, rounded up
 * @param operatorThousandths thousandths of an operator who must be there for the whole run
 * @param basis where the cycle came from, for example {@code standards.csv:12} or {@code estimate:
 *     molds.csv cycle_s}
 */
public record Pace(
    int cycleMillis, int runMin, int startupMin, int operatorThousandths, String basis) {
  public Pace {
    if (runMin < 1 || startupMin < 0 || operatorThousandths < 0) {
      throw new IllegalArgumentException(
          "run of " + runMin + " min, start-up " + startupMin + " min");
    }
  }
}
