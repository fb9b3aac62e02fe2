package pressweek.app.cli;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import pressweek.data.learning.Proposal;
import pressweek.data.learning.Proposal.Verdict;
import pressweek.reports.schedule.TextLines;

/** What past runs propose, as text of at most 80 columns. */
final class LearnPrinter {
  private static final int WIDTH = 80;

  private final List<Proposal> proposals;
  private final TextLines out = new TextLines(WIDTH);

  private LearnPrinter(List<Proposal> proposals) {
    this.proposals = proposals;
  }

  /**
   * The text.
   *
   * @param runs the runs that were looked at
   * @param least how many a figure is learnt from at least
   */
  static String text(List<Proposal> proposals, ActualsOption.Runs runs, int least) {
    return new LearnPrinter(proposals).write(runs, least);
  }

  private String write(ActualsOption.Runs runs, int least) {
    long changes = proposals.stream().filter(Proposal::changes).count();
    out.line(
        "",
        "%s of %s: %s proposed. Nothing is changed in the folder."
            .formatted(
                Counts.of(runs.rows().size(), "run"),
                runs.file(),
                Counts.of((int) changes, "change")));
    part("Proposed", Proposal::changes);
    part("Stays: the figure lies within the interval", p -> p.verdict() == Verdict.STAYS);
    part(
        "Fewer than %d runs: nothing is proposed".formatted(least),
        p -> p.verdict() == Verdict.TOO_FEW);
    part(
        "Not proposed: no row of standards.csv holds it, and too few cycles are known for one",
        p -> p.verdict() == Verdict.NO_ROW);
    return out.toString();
  }

  private void part(String heading, Predicate<Proposal> of) {
    List<Proposal> shown = proposals.stream().filter(of).toList();
    if (shown.isEmpty()) {
      return;
    }
    out.heading(heading);
    for (Proposal proposal : shown) {
      String where = proposal.where().isEmpty() ? "" : proposal.where() + ": ";
      out.line("  ", where + proposal.what());
      out.line("      ", words(proposal));
    }
  }

  private static String words(Proposal p) {
    String old = p.old().map(LearnPrinter::number).orElse("none");
    String figure = p.figure().column() + " " + old;
    String to = p.changes() ? " -> " + number(p.proposed()) : "";
    String found =
        " (%s, middle %s, 95 %%: %s to %s, spread %s)"
            .formatted(
                Counts.of(p.found().n(), "run"),
                number(p.found().middle()),
                number(p.found().low()),
                number(p.found().high()),
                number(p.found().spread()));
    return figure + to + found;
  }

  private static String number(double value) {
    String text = String.format(Locale.ROOT, "%.1f", value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
