package pressweek.solver.repair;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Floor;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Promise;
import pressweek.solver.audit.Finding;

/** Promises to the floor that what happened has made impossible to keep. */
public final class Promises {
  private Promises() {}

  /** Promised lines that an audit found not to be where and when they are promised. */
  public static List<String> broken(Plan plan, List<Finding> findings) {
    Set<String> runs = new HashSet<>();
    findings.stream()
        .filter(f -> f.rule() == Rule.PROMISED)
        .map(Finding::subject)
        .forEach(runs::add);
    Set<String> lines = new HashSet<>(runs);
    plan.runs().stream().filter(run -> runs.contains(run.id())).map(Run::job).forEach(lines::add);
    return plan.problem().floor().promises().stream()
        .map(Promise::job)
        .filter(lines::contains)
        .toList();
  }

  /** The problem without the promises of these lines. */
  public static Problem without(Problem problem, List<String> lines) {
    Set<String> gone = Set.copyOf(lines);
    Floor floor = problem.floor();
    return problem.with(
        floor.withPromises(
            floor.promises().stream().filter(p -> !gone.contains(p.job())).toList()));
  }
}
