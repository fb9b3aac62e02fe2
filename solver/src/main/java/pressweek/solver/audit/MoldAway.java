package pressweek.solver.audit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.problem.Downtime;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Trial;

/**
 * A time in which a mold is away.
 *
 * @param span from when to when
 * @param reason in words
 */
record MoldAway(Span span, String reason) {
  /** Downtime of molds, their trials, and the time before a mold is available, by mold. */
  static Map<String, List<MoldAway>> byMold(Problem problem) {
    Map<String, List<MoldAway>> away = new HashMap<>();
    for (Downtime time : problem.floor().downtime()) {
      if (time.kind() == Downtime.Kind.MOLD) {
        add(away, time.id(), new Span(time.fromMin(), time.toMin()), time.reason());
      }
    }
    for (Trial trial : problem.arranged().trials()) {
      add(away, trial.mold(), new Span(trial.fromMin(), trial.toMin()), trial.reason());
    }
    for (Mold mold : problem.floor().molds()) {
      mold.change()
          .availableFromMin()
          .ifPresent(
              from ->
                  add(away, mold.id(), new Span(Long.MIN_VALUE, from), "not in the house before"));
    }
    return away;
  }

  private static void add(Map<String, List<MoldAway>> away, String mold, Span span, String reason) {
    away.computeIfAbsent(mold, id -> new ArrayList<>()).add(new MoldAway(span, reason));
  }
}
