package pressweek.examples.outside;

import java.util.Arrays;
import java.util.stream.IntStream;
import pressweek.data.problem.Problem;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.TimingPass;
import pressweek.solver.timing.WeekTables;

/**
 * Every way to lay a small week out: each job on each press that may run it, in each order, timed
 * by the planner's own timing pass. Nothing is left out but what is not eligible and what would
 * move a job that is fixed to its press.
 */
final class Enumeration {
  private final WeekTables week;
  private final TimingPass pass;
  private final Sequences sequences;
  private final int[][] queue;
  private final int[] length;
  private final boolean[] placed;
  private int left;
  private long leastCost = Long.MAX_VALUE;
  private long count;

  private Enumeration(Problem problem) {
    week = new WeekTables(problem);
    pass = TimingPass.full(week);
    sequences = new Sequences(week.pressCount(), week.jobCount());
    queue = new int[week.pressCount()][week.jobCount()];
    length = new int[week.pressCount()];
    placed = new boolean[week.jobCount()];
    left = week.jobCount();
    for (int press = 0; press < week.pressCount(); press++) {
      for (int job : week.fixedOn(press)) {
        push(press, job);
      }
    }
  }

  /** All ways for a problem. */
  static Enumeration of(Problem problem) {
    Enumeration all = new Enumeration(problem);
    all.extend(0);
    return all;
  }

  /** The least avoidable cost of all ways, thousandths of a cent. */
  long leastCost() {
    return leastCost;
  }

  /** How many ways there are. */
  long count() {
    return count;
  }

  /** Adds a job to the queue of a press, or goes on to the next press. */
  private void extend(int press) {
    if (press == week.pressCount()) {
      if (left == 0) {
        time();
      }
      return;
    }
    extend(press + 1);
    for (int job = 0; job < placed.length; job++) {
      if (!placed[job] && week.canRun(job, press)) {
        push(press, job);
        extend(press);
        placed[job] = false;
        length[press]--;
        left++;
      }
    }
  }

  private void push(int press, int job) {
    queue[press][length[press]++] = job;
    placed[job] = true;
    left--;
  }

  private void time() {
    for (int press = 0; press < queue.length; press++) {
      sequences.clear(press);
      for (int i = 0; i < length[press]; i++) {
        sequences.add(press, queue[press][i]);
      }
    }
    long cost = pass.run(sequences);
    if (pass.broken() == 0) {
      leastCost = Math.min(leastCost, cost);
    }
    count++;
  }

  /** Ways to queue so many jobs at so many presses, when every press may run every job. */
  static long ways(int jobs, int presses) {
    long orders = IntStream.rangeClosed(1, jobs).asLongStream().reduce(1, (a, b) -> a * b);
    long[] splits = new long[jobs + 1];
    Arrays.fill(splits, 1);
    for (int press = 1; press < presses; press++) {
      for (int job = 1; job <= jobs; job++) {
        splits[job] += splits[job - 1];
      }
    }
    return orders * splits[jobs];
  }
}
