package pressweek.solver.timing;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import pressweek.data.problem.FoodUse;
import pressweek.data.problem.Job;
import pressweek.data.problem.Link;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Option;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Take;
import pressweek.data.problem.Terms;
import pressweek.solver.rules.Names;

/**
 * Jobs and their options as int arrays. Options of job {@code j} on press {@code p} are {@code
 * first(j, p)} to {@code last(j, p)}.
 */
final class JobTable {
  final List<Job> jobs;
  final int[] due;
  final int[] after;
  final int[] earliest;
  final int[] material;
  final int[] resin;
  final boolean[] food;

  final Option[] option;

  /** The job of an option. */
  final int[] jobOf;

  final int[] mold;
  final int[] tooling;
  final int[] run;
  final int[] startup;
  final int[] operators;

  /** Shots of an option, and its start-up shots. */
  final int[] shots;

  final int[] startupShots;

  /** True when inserts are loaded by hand, so that people must be there. */
  final boolean[] handLoad;

  /** The job that a job builds on, or -1, and minutes of rest between them. */
  final int[] buildsOn;

  final int[] rest;

  /** Press and start of a job in an earlier plan; -1 for none. */
  final int[] earlierPress;

  final int[] earlierStart;

  /** Takes of components that can run short, those of an option one after the other. */
  final int[] firstTake;

  final int[] takeComponent;
  final int[] takePieces;
  final int[] takeStartup;

  /** True when a component of the option has a lot that expires within the horizon. */
  final boolean[] expiring;

  /**
   * By how much the change before each job is longer than the rules say, as a factor; empty where
   * all changes take what the rules say, as in any search.
   */
  double[] changeFactor = new double[0];

  private final int presses;
  private final int[] from;
  private final Set<String> handLoaded = new HashSet<>();

  JobTable(Problem problem, Names names, StockTable stock) {
    jobs = problem.jobs();
    presses = problem.floor().presses().size();
    int n = jobs.size();
    due = new int[n];
    after = new int[n];
    earliest = new int[n];
    material = new int[n];
    resin = new int[n];
    food = new boolean[n];
    from = new int[n * presses + 1];
    int options = jobs.stream().mapToInt(j -> j.options().size()).sum();
    option = new Option[options];
    jobOf = new int[options];
    mold = new int[options];
    tooling = new int[options];
    run = new int[options];
    startup = new int[options];
    operators = new int[options];
    shots = new int[options];
    startupShots = new int[options];
    handLoad = new boolean[options];
    buildsOn = new int[n];
    rest = new int[n];
    earlierPress = new int[n];
    earlierStart = new int[n];
    readTies(problem, names);
    firstTake = new int[options + 1];
    int takes =
        jobs.stream()
            .flatMap(j -> j.options().stream())
            .mapToInt(o -> o.making().takes().size())
            .sum();
    takeComponent = new int[takes];
    takePieces = new int[takes];
    takeStartup = new int[takes];
    expiring = new boolean[options];
    fill(problem, names);
    fillTakes(stock);
  }

  private void fill(Problem problem, Names names) {
    int n = jobs.size();
    int o = 0;
    for (int j = 0; j < n; j++) {
      Job job = jobs.get(j);
      fillJob(j, job, problem, names);
      for (int p = 0; p < presses; p++) {
        from[j * presses + p] = o;
        Press press = problem.floor().presses().get(p);
        for (Option candidate : job.options()) {
          if (candidate.press().equals(press.id()) && allowed(press, job)) {
            jobOf[o] = j;
            fillOption(o++, candidate, names);
          }
        }
      }
    }
    from[n * presses] = o;
  }

  /**
   * Food-grade work goes nowhere near a press that is never used for it, and an "only" press takes
   * nothing else.
   */
  static boolean allowed(Press press, Job job) {
    return job.foodGrade() ? press.food() != FoodUse.NEVER : press.food() != FoodUse.ONLY;
  }

  int first(int job, int press) {
    return from[job * presses + press];
  }

  int last(int job, int press) {
    return from[job * presses + press + 1];
  }

  boolean canRun(int job, int press) {
    return first(job, press) < last(job, press);
  }

  /** Minutes of a change before a job for which the rules say so many; at least 1 where they do. */
  int changeMin(int job, int minutes) {
    return changeFactor.length == 0 || minutes == 0
        ? minutes
        : Math.max(1, (int) Math.rint(minutes * changeFactor[job]));
  }

  int longestRun() {
    int longest = 0;
    for (int o = 0; o < run.length; o++) {
      longest = Math.max(longest, run[o] + startup[o]);
    }
    return longest;
  }

  private void fillJob(int j, Job job, Problem problem, Names names) {
    due[j] = job.deadline().dueMin();
    after[j] = job.deadline().afterMin();
    earliest[j] = Math.max(job.deadline().earliestMin(), problem.plant().hours().startMin());
    material[j] = names.material(job.resin(), job.colour());
    resin[j] = names.resin(job.resin());
    food[j] = job.foodGrade();
  }

  private void fillOption(int o, Option candidate, Names names) {
    option[o] = candidate;
    mold[o] = names.mold(candidate.mold());
    tooling[o] = names.tooling(candidate.tooling());
    run[o] = candidate.pace().runMin();
    startup[o] = candidate.pace().startupMin();
    operators[o] = candidate.pace().operatorThousandths();
    shots[o] = candidate.making().shots();
    startupShots[o] = candidate.making().startupShots();
    handLoad[o] = handLoaded.contains(candidate.mold());
  }

  private void readTies(Problem problem, Names names) {
    Arrays.fill(buildsOn, -1);
    Arrays.fill(earlierPress, -1);
    for (Link link : problem.arranged().links()) {
      int job = names.job(link.job());
      if (job >= 0) {
        buildsOn[job] = names.job(link.after());
        rest[job] = link.restMin();
      }
    }
    for (Terms.Place place : problem.arranged().terms().earlier()) {
      int job = names.job(place.job());
      if (job >= 0) {
        earlierPress[job] = names.pressOrNone(place.press());
        earlierStart[job] = place.startMin();
        if (earlierPress[job] < 0) {
          earlierPress[job] = Spans.FAR;
        }
      }
    }
    problem.floor().molds().stream()
        .filter(Mold::handLoad)
        .forEach(mold -> handLoaded.add(mold.id()));
  }

  private void fillTakes(StockTable table) {
    int t = 0;
    for (int o = 0; o < firstTake.length - 1; o++) {
      for (Take take : option[o] == null ? List.<Take>of() : option[o].making().takes()) {
        int component = table.number(take);
        if (component >= 0) {
          takeComponent[t] = component;
          takePieces[t] = take.pieces();
          takeStartup[t] = take.startupPieces();
          expiring[o] |= table.expires(component);
          t++;
        }
      }
      firstTake[o + 1] = t;
    }
  }
}
