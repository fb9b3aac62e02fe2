package pressweek.solver.timing;

import java.util.Arrays;

/**
 * Breakdowns of presses: each press fails after so many minutes of running, counted from the start
 * of the plan over all of its runs, and stands while it is repaired in its working time. None in a
 * search.
 */
final class Breakdowns {
  private static final int[] NONE = new int[0];

  /** Running minutes of a press after which it fails, rising. */
  private final int[][] after;

  /** Working minutes of each repair. */
  private final int[][] repair;

  private final int[] count;

  /** Running minutes of a press so far, and how many of its failures they have brought. */
  private final int[] ran;

  private final int[] failed;

  private boolean any;

  Breakdowns(int presses) {
    after = new int[presses][];
    repair = new int[presses][];
    Arrays.fill(after, NONE);
    Arrays.fill(repair, NONE);
    count = new int[presses];
    ran = new int[presses];
    failed = new int[presses];
  }

  /**
   * The failures of a press from now on. The arrays stay the caller's and may be filled anew before
   * the next call.
   */
  void set(int press, int[] afterMin, int[] repairMin, int failures) {
    after[press] = afterMin;
    repair[press] = repairMin;
    count[press] = failures;
    any |= failures > 0;
  }

  void reset() {
    Arrays.fill(ran, 0);
    Arrays.fill(failed, 0);
  }

  /** Minutes of repair within the next so many minutes of running of a press. */
  int repairs(int press, int minutes) {
    if (!any) {
      return 0;
    }
    int sum = 0;
    int until = ran[press] + minutes;
    for (int i = failed[press]; i < count[press] && after[press][i] < until; i++) {
      sum += repair[press][i];
    }
    return sum;
  }

  /** A press has run so many minutes more. */
  void worked(int press, int minutes) {
    if (any) {
      ran[press] += minutes;
      while (failed[press] < count[press] && after[press][failed[press]] < ran[press]) {
        failed[press]++;
      }
    }
  }
}
