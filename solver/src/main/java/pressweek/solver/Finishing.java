package pressweek.solver;

import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.problem.Problem;
import pressweek.solver.repair.RunNumbers;

/** Gives a plan that was put into order by hand what a searched one has. */
public final class Finishing {
  private Finishing() {}

  /**
   * The plan with lots to pull, run numbers that stay with their lines, and the bound of the plan
   * that it comes from where both are of the same week; what has been proved of another week says
   * nothing of this one.
   *
   * @param head who the plan is; what it decides as a whole is filled in
   * @param ordered a plan as it came of an order
   * @param from the plan that it comes from
   */
  public static Plan of(Head head, Plan ordered, Plan from) {
    Plan numbered = RunNumbers.kept(from, ordered.with(whole(head, ordered, from)));
    return numbered.withPulls(Pulling.of(numbered.problem(), numbered.runs()));
  }

  private static Head whole(Head head, Plan ordered, Plan from) {
    PlantWide whole = ordered.head().plantWide();
    PlantWide bounded =
        new PlantWide(
            whole.opened(),
            whole.held(),
            whole.dryings(),
            whole.charges(),
            isSameWeek(ordered.problem(), from.problem())
                ? from.head().plantWide().bound()
                : Optional.empty());
    return new Head(
        head.number(),
        head.replaces(),
        head.madeMin(),
        head.inputs(),
        head.settings(),
        head.references(),
        head.stopped(),
        Optional.of(bounded).filter(w -> !w.equals(PlantWide.NONE)));
  }

  /** Whether two weeks are the same but for promises, of which no bound makes use. */
  private static boolean isSameWeek(Problem one, Problem other) {
    return one.with(one.floor().withPromises(List.of()))
        .equals(other.with(other.floor().withPromises(List.of())));
  }
}
