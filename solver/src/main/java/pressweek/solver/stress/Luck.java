package pressweek.solver.stress;

import java.util.Arrays;
import pressweek.data.problem.Uncertainty;
import pressweek.data.problem.Uncertainty.Breakdown;
import pressweek.data.problem.Uncertainty.Spread;
import pressweek.solver.stress.Situation.Spared;
import pressweek.solver.timing.PlanPass;

/** Brings the luck of a replay upon a pass. Not for use by several threads. */
final class Luck {
  private static final double PCT = 100;
  private static final int HOUR = 60;
  private static final int DAY = 1440;

  private final Week week;
  private final PlanPass pass;
  private final Situation situation;
  private final Breakdown[] breakdowns;
  private final Draws cycles = new Draws();
  private final Draws scraps = new Draws();
  private final Draws changes = new Draws();
  private final Draws stops = new Draws();
  private final Draws deliveries = new Draws();
  private final int[][] failures;
  private final int[][] repairs;
  private final int[] running;

  /** Minutes that each run and its change take beside what is planned. */
  final int[] extra;

  /** Minutes of repair that each press had coming. */
  final int[] repair;

  /** Minutes by which each receipt is late. */
  final int[] late;

  Luck(Week week, PlanPass pass, Situation situation) {
    this.week = week;
    this.pass = pass;
    this.situation = situation;
    int presses = week.presses.size();
    breakdowns =
        week.presses.stream()
            .map(p -> situation.uncertainty().of(p.id()))
            .toArray(Breakdown[]::new);
    failures = new int[presses][8];
    repairs = new int[presses][8];
    running = new int[presses];
    extra = new int[week.runs.size()];
    repair = new int[presses];
    late = new int[week.receipts.size()];
  }

  /** Has the pass take the luck of a replay. */
  void bring(int replay) {
    Arrays.fill(running, 0);
    for (int i = 0; i < extra.length; i++) {
      run(i, replay);
      running[pass.press(i)] += pass.minutes(i);
    }
    for (int p = 0; p < running.length; p++) {
      press(p, replay);
    }
    receipts(replay);
  }

  private void run(int i, int replay) {
    Uncertainty all = situation.uncertainty();
    boolean spared =
        situation.spared().is(Spared.Kind.RUN, i)
            || situation.spared().is(Spared.Kind.MOLD, week.moldOf[i]);
    double run = 1;
    double change = 1;
    if (!spared) {
      run = factor(all.cycle(), cycles, week.cycleKey[i], replay) * scrap(i, replay);
      change = factor(all.change(), changes, week.changeKey[i], replay);
    }
    pass.stretchRun(i, run);
    pass.stretchChange(i, change);
    int planned = week.runs.get(i).change().minutes();
    extra[i] = pass.minutes(i) + (int) Math.rint(planned * (change - 1));
  }

  private static double factor(Spread spread, Draws draws, long key, int replay) {
    double mean = spread.meanPct() / PCT;
    return spread.spreadPct() <= 0
        ? mean
        : mean * draws.begin(key, replay).lognormal(spread.spreadPct() / PCT);
  }

  /** Shots for the good pieces at the drawn scrap, against those at the planned one. */
  private double scrap(int i, int replay) {
    double spread = situation.uncertainty().scrapSpreadPct() / PCT;
    double planned = week.scrap[i];
    if (spread <= 0 || planned <= 0) {
      return 1;
    }
    double drawn = scraps.begin(week.scrapKey[i], replay).beta(planned, spread);
    return (1 - planned) / (1 - Math.min(drawn, 0.95));
  }

  private void press(int p, int replay) {
    Breakdown of = breakdowns[p];
    int count = 0;
    repair[p] = 0;
    if (of.everyH() > 0 && !situation.spared().is(Spared.Kind.PRESS, p)) {
      stops.begin(week.breakdownKey[p], replay);
      double at = stops.exponential() * of.everyH() * HOUR;
      while (at < running[p]) {
        if (count == failures[p].length) {
          failures[p] = Arrays.copyOf(failures[p], 2 * count);
          repairs[p] = Arrays.copyOf(repairs[p], 2 * count);
        }
        failures[p][count] = (int) at;
        double minutes = of.repairMin() * stops.lognormal(of.repairSpreadPct() / PCT);
        repairs[p][count] = Math.max(1, (int) Math.rint(minutes));
        repair[p] += repairs[p][count++];
        at += stops.exponential() * of.everyH() * HOUR;
      }
    }
    pass.breakdowns(p, failures[p], repairs[p], count);
  }

  private void receipts(int replay) {
    Uncertainty.LateReceipts of = situation.uncertainty().receipts();
    for (int i = 0; i < late.length; i++) {
      late[i] = 0;
      if (of.latePct() > 0 && !situation.spared().is(Spared.Kind.RECEIPT, i)) {
        deliveries.begin(week.receiptKey[i], replay);
        boolean isLate = deliveries.uniform() * PCT < of.latePct();
        late[i] = isLate ? (int) Math.rint(deliveries.exponential() * of.lateDays() * DAY) : 0;
      }
      late[i] += situation.receiptShiftMin();
    }
    if (late.length > 0) {
      pass.receiptsLater(late);
    }
  }
}
