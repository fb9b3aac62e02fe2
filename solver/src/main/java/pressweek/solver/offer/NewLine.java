package pressweek.solver.offer;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Problem;

/**
 * A new order line in a week.
 *
 * @param problem the week with it
 * @param jobs ids of its jobs, first parts first
 */
record NewLine(Problem problem, List<String> jobs) {
  NewLine {
    jobs = List.copyOf(jobs);
  }

  /** What a week has that another one has not; there must be something. */
  static NewLine in(Problem problem, Problem without) {
    Set<String> jobs = new LinkedHashSet<>(problem.jobs().stream().map(Job::id).toList());
    without.jobs().forEach(job -> jobs.remove(job.id()));
    if (jobs.isEmpty()) {
      throw new IllegalArgumentException("the problem has no new line");
    }
    return new NewLine(problem, List.copyOf(jobs));
  }

  /** The same due so late that it is never charged for lateness. */
  NewLine unhurried() {
    return new NewLine(Dues.unhurried(problem, jobs), jobs);
  }

  /** Presses that might run a job of it. */
  List<String> presses(String id) {
    return problem.jobs().stream()
        .filter(job -> job.id().equals(id))
        .flatMap(job -> job.options().stream())
        .map(Option::press)
        .distinct()
        .toList();
  }
}
