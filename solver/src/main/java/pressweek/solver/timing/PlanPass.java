package pressweek.solver.timing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Plan;
import pressweek.data.plan.PlantWide;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Problem;

/**
 * The decisions of a plan carried out by the timing pass again and again, each time with other
 * minutes: the press of each run, the order on it, what is held back and the overtime shifts stay,
 * clock times move. What is pushed past the horizon goes on after it for so many days. Not for use
 * by several threads.
 *
 * <p>Runs are counted from 0 in the order of the plan, presses and receipts in that of its problem.
 */
public final class PlanPass {
  private final Problem problem;
  private final WeekTables week;
  private final Sequences sequences;
  private final TimingPass pass;
  private final int[] jobs;
  private final int[] pressOf;
  private final long besides;

  /** Minutes as planned, by option, for what is in the plan. */
  private final int[] runMin;

  private final int[] startupMin;

  /**
   * A pass for a plan.
   *
   * @param daysOn days after the horizon up to which runs may begin
   */
  public PlanPass(Plan plan, int daysOn) {
    problem = plan.problem();
    week = new WeekTables(problem, daysOn);
    pass = TimingPass.full(week);
    List<Run> placed = new ArrayList<>();
    for (Run run : plan.runs()) {
      if (week.pressOrNone(run.press()) >= 0 && week.job(run.job()) >= 0) {
        placed.add(run);
      }
    }
    jobs = placed.stream().mapToInt(r -> week.job(r.job())).toArray();
    pressOf = placed.stream().mapToInt(r -> week.press(r.press())).toArray();
    sequences = sequences(plan);
    long charged = plan.unplacedCharges().stream().mapToLong(Charge::amount).sum();
    besides = charged - week.nowhereCost;
    runMin = week.jobs.run.clone();
    startupMin = week.jobs.startup.clone();
    week.jobs.changeFactor = new double[week.jobCount()];
    java.util.Arrays.fill(week.jobs.changeFactor, 1);
  }

  /** What waits for a line that the plan left out waits no longer than for nothing. */
  private Sequences sequences(Plan plan) {
    Sequences out = new Sequences(week.presses, week.jobCount());
    Set<Integer> placed = new HashSet<>();
    for (int i = 0; i < jobs.length; i++) {
      out.add(pressOf[i], jobs[i]);
      placed.add(jobs[i]);
    }
    PlantWide whole = plan.head().plantWide();
    week.choices(whole, out);
    for (int job : jobs) {
      if (out.behind(job) >= 0 && !placed.contains(out.behind(job))) {
        out.holdBehind(job, -1);
      }
    }
    return out;
  }

  /** How many runs there are. */
  public int runs() {
    return jobs.length;
  }

  /** The job of a run. */
  public Job job(int run) {
    return week.jobs.jobs.get(jobs[run]);
  }

  /** The press of a run. */
  public int press(int run) {
    return pressOf[run];
  }

  /** Has a run take so many times what is planned. */
  public void stretchRun(int run, double factor) {
    int first = week.jobs.first(jobs[run], pressOf[run]);
    int last = week.jobs.last(jobs[run], pressOf[run]);
    for (int o = first; o < last; o++) {
      week.jobs.run[o] = Math.max(1, (int) Math.rint(runMin[o] * factor));
      week.jobs.startup[o] = (int) Math.rint(startupMin[o] * factor);
    }
  }

  /** Minutes of a run at most, with its start-up, as stretched last. */
  public int minutes(int run) {
    int most = 0;
    int last = week.jobs.last(jobs[run], pressOf[run]);
    for (int o = week.jobs.first(jobs[run], pressOf[run]); o < last; o++) {
      most = Math.max(most, week.jobs.run[o] + week.jobs.startup[o]);
    }
    return most;
  }

  /** Has the change before a run take so many times what the rules say. */
  public void stretchChange(int run, double factor) {
    week.jobs.changeFactor[jobs[run]] = factor;
  }

  /**
   * The breakdowns of a press.
   *
   * @param after minutes of running, counted over all runs of the press, after which it fails;
   *     rising
   * @param repair working minutes of each repair
   * @param failures how many of both count
   */
  public void breakdowns(int press, int[] after, int[] repair, int failures) {
    pass.steps().shared.breakdowns.set(press, after, repair, failures);
  }

  /** Has receipts come in so many minutes later, by receipt. */
  public void receiptsLater(int[] minutes) {
    week.stock.later(problem, minutes);
  }

  /** Carries the plan out; answers its avoidable cost, thousandths of a cent. */
  public long carryOut() {
    return pass.run(sequences) + besides;
  }

  /**
   * When the line of a run was ready in the last {@link #carryOut}, minutes since 1970 UTC; the end
   * of the days in which runs may begin when it found no place.
   */
  public int ready(int run) {
    int job = jobs[run];
    int end = pass.steps().states.jobEnd[job];
    return (end >= Spans.FAR ? week.end : end) + week.jobs.after[job];
  }
}
