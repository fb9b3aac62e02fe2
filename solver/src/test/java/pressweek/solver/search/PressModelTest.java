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
import pressweek.solver.timing.WeekTables;

/** The rough model times only what a move touches, and comes to what a fresh one comes to. */
final class PressModelTest {
  private static final int PLANTS = 20;
  private static final int MOVES = 300;

  @Test
  void anAttemptComesToWhatAFreshModelDoes() {
    long compared = 0;
    for (long seed = 1; seed <= PLANTS; seed++) {
      MovesTried tried = MovesTried.on(seed);
      WeekTables week = tried.week();
      compared +=
          tried.compare(MOVES, new PressModel(week), s -> new PressModel(week).keep(s), true);
    }
    assertThat(compared).isGreaterThan(PLANTS * MOVES / 2);
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
