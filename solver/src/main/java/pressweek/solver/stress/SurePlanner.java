package pressweek.solver.stress;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Pace;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Uncertainty;
import pressweek.data.stress.Estimate;
import pressweek.solver.Finishing;
import pressweek.solver.Planner;
import pressweek.solver.Watcher;
import pressweek.solver.why.Replay;

/**
 * Plans a week several times, with runs taken for longer than they are, from none to what nearly
 * all keep to, and takes the plan that costs least in the mean under uncertain times. Each plan is
 * carried out with the true times before it is compared; the choice is by the avoidable cost of its
 * replays, and what is said of it comes from other ones.
 */
public final class SurePlanner {
  /** Between the luck that chooses and the luck that is told of. */
  private static final long OTHER_LUCK = 1_000_003;

  private static final double PCT = 100;
  private static final int HOUR = 60;

  private final Problem problem;
  private final Uncertainty uncertainty;
  private final int count;
  private final int threads;
  private volatile Runnable ending = () -> {};
  private volatile boolean stopped;

  /**
   * A planner for a problem.
   *
   * @param count how many plans to compare, at least 2
   * @param threads threads to replay on
   */
  public SurePlanner(Problem problem, Uncertainty uncertainty, int count, int threads) {
    this.problem = problem;
    this.uncertainty = uncertainty;
    this.count = count;
    this.threads = threads;
  }

  /**
   * A plan that was compared.
   *
   * @param longerPct by how much its runs were taken for longer, percent
   * @param cost its avoidable cost when all goes by the plan, thousandths of a cent
   * @param meanCost its avoidable cost under uncertain times
   * @param onTimeLines its lines on time under uncertain times
   * @param cheaper what the chosen plan costs less than it, by the luck that did not choose
   */
  public record Candidate(
      double longerPct, long cost, Estimate meanCost, Estimate onTimeLines, Estimate cheaper) {}

  /**
   * The plan that was chosen.
   *
   * @param plan the plan
   * @param chosen its place among the candidates, from 0
   * @param candidates all that were compared, the least careful first
   * @param replays replays of each
   */
  public record Sure(Plan plan, int chosen, List<Candidate> candidates, int replays) {
    public Sure {
      candidates = List.copyOf(candidates);
    }
  }

  /** Ends the search soon; of the plans so far the surest is the plan. */
  public void stop() {
    stopped = true;
    ending.run();
  }

  /**
   * Plans.
   *
   * @param head who the plan is; its settings limit each of the searches
   * @param watcher told of every better plan of the first search
   */
  public Sure plan(Head head, Watcher watcher) {
    List<Plan> plans = new ArrayList<>();
    List<Double> longer = new ArrayList<>();
    for (int i = 0; i < count && (i == 0 || !stopped); i++) {
      double factor = 1 + (careful() - 1) * i / (count - 1);
      Planner planner = new Planner(i == 0 ? problem : longer(factor));
      ending = planner::stop;
      if (stopped) {
        planner.stop();
      }
      Plan plan = planner.plan(head, Optional.empty(), i == 0 ? watcher : Watcher.NONE);
      plans.add(i == 0 ? plan : trueTimes(plan, plans.get(0)));
      longer.add(PCT * (factor - 1));
    }
    return choose(plans, longer, head.settings().seed());
  }

  /** By how much a run of the most careful plan is longer than planned. */
  private double careful() {
    double spread = uncertainty.cycle().spreadPct() / PCT;
    double variance = StrictMath.log(1 + spread * spread);
    double chance = uncertainty.effort().carefulPct() / PCT;
    double quantile =
        StrictMath.exp(StrictMath.sqrt(variance) * Normal.quantile(chance) - variance / 2);
    Uncertainty.Breakdown all = uncertainty.breakdown();
    double stands = all.everyH() > 0 ? all.repairMin() / (all.everyH() * HOUR) : 0;
    return Math.max(1, uncertainty.cycle().meanPct() / PCT * quantile * (1 + stands));
  }

  private Problem longer(double factor) {
    return problem.withJobs(problem.jobs().stream().map(j -> longer(j, factor)).toList());
  }

  private static Job longer(Job job, double factor) {
    List<Option> options = job.options().stream().map(o -> longer(o, factor)).toList();
    return new Job(
        job.line(),
        job.item(),
        job.quantity(),
        job.deadline(),
        job.resin(),
        job.colour(),
        job.foodGrade(),
        options);
  }

  private static Option longer(Option option, double factor) {
    Pace pace = option.pace();
    Pace other =
        new Pace(
            pace.cycleMillis(),
            (int) Math.ceil(pace.runMin() * factor),
            (int) Math.ceil(pace.startupMin() * factor),
            pace.operatorThousandths(),
            pace.basis());
    return new Option(
        option.press(),
        option.mold(),
        option.tooling(),
        option.making(),
        other,
        option.standing(),
        option.notes());
  }

  /** The decisions of a plan carried out with the true times. */
  private Plan trueTimes(Plan careful, Plan first) {
    return Finishing.of(first.head(), Replay.of(problem, careful), first);
  }

  private Sure choose(List<Plan> plans, List<Double> longer, long seed) {
    List<Outcome> choosing = plans.stream().map(p -> outcome(p, seed)).toList();
    int best = 0;
    for (int i = 1; i < plans.size(); i++) {
      if (mean(choosing.get(i)) < mean(choosing.get(best))) {
        best = i;
      }
    }
    List<Outcome> telling = plans.stream().map(p -> outcome(p, seed + OTHER_LUCK)).toList();
    List<Candidate> candidates = new ArrayList<>();
    for (int i = 0; i < plans.size(); i++) {
      Outcome of = telling.get(i);
      int runs = plans.get(i).runs().size();
      candidates.add(
          new Candidate(
              longer.get(i),
              plans.get(i).figures().avoidableCost(),
              of.totals(runs).cost(),
              of.totals(runs).onTimeLines(),
              of.moreCost(telling.get(best))));
    }
    return new Sure(plans.get(best), best, candidates, uncertainty.effort().sureReplays());
  }

  private static double mean(Outcome outcome) {
    return java.util.Arrays.stream(outcome.cost).average().orElse(0);
  }

  private Outcome outcome(Plan plan, long seed) {
    Uncertainty.Effort effort = uncertainty.effort();
    return new Replays(plan, seed, threads, effort.daysOn())
        .of(Situation.of(uncertainty), effort.sureReplays(), false);
  }
}
