package pressweek.solver.stress;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Uncertainty;
import pressweek.data.stress.Chance;
import pressweek.data.stress.LineChance;
import pressweek.data.stress.Rival;
import pressweek.data.stress.SlackGain;
import pressweek.data.stress.Stressed;
import pressweek.data.stress.Stressed.AsPlanned;
import pressweek.data.stress.Totals;

/**
 * How sure is a plan? It is carried out again and again by the timing pass, each time with other
 * luck; press, order, what is held back and overtime stay as they are.
 */
public final class Stress {
  /** Times of runs that are kept at most, as runs times replays. */
  public static final long MOST_TIMES = 20_000_000;

  private static final double HOUR = 60;
  private static final double PCT = 100;
  private static final double NINETY_PCT = 90;

  /** A share that is whole but for the rounding of its product counts as whole. */
  private static final double ROUNDING = 1e-9;

  private final Uncertainty uncertainty;
  private final Asked asked;
  private volatile Runnable ending = () -> {};
  private volatile boolean stopped;

  /**
   * How much is replayed.
   *
   * @param replays how many replays
   * @param seed seed of the luck
   * @param threads threads to replay on; what comes of it is the same on any number
   */
  public record Asked(int replays, long seed, int threads) {
    public Asked {
      if (replays < 1 || threads < 1) {
        throw new IllegalArgumentException(replays + " replays on " + threads + " threads");
      }
    }
  }

  /** Replays under an uncertainty. */
  public Stress(Uncertainty uncertainty, Asked asked) {
    this.uncertainty = uncertainty;
    this.asked = asked;
  }

  /**
   * What came of the replays alone.
   *
   * @param totals what the week comes to
   * @param lines a row for each run, the least sure first
   */
  public record Replayed(Totals totals, List<LineChance> lines) {
    public Replayed {
      lines = List.copyOf(lines);
    }
  }

  /** Ends soon: what is being asked throws an {@link IllegalStateException}. */
  public void stop() {
    stopped = true;
    ending.run();
  }

  /** What the week of a plan comes to. */
  public Totals totals(Plan plan) {
    return replay(plan, false).totals(plan.runs().size());
  }

  /** What the week and each line of a plan come to, without what would help. */
  public Replayed replayed(Plan plan) {
    Replays replays = replays(plan);
    Outcome base = replays.of(Situation.of(uncertainty), asked.replays(), true);
    return new Replayed(base.totals(plan.runs().size()), lines(replays.week(), base));
  }

  private Outcome replay(Plan plan, boolean details) {
    return replays(plan).of(Situation.of(uncertainty), asked.replays(), details);
  }

  private Replays replays(Plan plan) {
    Replays replays =
        new Replays(plan, asked.seed(), asked.threads(), uncertainty.effort().daysOn());
    ending = replays::stop;
    if (stopped) {
      replays.stop();
    }
    return replays;
  }

  /**
   * All about a plan.
   *
   * @param plan the plan
   * @param against another plan to compare it with
   * @param basis where the figures of uncertainty come from
   */
  public Stressed of(Plan plan, Optional<Plan> against, List<String> basis) {
    Replays replays = replays(plan);
    Outcome base = replays.of(Situation.of(uncertainty), asked.replays(), true);
    Gains gains = new Gains(replays, base, uncertainty);
    List<LineChance> lines = lines(replays.week(), base);
    return new Stressed(
        new Stressed.Luck(asked.replays(), gains.tried(), asked.seed(), uncertainty, basis),
        lines,
        base.totals(plan.runs().size()),
        asPlanned(replays),
        gains.find(),
        uncertainty.aim().slackMin().stream()
            .map(m -> slack(base.dueLater(replays.week(), m), base, lines, m))
            .toList(),
        against.map(other -> rival(base, other)));
  }

  /** What a plan comes to when all goes as planned, through the same replay. */
  public static AsPlanned asPlanned(Plan plan) {
    return asPlanned(new Replays(plan, 0, 1, 0));
  }

  private static AsPlanned asPlanned(Replays replays) {
    Week week = replays.week();
    Outcome one = replays.of(Situation.of(Uncertainty.NONE), 1, true);
    int others = 0;
    for (int i = 0; i < week.runs.size(); i++) {
      others += one.ready[i][0] == week.runs.get(i).readyMin() ? 0 : 1;
    }
    return new AsPlanned(
        one.onTime[0], one.lateMin[0], one.cost[0], week.plan.unplaced().size(), others);
  }

  private Rival rival(Outcome base, Plan other) {
    Outcome outcome = replay(other, false);
    return new Rival(
        other.head().number(),
        outcome.totals(other.runs().size()),
        base.moreOnTime(outcome),
        base.moreLateHours(outcome),
        base.moreCost(outcome),
        base.better(outcome));
  }

  private static SlackGain slack(Outcome later, Outcome base, List<LineChance> lines, int minutes) {
    int sure = (int) lines.stream().filter(l -> l.slackNeededMin() <= minutes).count();
    int planned = (int) lines.stream().filter(l -> l.plannedMin() <= l.dueMin() + minutes).count();
    return new SlackGain(minutes, later.moreOnTime(base), base.moreLateHours(later), sure, planned);
  }

  private List<LineChance> lines(Week week, Outcome base) {
    List<LineChance> lines = new ArrayList<>();
    for (int i = 0; i < week.runs.size(); i++) {
      Run run = week.runs.get(i);
      int due = week.due[i];
      int hits = 0;
      long late = 0;
      for (int ready : base.ready[i]) {
        hits += ready <= due ? 1 : 0;
        late += Math.max(0, ready - due);
      }
      int[] sorted = base.ready[i].clone();
      Arrays.sort(sorted);
      lines.add(
          new LineChance(
              run.job(),
              run.id(),
              run.press(),
              due,
              new LineChance.Ready(
                  run.readyMin(),
                  sorted[place(NINETY_PCT, sorted.length)],
                  sorted[place(uncertainty.aim().surePct(), sorted.length)]),
              Chance.of(hits, sorted.length),
              late / HOUR / sorted.length));
    }
    lines.sort(
        Comparator.comparingInt((LineChance l) -> l.onTime().hits())
            .thenComparing(l -> -l.lateHours())
            .thenComparing(LineChance::line));
    return lines;
  }

  /** Place from 0 of the least of sorted values that so many percent of them do not exceed. */
  private static int place(double pct, int count) {
    return (int) Math.ceil(pct * count / PCT - ROUNDING) - 1;
  }
}
