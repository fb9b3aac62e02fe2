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
  private final long temperature;

  /**
   * A set-up for a week whose best plan so far costs so much.
   *
   * <p>The starting temperature is a share of the mean cost of a job, which is about the size of a
   * typical step uphill; later rounds start cooler.
   */
  SearchConfig(long cost, int jobs, int round) {
    double share = Double.parseDouble(System.getProperty("pw.temp", "0.5")) / (1 << round);
    temperature =
        Math.max(1, (long) (share * Math.min(cost, Long.MAX_VALUE / 8) / Math.max(1, jobs)));
  }

  SolverFactory<PressWeek> factory(long seed, int steps, long millis) {
    return SolverFactory.create(config(seed, steps, millis, 0));
  }

  SolverConfig config(long seed, int steps, long millis, int x) {
    TerminationConfig end = new TerminationConfig();
    if (steps > 0) {
      end.setStepCountLimit(steps);
    } else {
      end.setMillisecondsSpentLimit(millis);
    }
    SolverConfig config =
        new SolverConfig()
            .withSolutionClass(PressWeek.class)
            .withEntityClasses(PressQueue.class)
            .withEasyScoreCalculatorClass(PassScore.class)
            .withEnvironmentMode(EnvironmentMode.NO_ASSERT)
            .withRandomSeed(seed)
            .withMonitoringConfig(new MonitoringConfig().withSolverMetricList(List.of()))
            .withPhases(localSearch().withTerminationConfig(end));
    return config;
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
