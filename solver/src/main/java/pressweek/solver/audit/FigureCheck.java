package pressweek.solver.audit;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Figures;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Press;

/** FIGURES of the whole plan: totals, costs by rule and the order of its lists. */
final class FigureCheck {
  private final Week week;
  private final Ledger ledger;
  private final Findings findings;

  private FigureCheck(Week week, Ledger ledger, Findings findings) {
    this.week = week;
    this.ledger = ledger;
    this.findings = findings;
  }

  static void check(Week week, Ledger ledger, Findings findings) {
    FigureCheck check = new FigureCheck(week, ledger, findings);
    check.lists();
    check.lines();
    // A run that cannot be made out has been found already; what the rest comes to would say
    // nothing.
    if (week.stays().size() == week.plan().runs().size()) {
      check.work();
      check.costs();
    }
  }

  private void lists() {
    Plan plan = week.plan();
    List<String> presses = week.problem().floor().presses().stream().map(Press::id).toList();
    Comparator<Run> place =
        Comparator.comparingInt((Run run) -> presses.indexOf(run.press()))
            .thenComparingInt(Run::seq);
    sorted(plan.runs(), place, "runs are not listed by press, then by place");
    sorted(
        plan.dismounts(),
        Comparator.comparingInt(Dismount::startMin),
        "dismounts are not listed by their start");
    sorted(
        plan.pulls(),
        Comparator.comparingInt(Pull::needByMin),
        "pulls are not listed by the time they are needed");
  }

  private <T> void sorted(List<T> list, Comparator<T> order, String otherwise) {
    boolean isSorted =
        IntStream.range(1, list.size())
            .allMatch(i -> order.compare(list.get(i - 1), list.get(i)) <= 0);
    if (!isSorted) {
      findings.add(Rule.FIGURES, "plan", otherwise);
    }
  }

  private void lines() {
    Figures figures = week.plan().figures();
    same(
        "placed lines",
        figures.placedLines(),
        week.plan().runs().stream().map(Run::job).distinct().count());
    same("unplaced lines", figures.unplacedLines(), week.plan().unplaced().size());
  }

  private void work() {
    Figures figures = week.plan().figures();
    List<Stay> stays = week.stays();
    List<Long> late =
        stays.stream()
            .map(stay -> stay.readyMin() - stay.job().deadline().dueMin())
            .filter(minutes -> minutes > 0)
            .toList();
    List<Dismount> dismounts = week.plan().dismounts();
    long changes = stays.stream().filter(stay -> !stay.due().kinds().isEmpty()).count();
    long changeMin = stays.stream().mapToLong(stay -> stay.due().minutes()).sum();
    long dismountMin =
        dismounts.stream().mapToLong(off -> week.reckoner().dismountMin(off.mold())).sum();
    same("late lines", figures.lateLines(), late.size());
    same("minutes late", figures.lateMin(), late.stream().mapToLong(Long::longValue).sum());
    same("changes", figures.changes(), changes + dismounts.size());
    same("minutes of change", figures.changeMin(), changeMin + dismountMin);
    same(
        "grams purged",
        figures.purgeG(),
        stays.stream().mapToLong(stay -> stay.due().purgeG()).sum());
  }

  private void same(String what, long said, long counted) {
    if (said != counted) {
      findings.add(
          Rule.FIGURES,
          "plan",
          "figures say %d %s; the plan comes to %d".formatted(said, what, counted));
    }
  }

  private void costs() {
    Map<Rule, Long> due = new EnumMap<>(Rule.class);
    for (PressWalk walk : week.walks()) {
      for (Stay stay : walk.stays()) {
        ledger
            .charges(stay, walk.press())
            .forEach((rule, cost) -> due.merge(rule, cost, Long::sum));
      }
    }
    for (Dismount off : week.plan().dismounts()) {
      due.merge(Rule.CHANGE, ledger.change(week.reckoner().dismountMin(off.mold())), Long::sum);
    }
    for (Job job : ChargeCheck.unplacedJobs(week)) {
      due.merge(Rule.UNPLACED, ledger.unplaced(job), Long::sum);
    }
    WholeCharge.due(week).forEach(charge -> due.merge(charge.rule(), charge.amount(), Long::sum));
    due.values().removeIf(cost -> cost == 0);
    Map<Rule, Long> said = week.plan().figures().costByRule();
    Set<Rule> rules = new TreeSet<>(due.keySet());
    rules.addAll(said.keySet());
    for (Rule rule : rules) {
      long expected = due.getOrDefault(rule, 0L);
      long seen = said.getOrDefault(rule, 0L);
      if (expected != seen || !due.containsKey(rule)) {
        findings.add(
            Rule.FIGURES,
            "plan",
            "figures list %s with %s; the charges come to %s"
                .formatted(
                    rule,
                    Words.money(seen),
                    expected == 0 ? "nothing, which is not listed" : Words.money(expected)));
      }
    }
  }
}
