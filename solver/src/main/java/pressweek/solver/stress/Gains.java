package pressweek.solver.stress;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Hours;
import pressweek.data.problem.Plant;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Shift;
import pressweek.data.problem.Uncertainty;
import pressweek.data.problem.Uncertainty.Breakdown;
import pressweek.data.problem.Uncertainty.PressBreakdown;
import pressweek.data.stress.Gain;
import pressweek.data.stress.Gain.Kind;
import pressweek.solver.stress.Situation.Spared;

/**
 * What it would bring if one thing went otherwise: the replays are done again under the same luck
 * with that thing by the plan. Of presses, molds, runs and receipts only those are tried that lines
 * on time move with most from replay to replay.
 */
final class Gains {
  private static final int DAY = 1440;

  /** With fewer replays an interval by the normal distribution says too little. */
  private static final int LEAST_REPLAYS = 100;

  private final Replays replays;
  private final Outcome base;
  private final Uncertainty uncertainty;
  private final List<Gain> gains = new ArrayList<>();

  Gains(Replays replays, Outcome base, Uncertainty uncertainty) {
    this.replays = replays;
    this.base = base;
    this.uncertainty = uncertainty;
  }

  /** Replays for each thing: as many as of the plan itself, fewer for a large plan. */
  int tried() {
    int runs = Math.max(1, replays.week().runs.size());
    int most = Math.max(LEAST_REPLAYS, uncertainty.effort().triedRuns() / runs);
    return Math.min(base.replays(), most);
  }

  /** Gains by lines on time, then by late hours; the plant as a whole first. */
  List<Gain> find() {
    whole();
    Week week = replays.week();
    if (!spreadless()) {
      attempt(Kind.MOLD, Spared.Kind.MOLD, molds(), week.molds::get);
      attempt(Kind.RUN, Spared.Kind.RUN, base.extra, i -> run(week, i));
    }
    attempt(Kind.PRESS, Spared.Kind.PRESS, base.repair, p -> week.presses.get(p).id());
    attempt(Kind.RECEIPT, Spared.Kind.RECEIPT, base.late, k -> week.receipts.get(k).what());
    gains.sort(
        Comparator.comparing((Gain g) -> !g.kind().isWhole())
            .thenComparing(g -> -g.moreOnTime().mean())
            .thenComparing(g -> -g.fewerLateHours().mean()));
    return gains;
  }

  private boolean spreadless() {
    return uncertainty.cycle().equals(Uncertainty.Spread.NONE)
        && uncertainty.change().equals(Uncertainty.Spread.NONE)
        && uncertainty.scrapSpreadPct() == 0;
  }

  private static String run(Week week, int i) {
    return week.runs.get(i).id() + ", line " + week.runs.get(i).job();
  }

  private void whole() {
    if (!uncertainty.cycle().equals(Uncertainty.Spread.NONE)) {
      add(Kind.CYCLES, uncertainty.withCycle(Uncertainty.Spread.NONE));
    }
    if (uncertainty.scrapSpreadPct() > 0) {
      add(Kind.SCRAP, uncertainty.withScrap(0));
    }
    if (!uncertainty.change().equals(Uncertainty.Spread.NONE)) {
      add(Kind.CHANGES, uncertainty.withChange(Uncertainty.Spread.NONE));
    }
    if (breaks()) {
      add(Kind.BREAKDOWNS, uncertainty.withBreakdown(Breakdown.NONE));
      add(Kind.REPAIRS, quicker());
    }
    if (!replays.week().receipts.isEmpty()) {
      if (uncertainty.receipts().latePct() > 0) {
        add(Kind.RECEIPTS, uncertainty.withReceipts(new Uncertainty.LateReceipts(0, 0)));
      }
      Situation early = new Situation(uncertainty, Spared.NOTHING, -DAY);
      add(Kind.EARLIER, "", replays.of(early, tried(), false));
    }
    if (replays.week().plan.problem().plant().crew().settersChecked()) {
      Replays more = replays.other(oneSetterMore());
      add(Kind.SETTER, "", more.of(Situation.of(uncertainty), tried(), false));
    }
  }

  private boolean breaks() {
    return replays.week().presses.stream().anyMatch(p -> uncertainty.of(p.id()).everyH() > 0);
  }

  private Uncertainty quicker() {
    List<PressBreakdown> presses =
        uncertainty.presses().stream()
            .map(p -> new PressBreakdown(p.press(), half(p.breakdown())))
            .toList();
    return uncertainty.withBreakdowns(half(uncertainty.breakdown()), presses);
  }

  private static Breakdown half(Breakdown of) {
    return new Breakdown(of.everyH(), of.repairMin() / 2, of.repairSpreadPct());
  }

  private Plan oneSetterMore() {
    Problem problem = replays.week().plan.problem();
    Plant p = problem.plant();
    Hours h = p.hours();
    List<Shift> shifts =
        h.shifts().stream()
            .map(
                s ->
                    new Shift(
                        s.name(),
                        s.days(),
                        s.from(),
                        s.to(),
                        s.breaks(),
                        s.setters() + (s.setters() > 0 ? 1 : 0),
                        s.operatorThousandths(),
                        s.inspectors()))
            .toList();
    Plant other =
        new Plant(
            p.name(),
            new Hours(h.zone(), h.startMin(), h.endMin(), shifts, h.calendars(), h.closed()),
            p.crew(),
            p.shipping(),
            p.rates(),
            p.changes(),
            p.moveToleranceMin(),
            p.barrelDefaultG());
    return replays.week().plan.with(problem.with(other));
  }

  private void add(Kind kind, Uncertainty other) {
    add(kind, "", replays.of(Situation.of(other), tried(), false));
  }

  private void add(Kind kind, String what, Outcome other) {
    gains.add(
        new Gain(
            kind, what, other.moreOnTime(base), base.moreLateHours(other), base.moreCost(other)));
  }

  private int[][] molds() {
    Week week = replays.week();
    int[][] sums = new int[week.molds.size()][base.replays()];
    for (int i = 0; i < week.moldOf.length; i++) {
      int[] sum = sums[week.moldOf[i]];
      for (int r = 0; r < sum.length; r++) {
        sum[r] += base.extra[i][r];
      }
    }
    return sums;
  }

  private void attempt(Kind kind, Spared.Kind spared, int[][] trouble, IntFunction<String> name) {
    double[] harm = Arrays.stream(trouble).mapToDouble(this::harm).toArray();
    IntStream.range(0, trouble.length)
        .filter(i -> harm[i] > 0)
        .boxed()
        .sorted(Comparator.comparingDouble((Integer i) -> -harm[i]).thenComparing(i -> i))
        .limit(uncertainty.effort().triedOfAKind())
        .forEach(
            i -> {
              Situation other = Situation.of(uncertainty).sparing(spared, i);
              add(kind, name.apply(i), replays.of(other, tried(), false));
            });
  }

  /** By how much lines on time fall with the trouble of a thing: their negative correlation. */
  private double harm(int[] trouble) {
    double n = trouble.length;
    double x = 0;
    double y = 0;
    for (int r = 0; r < trouble.length; r++) {
      x += trouble[r];
      y += base.onTime[r];
    }
    double xy = 0;
    double xx = 0;
    for (int r = 0; r < trouble.length; r++) {
      xy += (trouble[r] - x / n) * (base.onTime[r] - y / n);
      xx += (trouble[r] - x / n) * (trouble[r] - x / n);
    }
    return xx == 0 ? 0 : -xy / Math.sqrt(xx);
  }
}
