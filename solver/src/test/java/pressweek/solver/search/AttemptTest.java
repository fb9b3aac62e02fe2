package pressweek.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import pressweek.solver.timing.TimingPass;
import pressweek.solver.timing.WeekTables;

/** An attempt that goes on from a snapshot comes to what a fresh pass over all of it comes to. */
final class AttemptTest {
  private static final int PLANTS = 20;
  private static final int MOVES = 500;

  @Test
  void anAttemptFromASnapshotComesToWhatAFreshPassDoes() {
    long compared = 0;
    for (long seed = 1; seed <= PLANTS; seed++) {
      MovesTried tried = MovesTried.on(seed);
      WeekTables week = tried.week();
      compared += tried.compare(MOVES, TimingPass.full(week), TimingPass.full(week)::value, false);
    }
    assertThat(compared).isGreaterThan(PLANTS * MOVES / 2);
  }
}
