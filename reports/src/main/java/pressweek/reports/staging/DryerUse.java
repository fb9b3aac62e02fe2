package pressweek.reports.staging;

import java.util.OptionalDouble;
import pressweek.data.plan.Run;
import pressweek.reports.hours.Span;

/**
 * A run's resin in a dryer.
 *
 * @param run run
 * @param resin resin
 * @param dryer dryer; empty when none is recorded for its press
 * @param held from the start of drying, or of the run when it is running already, to its end
 * @param hours hours of drying before the first shot, those of a cold start counted; 0 when it is
 *     running already
 * @param before the other resin that the dryer held before; empty for none or the same
 * @param kilograms in the hopper so that each stays its hours; empty when not known
 * @param litres of it; empty when not known
 */
record DryerUse(
    Run run,
    String resin,
    String dryer,
    Span held,
    double hours,
    String before,
    OptionalDouble kilograms,
    OptionalDouble litres) {
  /** True when another resin wants the same dryer at the same time. */
  boolean clashes(DryerUse other) {
    return sharesDryer(other) && !resin.equals(other.resin);
  }

  /** True when both are of one resin in one dryer at the same time. */
  boolean joins(DryerUse other) {
    return sharesDryer(other) && resin.equals(other.resin);
  }

  private boolean sharesDryer(DryerUse other) {
    return !dryer.isEmpty() && dryer.equals(other.dryer) && held.overlaps(other.held);
  }
}
