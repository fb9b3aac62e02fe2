package pressweek.solver.model;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.entity.PlanningPinToIndex;
import ai.timefold.solver.core.api.domain.lookup.PlanningId;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.domain.variable.PlanningListVariable;
import java.util.ArrayList;
import java.util.List;

/**
 * The jobs of one press in their order. The head of it is fixed: what is running, then what is
 * promised.
 */
@PlanningEntity
public class PressQueue {
  @PlanningId private int press;

  @PlanningListVariable private List<PlannedJob> jobs = new ArrayList<>();

  /** Read by the solver. */
  @SuppressWarnings("UnusedVariable")
  @ValueRangeProvider
  private List<PlannedJob> eligible = List.of();

  /** Read by the solver. */
  @SuppressWarnings("UnusedVariable")
  @PlanningPinToIndex
  private int fixed;

  /** For the solver, which clones. */
  public PressQueue() {}

  /**
   * A press with its jobs.
   *
   * @param press number of the press
   * @param jobs jobs in order
   * @param eligible jobs that may be placed on it
   * @param fixed how many at the head may not move
   */
  public PressQueue(int press, List<PlannedJob> jobs, List<PlannedJob> eligible, int fixed) {
    this.press = press;
    this.jobs = new ArrayList<>(jobs);
    this.eligible = List.copyOf(eligible);
    this.fixed = fixed;
  }

  /** Number of the press. */
  public int press() {
    return press;
  }

  /** The jobs in order. */
  public List<PlannedJob> jobs() {
    return jobs;
  }

  @Override
  public String toString() {
    return "press " + press;
  }
}
