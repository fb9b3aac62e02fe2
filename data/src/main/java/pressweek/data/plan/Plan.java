package pressweek.data.plan;

import java.util.List;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Unplaced;

/**
 * A week planned.
 *
 * @param head who the plan is
 * @param problem the week that it plans
 * @param runs runs by press in the plant's order, then by place
 * @param dismounts molds taken off because another press needs them, in time order
 * @param pulls components to bring, by need-by time
 * @param unplaced every order line that is not in the plan, those that fell out before planning
 *     first
 * @param unplacedCharges what the lines that found no place cost, one entry a line in the order of
 *     the list
 * @param figures what it amounts to
 */
public record Plan(
    Head head,
    Problem problem,
    List<Run> runs,
    List<Dismount> dismounts,
    List<Pull> pulls,
    List<Unplaced> unplaced,
    List<Charge> unplacedCharges,
    Figures figures) {
  public Plan {
    runs = List.copyOf(runs);
    dismounts = List.copyOf(dismounts);
    pulls = List.copyOf(pulls);
    unplaced = List.copyOf(unplaced);
    unplacedCharges = List.copyOf(unplacedCharges);
  }

  /** The same plan under another head. */
  public Plan with(Head other) {
    return new Plan(other, problem, runs, dismounts, pulls, unplaced, unplacedCharges, figures);
  }

  /** The same plan for another problem. */
  public Plan with(Problem other) {
    return new Plan(head, other, runs, dismounts, pulls, unplaced, unplacedCharges, figures);
  }

  /** The same plan with other runs; its pulls and figures stay as they are. */
  public Plan withRuns(List<Run> others) {
    return new Plan(head, problem, others, dismounts, pulls, unplaced, unplacedCharges, figures);
  }

  /** The same plan with other pulls. */
  public Plan withPulls(List<Pull> others) {
    return new Plan(head, problem, runs, dismounts, others, unplaced, unplacedCharges, figures);
  }
}
