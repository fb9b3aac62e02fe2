package pressweek.solver.why;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Job;
import pressweek.data.problem.Unplaced;
import pressweek.solver.timing.WeekTables;

/**
 * Says why order lines of a plan are where they are: what each costs, where its time goes, where
 * else it could go, and what would cure its lateness.
 */
public final class Why {
  private static final int OTHER_PLACES = 3;

  private final Plan plan;
  private final Settings limits;

  /**
   * Asks about a plan.
   *
   * @param plan the plan
   * @param limits how long to search for cures: seconds for all of a line's together, or steps each
   */
  public Why(Plan plan, Settings limits) {
    this.plan = plan;
    this.limits = limits;
  }

  /**
   * The lines that a name means.
   *
   * @param name {@code order/line}, or an order for all of its lines
   * @return ids in the order of the plan's week; none when it knows no such line
   */
  public List<String> lines(String name) {
    Set<String> lines = new LinkedHashSet<>();
    for (Job job : plan.problem().jobs()) {
      if (isOf(name, job.id(), job.line().order())) {
        lines.add(job.id());
      }
    }
    for (Unplaced line : plan.unplaced()) {
      if (isOf(name, line.id(), line.order())) {
        lines.add(line.id());
      }
    }
    return lines.contains(name) ? List.of(name) : List.copyOf(lines);
  }

  /**
   * True for the line of that name, for parts of it, and for the lines of an order of that name.
   */
  private static boolean isOf(String name, String id, String order) {
    return id.equals(name) || id.startsWith(name + "/") || order.equals(name);
  }

  /** Why a line is where it is; {@code line} is one of {@link #lines}. */
  public Explanation of(String line) {
    return of(line, true);
  }

  /** The same at once: without cures, which have to be searched for. */
  public Explanation atOnce(String line) {
    return of(line, false);
  }

  private Explanation of(String line, boolean searching) {
    Optional<Job> job = plan.problem().jobs().stream().filter(j -> j.id().equals(line)).findFirst();
    Optional<Run> run = plan.runs().stream().filter(r -> r.job().equals(line)).findFirst();
    Optional<Unplaced> unplaced =
        plan.unplaced().stream().filter(u -> u.id().equals(line)).findFirst();
    List<Stretch> chain = run.map(r -> WaitChain.of(plan, r)).orElse(List.of());
    return new Explanation(
        line,
        job,
        run,
        unplaced,
        run.map(Run::charges).orElseGet(() -> unplacedCharge(line)),
        chain,
        job.map(j -> Placements.best(plan, new WeekTables(plan.problem()), j, OTHER_PLACES))
            .orElse(List.of()),
        searching ? job.map(j -> cures(j, run, unplaced, chain)).orElse(Cures.NONE) : Cures.NONE);
  }

  private Cures cures(
      Job job, Optional<Run> run, Optional<Unplaced> unplaced, List<Stretch> chain) {
    if (run.isPresent() && run.get().readyMin() <= job.deadline().dueMin()) {
      return Cures.NONE;
    }
    List<PlantChange> changes =
        run.map(r -> Candidates.of(plan, job, r, chain))
            .orElseGet(() -> Candidates.of(plan, job, unplaced.flatMap(Unplaced::lacks)));
    return CureSearch.of(plan, job, changes, limits);
  }

  /** Charges of unplaced lines are in the order of those that were to be planned. */
  private List<Charge> unplacedCharge(String line) {
    List<String> jobs = plan.problem().jobs().stream().map(Job::id).toList();
    List<Unplaced> charged = new ArrayList<>(plan.unplaced());
    charged.removeIf(u -> !jobs.contains(u.id()));
    for (int i = 0; i < charged.size() && i < plan.unplacedCharges().size(); i++) {
      Charge charge = plan.unplacedCharges().get(i);
      if (charged.get(i).id().equals(line) && charge.rule() == Rule.UNPLACED) {
        return List.of(charge);
      }
    }
    return List.of();
  }
}
