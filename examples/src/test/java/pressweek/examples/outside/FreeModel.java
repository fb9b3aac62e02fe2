package pressweek.examples.outside;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import pressweek.data.problem.Job;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Option;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Rates;
import pressweek.data.problem.Setup;
import pressweek.data.problem.SmallPlant;

/**
 * What the presses and jobs of a model of {@link FreeStarts} share: molds, setters and the cost.
 */
final class FreeModel {
  final CpModel model = new CpModel();
  final Problem problem;
  final HandChange changes;
  final Rates rates;

  /** First minute of the plan; all times of the model count from it. */
  final int start;

  /** All can be done by then, minutes from the start. */
  final int horizon;

  /** Avoidable cost, thousandths of a cent. */
  final LinearExprBuilder cost = LinearExpr.newBuilder();

  /** What takes a mold off by a dismount. */
  final List<BoolVar> dismounts = new ArrayList<>();

  private final List<IntervalVar> taken = new ArrayList<>();
  private final Map<String, List<IntervalVar>> holds = new LinkedHashMap<>();

  FreeModel(Problem problem) {
    this.problem = problem;
    changes = new HandChange(problem);
    rates = problem.plant().rates();
    start = problem.plant().hours().startMin();
    horizon = longest();
  }

  /**
   * The latest of the earliest starts, and then all jobs one after the other, each with the longest
   * change and a dismount: in a plan that waits for nothing, something is going on until it is
   * done.
   */
  private int longest() {
    int sum = 0;
    int dismount = 0;
    int latest = 0;
    for (Mold mold : problem.floor().molds()) {
      dismount = Math.max(dismount, withOtherWork(changes.dismountMin(mold.id())));
    }
    for (Job job : problem.jobs()) {
      latest = Math.max(latest, job.deadline().earliestMin() - start);
      sum += longestRun(job) + longestChange(job) + 2 * dismount;
    }
    return latest + sum;
  }

  private static int longestRun(Job job) {
    return job.options().stream()
        .mapToInt(option -> option.pace().runMin() + option.pace().startupMin())
        .max()
        .orElseThrow();
  }

  private int longestChange(Job job) {
    List<Setup> before = new ArrayList<>();
    problem.floor().states().forEach(state -> before.add(state.setup()));
    problem.jobs().forEach(other -> before.addAll(setups(other)));
    int longest = 0;
    for (Setup to : setups(job)) {
      for (Setup from : before) {
        longest = Math.max(longest, withOtherWork(changes.minutes(from, to)));
      }
    }
    return longest;
  }

  private int withOtherWork(int minutes) {
    return minutes + otherWork(minutes);
  }

  private static List<Setup> setups(Job job) {
    return job.options().stream().map(option -> setup(job, option)).toList();
  }

  /** What is in a press when a job runs there by an option. */
  static Setup setup(Job job, Option option) {
    return new Setup(option.mold(), option.tooling(), job.resin(), job.colour());
  }

  /** A time, in minutes from the start. */
  IntVar time(String name) {
    return model.newIntVar(0, horizon, name);
  }

  /** MOLD_ONCE: a mold is on a press from a time to a time if the literal holds. */
  void holds(String mold, LinearArgument from, IntVar to, Literal when) {
    IntVar size = model.newIntVar(0, horizon, "held");
    holds
        .computeIfAbsent(mold, m -> new ArrayList<>())
        .add(model.newOptionalIntervalVar(from, size, to, when, mold));
  }

  /** Minutes of other work that a setter has after a change or dismount of so many minutes. */
  int otherWork(int minutes) {
    int share = problem.plant().crew().setterSharePct();
    return (minutes * (100 - share) + share - 1) / share;
  }

  /**
   * SETTERS: work takes a setter if the literal holds, and keeps him for his other work after it,
   * unless his shift ends before; all shifts end at midnight.
   */
  void takesSetter(LinearArgument from, LinearArgument to, LinearArgument other, Literal when) {
    IntVar size = model.newIntVar(0, 2L * horizon, "taken");
    IntVar free = model.newIntVar(0, 2L * horizon, "free");
    List<Literal> ends = new ArrayList<>();
    ends.add(model.newBoolVar("with his other work"));
    model.addEquality(free, LinearExpr.newBuilder().add(to).add(other)).onlyEnforceIf(ends.get(0));
    for (int midnight = SmallPlant.DAY; midnight <= horizon; midnight += SmallPlant.DAY) {
      BoolVar shiftEnds = model.newBoolVar("with his shift");
      model.addLessOrEqual(to, midnight).onlyEnforceIf(shiftEnds);
      model.addEquality(free, midnight).onlyEnforceIf(shiftEnds);
      ends.add(shiftEnds);
    }
    model.addExactlyOne(ends.toArray(Literal[]::new));
    taken.add(model.newOptionalIntervalVar(from, size, free, when, "setter"));
  }

  /** CHANGE: what a change or dismount of so many minutes costs. */
  long charged(int minutes) {
    return rates.changeHour() * minutes / 60;
  }

  /** Shipping cut-offs, every day at 15:00, from a due time to the horizon and beyond. */
  int[] cutOffs(int due) {
    int first = Math.floorDiv(due - 15 * 60 + SmallPlant.DAY - 1, SmallPlant.DAY);
    int last = 2 * horizon / SmallPlant.DAY;
    int[] times = new int[Math.max(0, last - first + 1)];
    for (int i = 0; i < times.length; i++) {
      times[i] = (first + i) * SmallPlant.DAY + 15 * 60;
    }
    return times;
  }

  /**
   * Says that molds and setters are in one place at a time, that a plan costs no more than a limit,
   * and that its cost is to be small.
   */
  void close(long costLimit) {
    holds.values().forEach(model::addNoOverlap);
    if (problem.plant().crew().settersChecked()) {
      CumulativeConstraint house =
          model.addCumulative(problem.plant().hours().shifts().get(0).setters());
      taken.forEach(work -> house.addDemand(work, 1));
    }
    model.addLessOrEqual(cost, costLimit);
    model.minimize(cost);
  }

  /** A quotient that must not need rounding. */
  static long exactly(long amount, long by) {
    if (amount % by != 0) {
      throw new IllegalArgumentException(amount + " does not divide by " + by);
    }
    return amount / by;
  }
}
