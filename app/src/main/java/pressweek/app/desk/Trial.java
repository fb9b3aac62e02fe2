package pressweek.app.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.solver.why.Reordering;

/**
 * What a move would do, before it is made.
 *
 * @param standing the plan that stands
 * @param tried the plan with the move
 * @param line the line that moves
 */
public record Trial(Plan standing, Plan tried, String line) {
  /** A trial of a move that nothing objects to. */
  static Trial of(Reordering order, Edit.Move move) {
    return new Trial(
        order.standing(),
        order.moved(move.line(), move.press(), Math.max(0, move.place())),
        move.line());
  }

  /** Avoidable cost above that of the plan that stands, thousandths of a cent. */
  public long costsMore() {
    return tried.figures().avoidableCost() - standing.figures().avoidableCost();
  }

  /** What each rule costs more; rules that cost the same are left out. */
  public Map<Rule, Long> byRule() {
    Map<Rule, Long> all = new java.util.EnumMap<>(Rule.class);
    for (Rule rule : Rule.values()) {
      long more = cost(tried, rule) - cost(standing, rule);
      if (more != 0) {
        all.put(rule, more);
      }
    }
    return all;
  }

  private static long cost(Plan plan, Rule rule) {
    return plan.figures().costByRule().getOrDefault(rule, 0L);
  }

  /** The run of the line in the tried plan; empty when it finds no time there. */
  public Optional<Run> run() {
    return tried.runs().stream().filter(r -> r.job().equals(line)).findFirst();
  }

  /** A run that is not where it was. */
  public record Shift(Run now, Optional<Run> was) {}

  /** Runs whose press, start, change or end is another. */
  public List<Shift> shifts() {
    Map<String, Run> before = new HashMap<>();
    standing.runs().forEach(r -> before.put(r.job(), r));
    List<Shift> shifts = new ArrayList<>();
    for (Run run : tried.runs()) {
      Run was = before.get(run.job());
      if (was == null || !sameTimes(was, run)) {
        shifts.add(new Shift(run, Optional.ofNullable(was)));
      }
    }
    return shifts;
  }

  private static boolean sameTimes(Run was, Run run) {
    return was.press().equals(run.press())
        && was.startMin() == run.startMin()
        && was.endMin() == run.endMin()
        && was.change().startMin() == run.change().startMin();
  }

  /** Promises that the move breaks, in words. */
  public List<String> broken() {
    return Reordering.broken(standing, tried).stream()
        .map(p -> p.job() + " is promised on " + p.press() + " and would be later")
        .toList();
  }

  /** Minutes late of a run of the tried plan. */
  public int lateMin(Run run) {
    return tried.problem().jobs().stream()
        .filter(j -> j.id().equals(run.job()))
        .findFirst()
        .map(Job::deadline)
        .map(d -> Math.max(0, run.readyMin() - d.dueMin()))
        .orElse(0);
  }

  /** Minutes of lateness above those of the plan that stands. */
  public long lateMore() {
    return tried.figures().lateMin() - standing.figures().lateMin();
  }
}
