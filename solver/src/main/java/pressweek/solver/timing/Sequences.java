package pressweek.solver.timing;

import java.util.Arrays;

/** Jobs in order, press by press: what the search decides. */
public final class Sequences {
  final int[][] jobs;
  final int[] size;

  /** For each job the job that it is held back behind, itself when it keeps its time, or -1. */
  final int[] behind;

  /** Overtime shifts that are opened, as bits in the order of their starts. */
  long open;

  /** Empty sequences for so many presses and jobs. */
  public Sequences(int presses, int jobCount) {
    jobs = new int[presses][jobCount];
    size = new int[presses];
    behind = new int[jobCount];
    Arrays.fill(behind, -1);
  }

  /** Forgets the sequence of a press. */
  public void clear(int press) {
    size[press] = 0;
  }

  /** Puts a job at the end of a press. */
  public void add(int press, int job) {
    jobs[press][size[press]++] = job;
  }

  /** Takes out the job at a place of a press. */
  public void remove(int press, int place) {
    int[] row = jobs[press];
    System.arraycopy(row, place + 1, row, place, --size[press] - place);
  }

  /** How many jobs a press has. */
  public int size(int press) {
    return size[press];
  }

  /** A job of a press by its place, from 0. */
  public int job(int press, int place) {
    return jobs[press][place];
  }

  /**
   * Moves a row of jobs to another place.
   *
   * @param from press that has them
   * @param first place of the first of them
   * @param count how many
   * @param to press that gets them; may be the same
   * @param place the place of the first of them afterwards
   */
  public void move(int from, int first, int count, int to, int place) {
    int[] source = jobs[from];
    if (from == to) {
      if (place > first) {
        rotate(source, first, first + count, place + count);
      } else {
        rotate(source, place, first, first + count);
      }
      return;
    }
    int[] target = jobs[to];
    System.arraycopy(target, place, target, place + count, size[to] - place);
    System.arraycopy(source, first, target, place, count);
    System.arraycopy(source, first + count, source, first, size[from] - first - count);
    size[from] -= count;
    size[to] += count;
  }

  /** Exchanges the stretch before a middle with the one from there to an end. */
  private static void rotate(int[] row, int begin, int middle, int end) {
    reverse(row, begin, middle);
    reverse(row, middle, end);
    reverse(row, begin, end);
  }

  private static void reverse(int[] row, int begin, int end) {
    for (int i = begin, k = end - 1; i < k; i++, k--) {
      int job = row[i];
      row[i] = row[k];
      row[k] = job;
    }
  }

  /** Exchanges two jobs by their presses and places. */
  public void swap(int press, int place, int otherPress, int otherPlace) {
    int job = jobs[press][place];
    jobs[press][place] = jobs[otherPress][otherPlace];
    jobs[otherPress][otherPlace] = job;
  }

  /** The jobs of a press in order. */
  public int[] of(int press) {
    return Arrays.copyOf(jobs[press], size[press]);
  }

  /** Holds a job back until another has begun; -1 for no such job. */
  public void holdBehind(int job, int other) {
    behind[job] = other;
  }

  /**
   * Has a job keep its time: on the press that it had in an earlier plan it does not run sooner
   * than in that plan, as far as the plant does not call it the same time.
   */
  public void keepTime(int job) {
    behind[job] = job;
  }

  /** The job that a job is held back behind, itself when it keeps its time, or -1. */
  public int behind(int job) {
    return behind[job];
  }

  /** Opens overtime shifts, as bits in the order of their starts, and closes all others. */
  public void open(long shifts) {
    open = shifts;
  }

  /** Overtime shifts that are opened, as bits. */
  public long open() {
    return open;
  }

  /** Holds back and opens what another does. */
  public void copyChoices(Sequences other) {
    System.arraycopy(other.behind, 0, behind, 0, behind.length);
    open = other.open;
  }

  /** A copy that does not change with this one. */
  public Sequences copy() {
    Sequences copy = new Sequences(size.length, jobs.length == 0 ? 0 : jobs[0].length);
    for (int p = 0; p < size.length; p++) {
      System.arraycopy(jobs[p], 0, copy.jobs[p], 0, size[p]);
      copy.size[p] = size[p];
    }
    copy.copyChoices(this);
    return copy;
  }
}
