package pressweek.data.molding;

import java.util.OptionalDouble;

/**
 * Heating inserts before they are loaded, so that the melt round them is not quenched and they do
 * not crack it as it shrinks (cnmouldplastic.com, "Metal insert preheating": 110 to 130 degrees
 * Celsius, a few minutes; needed in PC, PS, PSU and PPO, not for small inserts in PE or PP).
 *
 * @param celsius temperature of the inserts
 * @param answer whether they bear it
 */
public record Preheat(double celsius, Answer answer) {
  /** Whether the finish or the tip of an insert bears the heat. */
  public enum Answer {
    FINE,
    /** Hotter than the finish or tip bears. */
    TOO_HOT,
    /** Nothing is recorded of what it bears. */
    NOT_KNOWN
  }

  /**
   * The preheating of an insert.
   *
   * @param insertC temperature by the insert's own record
   * @param usualC temperature where it has none
   * @param mostC hottest that its finish and tip bear
   */
  public static Preheat of(OptionalDouble insertC, double usualC, OptionalDouble mostC) {
    double celsius = insertC.orElse(usualC);
    if (mostC.isEmpty()) {
      return new Preheat(celsius, Answer.NOT_KNOWN);
    }
    return new Preheat(celsius, celsius > mostC.getAsDouble() ? Answer.TOO_HOT : Answer.FINE);
  }
}
