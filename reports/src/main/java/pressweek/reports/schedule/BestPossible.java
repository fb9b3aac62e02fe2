package pressweek.reports.schedule;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pressweek.data.plan.Bound;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Rates;

/**
 * How far a plan can be from the best possible one, by its proved lower bound. The best plan itself
 * is not known: it may well be dearer than the bound.
 */
public final class BestPossible {
  private BestPossible() {}

  /**
   * The most by which a plan is dearer than the best possible: {@code At most 34 % above the best
   * possible (proved bound EUR 210.00).} Without rates no money is named.
   */
  public static String words(Plan plan) {
    long cost = plan.figures().avoidableCost();
    Optional<Bound> bound = plan.head().plantWide().bound();
    if (cost == 0) {
      return "It is the best possible: nothing could have been avoided.";
    }
    long least = bound.map(Bound::amount).orElse(0L);
    if (least <= 0) {
      return "How far from the best possible: cannot tell.";
    }
    Rates rates = plan.problem().plant().rates();
    String money = rates.shown() ? " (proved bound " + Money.words(rates, least) + ")" : "";
    return cost <= least
        ? "It is the best possible" + money + "."
        : "At most " + percent(cost - least, least) + " above the best possible" + money + ".";
  }

  /** What the bound is made of, the largest first; empty when nothing is proved. */
  public static List<Bound.Part> parts(Plan plan) {
    return plan.head().plantWide().bound().map(Bound::parts).orElse(List.of()).stream()
        .sorted((a, b) -> Long.compare(b.amount(), a.amount()))
        .toList();
  }

  /** Rounded up, since it is said to be the most. */
  private static String percent(long above, long of) {
    double percent = 100.0 * above / of;
    return percent < 10
        ? String.format(Locale.ROOT, "%.1f %%", Math.ceil(percent * 10) / 10)
        : String.format(Locale.ROOT, "%,d %%", (long) Math.ceil(percent));
  }
}
