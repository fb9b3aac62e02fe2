package pressweek.app.cli;

import java.util.Locale;
import pressweek.data.problem.Rates;
import pressweek.reports.schedule.Money;
import pressweek.reports.schedule.TextLines;
import pressweek.solver.stress.SurePlanner;

/** Plans that were compared under uncertain times, as text of at most 80 columns. */
final class SurePrinter {
  private static final int WIDTH = 80;

  private SurePrinter() {}

  static String text(SurePlanner.Sure sure, Rates rates) {
    TextLines out = new TextLines(WIDTH);
    out.heading("Plans compared under uncertain times (estimates)");
    out.verbatim(row("", "runs longer", "by the plan", "in the mean", "lines on time"));
    for (int i = 0; i < sure.candidates().size(); i++) {
      SurePlanner.Candidate c = sure.candidates().get(i);
      out.verbatim(
          row(
              i == sure.chosen() ? "taken" : "",
              String.format(Locale.ROOT, "%.1f %%", c.longerPct()),
              money(rates, c.cost()),
              money(rates, Math.round(c.meanCost().mean())),
              String.format(Locale.ROOT, "%.1f", c.onTimeLines().mean())));
    }
    out.line(
        "  ",
        (rates.shown() ? "Avoidable cost by the plan and in" : "Lines on time are those in")
            + " the mean of "
            + Counts.of(sure.replays(), "replay")
            + ". The taken plan is the one that cost least in the mean of other replays.");
    return out.toString();
  }

  private static String money(Rates rates, long amount) {
    return rates.shown() ? Money.figure(amount) : "";
  }

  private static String row(String... cells) {
    return String.format(
            Locale.ROOT,
            "  %-6s %12s %15s %15s %14s",
            cells[0],
            cells[1],
            cells[2],
            cells[3],
            cells[4])
        .stripTrailing();
  }
}
