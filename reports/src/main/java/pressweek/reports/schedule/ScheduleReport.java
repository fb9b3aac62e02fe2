package pressweek.reports.schedule;

import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Run;
import pressweek.data.problem.Making;
import pressweek.data.problem.Option;
import pressweek.data.problem.Take;

/** What runs where and when: a row a run, by press in the plant's order, then by place. */
public final class ScheduleReport {
  private ScheduleReport() {}

  /** The rows of the schedule. */
  public static List<ScheduleRow> rows(PlanBook book) {
    return book.plan().runs().stream().map(r -> row(book, r)).toList();
  }

  /** The row of one run. */
  public static ScheduleRow row(PlanBook book, Run run) {
    Optional<Making> making = book.option(run).map(Option::making);
    int startup = Kinds.exchanges(run.change()) ? 1 : 0;
    return new ScheduleRow(
        run,
        book.job(run),
        making.map(m -> m.shots() + startup * m.startupShots()).orElse(0),
        making.map(m -> m.takes().stream().map(Take::insert).toList()).orElse(List.of()),
        book.stay(run),
        book.lateMin(run),
        Reasons.waits(run));
  }
}
