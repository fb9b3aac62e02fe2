package pressweek.solver;

import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.heuristic.selector.list.SubListSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.composite.UnionMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.list.ListChangeMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.list.ListSwapMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.list.SubListChangeMoveSelectorConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import ai.timefold.solver.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.monitoring.MonitoringConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import java.util.List;
import pressweek.solver.model.PassScore;
import pressweek.solver.model.PressQueue;
import pressweek.solver.model.PressWeek;

/** How the search is set up: moves, acceptance, temperature. */
final class SearchConfig {
  /**
   * A step ends with a move that is accepted. Once the best is found and the temperature is low,
   * there may be none left, so moves tried are limited, too.
   */
  private static final int MOVES_A_STEP = 50;

  /**
   * Starting temperature as a share of the mean cost of a job: so much divided by the number of
   * jobs, within bounds. The temperature falls evenly to nothing. In a large week a high start
   * wastes most of the time on random walks (0.02 to 0.2 gave results within 1 % of each other on
   * 144 jobs, 0.5 and more worse); in a small one a low start is caught in the first valley.
   */
  private static final double SHARE_TIMES_JOBS = 9;

  private static final double LEAST_SHARE = 0.03;
  private static final double MOST_SHARE = 2;

  private final long temperature;

  /** A set-up for a week of so many jobs whose best plan so far costs so much. */
  SearchConfig(long cost, int jobs) {
    double mean = Math.min(cost, Long.MAX_VALUE / 8) / (double) Math.max(1, jobs);
    double share =
        Math.max(LEAST_SHARE, Math.min(MOST_SHARE, SHARE_TIMES_JOBS / Math.max(1, jobs)));
    temperature = Math.max(1, (long) (share * mean));
  }

  SolverFactory<PressWeek> factory(long seed, int steps, long millis) {
    return SolverFactory.create(config(seed, steps, millis));
  }

  SolverConfig config(long seed, int steps, long millis) {
    TerminationConfig end = new TerminationConfig();
    if (steps > 0) {
      end.setStepCountLimit(steps);
      end.setMoveCountLimit((long) steps * MOVES_A_STEP);
    } else {
      end.setMillisecondsSpentLimit(millis);
    }
    return new SolverConfig()
        .withSolutionClass(PressWeek.class)
        .withEntityClasses(PressQueue.class)
        .withEasyScoreCalculatorClass(PassScore.class)
        .withEnvironmentMode(EnvironmentMode.NO_ASSERT)
        .withRandomSeed(seed)
        .withMonitoringConfig(new MonitoringConfig().withSolverMetricList(List.of()))
        .withPhases(localSearch().withTerminationConfig(end));
  }

  private LocalSearchPhaseConfig localSearch() {
    return new LocalSearchPhaseConfig()
        .withMoveSelectorConfig(
            new UnionMoveSelectorConfig()
                .withMoveSelectors(
                    new ListChangeMoveSelectorConfig().withFixedProbabilityWeight(5.0),
                    new ListSwapMoveSelectorConfig().withFixedProbabilityWeight(3.0),
                    new SubListChangeMoveSelectorConfig()
                        .withSubListSelectorConfig(
                            new SubListSelectorConfig()
                                .withMinimumSubListSize(2)
                                .withMaximumSubListSize(5))
                        .withSelectReversingMoveToo(false)
                        .withFixedProbabilityWeight(2.0)))
        .withAcceptorConfig(
            new LocalSearchAcceptorConfig()
                .withSimulatedAnnealingStartingTemperature("0hard/" + temperature + "soft"))
        .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
  }
}
