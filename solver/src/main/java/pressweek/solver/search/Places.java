package pressweek.solver.search;

import java.util.Arrays;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.WeekTables;

/** Where each job is in the sequences, and which places may not be touched. */
final class Places {
  final int[] press;
  final int[] place;

  /** How many jobs at the head of a press are fixed. */
  final int[] fixed;

  private final int presses;

  Places(WeekTables week, Sequences sequences) {
    presses = week.pressCount();
    press = new int[week.jobCount()];
    place = new int[week.jobCount()];
    fixed = new int[presses];
    for (int p = 0; p < presses; p++) {
      fixed[p] = week.fixedOn(p).length;
    }
    Arrays.fill(press, -1);
    for (int p = 0; p < presses; p++) {
      renew(sequences, p);
    }
  }

  /** Reads a press anew. */
  void renew(Sequences sequences, int p) {
    for (int i = 0; i < sequences.size(p); i++) {
      int job = sequences.job(p, i);
      press[job] = p;
      place[job] = i;
    }
  }

  boolean isFree(int job) {
    return press[job] >= 0 && place[job] >= fixed[press[job]];
  }
}
