package pressweek.solver.audit;

import java.util.List;
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
 * @param heldBy presses that hold the counted tooling set that its change fits, where they hold all
 *     there are and none can be taken; empty when there is one for it
 */
record Step(Run run, Setup before, boolean cleared, int place, long freeMin, List<String> heldBy) {
  Step {
    heldBy = List.copyOf(heldBy);
  }

  /** From the start of its change to its end; the run alone when it has no change. */
  Span wholeSpan() {
    return new Span(Math.min(run.startMin(), run.change().startMin()), run.endMin());
  }

  Span changeSpan() {
    return new Span(run.change().startMin(), run.change().endMin());
  }

  Span runSpan() {
    return new Span(run.startMin(), run.endMin());
  }
}
