package pressweek.solver.model;

import ai.timefold.solver.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import ai.timefold.solver.core.api.score.calculator.EasyScoreCalculator;
import org.jspecify.annotations.Nullable;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.TimingPass;
import pressweek.solver.timing.WeekTables;

/** The score of a week: one timing pass over all presses. */
public class PassScore implements EasyScoreCalculator<PressWeek, HardSoftLongScore> {
  private @Nullable WeekTables week;
  private @Nullable TimingPass pass;
  private @Nullable Sequences sequences;

  @Override
  public HardSoftLongScore calculateScore(PressWeek solution) {
    TimingPass timing = pass;
    Sequences order = sequences;
    if (timing == null || order == null || week != solution.week()) {
      week = solution.week();
      timing = TimingPass.full(week);
      order = new Sequences(week.pressCount(), week.jobCount());
      pass = timing;
      sequences = order;
    }
    solution.copyTo(order);
    long cost = timing.run(order);
    return HardSoftLongScore.of(-timing.broken(), -cost);
  }
}
