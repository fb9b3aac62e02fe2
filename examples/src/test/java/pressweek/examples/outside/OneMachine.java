package pressweek.examples.outside;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.TreeMap;
import pressweek.data.problem.JobBuilder;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Rates;
import pressweek.data.problem.RecordedChange;
import pressweek.data.problem.Setup;
import pressweek.data.problem.SmallPlant;

/**
 * A single-machine example of the literature, in units of time, and the same as a week on one
 * press: a unit of time is a minute, a job is a colour, a setup is a recorded change, and a plan
 * costs {@link #UNIT} for each weighted minute late and nothing else. Jobs are numbered from 1, as
 * in the books; 0 is the state of the machine at the start.
 */
final class OneMachine {
  /** What a weighted minute late costs, thousandths of a cent. */
  static final long UNIT = 100_000;

  private static final long NEVER_LEFT_OUT = 1_000_000_000_000L;
  private static final String PRESS = "P1";
  private static final String MOLD = "M1";

  private final int[] run;
  private final int[] weight;
  private final int[] due;
  private final int[][] setup;

  private OneMachine(int[] run, int[] weight, int[] due, int[][] setup) {
    this.run = run;
    this.weight = weight;
    this.due = due;
    this.setup = setup;
  }

  /** Jobs without setups. */
  static OneMachine of(int[] run, int[] weight, int[] due) {
    return new OneMachine(run, weight, due, new int[0][]);
  }

  /**
   * The same jobs with setups.
   *
   * @param rows setup from 0 (the start) and from every job to every job, one row each; what stands
   *     at a job's own place is not read
   */
  OneMachine withSetups(int[]... rows) {
    return new OneMachine(run, weight, due, rows);
  }

  /** Total weighted tardiness of the jobs in this order. */
  long weightedTardiness(List<Integer> order) {
    long sum = 0;
    int clock = 0;
    int before = 0;
    for (int job : order) {
      clock += (setup.length == 0 ? 0 : setup[before][job - 1]) + run[job - 1];
      sum += (long) weight[job - 1] * Math.max(0, clock - due[job - 1]);
      before = job;
    }
    return sum;
  }

  /** All orders by their total weighted tardiness, the least first. */
  TreeMap<Long, List<List<Integer>>> allOrders() {
    TreeMap<Long, List<List<Integer>>> found = new TreeMap<>();
    extend(new ArrayList<>(), found);
    return found;
  }

  private void extend(List<Integer> begun, TreeMap<Long, List<List<Integer>>> found) {
    if (begun.size() == run.length) {
      found
          .computeIfAbsent(weightedTardiness(begun), cost -> new ArrayList<>())
          .add(List.copyOf(begun));
      return;
    }
    for (int job = 1; job <= run.length; job++) {
      if (!begun.contains(job)) {
        begun.add(job);
        extend(begun, found);
        begun.remove(begun.size() - 1);
      }
    }
  }

  /** The example as a week; the order of job {@code n} is {@code n}. */
  Problem problem() {
    SmallPlant plant = new SmallPlant();
    plant.rates(new Rates("EUR", true, 0, 1440 * UNIT, 0, 0, 0, NEVER_LEFT_OUT));
    plant.state(new PressState(PRESS, new Setup(MOLD, "", "PP", colour(0)), false, ""));
    for (int job = 0; job <= run.length; job++) {
      plant.colour(colour(job), 50);
    }
    for (int from = 0; from < setup.length; from++) {
      for (int to = 1; to <= run.length; to++) {
        if (from != to) {
          plant.recorded(change(colour(from), colour(to), setup[from][to - 1]));
        }
      }
    }
    for (int job = 1; job <= run.length; job++) {
      plant.job(
          JobBuilder.job(String.valueOf(job))
              .in("PP", colour(setup.length == 0 ? 0 : job))
              .weight(100 * weight[job - 1])
              .due(SmallPlant.START + due[job - 1])
              .on(PRESS, MOLD, run[job - 1]));
    }
    return plant.build();
  }

  /** A recorded change of colour on the one press, without purge. */
  static RecordedChange change(String from, String to, int minutes) {
    return new RecordedChange(
        PRESS, new Setup("", "", "", from), new Setup("", "", "", to), minutes, OptionalInt.of(0));
  }

  private static String colour(int job) {
    return "C" + job;
  }
}
