package pressweek.data.week;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import pressweek.data.files.Folder;
import pressweek.data.files.OrderRow;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.Deadline;
import pressweek.data.problem.Job;
import pressweek.data.problem.Kitting;
import pressweek.data.problem.Materials;
import pressweek.data.problem.Unplaced;

/**
 * Order lines that came after the week was read, read as those of {@code orders.csv} are.
 *
 * @param jobs lines that can be planned
 * @param unplaced lines that cannot
 * @param materials materials that go into them, among all others of the plant
 * @param kitting what their kits need
 * @param arranged what is arranged for them, links between their parts among it
 */
public record RushWeek(
    List<Job> jobs,
    List<Unplaced> unplaced,
    Materials materials,
    Kitting kitting,
    Arrangements arranged) {
  public RushWeek {
    jobs = List.copyOf(jobs);
    unplaced = List.copyOf(unplaced);
  }

  /**
   * Reads new lines beside those of the folder.
   *
   * @param folder the plant's folder; its finished stock is shared out to its own lines first
   * @param rows the new lines
   * @param nowMin the present, minutes since 1970 UTC; hours before molding count from it
   * @return the lines; empty when the folder itself is at fault
   */
  public static Optional<RushWeek> build(Folder folder, List<OrderRow> rows, int nowMin) {
    Set<String> ids = rows.stream().map(OrderRow::id).collect(Collectors.toSet());
    return Week.build(folder.withOrders(rows), nowMin)
        .problem()
        .map(
            week -> {
              int start = week.plant().hours().startMin();
              List<Job> jobs = new ArrayList<>();
              for (Job job : week.jobs()) {
                if (isOf(ids, job.id())) {
                  jobs.add(from(job, start, nowMin));
                }
              }
              return new RushWeek(
                  jobs,
                  week.unplaced().stream().filter(u -> isOf(ids, u.id())).toList(),
                  week.materials(),
                  week.kitting().orElse(Kitting.NONE),
                  week.arranged());
            });
  }

  /** True for a line, and for a part of one that is made in several. */
  private static boolean isOf(Set<String> lines, String id) {
    return lines.stream().anyMatch(line -> id.equals(line) || id.startsWith(line + "/"));
  }

  /** The job with its hours before molding counted from the present. */
  private static Job from(Job job, int startMin, int nowMin) {
    Deadline deadline = job.deadline();
    return new Job(
        job.line(),
        job.item(),
        job.quantity(),
        new Deadline(
            deadline.earliestMin() - startMin + nowMin,
            deadline.dueMin(),
            deadline.afterMin(),
            deadline.weightHundredths()),
        job.resin(),
        job.colour(),
        job.foodGrade(),
        job.options());
  }
}
