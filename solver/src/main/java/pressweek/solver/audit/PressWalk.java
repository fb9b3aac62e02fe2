package pressweek.solver.audit;

import java.util.List;
import pressweek.data.plan.Dismount;
import pressweek.data.problem.Press;

/**
 * What happens on a press, in the order of time.
 *
 * @param press the press
 * @param time when it works
 * @param steps its runs
 * @param stays those of its runs whose job, press and mold go together
 * @param holds the molds on it
 * @param dismounts its dismounts
 * @param strayDismounts those of its dismounts whose mold is not on it
 */
record PressWalk(
    Press press,
    PressTime time,
    List<Step> steps,
    List<Stay> stays,
    List<Hold> holds,
    List<Dismount> dismounts,
    List<Dismount> strayDismounts) {
  PressWalk {
    steps = List.copyOf(steps);
    stays = List.copyOf(stays);
    holds = List.copyOf(holds);
    dismounts = List.copyOf(dismounts);
    strayDismounts = List.copyOf(strayDismounts);
  }

  /** True when nothing takes the mold off that it holds last. */
  boolean holdsAtEnd(String mold) {
    return holds.stream().anyMatch(h -> h.mold().equals(mold) && h.toMin() == Long.MAX_VALUE);
  }
}
