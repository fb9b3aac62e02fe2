package pressweek.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.WeekTables;

/**
 * Takes the order of an earlier plan as a start; jobs that it does not have get the place where
 * they cost least.
 */
final class WarmStart {
  /** Passes that are spent on places for jobs which the plan does not have. */
  private static final int MOST_PASSES = 4_000;

  /** The same in passes of one job, since a pass over many takes longer. */
  private static final int MOST_JOB_PASSES = 400_000;

  private WarmStart() {}

  /**
   * The sequences of a plan.
   *
   * @param otherwise another start, with all jobs
   * @param value what sequences are compared by
   */
  static Sequences from(
      WeekTables week, Plan plan, Sequences otherwise, ToLongFunction<Sequences> value) {
    boolean[] placed = new boolean[week.jobCount()];
    Sequences out = new Sequences(week.pressCount(), week.jobCount());
    week.choices(plan.head().plantWide(), out);
    for (int p = 0; p < week.pressCount(); p++) {
      for (int job : week.fixedOn(p)) {
        out.add(p, job);
        placed[job] = true;
      }
    }
    for (Run run : plan.runs()) {
      int job = week.job(run.job());
      int press = week.pressOrNone(run.press());
      if (job >= 0 && press >= 0 && !placed[job] && week.canRun(job, press)) {
        out.add(press, job);
        placed[job] = true;
      }
    }
    keepTimes(week, out, value);
    List<Integer> left = new ArrayList<>();
    for (int p = 0; p < week.pressCount(); p++) {
      for (int job : otherwise.of(p)) {
        if (!placed[job]) {
          left.add(job);
        }
      }
    }
    int most = Math.min(MOST_PASSES, MOST_JOB_PASSES / Math.max(1, week.jobCount()));
    int passes = most / Math.max(1, left.size());
    left.forEach(job -> insert(week, out, job, passes, value));
    return out;
  }

  /** Has all jobs keep the time of their earlier plan, where that costs less. */
  private static void keepTimes(WeekTables week, Sequences out, ToLongFunction<Sequences> value) {
    Sequences kept = out.copy();
    for (int p = 0; p < week.pressCount(); p++) {
      for (int job : out.of(p)) {
        if (week.hadPlace(job, p) && out.behind(job) < 0) {
          kept.keepTime(job);
        }
      }
    }
    if (value.applyAsLong(kept) < value.applyAsLong(out)) {
      out.copyChoices(kept);
    }
  }

  /** Puts a job where it costs least, among so many places at most, those at the ends first. */
  private static void insert(
      WeekTables week, Sequences out, int job, int passes, ToLongFunction<Sequences> value) {
    int press = -1;
    int place = -1;
    long least = Long.MAX_VALUE;
    int longest = IntStream.range(0, week.pressCount()).map(out::size).max().orElse(0);
    int tries = 0;
    for (int back = 0; back <= longest && (press < 0 || tries < passes); back++) {
      for (int p = 0; p < week.pressCount(); p++) {
        int at = out.size(p) - back;
        if (at < week.fixedOn(p).length || !week.canRun(job, p)) {
          continue;
        }
        out.add(p, job);
        out.move(p, out.size(p) - 1, 1, p, at);
        long cost = value.applyAsLong(out);
        tries++;
        if (cost < least) {
          least = cost;
          press = p;
          place = at;
        }
        out.remove(p, at);
      }
    }
    out.add(press, job);
    out.move(press, out.size(press) - 1, 1, press, place);
  }
}
