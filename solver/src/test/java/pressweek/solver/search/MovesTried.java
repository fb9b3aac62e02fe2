package pressweek.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.function.ToLongFunction;
import pressweek.solver.DrawnWeeks;
import pressweek.solver.timing.Dispatch;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.Touched;
import pressweek.solver.timing.Valuation;
import pressweek.solver.timing.WeekTables;

/** Moves on the week of a seed, for tests: each attempt is held against a fresh valuation. */
record MovesTried(long seed, WeekTables week) {
  static MovesTried on(long seed) {
    return new MovesTried(seed, new WeekTables(DrawnWeeks.arranged(seed)));
  }

  /**
   * Tries so many moves and keeps every third; answers how many were compared.
   *
   * @param filtered only moves that a rough model sees
   */
  int compare(int count, Valuation tried, ToLongFunction<Sequences> fresh, boolean filtered) {
    Sequences sequences = new Dispatch(week).earliestDueDate();
    Moves moves = new Moves(week, sequences, new Neighbours(week), new SplittableRandom(seed));
    tried.keep(sequences);
    int made = 0;
    for (int i = 0; i < count && moves.any(); i++) {
      if (!moves.make()) {
        continue;
      }
      Touched touched = moves.touched();
      if (filtered && !moves.isFiltered()) {
        moves.undo();
        continue;
      }
      made++;
      long value = fresh.applyAsLong(sequences);
      String move = "seed " + seed + ", move " + i;
      assertThat(tried.attempt(sequences, Long.MAX_VALUE, touched, false))
          .as(move)
          .isEqualTo(value);
      assertThat(tried.attempt(sequences, value - 1, touched, true))
          .as(move + ", above its limit")
          .isGreaterThan(value - 1);
      if (made % 3 == 0) {
        moves.keep();
        assertThat(tried.keep(sequences, touched)).as(move + ", kept").isEqualTo(value);
      } else {
        moves.undo();
      }
    }
    return made;
  }
}
