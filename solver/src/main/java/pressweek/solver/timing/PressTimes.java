package pressweek.solver.timing;

/** Where each job of a rough model stands: its press, option, change, run and cost. */
final class PressTimes {
  /** The press of a job, -1 when it is not timed. */
  final int[] press;

  /** The option of a job. */
  final int[] option;

  /** Start of the change. */
  final int[] begin;

  final int[] runStart;

  /** End of the run; the same as the start of the change for a job that finds no place. */
  final int[] end;

  final long[] cost;

  PressTimes(int jobs) {
    press = new int[jobs];
    option = new int[jobs];
    begin = new int[jobs];
    runStart = new int[jobs];
    end = new int[jobs];
    cost = new long[jobs];
  }

  /** Takes a job over from another. */
  void copy(PressTimes other, int job) {
    press[job] = other.press[job];
    option[job] = other.option[job];
    begin[job] = other.begin[job];
    runStart[job] = other.runStart[job];
    end[job] = other.end[job];
    cost[job] = other.cost[job];
  }

  boolean runs(int job) {
    return end[job] > begin[job];
  }
}
