package pressweek.reports.schedule;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Run;
import pressweek.data.problem.Component;
import pressweek.data.problem.Item;
import pressweek.data.problem.Job;
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
    Job job = book.job(run);
    Optional<Making> making = book.option(run).map(Option::making);
    int startup = Kinds.exchanges(run.change()) ? 1 : 0;
    return new ScheduleRow(
        run,
        job,
        making.map(m -> m.shots() + startup * m.startupShots()).orElse(0),
        inserts(job, making),
        book.stay(run),
        book.lateMin(run),
        Reasons.waits(run));
  }

  /**
   * What it takes from stock; when nothing, as in a run whose inserts are at the press, what the
   * item asks for.
   */
  private static List<String> inserts(Job job, Optional<Making> making) {
    List<String> taken =
        making.map(Making::takes).orElse(List.of()).stream()
            .filter(t -> t.component() == Component.INSERT)
            .map(Take::insert)
            .toList();
    return taken.isEmpty()
        ? job.item().value(Item.INSERT).map(ScheduleReport::parts).orElse(List.of())
        : taken;
  }

  /**
   * The insert parts of an item as its attribute lists them, {@code B0810*2|S0825}, without their
   * pieces.
   */
  private static List<String> parts(String attribute) {
    return Arrays.stream(attribute.split("\\|")).map(p -> p.replaceFirst("\\*\\d+$", "")).toList();
  }
}
