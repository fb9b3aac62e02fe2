package pressweek.examples.outside;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.problem.Job;

/**
 * A job in a model of {@link FreeStarts}. Its change starts, its run follows at once, since presses
 * never stand; how long both are is the sum of what the presses say of it.
 */
final class FreeJob {
  final Job job;

  /** Start of the change (of the run, without one), minutes since the plan starts. */
  final IntVar start;

  /** End of the run. */
  final IntVar end;

  /** On which press it is. */
  final Map<String, BoolVar> here = new LinkedHashMap<>();

  private final LinearExprBuilder runMinutes = LinearExpr.newBuilder();
  private final LinearExprBuilder changeMinutes = LinearExpr.newBuilder();
  private final LinearExprBuilder otherWork = LinearExpr.newBuilder();
  private final List<Literal> changed = new ArrayList<>();

  FreeJob(CpModel model, Job job, int earliest, int horizon) {
    this.job = job;
    start = model.newIntVar(earliest, horizon, "start " + job.id());
    end = model.newIntVar(0, horizon, "end " + job.id());
  }

  /** Adds minutes to its run that it has when something holds. */
  void runs(Literal when, int minutes) {
    runMinutes.addTerm(when, minutes);
  }

  /** Says how long its change is when something holds, and its setter's other work after that. */
  void changes(Literal when, int minutes, int other) {
    changeMinutes.addTerm(when, minutes);
    otherWork.addTerm(when, other);
    changed.add(when);
  }

  /** Says all that holds of it once the presses have said theirs. */
  void close(FreeModel week) {
    CpModel model = week.model;
    model.addExactlyOne(here.values().toArray(Literal[]::new));
    IntVar runStart = week.time("run start");
    model.addEquality(runStart, LinearExpr.newBuilder().add(start).add(changeMinutes));
    model.addEquality(end, LinearExpr.newBuilder().add(runStart).add(runMinutes));
    BoolVar isChanged = model.newBoolVar("changed");
    model.addEquality(isChanged, LinearExpr.sum(changed.toArray(Literal[]::new)));
    week.takesSetter(start, runStart, otherWork, isChanged);
    late(week);
  }

  /** LATE: by shipping cut-off missed and by minute, from the due time or the plan's start on. */
  private void late(FreeModel week) {
    CpModel model = week.model;
    int after = job.deadline().afterMin();
    int due = Math.max(0, job.deadline().dueMin() - week.start);
    long weight = job.deadline().weightHundredths();
    IntVar late = model.newIntVar(0, 2L * week.horizon, "late");
    model.addGreaterOrEqual(late, LinearExpr.affine(end, 1, after - due));
    week.cost.addTerm(late, FreeModel.exactly(week.rates.lateDay() * weight, 1440 * 100));
    long step = FreeModel.exactly(week.rates.lateStep() * weight, 100);
    for (int cutOff : week.cutOffs(due)) {
      BoolVar missed = model.newBoolVar("missed");
      model.addLessOrEqual(end, cutOff - after).onlyEnforceIf(missed.not());
      week.cost.addTerm(missed, step);
    }
  }
}
