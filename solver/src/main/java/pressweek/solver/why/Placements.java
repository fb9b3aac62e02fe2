package pressweek.solver.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Problem;
import pressweek.solver.timing.WeekTables;

/**
 * Tries a line in every place of every press that may run it; all else keeps its press and its
 * order, and the plan is carried out anew.
 */
final class Placements {
  private final Problem problem;
  private final Plan plan;
  private final WeekTables week;
  private final Job job;
  private final Plan standing;

  private Placements(Plan plan, WeekTables week, Job job) {
    this.problem = plan.problem();
    this.plan = plan;
    this.week = week;
    this.job = job;
    standing = Replay.of(problem, plan, week);
  }

  /**
   * The best other places of a line, the cheapest first; none for what is running or promised.
   *
   * @param most how many
   */
  static List<Placement> best(Plan plan, WeekTables week, Job job, int most) {
    Problem problem = plan.problem();
    boolean running = problem.floor().states().stream().anyMatch(s -> s.job().equals(job.id()));
    boolean promised = problem.floor().promises().stream().anyMatch(p -> p.job().equals(job.id()));
    if (running || promised) {
      return List.of();
    }
    return new Placements(plan, week, job).best(most);
  }

  private List<Placement> best(int most) {
    List<Placement> all = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    Optional<Run> now = run(plan);
    now.ifPresent(r -> seen.add(key(r, before(plan, r))));
    for (String press : job.options().stream().map(Option::press).distinct().toList()) {
      long others = plan.runs().stream().filter(r -> r.press().equals(press)).count();
      for (int place = 0; place <= others; place++) {
        int spot = place;
        Plan tried = Replay.with(plan, new Replay.Spot(job.id(), press, place), week);
        run(tried)
            .filter(
                r -> seen.add(key(r, before(tried, r))) && Reordering.broken(plan, tried).isEmpty())
            .ifPresent(r -> all.add(Placement.of(tried, r, spot, standing)));
      }
    }
    all.sort(Comparator.comparingLong(Placement::costsMore));
    return List.copyOf(all.subList(0, Math.min(most, all.size())));
  }

  private Optional<Run> run(Plan of) {
    return of.runs().stream().filter(r -> r.job().equals(job.id())).findFirst();
  }

  private static String before(Plan of, Run run) {
    return of.runs().stream()
        .filter(r -> r.press().equals(run.press()) && r.seq() == run.seq() - 1)
        .map(Run::job)
        .findFirst()
        .orElse("");
  }

  private static String key(Run run, String before) {
    return run.press() + "\n" + before;
  }
}
