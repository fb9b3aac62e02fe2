package pressweek.solver.audit;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.plan.Pull;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Take;

/** LOTS, first half: the pulls of a run bring what it needs, where and when it needs it. */
final class PullCheck {
  private final Week week;
  private final Findings findings;
  private final StockBook book;
  private final Map<String, Stay> stays = new LinkedHashMap<>();

  private PullCheck(Week week, Findings findings) {
    this.week = week;
    this.findings = findings;
    book = new StockBook(week);
    week.stays().forEach(stay -> stays.putIfAbsent(stay.run().id(), stay));
  }

  static void check(Week week, Findings findings) {
    PullCheck check = new PullCheck(week, findings);
    Map<String, Map<String, Long>> pulled = new HashMap<>();
    for (Pull pull : week.plan().pulls()) {
      Stay stay = check.stays.get(pull.run());
      if (stay == null) {
        check.unknownRun(pull);
      } else {
        check.pull(pull, stay);
      }
      pulled
          .computeIfAbsent(pull.run(), run -> new HashMap<>())
          .merge(pull.insert(), (long) pull.pieces(), Long::sum);
    }
    check.stays.forEach((run, stay) -> check.sums(stay, pulled.getOrDefault(run, Map.of())));
  }

  private void unknownRun(Pull pull) {
    boolean planned = week.plan().runs().stream().anyMatch(run -> run.id().equals(pull.run()));
    if (!planned) {
      findings.add(
          Rule.LOTS,
          pull.run(),
          "a pull of %d of insert %s is for run %s, which is not in the plan"
              .formatted(pull.pieces(), pull.insert(), pull.run()));
    }
  }

  private void pull(Pull pull, Stay stay) {
    Clock clock = week.clock();
    if (!pull.press().equals(stay.run().press())) {
      findings.add(
          Rule.LOTS,
          stay.run(),
          "has %s pulled to press %s".formatted(thing(stay, pull), pull.press()));
    }
    long need = (long) stay.run().startMin() - week.problem().plant().crew().insertLeadMin();
    if (pull.needByMin() != need) {
      findings.add(
          Rule.LOTS,
          stay.run(),
          "has %s pulled by %s; expected by %s"
              .formatted(
                  thing(stay, pull),
                  clock.text(pull.needByMin()),
                  clock.text(need, pull.needByMin())));
    }
    if (pull.pieces() < 1) {
      findings.add(
          Rule.LOTS,
          stay.run(),
          "has a pull of %d of %s; expected at least 1"
              .formatted(pull.pieces(), thing(stay, pull)));
    }
    boolean names = !pull.lot().isEmpty() || !pull.bin().isEmpty() || pull.receiptMin() != 0;
    if (names && !stay.counts(pull.insert(), book)) {
      findings.add(
          Rule.LOTS,
          stay.run(),
          "pulls %s from a lot, bin or receipt, but the plant gave no lots"
              .formatted(thing(stay, pull)));
    }
  }

  private static String thing(Stay stay, Pull pull) {
    return stay.component(pull.insert()).word() + " " + pull.insert();
  }

  private void sums(Stay stay, Map<String, Long> pulled) {
    Map<String, Long> needs = new LinkedHashMap<>();
    List<Take> takes = stay.option().making().takes();
    takes.forEach(
        take ->
            needs.merge(
                take.insert(), stay.freePieces(take) + stay.reservedPieces(take), Long::sum));
    Set<String> inserts = new LinkedHashSet<>(needs.keySet());
    inserts.addAll(pulled.keySet());
    for (String insert : inserts) {
      long need = needs.getOrDefault(insert, 0L);
      long sum = pulled.getOrDefault(insert, 0L);
      if (need != sum) {
        findings.add(
            Rule.LOTS,
            stay.run(),
            "has pulls of %d of %s %s; it needs %d"
                .formatted(sum, stay.component(insert).word(), insert, need));
      }
    }
  }
}
