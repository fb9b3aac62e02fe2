package pressweek.solver.audit;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Unplaced;

/**
 * COMPLETE and ELIGIBLE: every order line is there once, by one of its options, or is unplaced with
 * a reason.
 */
final class CompleteCheck {
  private final Week week;
  private final Findings findings;

  private CompleteCheck(Week week, Findings findings) {
    this.week = week;
    this.findings = findings;
  }

  static void check(Week week, Findings findings) {
    CompleteCheck check = new CompleteCheck(week, findings);
    check.runs();
    check.fellOut();
    check.unplaced();
    check.jobs();
  }

  private void runs() {
    Set<String> seen = new HashSet<>();
    for (Run run : week.plan().runs()) {
      if (!seen.add(run.id())) {
        findings.add(Rule.COMPLETE, run, "has the number of another run");
      }
      if (run.startMin() >= week.problem().plant().hours().endMin()) {
        findings.add(
            Rule.COMPLETE,
            run,
            "starts %s, the horizon ends %s"
                .formatted(
                    week.clock().text(run.startMin()),
                    week.clock().text(week.problem().plant().hours().endMin())));
      }
      option(run);
    }
  }

  private void option(Run run) {
    Optional<Job> job = week.ids().job(run.job());
    if (job.isEmpty()) {
      findings.add(Rule.COMPLETE, run, "makes an order line that is not to be planned");
    }
    if (week.ids().press(run.press()).isEmpty()) {
      findings.add(Rule.ELIGIBLE, run, "is on a press that does not exist");
    } else if (job.isPresent() && Ids.option(job.get(), run.press(), run.mold(), "").isEmpty()) {
      findings.add(
          Rule.ELIGIBLE,
          run,
          "uses mold %s there; expected one of %s"
              .formatted(
                  run.mold(),
                  job.get().options().stream()
                      .map(option -> option.mold() + " on " + option.press())
                      .toList()));
    }
  }

  private void fellOut() {
    List<Unplaced> fell = week.problem().unplaced();
    List<Unplaced> listed = week.plan().unplaced();
    for (Unplaced line : fell) {
      if (!listed.contains(line)) {
        findings.add(
            Rule.COMPLETE,
            line.id(),
            "line %s fell out before planning (%s), the plan does not list it so"
                .formatted(line.id(), line.reason()));
      }
    }
    if (listed.containsAll(fell) && !listed.subList(0, fell.size()).equals(fell)) {
      findings.add(
          Rule.COMPLETE,
          "plan",
          "the unplaced lines do not begin with those that fell out before planning");
    }
  }

  private void unplaced() {
    Set<Unplaced> fell = Set.copyOf(week.problem().unplaced());
    for (Unplaced line : week.plan().unplaced()) {
      if (fell.contains(line)) {
        continue;
      }
      if (line.reason().isBlank()) {
        findings.add(
            Rule.COMPLETE, line.id(), "line " + line.id() + " is unplaced without a reason");
      }
      week.ids()
          .job(line.id())
          .ifPresentOrElse(
              job -> same(job, line),
              () ->
                  findings.add(
                      Rule.COMPLETE,
                      line.id(),
                      "line " + line.id() + " is unplaced but was not to be planned"));
    }
  }

  private void same(Job job, Unplaced line) {
    if (!line.item().equals(job.line().item()) || line.pieces() != job.quantity().good()) {
      findings.add(
          Rule.COMPLETE,
          line.id(),
          "line %s is unplaced with %d of %s; expected %d of %s"
              .formatted(
                  line.id(), line.pieces(), line.item(), job.quantity().good(), job.line().item()));
    }
  }

  private void jobs() {
    Plan plan = week.plan();
    Map<String, Integer> places = new HashMap<>();
    plan.runs().forEach(run -> places.merge(run.job(), 1, Integer::sum));
    plan.unplaced().forEach(line -> places.merge(line.id(), 1, Integer::sum));
    for (Job job : week.problem().jobs()) {
      int count = places.getOrDefault(job.id(), 0);
      if (count != 1) {
        List<String> runs =
            plan.runs().stream().filter(run -> run.job().equals(job.id())).map(Run::id).toList();
        findings.add(
            Rule.COMPLETE,
            job.id(),
            count == 0
                ? "line " + job.id() + " is neither planned nor unplaced"
                : "line %s is in the plan %d times (runs %s); expected once"
                    .formatted(job.id(), count, runs));
      }
    }
  }
}
