package pressweek.solver.audit;

import pressweek.data.plan.PlantWide;
import pressweek.data.problem.Drying;

/**
 * A run that a dryer feeds.
 *
 * @param stay the run
 * @param dried what must be dried for it
 * @param use what the plan says of it
 */
record Fed(Stay stay, Drying.Dried dried, PlantWide.DryerUse use) {
  long startMin() {
    return stay.run().startMin();
  }

  long endMin() {
    return stay.run().endMin();
  }

  /** When drying begins for a run that does not find its content in the dryer. */
  long dryFromMin() {
    return startMin() - dried.minutes();
  }

  /** True when this run finds in the dryer what the other has brought. */
  boolean comesAfter(Fed other) {
    return other.startMin() < startMin()
        || other.startMin() == startMin() && other.stay.running() && !stay.running();
  }

  /** True when both are fed at once with different contents, unless both go on already. */
  boolean clashesWith(Fed other) {
    return stay.step().runSpan().overlaps(other.stay.step().runSpan())
        && !dried.content().equals(other.dried.content())
        && !(stay.running() && other.stay.running());
  }
}
