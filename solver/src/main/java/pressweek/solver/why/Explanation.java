package pressweek.solver.why;

import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Unplaced;

/**
 * Why a line is where it is in a plan.
 *
 * @param line {@code order/line}
 * @param job what it asks; empty where it fell out before planning
 * @param run its run; empty where it has none
 * @param unplaced why it has no run
 * @param charges what it costs the plan
 * @param chain where the time goes until it is ready; empty where it has no run
 * @param elsewhere the best other places, the cheapest first
 * @param cures what would help
 */
public record Explanation(
    String line,
    Optional<Job> job,
    Optional<Run> run,
    Optional<Unplaced> unplaced,
    List<Charge> charges,
    List<Stretch> chain,
    List<Placement> elsewhere,
    Cures cures) {
  public Explanation {
    charges = List.copyOf(charges);
    chain = List.copyOf(chain);
    elsewhere = List.copyOf(elsewhere);
  }

  /** Minutes late; 0 when it is on time or has no run. */
  public int lateMin() {
    return run.flatMap(r -> job.map(j -> Math.max(0, r.readyMin() - j.deadline().dueMin())))
        .orElse(0);
  }

  /** What it costs the plan, thousandths of a cent. */
  public long cost() {
    return charges.stream().mapToLong(Charge::amount).sum();
  }
}
