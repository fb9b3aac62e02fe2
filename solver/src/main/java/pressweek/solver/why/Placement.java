package pressweek.solver.why;

import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;

/**
 * Another place for a line, and what the plan would cost with it there.
 *
 * @param press press
 * @param mold mold
 * @param place place in the press's order, from 1
 * @param spot the same after what is fixed on the press, from 0, lines that find no time counted:
 *     what {@link Reordering#moved} takes
 * @param after line before it there; empty for none
 * @param startMin start of its run, minutes since 1970 UTC
 * @param lateMin minutes late
 * @param costsMore avoidable cost above that of the plan as it is, thousandths of a cent; less than
 *     0 where the plan would cost less
 */
public record Placement(
    String press,
    String mold,
    int place,
    int spot,
    String after,
    int startMin,
    int lateMin,
    long costsMore) {
  /** A run in a plan that was tried, against the plan that stands. */
  static Placement of(Plan tried, Run run, int spot, Plan standing) {
    String after =
        tried.runs().stream()
            .filter(r -> r.press().equals(run.press()) && r.seq() == run.seq() - 1)
            .map(Run::job)
            .findFirst()
            .orElse("");
    int due =
        tried.problem().jobs().stream()
            .filter(j -> j.id().equals(run.job()))
            .findFirst()
            .map(j -> j.deadline().dueMin())
            .orElseThrow();
    return new Placement(
        run.press(),
        run.mold(),
        run.seq(),
        spot,
        after,
        run.startMin(),
        Math.max(0, run.readyMin() - due),
        tried.figures().avoidableCost() - standing.figures().avoidableCost());
  }
}
