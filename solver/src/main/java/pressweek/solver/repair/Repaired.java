package pressweek.solver.repair;

import java.util.List;
import pressweek.data.floor.Ended;
import pressweek.data.problem.Problem;

/**
 * What is left to plan after what happened on the floor.
 *
 * @param problem the week from the present on
 * @param ended order lines of the earlier plan of which nothing is left to make
 * @param notes what a scheduler should know: what was taken to be so, what could not be used
 */
public record Repaired(Problem problem, List<Ended> ended, List<String> notes) {
  public Repaired {
    ended = List.copyOf(ended);
    notes = List.copyOf(notes);
  }
}
