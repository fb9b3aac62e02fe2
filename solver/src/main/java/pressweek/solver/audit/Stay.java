package pressweek.solver.audit;

import pressweek.data.plan.Run;
import pressweek.data.problem.Component;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Take;

/**
 * A run whose job, press and mold go together, with what it must be.
 *
 * @param step the run and what is on its press before it
 * @param job its job
 * @param option the option by which the job is made
 * @param running true when the job was running on the press when the plan started and is the first
 *     there
 * @param due the change that it needs
 */
record Stay(Step step, Job job, Option option, boolean running, DueChange due) {
  Run run() {
    return step.run();
  }

  /** Working minutes of the run. */
  long minutes() {
    return (long) option.pace().runMin() + (due.exchanges() ? option.pace().startupMin() : 0);
  }

  /** When the order is ready to ship, minutes since 1970 UTC. */
  long readyMin() {
    return (long) run().endMin() + job.deadline().afterMin();
  }

  /** What a thing is that it takes; an insert when it takes none of it. */
  Component component(String what) {
    return option.making().takes().stream()
        .filter(take -> take.insert().equals(what))
        .map(Take::component)
        .findFirst()
        .orElse(Component.INSERT);
  }

  /** True when stock of something is counted for this run. */
  boolean counts(String what, StockBook book) {
    return book.counts(new Take(component(what), what, 0, 0, 0));
  }

  /** Pieces of a component that it takes from lots reserved for it. */
  long reservedPieces(Take take) {
    return (long) take.reservedPieces() + (due.exchanges() ? take.reservedStartup().orElse(0) : 0);
  }

  /** Pieces of a component that it takes from free stock. */
  long freePieces(Take take) {
    return (long) take.pieces() + (due.exchanges() ? take.startupPieces() : 0);
  }
}
