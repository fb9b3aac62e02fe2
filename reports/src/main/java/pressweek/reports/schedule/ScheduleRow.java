package pressweek.reports.schedule;

import java.util.List;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;

/**
 * A run as a row of the schedule.
 *
 * @param run the run
 * @param job what it makes
 * @param shots shots with those for scrap and, after a change that exchanges something, for
 *     start-up
 * @param inserts insert parts that it takes
 * @param stay whether it stays where it is
 * @param lateMin minutes late; 0 when on time
 * @param waitsFor what it waited for, each with its minutes
 */
public record ScheduleRow(
    Run run,
    Job job,
    int shots,
    List<String> inserts,
    Stay stay,
    int lateMin,
    List<String> waitsFor) {
  public ScheduleRow {
    inserts = List.copyOf(inserts);
    waitsFor = List.copyOf(waitsFor);
  }

  /** What the change before the run exchanges, in words. */
  public List<String> changeKinds() {
    return run.change().kinds().stream().map(Kinds::words).toList();
  }
}
