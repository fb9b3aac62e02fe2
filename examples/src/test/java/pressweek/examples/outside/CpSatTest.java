package pressweek.examples.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.logging.Logger;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import pressweek.data.problem.Deadline;
import pressweek.data.problem.Job;
import pressweek.data.problem.Problem;
import pressweek.examples.outside.FreeStarts.Answer;
import pressweek.examples.outside.FreeStarts.Dismounts;
import pressweek.solver.timing.Sequences;
import pressweek.solver.timing.Timetable;
import pressweek.solver.timing.WeekTables;

/**
 * The planner against OR-Tools CP-SAT, which may start everything when it likes ({@link
 * FreeStarts}). The planner starts what it can as soon as it can, in the order of its sequences, so
 * it may cost more; but never less than what CP-SAT proved to be the least.
 *
 * <p>Where CP-SAT is cheaper, the cause is found by its own plan put through the planner's timing
 * pass: the same sequences cost no less than the planner's plan, and with every job held back to
 * its start in CP-SAT's plan they cost exactly the same as there, so that nothing but waiting on
 * purpose made the difference. Only when a mold is taken off cannot be said to the pass: where that
 * makes a difference, too, and no plan without dismounts is as cheap, the cause is waits and
 * dismounts.
 */
class CpSatTest {
  private static final int STEPS = 1_000;
  private static final double WORK = 4;
  private static final double LEAST_SHARE_PROVED = 0.9;

  /**
   * Mean gap, measured 0.02 on the first 24 weeks and 0.37 on 100 more, nearly all of it dismounts
   * at another time; 1.48 before the planner could hold a run back.
   */
  private static final double MOST_GAP_PCT = 0.5;

  /** Share of weeks in which waiting alone would have been cheaper: 1 of 124 when measured. */
  private static final double MOST_WAITS_MISSED = 0.02;

  private enum Cause {
    NONE,
    WAITS,
    WAITS_AND_DISMOUNTS,
    NOT_PROVED
  }

  /** One week planned both ways; costs in thousandths of a cent. */
  private record Duel(long seed, long planned, long free, Cause cause) {
    double gapPct() {
      return 100.0 * (planned - free) / Math.max(1, free);
    }
  }

  @Test
  void plannerIsNeverBelowWhatIsProvedAndAboveItOnlyForWantOfWaiting() {
    compare(1, 12);
  }

  @Test
  @Tag("full")
  void manyWeeks() {
    compare(13, 24);
    compare(101, 200);
  }

  private static void compare(long firstSeed, long lastSeed) {
    List<Duel> duels = new ArrayList<>();
    for (long seed = firstSeed; seed <= lastSeed; seed++) {
      duels.add(duel(seed));
    }
    Logger.getLogger(CpSatTest.class.getName()).info(table(duels));
    assertThat(duels.stream().filter(d -> d.cause() != Cause.NOT_PROVED).count())
        .as("weeks in which CP-SAT proved its plan")
        .isGreaterThanOrEqualTo((long) (LEAST_SHARE_PROVED * duels.size()));
    assertThat(duels).as("both find the same somewhere").anyMatch(d -> d.cause() == Cause.NONE);
    assertThat(duels.stream().filter(d -> d.cause() == Cause.WAITS).count())
        .as("weeks in which waiting on purpose was not found")
        .isLessThanOrEqualTo((long) (MOST_WAITS_MISSED * duels.size()));
    double mean = duels.stream().mapToDouble(Duel::gapPct).average().orElseThrow();
    assertThat(mean).as("mean gap in percent").isLessThan(MOST_GAP_PCT);
  }

  private static Duel duel(long seed) {
    Problem problem = DrawnWeek.roundTheClock(seed, seed % 2 == 0 ? 5 : 6, 2);
    var figures = Planned.inSteps(problem, STEPS, seed).figures();
    assertThat(figures.unplacedLines()).isZero();
    long planned = figures.avoidableCost();
    Optional<Answer> found = FreeStarts.solve(problem, Dismounts.ANY, planned, WORK);
    assertThat(found).as("seed %d: a plan as cheap as the planner's %d", seed, planned).isPresent();
    Answer free = found.get();
    if (!free.proved()) {
      return new Duel(seed, planned, planned, Cause.NOT_PROVED);
    }
    return new Duel(seed, planned, free.cost(), cause(problem, planned, free));
  }

  private static Cause cause(Problem problem, long planned, Answer free) {
    if (free.cost() == planned) {
      return Cause.NONE;
    }
    assertThat(cost(carriedOut(problem, free))).as("same order").isGreaterThanOrEqualTo(planned);
    if (isWaitingAlone(problem, free)) {
      return Cause.WAITS;
    }
    boolean withoutDismounts =
        FreeStarts.solve(problem, Dismounts.NONE, planned, WORK)
            .filter(plan -> plan.proved() && isWaitingAlone(problem, plan))
            .filter(plan -> plan.cost() == free.cost())
            .isPresent();
    return withoutDismounts ? Cause.WAITS : Cause.WAITS_AND_DISMOUNTS;
  }

  /**
   * Whether the pass gives exactly the cost of a plan once every job is held back to its start in
   * it. If not, a mold is taken off at another time, by the plan or by the pass.
   */
  private static boolean isWaitingAlone(Problem problem, Answer plan) {
    Timetable held = carriedOut(heldBack(problem, plan), plan);
    boolean same = cost(held) == plan.cost();
    if (!same) {
      assertThat(plan.dismounts() + held.dismounts().size()).as("dismounts").isPositive();
    }
    return same;
  }

  /** The sequences of a plan, timed by the planner's pass. */
  private static Timetable carriedOut(Problem problem, Answer plan) {
    WeekTables week = new WeekTables(problem);
    Sequences sequences = new Sequences(week.pressCount(), week.jobCount());
    plan.queues()
        .forEach((press, ids) -> ids.forEach(id -> sequences.add(week.press(press), week.job(id))));
    return Timetable.of(week, sequences);
  }

  private static long cost(Timetable timetable) {
    return timetable.figures().avoidableCost();
  }

  /** The week in which no job may start before it does in a plan. */
  private static Problem heldBack(Problem problem, Answer plan) {
    List<Job> jobs = problem.jobs().stream().map(job -> heldBack(job, plan)).toList();
    return new Problem(
        problem.plant(),
        problem.floor(),
        problem.materials(),
        jobs,
        List.of(),
        List.of(),
        Optional.empty());
  }

  private static Job heldBack(Job job, Answer plan) {
    Deadline deadline = job.deadline();
    return new Job(
        job.line(),
        job.item(),
        job.quantity(),
        new Deadline(
            plan.starts().get(job.id()),
            deadline.dueMin(),
            deadline.afterMin(),
            deadline.weightHundredths()),
        job.resin(),
        job.colour(),
        job.foodGrade(),
        job.options());
  }

  private static String table(List<Duel> duels) {
    StringBuilder table = new StringBuilder("seed   planner    CP-SAT    gap  cause\n");
    for (Duel d : duels) {
      table.append(
          String.format(
              Locale.ROOT,
              "%4d %9.2f %9.2f %5.2f%%  %s%n",
              d.seed(),
              d.planned() / 100_000.0,
              d.free() / 100_000.0,
              d.gapPct(),
              d.cause().name().toLowerCase(Locale.ROOT).replace('_', ' ')));
    }
    double mean = duels.stream().mapToDouble(Duel::gapPct).average().orElseThrow();
    return table.append(String.format(Locale.ROOT, "mean gap %.2f %%", mean)).toString();
  }
}
