package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Promise;

/**
 * PROMISED: what has been promised to the floor is on its press, at its time and in its order,
 * before all else.
 */
final class PromiseCheck {
  private final Week week;
  private final Findings findings;

  private PromiseCheck(Week week, Findings findings) {
    this.week = week;
    this.findings = findings;
  }

  static void check(Week week, Findings findings) {
    PromiseCheck check = new PromiseCheck(week, findings);
    Map<String, Map<String, Promise>> byPress = new HashMap<>();
    for (Promise promise : week.problem().floor().promises()) {
      if (week.ids().job(promise.job()).isPresent()) {
        byPress
            .computeIfAbsent(promise.press(), press -> new HashMap<>())
            .put(promise.job(), promise);
        check.place(promise);
      }
    }
    week.walks()
        .forEach(walk -> check.order(walk, byPress.getOrDefault(walk.press().id(), Map.of())));
  }

  private void place(Promise promise) {
    Optional<Run> run =
        week.plan().runs().stream().filter(each -> each.job().equals(promise.job())).findFirst();
    String promised =
        "%s from %s".formatted(promise.press(), week.clock().text(promise.startMin()));
    if (run.isEmpty()) {
      findings.add(
          Rule.PROMISED,
          promise.job(),
          "line %s is promised on %s, the plan has no run of it"
              .formatted(promise.job(), promised));
    } else if (!run.get().press().equals(promise.press())) {
      findings.add(Rule.PROMISED, run.get(), "is promised on " + promised);
    } else if (!running(run.get())) {
      time(run.get(), promise);
    }
  }

  private boolean running(Run run) {
    return week.ids().state(run.press()).job().equals(run.job());
  }

  private void time(Run run, Promise promise) {
    long latest = (long) promise.startMin() + week.problem().plant().moveToleranceMin();
    if (run.startMin() < promise.startMin() || run.startMin() > latest) {
      findings.add(
          Rule.PROMISED,
          run,
          "starts %s, it is promised from %s and no later than %s"
              .formatted(
                  week.clock().text(run.startMin()),
                  week.clock().text(promise.startMin()),
                  week.clock().text(latest, promise.startMin())));
    }
  }

  private void order(PressWalk walk, Map<String, Promise> promises) {
    List<Run> rest = new ArrayList<>(walk.steps().stream().map(Step::run).toList());
    rest.removeIf(this::running);
    List<Run> promised = rest.stream().filter(run -> promises.containsKey(run.job())).toList();
    List<Run> due =
        promised.stream().sorted(Comparator.comparingInt(run -> promised(promises, run))).toList();
    for (int i = 0; i < due.size(); i++) {
      if (!promises.containsKey(rest.get(i).job())) {
        findings.add(
            Rule.PROMISED,
            rest.get(i),
            "comes before %s, which is promised".formatted(Words.of(promised.get(i))));
        return;
      }
      if (promised(promises, rest.get(i)) != promised(promises, due.get(i))) {
        findings.add(
            Rule.PROMISED,
            rest.get(i),
            "comes before %s, which is promised for an earlier time"
                .formatted(Words.of(due.get(i))));
        return;
      }
    }
  }

  private static int promised(Map<String, Promise> promises, Run run) {
    Promise promise = promises.get(run.job());
    return promise == null ? Integer.MAX_VALUE : promise.startMin();
  }
}
