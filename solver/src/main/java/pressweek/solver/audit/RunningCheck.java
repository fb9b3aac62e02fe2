package pressweek.solver.audit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import pressweek.data.plan.Change;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Option;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Take;

/** RUNNING: what is running stays where it is and goes on as soon as it can. */
final class RunningCheck {
  private RunningCheck() {}

  static void check(Week week, Findings findings) {
    for (PressWalk walk : week.walks()) {
      PressState state = week.ids().state(walk.press().id());
      if (week.ids().job(state.job()).isEmpty()) {
        continue;
      }
      Optional<Step> step =
          walk.steps().stream().filter(each -> each.run().job().equals(state.job())).findFirst();
      if (step.isPresent()) {
        stays(step.get(), state, findings);
      } else if (!starved(week, state)) {
        findings.add(
            Rule.RUNNING,
            state.job(),
            "line %s is running on %s, the plan has no run of it there"
                .formatted(state.job(), walk.press().id()));
      }
      walk.stays().stream()
          .filter(Stay::running)
          .forEach(stay -> start(walk, stay, week, findings));
    }
  }

  /**
   * True when what the job still needs never comes in, beside what other running jobs take, so that
   * it cannot go on; lots that expire within the horizon are not counted on.
   */
  private static boolean starved(Week week, PressState state) {
    StockBook stock = new StockBook(week);
    long last = stock.needMin(week.problem().plant().hours().endMin());
    List<Option> options =
        week.problem().jobs().stream()
            .filter(job -> job.id().equals(state.job()))
            .flatMap(job -> job.options().stream())
            .filter(option -> option.press().equals(state.press()))
            .toList();
    return !options.isEmpty()
        && options.stream()
            .allMatch(
                option ->
                    option.making().takes().stream()
                        .filter(stock::counts)
                        .anyMatch(take -> left(stock, take, last) < take.pieces()));
  }

  private static long left(StockBook stock, Take take, long last) {
    long running =
        stock.draws().getOrDefault(take.insert(), List.of()).stream()
            .filter(draw -> draw.stay().running())
            .mapToLong(StockBook.Draw::pieces)
            .sum();
    return stock.cameIn(take.insert(), last) - running;
  }

  private static void stays(Step step, PressState state, Findings findings) {
    Run run = step.run();
    String mold = state.setup().mold();
    if (step.place() != 1) {
      findings.add(
          Rule.RUNNING,
          run,
          "is running already, but comes in place %d there".formatted(step.place()));
      return;
    }
    if (!mold.isEmpty() && !mold.equals(run.mold())) {
      findings.add(
          Rule.RUNNING, run, "is running with mold %s, not %s".formatted(mold, run.mold()));
    }
    Change change = run.change();
    if (!change.kinds().isEmpty() || change.minutes() != 0 || change.purgeG() != 0) {
      findings.add(
          Rule.RUNNING,
          run,
          "is running already and needs no change, but has one of %d min %s"
              .formatted(change.minutes(), change.kinds()));
    }
  }

  private static void start(PressWalk walk, Stay stay, Week week, Findings findings) {
    long planStart = week.problem().plant().hours().startMin();
    OptionalLong first = walk.time().working().next(planStart);
    long start = stay.run().startMin();
    if (first.isEmpty() || start == first.getAsLong()) {
      return;
    }
    Hindrances hindrances = new Hindrances(walk, stay, week);
    OptionalLong could =
        start < first.getAsLong() ? first : hindrances.firstStart(first.getAsLong(), start);
    if (could.isPresent()) {
      findings.add(
          Rule.RUNNING,
          stay.run(),
          "is running already and starts %s; expected %s, when it can go on"
              .formatted(week.clock().text(start), week.clock().text(could.getAsLong(), start)));
    }
  }
}
