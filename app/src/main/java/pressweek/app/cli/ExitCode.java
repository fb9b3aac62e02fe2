package pressweek.app.cli;

import java.util.HashMap;
import java.util.Map;
import pressweek.data.plan.Plan;

/** What the exit code of the program says. */
final class ExitCode {
  /** Done, and every order line has a place. */
  static final int DONE = 0;

  /** Done, with order lines that have none, or lateness beyond what was allowed. */
  static final int UNPLACED = 1;

  /** The input or the arguments are in error. */
  static final int BAD_INPUT = 2;

  /** A bug. */
  static final int BUG = 3;

  private ExitCode() {}

  /**
   * What a plan makes the exit code.
   *
   * @param sound false when an audit found a hard rule broken
   * @param allowLateHours lines late by no more than this do not count as late
   */
  static int of(Plan plan, boolean sound, int allowLateHours) {
    if (!sound) {
      return BUG;
    }
    Map<String, Integer> due = new HashMap<>();
    plan.problem().jobs().forEach(job -> due.put(job.id(), job.deadline().dueMin()));
    boolean late =
        plan.runs().stream()
            .anyMatch(r -> r.readyMin() - due.getOrDefault(r.job(), 0) > allowLateHours * 60L);
    return late || !plan.unplaced().isEmpty() ? UNPLACED : DONE;
  }
}
