package pressweek.reports.schedule;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.plan.Cause;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.plan.Wait;
import pressweek.data.problem.Job;
import pressweek.reports.hours.Minutes;

/** Why a run is where it is, in words. */
public final class Reasons {
  /** Causes that a schedule shows anyway: the run before, and when the press works. */
  private static final Set<Cause> SHOWN = EnumSet.of(Cause.PRESS, Cause.SHIFT);

  private Reasons() {}

  /**
   * What the run waited for, each with its minutes, in order of time: {@code no setter free 45
   * min}.
   */
  public static List<String> waits(Run run) {
    Map<String, Integer> minutes = minutes(run.waits());
    return minutes.entrySet().stream().map(e -> e.getKey() + " " + e.getValue() + " min").toList();
  }

  /**
   * What the run waited for, for a person: {@code no setter free for 1 h 10 min}; without what the
   * schedule shows anyway.
   */
  public static List<String> remarks(Run run) {
    Map<String, Integer> minutes = minutes(run.waits().stream().filter(w -> !isShown(w)).toList());
    return minutes.entrySet().stream()
        .map(e -> e.getKey() + " for " + Minutes.words(e.getValue()))
        .toList();
  }

  /** True for a wait that a schedule shows anyway: for the run before, or for the press to work. */
  public static boolean isShown(Wait wait) {
    return SHOWN.contains(wait.cause());
  }

  private static Map<String, Integer> minutes(List<Wait> waits) {
    Map<String, Integer> minutes = new LinkedHashMap<>();
    waits.forEach(w -> minutes.merge(cause(w), w.toMin() - w.fromMin(), Integer::sum));
    return minutes;
  }

  /**
   * Why the order of a late run is late: what it waited for and until when, how long it takes, and
   * what it is charged.
   */
  public static List<String> late(PlanBook book, Run run) {
    List<String> reasons = new ArrayList<>();
    Job job = book.job(run);
    int due = job.deadline().dueMin();
    if (due <= book.plan().problem().plant().hours().startMin()) {
      reasons.add("was due before the plan starts");
    }
    run.waits().forEach(w -> reasons.add(words(book, w)));
    if (run.change().minutes() > 0) {
      reasons.add("change of " + Minutes.hours(run.change().minutes()));
    }
    reasons.add(
        "runs from "
            + book.clock().brief(run.startMin())
            + " to "
            + book.clock().brief(run.endMin()));
    if (run.readyMin() > run.endMin()) {
      reasons.add("ready " + Minutes.hours(run.readyMin() - run.endMin()) + " after molding");
    }
    return List.copyOf(reasons);
  }

  /** How the lateness of a run is charged, in words. */
  public static List<String> charged(Run run) {
    return run.charges().stream()
        .filter(c -> c.rule() == Rule.LATE)
        .map(Charge::because)
        .filter(b -> !b.isBlank())
        .toList();
  }

  /** A wait with its length and its end: {@code no setter free for 45 min, until Tue 06:45}. */
  static String words(PlanBook book, Wait wait) {
    return cause(wait)
        + " for "
        + Minutes.words(wait.toMin() - wait.fromMin())
        + ", until "
        + book.clock().brief(wait.toMin());
  }

  private static String cause(Wait wait) {
    return wait.cause().words() + (wait.what().isEmpty() ? "" : " (" + wait.what() + ")");
  }
}
