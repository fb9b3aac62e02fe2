package pressweek.examples.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.SmallPlant;

/**
 * The planner on worked examples of M. Pinedo, Scheduling: Theory, Algorithms, and Systems. The
 * figures are from memory; enumerating all orders here gives the published values and orders.
 */
class TextbookTest {
  private static final int STEPS = 500;

  /** Worked examples with their published optimum and all optimal orders. */
  private enum Example {
    /** Chapter 14, the example of the ATCS rule: 1 | s_jk | sum w_j T_j. */
    ATCS(
        98,
        OneMachine.of(of(13, 9, 13, 10), of(2, 4, 2, 5), of(12, 37, 21, 22))
            .withSetups(
                of(1, 1, 3, 4), of(0, 4, 1, 3), of(0, 0, 1, 0), of(1, 2, 0, 3), of(4, 3, 1, 0)),
        List.of(2, 4, 3, 1)),
    /** Chapter 14, the example of tabu search: 1 || sum w_j T_j. */
    TABU_SEARCH(
        408,
        OneMachine.of(of(10, 10, 13, 4), of(14, 12, 1, 12), of(4, 2, 1, 12)),
        List.of(1, 4, 2, 3)),
    /** Chapter 3, the example of total tardiness: 1 || sum T_j. */
    TOTAL_TARDINESS(
        370,
        OneMachine.of(of(121, 79, 147, 83, 130), of(1, 1, 1, 1, 1), of(260, 266, 266, 336, 337)),
        List.of(1, 2, 4, 5, 3),
        List.of(2, 1, 4, 5, 3));

    private final long optimum;
    private final OneMachine machine;
    private final List<List<Integer>> orders;

    @SafeVarargs
    Example(long optimum, OneMachine machine, List<Integer>... orders) {
      this.optimum = optimum;
      this.machine = machine;
      this.orders = Arrays.asList(orders);
    }

    private static int[] of(int... numbers) {
      return numbers;
    }
  }

  @ParameterizedTest
  @EnumSource
  void enumerationConfirmsThePublishedOptimum(Example example) {
    var best = example.machine.allOrders().firstEntry();
    assertThat(best.getKey()).isEqualTo(example.optimum);
    assertThat(best.getValue()).containsExactlyInAnyOrderElementsOf(example.orders);
  }

  @ParameterizedTest
  @EnumSource
  void plannerFindsThePublishedOptimum(Example example) {
    for (long seed = 1; seed <= 3; seed++) {
      Plan plan = Planned.inSteps(example.machine.problem(), STEPS, seed);
      List<Integer> order = plan.runs().stream().map(run -> number(run.job())).toList();
      assertThat(order).isIn(example.orders);
      assertThat(plan.figures().costByRule())
          .isEqualTo(Map.of(Rule.LATE, example.optimum * OneMachine.UNIT));
      assertThat(weightedMinutesLate(plan)).isEqualTo(example.optimum);
    }
  }

  private static int number(String job) {
    return Integer.parseInt(job.substring(0, job.indexOf('/')));
  }

  /** Recomputed from the end times of the runs. */
  private static long weightedMinutesLate(Plan plan) {
    long sum = 0;
    int free = SmallPlant.START;
    for (Run run : plan.runs()) {
      var job = plan.problem().jobs().get(number(run.job()) - 1);
      int late = Math.max(0, run.endMin() - job.deadline().dueMin());
      sum += (long) late * job.deadline().weightHundredths() / 100;
      assertThat(run.change().startMin()).isEqualTo(free);
      free = run.endMin();
    }
    return sum;
  }
}
