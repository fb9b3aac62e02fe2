package pressweek.solver.audit;

import pressweek.data.plan.Rule;
import pressweek.data.plan.Wait;

/** FIGURES of waits: they follow each other in the gap before a run and leave out its change. */
final class WaitCheck {
  private WaitCheck() {}

  static void check(Week week, Findings findings) {
    for (Step step : week.steps()) {
      long from = step.freeMin();
      for (Wait wait : step.run().waits()) {
        Span span = new Span(wait.fromMin(), wait.toMin());
        boolean inGap = wait.fromMin() >= from && wait.toMin() <= step.run().startMin();
        boolean beside = !span.overlaps(step.changeSpan());
        if (span.isEmpty() || !inGap || !beside) {
          findings.add(
              Rule.FIGURES,
              step.run(),
              "waits (%s) from %s to %s; expected %s"
                  .formatted(
                      wait.cause().words(),
                      week.clock().text(wait.fromMin()),
                      week.clock().text(wait.toMin(), wait.fromMin()),
                      expected(step, from, week.clock())));
        }
        from = Math.max(from, wait.toMin());
      }
    }
  }

  private static String expected(Step step, long from, Clock clock) {
    return "times in order from %s to the start of the run %s, beside its change"
        .formatted(clock.text(from), clock.text(step.run().startMin(), from));
  }
}
