package pressweek.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import pressweek.solver.DrawnWeeks;
import pressweek.solver.timing.Dispatch;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.TimingPass;
import pressweek.solver.timing.Touched;
import pressweek.solver.timing.WeekTables;

/** An attempt that goes on from a snapshot comes to what a fresh pass over all of it comes to. */
final class AttemptTest {
  private static final int PLANTS = 20;
  private static final int MOVES = 500;

  @Test
  void anAttemptFromASnapshotComesToWhatAFreshPassDoes() {
    long compared = 0;
    for (long seed = 1; seed <= PLANTS; seed++) {
      compared += compareMoves(seed);
    }
    assertThat(compared).isGreaterThan(PLANTS * MOVES / 2);
  }

  /** Tries moves on a drawn plant and keeps every third; answers how many changed something. */
  private static int compareMoves(long seed) {
    WeekTables week = new WeekTables(DrawnWeeks.arranged(seed));
    Sequences sequences = new Dispatch(week).earliestDueDate();
    Moves moves = new Moves(week, sequences, new Neighbours(week), new SplittableRandom(seed));
    TimingPass pass = TimingPass.full(week);
    pass.keep(sequences);
    int made = 0;
    for (int i = 0; i < MOVES && moves.any(); i++) {
      if (!moves.make()) {
        continue;
      }
      made++;
      Touched touched = moves.touched();
      long fresh = TimingPass.full(week).value(sequences);
      assertThat(pass.attempt(sequences, Long.MAX_VALUE, touched, false))
          .as("seed %d, move %d", seed, i)
          .isEqualTo(fresh);
      if (made % 3 == 0) {
        moves.keep();
        assertThat(pass.keep(sequences, touched)).as("seed %d, kept %d", seed, i).isEqualTo(fresh);
      } else {
        moves.undo();
      }
    }
    return made;
  }
}
