package pressweek.examples.outside;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.problem.Problem;

/**
 * A week as a constraint model for OR-Tools CP-SAT, in which every change and every dismount may
 * start when it likes: after a deliberate wait, or a mold taken off before anybody asks for it.
 *
 * <p>The model is faithful to {@code docs/rules.md}, from which alone it is written, for weeks of
 * the following kind. It keeps the rules ELIGIBLE, PRESS_ONCE, MOLD_ONCE, CHANGE_TIME, RUN_TIME,
 * SETTERS, EARLIEST and COMPLETE and has the charges LATE, CHANGE, PURGE, START_UP and PRESS_RATE.
 * Presses and setters work round the clock; there are no inserts, operators, food-grade work,
 * downtime, running jobs, promises, recorded changes or forbidden neighbours; a job has one mold on
 * a press; lateness needs no rounding; and leaving a job out is dearer than any lateness, so that
 * all are placed.
 */
final class FreeStarts {
  private FreeStarts() {}

  /**
   * What CP-SAT found.
   *
   * @param proved whether it proved that nothing is cheaper
   * @param cost avoidable cost, thousandths of a cent
   * @param starts start of the change of every job, minutes since 1970 UTC
   * @param queues ids of the jobs of every press in order
   * @param dismounts how many molds are taken off by a dismount
   */
  record Answer(
      boolean proved,
      long cost,
      Map<String, Integer> starts,
      Map<String, List<String>> queues,
      int dismounts) {}

  private static final Answer NOTHING_FOUND =
      new Answer(false, Long.MAX_VALUE, Map.of(), Map.of(), 0);

  /** Which dismounts a plan may have. */
  enum Dismounts {
    ANY,
    NONE
  }

  /**
   * Solves a week within a limit of work that is the same on every machine.
   *
   * @param dismounts which dismounts a plan may have
   * @param costLimit cost of a plan that is known; dearer ones are not looked for, which shortens
   *     the proof
   * @param work the limit, in what CP-SAT calls deterministic time
   * @return empty when CP-SAT proved that no plan is as cheap as the limit
   */
  static Optional<Answer> solve(Problem problem, Dismounts dismounts, long costLimit, double work) {
    Loader.loadNativeLibraries();
    FreeModel week = new FreeModel(problem);
    List<FreeJob> jobs = new ArrayList<>();
    for (var job : problem.jobs()) {
      int earliest = Math.max(0, job.deadline().earliestMin() - week.start);
      jobs.add(new FreeJob(week.model, job, earliest, week.horizon));
    }
    problem.floor().presses().forEach(press -> FreePress.add(week, press, jobs));
    jobs.forEach(job -> job.close(week));
    week.close(costLimit);
    if (dismounts == Dismounts.NONE) {
      week.dismounts.forEach(off -> week.model.addEquality(off, 0));
    }
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(1);
    solver.getParameters().setRandomSeed(1);
    solver.getParameters().setLinearizationLevel(0);
    solver.getParameters().setMaxDeterministicTime(work);
    return switch (solver.solve(week.model)) {
      case OPTIMAL -> Optional.of(answer(week, jobs, solver, true));
      case FEASIBLE -> Optional.of(answer(week, jobs, solver, false));
      case INFEASIBLE -> Optional.empty();
      default -> Optional.of(NOTHING_FOUND);
    };
  }

  private static Answer answer(
      FreeModel week, List<FreeJob> jobs, CpSolver solver, boolean proved) {
    List<FreeJob> inOrder = new ArrayList<>(jobs);
    inOrder.sort(Comparator.comparingLong(job -> solver.value(job.end)));
    Map<String, Integer> starts = new LinkedHashMap<>();
    Map<String, List<String>> queues = new LinkedHashMap<>();
    for (FreeJob job : inOrder) {
      starts.put(job.job.id(), week.start + Math.toIntExact(solver.value(job.start)));
      job.here.forEach(
          (press, here) -> {
            if (solver.booleanValue(here)) {
              queues.computeIfAbsent(press, p -> new ArrayList<>()).add(job.job.id());
            }
          });
    }
    int dismounts = (int) week.dismounts.stream().filter(solver::booleanValue).count();
    long cost = Math.round(solver.objectiveValue());
    return new Answer(proved, cost, starts, queues, dismounts);
  }
}
