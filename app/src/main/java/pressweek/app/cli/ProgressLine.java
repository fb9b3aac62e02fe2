package pressweek.app.cli;

import java.io.PrintWriter;
import java.util.Locale;
import pressweek.data.plan.Figures;
import pressweek.data.problem.Rates;
import pressweek.solver.Progress;
import pressweek.solver.Watcher;

/** Tells on standard error how the search goes on: elapsed, avoidable cost, late lines, changes. */
final class ProgressLine implements Watcher {
  private static final double MONEY = 100_000;

  private final PrintWriter err;
  private final Rates rates;

  ProgressLine(PrintWriter err, Rates rates) {
    this.err = err;
    this.rates = rates;
  }

  @Override
  public void seen(Progress progress) {
    Figures figures = progress.figures();
    String cost =
        rates.shown()
            ? String.format(
                Locale.ROOT,
                "avoidable cost %,.2f %s, ",
                figures.avoidableCost() / MONEY,
                rates.currency())
            : "";
    err.printf(
        Locale.ROOT,
        "%6.1f s  %s%d late, %d left out, %d changes of %.1f h%n",
        progress.elapsedMillis() / 1000.0,
        cost,
        figures.lateLines(),
        figures.unplacedLines(),
        figures.changes(),
        figures.changeMin() / 60.0);
    err.flush();
  }
}
