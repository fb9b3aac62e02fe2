package pressweek.solver.bound;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import pressweek.data.problem.Job;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Option;
import pressweek.data.problem.Press;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Problem;
import pressweek.solver.rules.Charges;
import pressweek.solver.rules.Names;
import pressweek.solver.timing.FullHours;

/**
 * The jobs of a problem, each by itself: what any plan needs for it at the least, by the number of
 * the job. Times are minutes since 1970 UTC, money is thousandths of a cent.
 */
final class Lines {
  /** Cost of being placed, of a job that no plan can place. */
  static final long NEVER = Long.MAX_VALUE / 4;

  final Problem problem;
  final Names names;
  final Charges charges;
  final FullHours hours;

  /** When molds are away. */
  final MoldTimes molds;

  /** Options that a plan may use for a job; all of them for one that is running. */
  final List<List<Option>> options;

  /** Least working minutes of a run. */
  final int[] run;

  /** Earliest end of a run, and the time from which on it is late once that is over. */
  final int[] end;

  /** From when on lateness is charged, and minutes from the end of a run to being ready. */
  final int[] from;

  final int[] after;
  final int[] weight;

  /** Least LATE and KEPT_PRESS of a run; {@link #NEVER} where none is possible. */
  final long[] placed;

  /** UNPLACED. */
  final long[] unplaced;

  /** The only mold in which a job can be made, or -1. */
  final int[] soleMold;

  /** Presses of the options. */
  final BitSet[] presses;

  private final Set<String> running = new HashSet<>();
  private final Set<String> handLoaded = new HashSet<>();

  Lines(Problem problem) {
    this.problem = problem;
    names = new Names(problem);
    charges = new Charges(problem, names);
    hours = new FullHours(problem);
    molds = new MoldTimes(problem);
    problem.floor().states().stream().map(PressState::job).forEach(running::add);
    problem.floor().molds().stream().filter(Mold::handLoad).forEach(m -> handLoaded.add(m.id()));
    options = options(problem);
    List<Job> jobs = problem.jobs();
    int n = jobs.size();
    run = new int[n];
    from = new int[n];
    after = jobs.stream().mapToInt(j -> j.deadline().afterMin()).toArray();
    weight = jobs.stream().mapToInt(j -> j.deadline().weightHundredths()).toArray();
    unplaced = new long[n];
    soleMold = new int[n];
    presses = new BitSet[n];
    for (int j = 0; j < n; j++) {
      read(j, jobs.get(j));
    }
    EarliestEnds ends = new EarliestEnds(this);
    end = ends.end;
    placed = ends.cost;
  }

  private List<List<Option>> options(Problem problem) {
    Map<String, Press> presses = new HashMap<>();
    problem.floor().presses().forEach(p -> presses.put(p.id(), p));
    return problem.jobs().stream()
        .map(
            job ->
                job.options().stream()
                    .filter(o -> isRunning(job) || mayUse(presses.get(o.press()), job))
                    .toList())
        .toList();
  }

  private static boolean mayUse(@org.jspecify.annotations.Nullable Press press, Job job) {
    return press != null && FullHours.allowed(press, job);
  }

  private void read(int j, Job job) {
    List<Option> all = options.get(j);
    run[j] = all.stream().mapToInt(o -> o.pace().runMin()).min().orElse(0);
    from[j] = Math.max(job.deadline().dueMin(), hours.start());
    unplaced[j] = charges.unplaced(j);
    int[] sole = all.stream().mapToInt(o -> names.mold(o.mold())).distinct().toArray();
    soleMold[j] = sole.length == 1 ? sole[0] : -1;
    presses[j] = new BitSet();
    all.forEach(o -> presses[j].set(names.press(o.press())));
  }

  int size() {
    return run.length;
  }

  boolean isRunning(Job job) {
    return running.contains(job.id());
  }

  boolean handLoaded(String mold) {
    return handLoaded.contains(mold);
  }

  /** Jobs by the time at which their run must be over, the earliest first. */
  int[] byDue(int[] jobs) {
    return Arrays.stream(jobs)
        .boxed()
        .sorted(
            java.util.Comparator.<Integer>comparingInt(j -> from[j] - after[j])
                .thenComparingInt(j -> j))
        .mapToInt(Integer::intValue)
        .toArray();
  }
}
