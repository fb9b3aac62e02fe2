package pressweek.solver.audit;

import java.util.List;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.problem.Problem;

/**
 * The second opinion on a plan. It checks every hard rule of docs/rules.md and works out every
 * figure anew, with no code of the planner.
 */
public final class Audit {
  private Audit() {}

  /**
   * Everything in a plan that the rules do not allow or that does not add up; empty for a good
   * plan. A plan that names what does not exist, runs backwards or is absurd in any other way gives
   * findings, too, never an exception.
   */
  public static List<Finding> check(Problem problem, Plan plan) {
    Findings findings = new Findings();
    if (!plan.problem().equals(problem)) {
      findings.add(
          Rule.FIGURES, "plan", "the plan was made from another problem than the one given");
    }
    Week week = Week.of(problem, plan);
    CompleteCheck.check(week, findings);
    PressCheck.check(week, findings);
    OpeningCheck.check(week, findings);
    HoursCheck.check(week, findings);
    MoldCheck.check(week, findings);
    ChangeCheck.check(week, findings);
    SetterCheck.check(week, findings);
    InspectorCheck.check(week, findings);
    CountedCheck.check(week, findings);
    ServiceCheck.check(week, findings);
    LinkCheck.check(week, findings);
    DryerCheck.check(week, findings);
    OperatorCheck.check(week, findings);
    ResinCheck.check(week, findings);
    RunningCheck.check(week, findings);
    PromiseCheck.check(week, findings);
    InsertCheck.check(week, findings);
    PullCheck.check(week, findings);
    LotCheck.check(week, findings);
    StockUseCheck.check(week, findings);
    WaitCheck.check(week, findings);
    Ledger ledger = new Ledger(week);
    ChargeCheck.check(week, ledger, findings);
    WholeCheck.check(week, findings);
    FigureCheck.check(week, ledger, findings);
    return findings.all();
  }
}
