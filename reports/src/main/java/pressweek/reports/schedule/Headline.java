package pressweek.reports.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import pressweek.data.plan.Figures;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Rates;
import pressweek.reports.hours.Minutes;

/** What a plan amounts to, in a few sentences. */
public final class Headline {
  private Headline() {}

  /** Lines and changes of the plan: one sentence each. */
  public static List<String> figures(Plan plan) {
    List<String> sentences = new ArrayList<>();
    if (plan.head().stopped()) {
      sentences.add("The search was stopped early; this is the best plan it had found.");
    }
    sentences.add(lines(plan.figures()));
    sentences.add(changes(plan.figures()));
    return List.copyOf(sentences);
  }

  /**
   * Avoidable cost of the plan, how it stands to simple ways of planning, and how far it can be
   * from the best possible. Without rates no money is named, and the comparison says that it goes
   * by the default weights. Empty when there is no line to plan.
   */
  public static List<String> cost(Plan plan) {
    Rates rates = plan.problem().plant().rates();
    String compared =
        plan.head().references().stream()
            .map(r -> Comparison.words(plan, r))
            .collect(Collectors.joining(", "));
    List<String> sentences = new ArrayList<>();
    if (rates.shown()) {
      String cost = "Avoidable cost is " + Money.words(rates, plan.figures().avoidableCost());
      sentences.add(cost + (compared.isEmpty() ? "." : ": " + compared + "."));
    } else if (!compared.isEmpty()) {
      sentences.add("By the default weights the plan is " + compared + ".");
    }
    if (!plan.problem().jobs().isEmpty()) {
      sentences.add(BestPossible.words(plan));
    }
    return List.copyOf(sentences);
  }

  private static String lines(Figures figures) {
    int all = figures.placedLines() + figures.unplacedLines();
    if (all == 0) {
      return "There is no order line to plan.";
    }
    int onTime = figures.placedLines() - figures.lateLines();
    String late =
        figures.lateLines() == 0
            ? "none is late"
            : figures.lateLines() + " late by " + Minutes.words(figures.lateMin()) + " in all";
    String unplaced =
        figures.unplacedLines() == 0 ? "none is unplaced" : figures.unplacedLines() + " unplaced";
    String ready = onTime == 0 ? "none is" : onTime + (onTime == 1 ? " is" : " are");
    return "Of "
        + counted(all, "order line")
        + ", "
        + ready
        + " ready on time, "
        + late
        + ", "
        + unplaced
        + ".";
  }

  private static String changes(Figures figures) {
    if (figures.changes() == 0) {
      return "Nothing has to be changed.";
    }
    String purge = figures.purgeG() == 0 ? "" : " and purge " + kilograms(figures.purgeG());
    return counted(figures.changes(), "change")
        + (figures.changes() == 1 ? " takes " : " take ")
        + Minutes.hours(figures.changeMin())
        + purge
        + ".";
  }

  /** A number of things: {@code 1 change}, {@code 41 changes}. */
  public static String counted(long count, String what) {
    return String.format(Locale.ROOT, "%,d", count) + " " + what + (count == 1 ? "" : "s");
  }

  /** Grams as kilograms with one decimal, less than 0.1 kg in grams. */
  public static String kilograms(long grams) {
    return grams < 100 ? grams + " g" : String.format(Locale.ROOT, "%,.1f kg", grams / 1000.0);
  }
}
