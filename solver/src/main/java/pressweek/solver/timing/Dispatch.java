package pressweek.solver.timing;

import java.util.Arrays;

/**
 * Simple ways of planning, used as a start for the search and as a yardstick for its result.
 *
 * <p>ATCS (apparent tardiness cost with setups): Lee, Bhaskaran and Pinedo, IIE Transactions 29
 * (1997) 45-52, from memory. Its index {@code w/p exp(-max(d - p - t, 0)/(k1 P)) exp(-s/(k2 S))} is
 * compared by its logarithm; waiting for a mold or for inserts counts as setup.
 */
public final class Dispatch {
  private final WeekTables week;
  private Steps pass;
  private final boolean[] placed;
  private final double[] logWeightPerMinute;
  private final double meanRun;
  private final double meanSetup;

  public Dispatch(WeekTables week) {
    this.week = week;
    pass = TimingPass.full(week).steps();
    int n = week.jobCount();
    placed = new boolean[n];
    logWeightPerMinute = new double[n];
    double sum = 0;
    for (int j = 0; j < n; j++) {
      double run = meanRun(j);
      double weight = Math.max(1, week.problem.jobs().get(j).deadline().weightHundredths());
      logWeightPerMinute[j] = StrictMath.log(weight / run);
      sum += run;
    }
    meanRun = n == 0 ? 1 : sum / n;
    meanSetup = Math.max(1, week.problem.plant().changes().moldMin());
  }

  private double meanRun(int job) {
    double sum = 0;
    int count = 0;
    for (int p = 0; p < week.presses; p++) {
      for (int o = week.jobs.first(job, p); o < week.jobs.last(job, p); o++) {
        sum += week.jobs.run[o];
        count++;
      }
    }
    return count == 0 ? 1 : sum / count;
  }

  /** Sequences by the ATCS rule with its two look-ahead parameters. */
  public Sequences atcs(double k1, double k2) {
    int n = week.jobCount();
    Sequences out = new Sequences(week.presses, n);
    Arrays.fill(placed, false);
    pass = TimingPass.full(week).steps();
    pass.start(0);
    int left = n - placeFixed(out);
    int[] clock = pass.states.free.clone();
    int[] pending = new int[week.presses];
    Arrays.fill(pending, -1);
    boolean[] done = new boolean[week.presses];
    for (int p = earliest(clock, done); p >= 0 && left > 0; p = earliest(clock, done)) {
      if (pending[p] < 0) {
        pending[p] = clock[p] >= week.end ? -1 : best(p, clock[p], k1, k2);
        if (pending[p] < 0) {
          done[p] = true;
          continue;
        }
        placed[pending[p]] = true;
      }
      int next = pass.step(p, pending[p], clock[p]);
      if (next >= 0) {
        clock[p] = next;
        continue;
      }
      out.add(p, pending[p]);
      pass.states.position[p]++;
      pending[p] = -1;
      left--;
      clock[p] = Math.max(clock[p], pass.states.free[p]);
    }
    for (int p = 0; p < week.presses; p++) {
      if (pending[p] >= 0) {
        placed[pending[p]] = false;
      }
    }
    placeRest(out);
    return out;
  }

  private int placeFixed(Sequences out) {
    int count = 0;
    for (int p = 0; p < week.presses; p++) {
      for (int job : week.fixed[p]) {
        out.add(p, job);
        placed[job] = true;
        count++;
        int now = pass.states.free[p];
        int next = pass.step(p, job, now);
        while (next >= 0) {
          next = pass.step(p, job, next);
        }
        pass.states.position[p]++;
      }
    }
    return count;
  }

  private static int earliest(int[] clock, boolean[] done) {
    int best = -1;
    for (int p = 0; p < clock.length; p++) {
      if (!done[p] && (best < 0 || clock[p] < clock[best])) {
        best = p;
      }
    }
    return best;
  }

  private int best(int press, int clock, double k1, double k2) {
    int best = -1;
    double bestIndex = Double.NEGATIVE_INFINITY;
    Looker looker = pass.looker;
    for (int j = 0; j < placed.length; j++) {
      boolean waits = week.jobs.buildsOn[j] >= 0 && pass.isOpen(week.jobs.buildsOn[j]);
      if (placed[j] || waits || !week.jobs.canRun(j, press) || looker.forbidden(press, j)) {
        continue;
      }
      int setup = looker.setupGuess(press, j, clock);
      if (setup >= Spans.FAR) {
        continue;
      }
      int run = week.jobs.run[week.jobs.first(j, press)];
      double slack = Math.max(0, week.jobs.due[j] - week.jobs.after[j] - run - clock);
      double index = logWeightPerMinute[j] - slack / (k1 * meanRun) - setup / (k2 * meanSetup);
      if (index > bestIndex) {
        bestIndex = index;
        best = j;
      }
    }
    return best;
  }

  /**
   * Sequences in the order of due times, each job on the press that would end it first were there
   * always a setter and an operator.
   */
  public Sequences earliestDueDate() {
    Sequences out = new Sequences(week.presses, week.jobCount());
    Arrays.fill(placed, false);
    pass = TimingPass.withoutCrew(week).steps();
    pass.start(0);
    placeFixed(out);
    Integer[] order = byDue();
    Looker looker = pass.looker;
    for (int job : order) {
      int best = -1;
      int bestEnd = Spans.FAR;
      for (int p = 0; p < week.presses && !placed[job]; p++) {
        boolean can = week.jobs.canRun(job, p) && !looker.forbidden(p, job);
        if (can && looker.look(p, job, pass.states.free[p]) && looker.found.runEnd < bestEnd) {
          best = p;
          bestEnd = looker.found.runEnd;
        }
      }
      if (best >= 0) {
        int next = pass.step(best, job, pass.states.free[best]);
        while (next >= 0) {
          next = pass.step(best, job, next);
        }
        out.add(best, job);
        pass.states.position[best]++;
        placed[job] = true;
      }
    }
    placeRest(out);
    return out;
  }

  private Integer[] byDue() {
    Integer[] order = new Integer[week.jobCount()];
    Arrays.setAll(order, j -> j);
    Arrays.sort(order, (a, b) -> Integer.compare(week.jobs.due[a], week.jobs.due[b]));
    return order;
  }

  /**
   * Puts what found no place at the end of the press with the shortest queue of those that could
   * run it.
   */
  private void placeRest(Sequences out) {
    for (int job : byDue()) {
      int best = -1;
      for (int p = 0; p < week.presses && !placed[job]; p++) {
        if (week.jobs.canRun(job, p) && (best < 0 || out.size[p] < out.size[best])) {
          best = p;
        }
      }
      if (best >= 0) {
        out.add(best, job);
        placed[job] = true;
      }
    }
  }
}
