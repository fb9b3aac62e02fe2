package pressweek.solver.offer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import pressweek.data.plan.Run;
import pressweek.data.problem.Deadline;
import pressweek.data.problem.Job;
import pressweek.data.problem.Problem;

/** A problem with other due times and weights, by which a search leans one way or the other. */
final class Dues {
  /**
   * How much dearer than in the plant's rates the lateness of other lines is where none may become
   * late; dearer than {@link #EAGER}, so that a search gains nothing by making one late.
   */
  private static final int PROTECTED = 400;

  /** How much dearer than in the plant's rates the lateness of the new line is. */
  private static final int EAGER = 20;

  /** Well after anything can be ready, and within what shipping cut-offs are known for. */
  private static final int UNHURRIED_MIN = 300 * 1440;

  private Dues() {}

  /** The new line due so late that it is never charged for lateness. */
  static Problem unhurried(Problem problem, Collection<String> lines) {
    return due(problem, lines, problem.plant().hours().endMin() + UNHURRIED_MIN);
  }

  /** The new line due at a time. */
  static Problem due(Problem problem, Collection<String> lines, int dueMin) {
    return each(
        problem,
        job ->
            lines.contains(job.id()) ? with(job, dueMin, job.deadline().weightHundredths()) : job);
  }

  /**
   * The new line wanted at once, the lateness of all others made dear from where it stands.
   *
   * @param lines the jobs of the new line; empty for none
   * @param stands runs of the others as they stand
   */
  static Problem protecting(Problem problem, Collection<String> lines, Collection<Run> stands) {
    int now = problem.plant().hours().startMin();
    Map<String, Integer> ready = new HashMap<>();
    stands.forEach(run -> ready.put(run.job(), run.readyMin()));
    return each(
        problem,
        job -> {
          Deadline was = job.deadline();
          int weight = Math.max(1, was.weightHundredths());
          int least = Math.max(was.dueMin(), ready.getOrDefault(job.id(), was.dueMin()));
          return lines.contains(job.id())
              ? with(job, now, weight * EAGER)
              : with(job, least, weight * PROTECTED);
        });
  }

  /** The new line wanted by a time at almost any price, the others weighed as ever. */
  static Problem wanting(Problem problem, Collection<String> lines, int needMin) {
    return each(
        problem,
        job ->
            lines.contains(job.id())
                ? with(job, needMin, Math.max(1, job.deadline().weightHundredths()) * PROTECTED)
                : job);
  }

  private static Problem each(Problem problem, UnaryOperator<Job> change) {
    List<Job> jobs = new ArrayList<>();
    problem.jobs().forEach(job -> jobs.add(change.apply(job)));
    return problem.withJobs(jobs);
  }

  private static Job with(Job job, int dueMin, int weightHundredths) {
    Deadline was = job.deadline();
    return new Job(
        job.line(),
        job.item(),
        job.quantity(),
        new Deadline(was.earliestMin(), dueMin, was.afterMin(), weightHundredths),
        job.resin(),
        job.colour(),
        job.foodGrade(),
        job.options());
  }
}
