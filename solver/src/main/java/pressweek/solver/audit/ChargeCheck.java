package pressweek.solver.audit;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Dismount;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Job;
import pressweek.data.problem.Unplaced;

/**
 * FIGURES of single entries: ready times, and what each run, dismount and unplaced line is charged.
 */
final class ChargeCheck {
  private final Week week;
  private final Ledger ledger;
  private final Findings findings;

  private ChargeCheck(Week week, Ledger ledger, Findings findings) {
    this.week = week;
    this.findings = findings;
    this.ledger = ledger;
  }

  static void check(Week week, Ledger ledger, Findings findings) {
    ChargeCheck check = new ChargeCheck(week, ledger, findings);
    for (PressWalk walk : week.walks()) {
      for (Stay stay : walk.stays()) {
        check.ready(stay);
        check.run(stay, check.ledger.charges(stay, walk.press()));
      }
      walk.dismounts().forEach(check::dismount);
    }
    check.unplaced();
  }

  private void ready(Stay stay) {
    if (stay.run().readyMin() != stay.readyMin()) {
      findings.add(
          Rule.FIGURES,
          stay.run(),
          "is ready %s; expected %s"
              .formatted(
                  week.clock().text(stay.run().readyMin()),
                  week.clock().text(stay.readyMin(), stay.run().readyMin())));
    }
  }

  private void run(Stay stay, Map<Rule, Long> due) {
    Map<Rule, Long> charged = new EnumMap<>(Rule.class);
    stay.run().charges().forEach(c -> charged.merge(c.rule(), c.amount(), Long::sum));
    Set<Rule> rules = new TreeSet<>(due.keySet());
    rules.addAll(charged.keySet());
    for (Rule rule : rules) {
      long expected = due.getOrDefault(rule, 0L);
      long seen = charged.getOrDefault(rule, 0L);
      if (expected != seen) {
        findings.add(
            Rule.FIGURES,
            stay.run(),
            "is charged %s by %s; expected %s"
                .formatted(Words.money(seen), rule, Words.money(expected)));
      }
    }
  }

  private void dismount(Dismount off) {
    long due = ledger.change(week.reckoner().dismountMin(off.mold()));
    if (off.cost() != due) {
      findings.add(
          Rule.FIGURES,
          off.press(),
          "%s costs %s; expected %s"
              .formatted(Words.of(off), Words.money(off.cost()), Words.money(due)));
    }
  }

  private void unplaced() {
    List<Job> jobs = unplacedJobs(week);
    List<Charge> charges = week.plan().unplacedCharges();
    if (jobs.size() != charges.size()) {
      findings.add(
          Rule.FIGURES,
          "plan",
          "%d lines found no place, %d charges are listed for them"
              .formatted(jobs.size(), charges.size()));
    }
    for (int i = 0; i < Math.min(jobs.size(), charges.size()); i++) {
      Charge charge = charges.get(i);
      long due = ledger.unplaced(jobs.get(i));
      if (charge.rule() != Rule.UNPLACED || charge.amount() != due) {
        findings.add(
            Rule.FIGURES,
            jobs.get(i).id(),
            "line %s is charged %s by %s; expected %s by UNPLACED"
                .formatted(
                    jobs.get(i).id(),
                    Words.money(charge.amount()),
                    charge.rule(),
                    Words.money(due)));
      }
    }
  }

  /** The jobs among the unplaced lines, in the order of the list. */
  static List<Job> unplacedJobs(Week week) {
    Set<Unplaced> fell = Set.copyOf(week.problem().unplaced());
    return week.plan().unplaced().stream()
        .filter(line -> !fell.contains(line))
        .flatMap(line -> week.ids().job(line.id()).stream())
        .toList();
  }
}
