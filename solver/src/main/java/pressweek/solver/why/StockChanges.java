package pressweek.solver.why;

import java.util.ArrayList;
import java.util.List;
import pressweek.data.problem.Deadline;
import pressweek.data.problem.Job;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Receipt;
import pressweek.data.problem.Take;

/** What a plant could change about deliveries and about when a line may start. */
final class StockChanges {
  private static final int DAY = 24 * 60;

  private final Problem problem;

  StockChanges(Problem problem) {
    this.problem = problem;
  }

  /**
   * Deliveries of a component a day earlier, and all that a line takes of it in the house from the
   * start.
   */
  List<PlantChange> earlier(String component, Job job) {
    List<PlantChange> changes = new ArrayList<>();
    int start = problem.plant().hours().startMin();
    List<Receipt> receipts = problem.materials().stock().receipts();
    if (receipts.stream().anyMatch(r -> r.what().equals(component) && r.usableMin() > start)) {
      List<Receipt> moved =
          receipts.stream().map(r -> r.what().equals(component) ? dayEarlier(r) : r).toList();
      changes.add(
          new PlantChange(
              "deliveries of " + component + " a day earlier", Edit.receipts(problem, moved)));
    }
    int pieces = most(component, job);
    if (pieces > 0) {
      List<Receipt> more = new ArrayList<>(receipts);
      more.add(new Receipt(component, pieces, start, start));
      String unit = unit(component, job);
      changes.add(
          new PlantChange(
              "%d %s more of %s in the house at once".formatted(pieces, unit, component),
              Edit.receipts(problem, more)));
    }
    return changes;
  }

  private static Receipt dayEarlier(Receipt r) {
    return new Receipt(r.what(), r.quantity(), r.expectedMin() - DAY, r.usableMin() - DAY);
  }

  private static int most(String component, Job job) {
    return job.options().stream()
        .flatMap(o -> o.making().takes().stream())
        .filter(t -> t.insert().equals(component))
        .mapToInt(t -> t.free(true))
        .max()
        .orElse(0);
  }

  private static String unit(String component, Job job) {
    return job.options().stream()
        .flatMap(o -> o.making().takes().stream())
        .filter(t -> t.insert().equals(component))
        .map(Take::component)
        .findFirst()
        .map(c -> c.unit())
        .orElse("pcs");
  }

  /** A line that may start at once. */
  PlantChange startsAtOnce(Job job) {
    Deadline was = job.deadline();
    int start = problem.plant().hours().startMin();
    List<Job> jobs = new ArrayList<>();
    for (Job other : problem.jobs()) {
      jobs.add(
          other.id().equals(job.id())
              ? new Job(
                  job.line(),
                  job.item(),
                  job.quantity(),
                  new Deadline(start, was.dueMin(), was.afterMin(), was.weightHundredths()),
                  job.resin(),
                  job.colour(),
                  job.foodGrade(),
                  job.options())
              : other);
    }
    return new PlantChange("line " + job.id() + " free to start at once", problem.withJobs(jobs));
  }
}
