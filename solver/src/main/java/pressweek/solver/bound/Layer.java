package pressweek.solver.bound;

import java.util.Arrays;
import java.util.function.IntUnaryOperator;

/**
 * Jobs of which every one counts at least so much, and the least lateness of any so many of them.
 *
 * <p>Proof: sort the ends of the runs. The {@code k} runs that end first have between them at least
 * the {@code k} least run minutes, so the {@code k}-th end is no earlier than the time by which
 * that much work can be done; and no earlier than the {@code k}-th of the earliest ends of the jobs
 * taken singly. Minutes late of a job are {@code max(0, end - d)} with {@code d} its due time less
 * the time after molding. Whatever end meets whatever {@code d}, the sum is least when both are
 * sorted alike, since {@code max(0, x)} is convex. Cut-offs missed are {@code max(0, N(ready) -
 * N(due))} with {@code N} the cut-offs before a time, which grows with time: the same holds. When
 * {@code u} jobs are left out, the rest have at least the least run minutes of all, and their due
 * times are, one by one, no later than the latest of all.
 */
final class Layer {
  private static final int DAY = 1440;

  /** By how much, hundredths, each of these jobs counts more than the layer below says. */
  final int weight;

  private final int[] ends;
  private final int[] readies;
  private final int[] limits;
  private final int[] dues;
  private final int[] missedBy;
  private final int[] missedBefore;
  private final Lines lines;

  Layer(Lines lines, int[] jobs, int weight, Capacity capacity) {
    this.lines = lines;
    this.weight = weight;
    int[] runs = sorted(jobs, j -> lines.run[j]);
    ends = sorted(jobs, j -> lines.end[j]);
    readies = sorted(jobs, j -> lines.end[j] + lines.after[j]);
    limits = sorted(jobs, j -> lines.from[j] - lines.after[j]);
    dues = sorted(jobs, j -> lines.from[j]);
    int after = Arrays.stream(jobs).map(j -> lines.after[j]).min().orElse(0);
    long work = 0;
    for (int k = 0; k < runs.length; k++) {
      work += runs[k];
      ends[k] = Math.max(ends[k], capacity.reach(work));
      readies[k] = Math.max(readies[k], ends[k] + after);
    }
    missedBy = Arrays.stream(readies).map(lines.charges::cutOffsBefore).toArray();
    missedBefore = Arrays.stream(dues).map(lines.charges::cutOffsBefore).toArray();
  }

  private static int[] sorted(int[] jobs, IntUnaryOperator what) {
    return Arrays.stream(jobs).map(what).sorted().toArray();
  }

  /**
   * The least that lateness of these jobs comes to, weight counted as the layer does, when so many
   * of them are left out, rounded down.
   */
  long least(int leftOut) {
    long minutes = 0;
    long readyMinutes = 0;
    long missed = 0;
    for (int k = 0; k + leftOut < ends.length; k++) {
      minutes += Math.max(0, ends[k] - limits[k + leftOut]);
      readyMinutes += Math.max(0, readies[k] - dues[k + leftOut]);
      missed += Math.max(0, missedBy[k] - missedBefore[k + leftOut]);
    }
    long day = lines.problem.plant().rates().lateDay();
    long step = lines.problem.plant().rates().lateStep();
    long money = step * missed + day * Math.max(minutes, readyMinutes) / DAY;
    return money / 100 * weight + money % 100 * weight / 100;
  }
}
