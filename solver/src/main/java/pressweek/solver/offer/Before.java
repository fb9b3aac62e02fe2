package pressweek.solver.offer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.solver.Finishing;
import pressweek.solver.audit.Audit;
import pressweek.solver.audit.Finding;

/** The plan without the new line, which every offer is held against. */
final class Before {
  private final Plan standing;
  private final Map<String, Run> runs = new HashMap<>();
  private final Map<String, Integer> due = new HashMap<>();
  private final Set<String> broken;

  Before(Plan standing) {
    this.standing = standing;
    standing.runs().forEach(run -> runs.put(run.job(), run));
    standing.problem().jobs().forEach(job -> due.put(job.id(), job.deadline().dueMin()));
    broken =
        Audit.check(standing.problem(), standing).stream()
            .map(Finding::message)
            .collect(Collectors.toSet());
  }

  Plan standing() {
    return standing;
  }

  /** The due time of a line; where it is late as it stands, the time when it is ready. */
  int least(String line, int dueMin) {
    Run run = runs.get(line);
    return run == null ? dueMin : Math.max(dueMin, run.readyMin());
  }

  /** What a plan with the new line costs, and who pays. */
  Price price(Plan tried) {
    Map<String, Run> now = new HashMap<>();
    tried.runs().forEach(run -> now.put(run.job(), run));
    List<Later> later = new ArrayList<>();
    int moved = 0;
    for (Run was : standing.runs()) {
      int dueMin = due.getOrDefault(was.job(), was.readyMin());
      Run run = now.get(was.job());
      if (run == null) {
        later.add(new Later(was.job(), dueMin, was.readyMin(), OptionalInt.empty()));
        continue;
      }
      Later line = new Later(was.job(), dueMin, was.readyMin(), OptionalInt.of(run.readyMin()));
      if (line.laterMin().orElse(0) > 0) {
        later.add(line);
      }
      moved += isMoved(was, run) ? 1 : 0;
    }
    return new Price(later, costsMore(tried), moved);
  }

  private boolean isMoved(Run was, Run run) {
    int tolerance = standing.problem().plant().moveToleranceMin();
    return !was.press().equals(run.press())
        || Math.abs(was.startMin() - run.startMin()) > tolerance;
  }

  private Map<Rule, Long> costsMore(Plan tried) {
    Map<Rule, Long> more = new EnumMap<>(Rule.class);
    tried.figures().costByRule().forEach((rule, amount) -> more.merge(rule, amount, Long::sum));
    standing.figures().costByRule().forEach((rule, amount) -> more.merge(rule, -amount, Long::sum));
    return more;
  }

  /**
   * An offer with its plan made whole, and what an audit finds broken in it and not in the plan
   * without the new line.
   */
  Offer audited(Offer offer) {
    Plan whole = Finishing.of(standing.head(), offer.plan(), standing);
    Set<String> parts = offer.runs().stream().map(Run::job).collect(Collectors.toSet());
    List<Run> runs =
        whole.runs().stream()
            .filter(run -> parts.contains(run.job()))
            .sorted(Comparator.comparingInt(Run::readyMin))
            .toList();
    List<Finding> findings =
        Audit.check(whole.problem(), whole).stream()
            .filter(finding -> !broken.contains(finding.message()))
            .toList();
    return new Offer(whole, runs, offer.readyMin(), offer.promisedMin(), offer.price(), findings);
  }
}
