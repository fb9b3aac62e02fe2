package pressweek.data.molding;

import java.util.Optional;

/**
 * How long melt stays in the barrel: an estimate. Inventory over shot, times the cycle (published
 * how-to on residence time). The resin sheet and the site's procedure rule.
 *
 * @param minutes minutes from the throat to the nozzle
 * @param shotsInBarrel shots that the barrel holds, rounded up
 */
public record Residence(double minutes, int shotsInBarrel) {
  /**
   * The residence of a shot; empty when a figure is not above 0.
   *
   * @param inventoryG melt in barrel and screw flights, grams: some 1.4 times the rated shot
   * @param shotG grams a shot
   * @param cycleS whole cycle, seconds
   */
  public static Optional<Residence> of(double inventoryG, double shotG, double cycleS) {
    if (!(inventoryG > 0) || !(shotG > 0) || !(cycleS > 0)) {
      return Optional.empty();
    }
    double shots = inventoryG / shotG;
    return Optional.of(new Residence(shots * cycleS / 60, (int) Math.ceil(shots)));
  }

  /**
   * The longest stop that leaves the melt within the resin's limit, and what to purge after a
   * longer one: all that the barrel holds. Empty when the melt is beyond the limit without any
   * stop.
   *
   * @param limitMin longest stay that the resin bears, minutes
   */
  public Optional<StopRule> stopRule(double limitMin) {
    return minutes <= limitMin
        ? Optional.of(new StopRule((int) Math.floor(limitMin - minutes), shotsInBarrel))
        : Optional.empty();
  }

  /**
   * What a job sheet says of a stop.
   *
   * @param longestMin minutes of a stop after which nothing need be purged
   * @param purgeShots shots to purge after a longer one
   */
  public record StopRule(int longestMin, int purgeShots) {
    /** The rule as a job sheet says it. */
    public String sentence() {
      return "stopped more than %d min: purge %d shot%s"
          .formatted(longestMin, purgeShots, purgeShots == 1 ? "" : "s");
    }
  }
}
