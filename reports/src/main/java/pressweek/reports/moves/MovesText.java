package pressweek.reports.moves;

import java.util.List;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Rates;
import pressweek.reports.hours.Minutes;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.schedule.Headline;
import pressweek.reports.schedule.Money;
import pressweek.reports.schedule.TextLines;

/** What a scheduler reads in the terminal after a plan was repaired, at most 80 columns wide. */
public final class MovesText {
  private static final int WIDTH = 80;
  private static final int SHOWN = 20;

  private final Moves moves;
  private final Plan plan;
  private final PlantClock clock;
  private final TextLines out = new TextLines(WIDTH);

  private MovesText(Moves moves) {
    this.moves = moves;
    plan = moves.plan();
    clock = PlantClock.of(plan.problem().plant().hours());
  }

  /**
   * The summary.
   *
   * @param findings hard rules that an audit found broken, in words
   */
  public static String of(Moves moves, List<String> findings) {
    return new MovesText(moves).write(findings);
  }

  private String write(List<String> findings) {
    out.line(
        "",
        "plan %s from %s, replaces %s"
            .formatted(
                plan.head().number(),
                clock.moment(plan.problem().plant().hours().startMin()),
                plan.head().replaces()));
    if (!findings.isEmpty()) {
      out.heading("THIS PLAN BREAKS HARD RULES. DO NOT RUN IT.");
      findings.forEach(f -> out.line("  - ", f));
    }
    out.heading("");
    List<Move> rows = MovesReport.of(moves);
    out.line("", counts(rows));
    cost();
    list("Moves", rows);
    newlyLate();
    if (!moves.notes().isEmpty()) {
      out.heading("Mind");
      moves.notes().forEach(n -> out.line("  - ", n));
    }
    return out.toString();
  }

  private String counts(List<Move> rows) {
    long done = moves.ended().size() - of(rows, MoveKind.DROPPED) - of(rows, MoveKind.FINISHED);
    return "%s: %d stay, %d moved, %d new; %d unplaced, %d dropped, %d finished, %d done before."
        .formatted(
            Headline.counted(plan.runs().size(), "run"),
            MovesReport.stayed(moves),
            of(rows, MoveKind.MOVED),
            of(rows, MoveKind.NEW),
            of(rows, MoveKind.UNPLACED),
            of(rows, MoveKind.DROPPED),
            of(rows, MoveKind.FINISHED),
            done);
  }

  private static long of(List<Move> rows, MoveKind kind) {
    return rows.stream().filter(m -> m.kind() == kind).count();
  }

  private void cost() {
    Rates rates = plan.problem().plant().rates();
    if (rates.shown()) {
      out.line(
          "",
          "Avoidable cost from now on: %s as planned before, %s now."
              .formatted(
                  Money.words(rates, moves.unchanged().figures().avoidableCost()),
                  Money.words(rates, plan.figures().avoidableCost())));
    }
  }

  private void list(String heading, List<Move> rows) {
    if (rows.isEmpty()) {
      return;
    }
    out.heading(heading);
    for (Move move : rows.subList(0, Math.min(SHOWN, rows.size()))) {
      out.line("  ", move.kind().word() + " " + move.line() + ": " + places(move));
      out.line("      ", move.reason());
    }
    if (rows.size() > SHOWN) {
      out.line("  ", "and %d more in moves.csv".formatted(rows.size() - SHOWN));
    }
  }

  private String places(Move move) {
    String was = move.before().map(this::place).orElse("");
    String is = move.now().map(this::place).orElse("");
    return is.isEmpty() ? was : was.isEmpty() ? is : was + " -> " + is;
  }

  private String place(Run run) {
    return run.press() + " " + clock.brief(run.startMin());
  }

  private void newlyLate() {
    List<Run> late = MovesReport.newlyLate(moves);
    if (late.isEmpty()) {
      return;
    }
    out.heading("Late now that was not");
    for (Run run : late.subList(0, Math.min(SHOWN, late.size()))) {
      out.line(
          "  ",
          "%s on %s: ready %s, %s late"
              .formatted(
                  run.job(),
                  run.press(),
                  clock.brief(run.readyMin()),
                  Minutes.words(MovesReport.late(plan, run))));
    }
    if (late.size() > SHOWN) {
      out.line("  ", "and %d more in handover.csv".formatted(late.size() - SHOWN));
    }
  }
}
