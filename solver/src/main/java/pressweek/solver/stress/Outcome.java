package pressweek.solver.stress;

import java.util.Arrays;
import pressweek.data.stress.Chance;
import pressweek.data.stress.Estimate;
import pressweek.data.stress.Totals;

/** What came of the replays of a plan in a situation, replay by replay. */
final class Outcome {
  private static final double HOUR = 60;

  final int[] onTime;
  final long[] lateMin;
  final long[] cost;

  /** Times at which runs were ready, by run and replay; empty where they are not kept. */
  final int[][] ready;

  /** Minutes of trouble by run, press and receipt, then by replay; empty where not kept. */
  final int[][] extra;

  final int[][] repair;
  final int[][] late;

  Outcome(Week week, int replays, boolean details) {
    onTime = new int[replays];
    lateMin = new long[replays];
    cost = new long[replays];
    ready = new int[details ? week.runs.size() : 0][replays];
    extra = new int[details ? week.runs.size() : 0][replays];
    repair = new int[details ? week.presses.size() : 0][replays];
    late = new int[details ? week.receipts.size() : 0][replays];
  }

  int replays() {
    return onTime.length;
  }

  /** The same replays with every line due later; of cost it says nothing. */
  Outcome dueLater(Week week, int minutes) {
    Outcome later = new Outcome(week, replays(), false);
    for (int i = 0; i < ready.length; i++) {
      for (int r = 0; r < replays(); r++) {
        int late = ready[i][r] - week.due[i] - minutes;
        later.onTime[r] += late <= 0 ? 1 : 0;
        later.lateMin[r] += Math.max(0, late);
      }
    }
    return later;
  }

  Totals totals(int runs) {
    int all = (int) Arrays.stream(onTime).filter(n -> n == runs).count();
    return new Totals(
        Estimate.of(Arrays.stream(onTime).asDoubleStream().toArray()),
        Estimate.of(Arrays.stream(lateMin).mapToDouble(m -> m / HOUR).toArray()),
        Estimate.of(Arrays.stream(cost).asDoubleStream().toArray()),
        Chance.of(all, onTime.length));
  }

  /** Lines more on time than in another outcome, in the mean over the replays that both have. */
  Estimate moreOnTime(Outcome than) {
    double[] d = new double[Math.min(onTime.length, than.onTime.length)];
    Arrays.setAll(d, r -> onTime[r] - than.onTime[r]);
    return Estimate.of(d);
  }

  /** More late hours than in another outcome. */
  Estimate moreLateHours(Outcome than) {
    double[] d = new double[Math.min(lateMin.length, than.lateMin.length)];
    Arrays.setAll(d, r -> (lateMin[r] - than.lateMin[r]) / HOUR);
    return Estimate.of(d);
  }

  /** More avoidable cost than in another outcome. */
  Estimate moreCost(Outcome than) {
    double[] d = new double[Math.min(cost.length, than.cost.length)];
    Arrays.setAll(d, r -> cost[r] - than.cost[r]);
    return Estimate.of(d);
  }

  /** Replays with more lines on time than in another outcome, or as many and fewer late minutes. */
  Chance better(Outcome than) {
    int better = 0;
    for (int r = 0; r < onTime.length; r++) {
      boolean more = onTime[r] > than.onTime[r];
      boolean sooner = onTime[r] == than.onTime[r] && lateMin[r] < than.lateMin[r];
      better += more || sooner ? 1 : 0;
    }
    return Chance.of(better, onTime.length);
  }
}
