package pressweek.solver.bound;

import java.util.Arrays;

/**
 * What each job costs at the least by itself, placed or not.
 *
 * @param unplaced what a job costs that has no place, less what is set aside for other parts
 * @param least the least of that and of the cost of its earliest run
 */
record Singly(long[] unplaced, long[] least) {
  /** The cost of jobs with what is set aside taken from the charge for having no place. */
  static Singly of(Lines lines, long[] unplaced) {
    long[] least = new long[unplaced.length];
    Arrays.setAll(least, j -> Math.min(unplaced[j], lines.placed[j]));
    return new Singly(unplaced, least);
  }

  /** Of several jobs. */
  long sum(int[] jobs) {
    return Arrays.stream(jobs).mapToLong(j -> least[j]).sum();
  }

  /** Of all jobs. */
  long sum() {
    return Arrays.stream(least).sum();
  }
}
