package pressweek.solver.audit;

import pressweek.data.plan.Run;
import pressweek.data.problem.Setup;

/**
 * A run as it follows from what is on its press before it.
 *
 * @param run the run
 * @param before how the press is set up before the change
 * @param cleared true when the press is cleared for food-grade work before the change
 * @param place place in the order of time, from 1
 * @param freeMin end of the run before it, or the start of the plan
 */
record Step(Run run, Setup before, boolean cleared, int place, long freeMin) {
  Span changeSpan() {
    return new Span(run.change().startMin(), run.change().endMin());
  }

  Span runSpan() {
    return new Span(run.startMin(), run.endMin());
  }
}
