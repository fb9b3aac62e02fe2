package pressweek.app.desk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Job;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Promise;

/** Promises that a week keeps when its files are read again. */
final class Promised {
  private Promised() {}

  /** A problem with the promises that a plan of it keeps. */
  static Problem in(Problem problem, Plan plan) {
    return problem.with(problem.floor().withPromises(kept(plan, problem)));
  }

  /** Those of the new files, and those of the plan whose lines and presses are still there. */
  private static List<Promise> kept(Plan plan, Problem problem) {
    List<Promise> kept = new ArrayList<>(problem.floor().promises());
    Set<String> known = new HashSet<>(kept.stream().map(Promise::job).toList());
    problem.floor().states().forEach(s -> known.add(s.job()));
    for (Promise promise : plan.problem().floor().promises()) {
      boolean wanted = plan.runs().stream().anyMatch(r -> r.job().equals(promise.job()));
      if (wanted && !known.contains(promise.job()) && canRun(problem, promise)) {
        kept.add(promise);
      }
    }
    return kept;
  }

  private static boolean canRun(Problem problem, Promise promise) {
    return problem.jobs().stream()
        .filter(j -> j.id().equals(promise.job()))
        .map(Job::options)
        .flatMap(List::stream)
        .anyMatch(o -> o.press().equals(promise.press()));
  }
}
