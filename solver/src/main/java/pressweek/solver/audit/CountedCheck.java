package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.plan.Rule;
import pressweek.data.problem.CountedThing;
import pressweek.data.problem.DeviceNeed;

/**
 * COUNTED: no more of a device is in use than there are, and a tooling set is there to be fitted.
 */
final class CountedCheck {
  private final Week week;
  private final Findings findings;

  private CountedCheck(Week week, Findings findings) {
    this.week = week;
    this.findings = findings;
  }

  static void check(Week week, Findings findings) {
    CountedCheck check = new CountedCheck(week, findings);
    week.stays().forEach(check::set);
    Map<String, Integer> counts =
        week.problem().arranged().things().stream()
            .collect(Collectors.toMap(CountedThing::id, CountedThing::count, (a, b) -> a));
    week.problem().arranged().devices().stream()
        .map(DeviceNeed::device)
        .distinct()
        .filter(counts::containsKey)
        .forEach(device -> check.device(device, counts.getOrDefault(device, 0)));
  }

  private void set(Stay stay) {
    List<String> heldBy = stay.step().heldBy();
    if (!heldBy.isEmpty()) {
      findings.add(
          Rule.COUNTED,
          stay.run(),
          "needs tooling set %s from %s; all there are stay in use then, on %s"
              .formatted(
                  stay.option().tooling(),
                  week.clock().text(stay.run().change().startMin()),
                  String.join(", ", heldBy)));
    }
  }

  /** What is running already is not asked, but uses its devices all the same. */
  private void device(String device, int count) {
    Set<String> molds =
        week.problem().arranged().devices().stream()
            .filter(need -> need.device().equals(device))
            .map(DeviceNeed::mold)
            .collect(Collectors.toSet());
    Balance devices = new Balance();
    devices.add(new Span(Long.MIN_VALUE, Long.MAX_VALUE), count);
    List<Work> asked = new ArrayList<>();
    for (Stay stay : week.stays()) {
      Span span = stay.step().wholeSpan();
      if (molds.contains(stay.run().mold())) {
        devices.take(span, 1);
        if (!stay.running()) {
          asked.add(
              new Work(span, Spans.union(List.of(span)), stay.run().id(), Words.of(stay.run())));
        }
      }
    }
    for (Work.Overload overload : Work.overloads(asked, devices.lessThan(0))) {
      Work last = overload.last();
      findings.add(
          Rule.COUNTED,
          last.subject(),
          "%s begins %s; at %s it is one of %d that use device %s, there are %d"
              .formatted(
                  last.words(),
                  week.clock().text(last.span().fromMin()),
                  week.clock().text(overload.shortage().span().fromMin(), last.span().fromMin()),
                  overload.shortage().taken(),
                  device,
                  count));
    }
  }
}
