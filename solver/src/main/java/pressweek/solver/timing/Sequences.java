package pressweek.solver.timing;

import java.util.Arrays;

/** Jobs in order, press by press: what the search decides. */
public final class Sequences {
  final int[][] jobs;
  final int[] size;

  /** Empty sequences for so many presses and jobs. */
  public Sequences(int presses, int jobCount) {
    jobs = new int[presses][jobCount];
    size = new int[presses];
  }

  /** Forgets the sequence of a press. */
  public void clear(int press) {
    size[press] = 0;
  }

  /** Puts a job at the end of a press. */
  public void add(int press, int job) {
    jobs[press][size[press]++] = job;
  }

  /** The jobs of a press in order. */
  public int[] of(int press) {
    return Arrays.copyOf(jobs[press], size[press]);
  }

  /** A copy that does not change with this one. */
  public Sequences copy() {
    Sequences copy = new Sequences(size.length, jobs.length == 0 ? 0 : jobs[0].length);
    for (int p = 0; p < size.length; p++) {
      System.arraycopy(jobs[p], 0, copy.jobs[p], 0, size[p]);
      copy.size[p] = size[p];
    }
    return copy;
  }
}
