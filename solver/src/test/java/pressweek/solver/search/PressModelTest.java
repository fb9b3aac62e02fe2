package pressweek.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import pressweek.solver.DrawnWeeks;
import pressweek.solver.RandomPlant;
import pressweek.solver.timing.Dispatch;
import pressweek.solver.timing.PressModel;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.TimingPass;
import pressweek.solver.timing.Touched;
import pressweek.solver.timing.WeekTables;

/** The rough model times only what a move touches, and comes to what a fresh one comes to. */
final class PressModelTest {
  private static final int PLANTS = 20;
  private static final int MOVES = 300;

  @Test
  void anAttemptComesToWhatAFreshModelDoes() {
    long compared = 0;
    for (long seed = 1; seed <= PLANTS; seed++) {
      compared += compareMoves(seed);
    }
    assertThat(compared).isGreaterThan(PLANTS * MOVES / 2);
  }

  /** Tries moves on a drawn plant and keeps every third; answers how many were compared. */
  private static int compareMoves(long seed) {
    WeekTables week = new WeekTables(DrawnWeeks.arranged(seed));
    Sequences sequences = new Dispatch(week).earliestDueDate();
    Moves moves = new Moves(week, sequences, new Neighbours(week), new SplittableRandom(seed));
    PressModel model = new PressModel(week);
    model.keep(sequences);
    int made = 0;
    for (int i = 0; i < MOVES && moves.any(); i++) {
      if (!moves.make()) {
        continue;
      }
      Touched touched = moves.touched();
      if (!moves.isFiltered()) {
        moves.undo();
        continue;
      }
      made++;
      long fresh = new PressModel(week).keep(sequences);
      assertThat(model.attempt(sequences, Long.MAX_VALUE, touched, false))
          .as("seed %d, move %d", seed, i)
          .isEqualTo(fresh);
      assertThat(model.attempt(sequences, fresh - 1, touched, true))
          .as("seed %d, move %d, above its limit", seed, i)
          .isGreaterThan(fresh - 1);
      if (made % 3 == 0) {
        moves.keep();
        assertThat(model.keep(sequences, touched)).as("seed %d, kept %d", seed, i).isEqualTo(fresh);
      } else {
        moves.undo();
      }
    }
    return made;
  }

  @Test
  void whereASampleAgreesWithTheTimingPassAllMovesDo() {
    int agreed = 0;
    for (long seed = 1; seed <= 120; seed++) {
      WeekTables week =
          new WeekTables(RandomPlant.of(seed, 12, 1 + (int) (seed % 3)).load(0.8).build());
      Sequences sequences = new Dispatch(week).earliestDueDate();
      Neighbours neighbours = new Neighbours(week);
      Annealing annealing = new Annealing(week, neighbours, sequences, seed);
      annealing.typicalStep(moves -> 0);
      if (annealing.agrees()) {
        agreed++;
        PressModel model = new PressModel(week);
        Moves moves = new Moves(week, sequences, neighbours, new SplittableRandom(seed));
        long start = annealing.bestCost();
        assertThat(model.keep(sequences)).isEqualTo(start);
        for (int i = 0; i < 100 && moves.any(); i++) {
          if (moves.make()) {
            long exact = TimingPass.full(week).value(sequences);
            if (moves.isFiltered()) {
              assertThat(model.attempt(sequences, Long.MAX_VALUE, moves.touched(), false))
                  .as("seed %d, move %d", seed, i)
                  .isEqualTo(exact);
            }
            moves.undo();
          }
        }
      }
    }
    assertThat(agreed).isPositive();
  }

  @Test
  void aPriceOnSettersRaisesTheValueByThatMuchOfTheChanges() {
    WeekTables week = new WeekTables(DrawnWeeks.plain(3));
    Sequences sequences = new Dispatch(week).earliestDueDate();
    PressModel model = new PressModel(week);
    long without = model.keep(sequences);
    model.setterPrice(1);
    long once = model.keep(sequences) - without;
    model.setterPrice(2);
    long twice = model.keep(sequences) - without;
    assertThat(once).isPositive();
    assertThat(twice).isEqualTo(2 * once);
    model.setterPrice(0);
    assertThat(model.keep(sequences)).isEqualTo(without);
  }
}
