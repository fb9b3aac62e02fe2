package pressweek.reports.schedule;

import java.util.Locale;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Reference;

/** A plan beside what simple ways of planning would give. */
public final class Comparison {
  private Comparison() {}

  /**
   * How the plan's avoidable cost stands to that of a simple way: {@code 18 % below
   * earliest-due-date order}.
   */
  public static String words(Plan plan, Reference reference) {
    long own = plan.figures().avoidableCost();
    long other = reference.avoidableCost();
    if (own == other) {
      return "the same as " + reference.name();
    }
    String side = own < other ? " below " : " above ";
    return share(Math.abs(own - other), other) + side + reference.name();
  }

  private static String share(long difference, long whole) {
    if (whole <= 0) {
      return "far";
    }
    double percent = 100.0 * difference / whole;
    return percent < 1
        ? "less than 1 %"
        : String.format(Locale.ROOT, "%,d %%", Math.round(percent));
  }

  /**
   * Lines of the plan that are late or found no place, as {@link Reference#lateLines()} counts
   * them.
   */
  public static int lateOrLeftOut(Plan plan) {
    return plan.figures().lateLines() + plan.unplacedCharges().size();
  }
}
