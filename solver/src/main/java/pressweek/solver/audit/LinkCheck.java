package pressweek.solver.audit;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Link;

/** LINKED: a run that builds on another starts after it and its rest. */
final class LinkCheck {
  private LinkCheck() {}

  static void check(Week week, Findings findings) {
    Map<String, Run> runs = new HashMap<>();
    week.plan().runs().forEach(run -> runs.putIfAbsent(run.job(), run));
    for (Stay stay : week.stays()) {
      for (Link link : week.problem().arranged().links()) {
        if (link.job().equals(stay.job().id()) && !stay.running()) {
          follows(stay, link, Optional.ofNullable(runs.get(link.after())), week, findings);
        }
      }
    }
  }

  private static void follows(
      Stay stay, Link link, Optional<Run> first, Week week, Findings findings) {
    if (first.isEmpty()) {
      findings.add(
          Rule.LINKED,
          stay.run(),
          "builds on line %s, of which the plan has no run".formatted(link.after()));
      return;
    }
    long earliest = (long) first.get().endMin() + link.restMin();
    long start = stay.run().startMin();
    if (start < earliest) {
      findings.add(
          Rule.LINKED,
          stay.run(),
          "starts %s; it builds on %s and may start %s, %d min after that ends"
              .formatted(
                  week.clock().text(start),
                  Words.of(first.get()),
                  week.clock().text(earliest, start),
                  link.restMin()));
    }
  }
}
