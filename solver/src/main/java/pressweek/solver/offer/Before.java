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
import pressweek.data.problem.Job;
import pressweek.solver.Finishing;
import pressweek.solver.audit.Audit;
import pressweek.solver.audit.Finding;

/** The plan without the new line, which every offer is held against. */
final class Before {
  private final Plan standing;
  private final Set<String> broken;

  Before(Basis basis) {
    standing = basis.standing();
    broken =
        Audit.check(standing.problem(), standing).stream()
            .map(Finding::message)
            .collect(Collectors.toSet());
  }

  Plan standing() {
    return standing;
  }

  /** What a plan with the new line costs, and who pays. */
  Price price(Plan tried) {
    Map<String, Run> now = new HashMap<>();
    tried.runs().forEach(run -> now.put(run.job(), run));
    int moved = 0;
    for (Run was : standing.runs()) {
      Run run = now.get(was.job());
      moved += run != null && isMoved(was, run) ? 1 : 0;
    }
    return new Price(later(standing, tried), placed(now.keySet()), costsMore(tried), moved);
  }

  /** Lines of a plan that are later in another one, or have no place there. */
  static List<Later> later(Plan standing, Plan tried) {
    Map<String, Integer> due = new HashMap<>();
    standing.problem().jobs().forEach(job -> due.put(job.id(), job.deadline().dueMin()));
    Map<String, Run> now = new HashMap<>();
    tried.runs().forEach(run -> now.put(run.job(), run));
    List<Later> later = new ArrayList<>();
    for (Run was : standing.runs()) {
      int dueMin = due.getOrDefault(was.job(), was.readyMin());
      Run run = now.get(was.job());
      OptionalInt ready = run == null ? OptionalInt.empty() : OptionalInt.of(run.readyMin());
      Later line = new Later(was.job(), dueMin, was.readyMin(), ready);
      if (line.laterMin().orElse(1) > 0) {
        later.add(line);
      }
    }
    return later;
  }

  /** Lines without a place in the plan that are among others. */
  private List<String> placed(Set<String> among) {
    Set<String> had = standing.runs().stream().map(Run::job).collect(Collectors.toSet());
    return standing.problem().jobs().stream()
        .map(Job::id)
        .filter(job -> among.contains(job) && !had.contains(job))
        .toList();
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
