package pressweek.examples.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jgrapht.alg.tour.HeldKarpTSP;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.problem.JobBuilder;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Rates;
import pressweek.data.problem.Setup;
import pressweek.data.problem.SmallPlant;

/**
 * The planner on the asymmetric travelling salesman problem br17 (17 cities, by Repetto) with its
 * published optimum 39: G. Reinelt, TSPLIB - A traveling salesman problem library, ORSA Journal on
 * Computing 3 (1991) 376-384. A city is a colour on one press, a distance the minutes of a recorded
 * change; the press stands in the first colour, and a last job, which may start only when all
 * others can be done, brings it back there.
 */
class TsplibTest {
  private static final int OPTIMUM = 39;
  private static final int STEPS = 5_000;
  private static final int RUN_MIN = 10;
  private static final int HOME = 0;
  private static final long MINUTE = 100_000;

  /** Later than all cities together with the longest way to each. */
  private static final int WAY_HOME = SmallPlant.START + 2 * SmallPlant.DAY;

  /** Distances of br17 by row; its 9999 from a city to itself is 0 here and never read. */
  private static final int[][] BR17 = {
    {0, 3, 5, 48, 48, 8, 8, 5, 5, 3, 3, 0, 3, 5, 8, 8, 5},
    {3, 0, 3, 48, 48, 8, 8, 5, 5, 0, 0, 3, 0, 3, 8, 8, 5},
    {5, 3, 0, 72, 72, 48, 48, 24, 24, 3, 3, 5, 3, 0, 48, 48, 24},
    {48, 48, 74, 0, 0, 6, 6, 12, 12, 48, 48, 48, 48, 74, 6, 6, 12},
    {48, 48, 74, 0, 0, 6, 6, 12, 12, 48, 48, 48, 48, 74, 6, 6, 12},
    {8, 8, 50, 6, 6, 0, 0, 8, 8, 8, 8, 8, 8, 50, 0, 0, 8},
    {8, 8, 50, 6, 6, 0, 0, 8, 8, 8, 8, 8, 8, 50, 0, 0, 8},
    {5, 5, 26, 12, 12, 8, 8, 0, 0, 5, 5, 5, 5, 26, 8, 8, 0},
    {5, 5, 26, 12, 12, 8, 8, 0, 0, 5, 5, 5, 5, 26, 8, 8, 0},
    {3, 0, 3, 48, 48, 8, 8, 5, 5, 0, 0, 3, 0, 3, 8, 8, 5},
    {3, 0, 3, 48, 48, 8, 8, 5, 5, 0, 0, 3, 0, 3, 8, 8, 5},
    {0, 3, 5, 48, 48, 8, 8, 5, 5, 3, 3, 0, 3, 5, 8, 8, 5},
    {3, 0, 3, 48, 48, 8, 8, 5, 5, 0, 0, 3, 0, 3, 8, 8, 5},
    {5, 3, 0, 72, 72, 48, 48, 24, 24, 3, 3, 5, 3, 0, 48, 48, 24},
    {8, 8, 50, 6, 6, 0, 0, 8, 8, 8, 8, 8, 8, 50, 0, 0, 8},
    {8, 8, 50, 6, 6, 0, 0, 8, 8, 8, 8, 8, 8, 50, 0, 0, 8},
    {5, 5, 26, 12, 12, 8, 8, 0, 0, 5, 5, 5, 5, 26, 8, 8, 0}
  };

  @Test
  void plannerFindsThePublishedOptimum() {
    optimumFrom(1, 1);
  }

  @Test
  @Tag("full")
  void plannerFindsThePublishedOptimumFromOtherSeeds() {
    optimumFrom(2, 5);
  }

  private static void optimumFrom(long first, long last) {
    for (long seed = first; seed <= last; seed++) {
      Plan plan = Planned.inSteps(problem(), STEPS, seed);
      assertThat(plan.figures().costByRule()).isEqualTo(Map.of(Rule.CHANGE, OPTIMUM * MINUTE));
      List<Integer> tour =
          plan.runs().stream().map(run -> city(run.change().to().colour())).toList();
      assertThat(tour.subList(0, tour.size() - 1))
          .containsExactlyInAnyOrderElementsOf(IntStream.range(1, BR17.length).boxed().toList());
      assertThat(tour).endsWith(HOME);
      assertThat(length(tour)).isEqualTo(OPTIMUM);
    }
  }

  /** The algorithm of Held and Karp as a second opinion on the same matrix. */
  @Test
  void dynamicProgrammingConfirmsThePublishedOptimum() {
    var graph =
        new SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge>(DefaultWeightedEdge.class);
    IntStream.range(0, BR17.length).forEach(graph::addVertex);
    for (int from = 0; from < BR17.length; from++) {
      for (int to = 0; to < BR17.length; to++) {
        if (from != to) {
          graph.setEdgeWeight(graph.addEdge(from, to), BR17[from][to]);
        }
      }
    }
    var tour = new HeldKarpTSP<Integer, DefaultWeightedEdge>().getTour(graph);
    assertThat(tour.getWeight()).isEqualTo(OPTIMUM);
    List<Integer> cities = tour.getVertexList();
    assertThat(cities).startsWith(HOME).endsWith(HOME).hasSize(BR17.length + 1);
    assertThat(length(cities.subList(1, cities.size()))).isEqualTo(OPTIMUM);
  }

  /** The way from home through the cities. */
  private static int length(List<Integer> cities) {
    int sum = 0;
    int at = HOME;
    for (int city : cities) {
      sum += BR17[at][city];
      at = city;
    }
    return sum;
  }

  private static Problem problem() {
    SmallPlant plant = new SmallPlant();
    long lateDay = 1440 * 1_000 * MINUTE;
    plant.rates(new Rates("EUR", true, 0, lateDay, 60 * MINUTE, 0, 0, 1_000 * lateDay));
    plant.state(new PressState("P1", new Setup("M1", "", "PP", colour(HOME)), false, ""));
    for (int city = 0; city < BR17.length; city++) {
      plant.colour(colour(city), 50);
      for (int to = 0; to < BR17.length; to++) {
        if (city != to) {
          plant.recorded(OneMachine.change(colour(city), colour(to), BR17[city][to]));
        }
      }
    }
    for (int city = 1; city < BR17.length; city++) {
      plant.job(visit(city).due(WAY_HOME).on("P1", "M1", RUN_MIN));
    }
    int back = WAY_HOME + SmallPlant.DAY;
    plant.job(visit(HOME).earliest(WAY_HOME).due(back).on("P1", "M1", RUN_MIN));
    return plant.build();
  }

  private static JobBuilder visit(int city) {
    return JobBuilder.job("city " + city).in("PP", colour(city));
  }

  private static String colour(int city) {
    return "C" + city;
  }

  private static int city(String colour) {
    return Integer.parseInt(colour.substring(1));
  }
}
