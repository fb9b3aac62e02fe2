package pressweek.solver.repair;

import java.util.Optional;
import pressweek.data.plan.Change;
import pressweek.data.plan.ChangeKind;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;

/**
 * What a run of the earlier plan has to work.
 *
 * @param option press and mold with shots and minutes
 * @param startupMin working minutes of start-up before the shots that count
 */
record Work(Option option, int startupMin) {
  static Work of(Run run, Job job) {
    Option option =
        job.options().stream()
            .filter(o -> o.press().equals(run.press()) && o.mold().equals(run.mold()))
            .filter(o -> o.tooling().equals(run.change().to().tooling()))
            .findFirst()
            .or(() -> onPress(run, job))
            .orElseGet(() -> job.options().get(0));
    return new Work(option, exchanges(run.change()) ? option.pace().startupMin() : 0);
  }

  private static Optional<Option> onPress(Run run, Job job) {
    return job.options().stream()
        .filter(o -> o.press().equals(run.press()) && o.mold().equals(run.mold()))
        .findFirst();
  }

  /** A food clearance alone exchanges nothing. */
  static boolean exchanges(Change change) {
    return change.kinds().stream().anyMatch(kind -> kind != ChangeKind.FOOD_CLEARANCE);
  }

  /** Working minutes in all. */
  int totalMin() {
    return option.pace().runMin() + startupMin;
  }

  /** Shots made in so many working minutes, rounded down; at least one is always left. */
  int shotsMade(int workedMin) {
    long making = Math.max(0, workedMin - startupMin);
    int shots = option.making().shots();
    return (int) Math.min(shots - 1, making * shots / option.pace().runMin());
  }

  /** Working minutes for the pieces that are left, rounded up. */
  int minutesFor(int pieces, int good) {
    return Math.max(1, (int) (((long) option.pace().runMin() * pieces + good - 1) / good));
  }
}
