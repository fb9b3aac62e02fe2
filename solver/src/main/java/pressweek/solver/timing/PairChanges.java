package pressweek.solver.timing;

import java.util.Arrays;
import pressweek.solver.rules.ChangeRules;

/**
 * Changes between two jobs of a press, remembered: a search asks for the same ones again and again.
 * The answer to {@link #ask} stays in the fields until the next question.
 *
 * <p>What was in a press before is given by a number: the option that ran, or, beyond the options,
 * the press as it stands at the start.
 */
final class PairChanges {
  /** Bits of the number of answers that are kept at most. */
  private static final int MOST_BITS = 18;

  /** Working minutes of the change. */
  int minutes;

  /** CHANGE, PURGE and START_UP together. */
  long cost;

  /** Whether anything is exchanged, so that a run begins with start-up shots. */
  boolean changed;

  /** Whether the material may not follow the one before. */
  boolean forbidden;

  private final WeekTables week;
  private final JobTable jobs;
  private final ChangeRules changes;
  private final ChangeRules.State state = new ChangeRules.State();
  private final int options;
  private final int shift;
  private final long[] asked;
  private final int[] minutesOf;
  private final long[] costOf;
  private final byte[] flags;
  private double setterPrice;

  PairChanges(WeekTables week) {
    this.week = week;
    jobs = week.jobs;
    changes = week.changeRules();
    options = jobs.option.length;
    long pairs = (long) (options + week.presses) * Math.max(1, options);
    int bits = Math.max(4, Math.min(MOST_BITS, 66 - Long.numberOfLeadingZeros(pairs)));
    shift = 64 - bits;
    asked = new long[1 << bits];
    Arrays.fill(asked, -1);
    minutesOf = new int[1 << bits];
    costOf = new long[1 << bits];
    flags = new byte[1 << bits];
  }

  /**
   * What a minute of a setter is worth beside what it costs, as a multiple of that; 0 for nothing.
   */
  void setterPrice(double times) {
    if (setterPrice != times) {
      setterPrice = times;
      Arrays.fill(asked, -1);
    }
  }

  /** The number of a press as it stands at the start. */
  int standing(int press) {
    return options + press;
  }

  /** The mold in a press, or -1. */
  int mold(int before) {
    return before >= options ? week.standing[before - options] : jobs.mold[before];
  }

  /** Asks for the change on a press from what was there before to an option of a job. */
  void ask(int press, int before, int option, int job) {
    long key = (long) before * options + option;
    int slot = (int) ((key * 0x9E3779B97F4A7C15L) >>> shift);
    if (asked[slot] != key) {
      asked[slot] = key;
      reckon(slot, press, before, option, job);
    }
    minutes = minutesOf[slot];
    cost = costOf[slot];
    changed = (flags[slot] & 1) != 0;
    forbidden = (flags[slot] & 2) != 0;
  }

  private void reckon(int slot, int press, int before, int option, int job) {
    boolean cleared;
    state.mold = mold(before);
    if (before >= options) {
      state.tooling = week.standingTooling[press];
      state.material = week.standingMaterial[press];
      cleared = week.standingCleared[press];
    } else {
      int last = jobs.jobOf[before];
      state.tooling = jobs.tooling[before];
      state.material = jobs.material[last];
      cleared = jobs.food[last];
    }
    int material = jobs.material[job];
    boolean clear = jobs.food[job] && !cleared;
    changes.ask(press, state, jobs.mold[option], jobs.tooling[option], material, clear);
    boolean exchanged = (changes.kinds & ~ChangeRules.FOOD) != 0;
    long sum = week.charges.change(changes.minutes) + week.charges.purge(material, changes.purgeG);
    if (exchanged) {
      sum += week.charges.startUp(material, jobs.option[option].making().startupGrams());
    }
    sum += (long) (setterPrice * week.charges.change(changes.minutes));
    minutesOf[slot] = changes.minutes;
    costOf[slot] = sum;
    int bits = exchanged ? 1 : 0;
    flags[slot] = (byte) (bits | (changes.forbidden(state.material, material) ? 2 : 0));
  }
}
