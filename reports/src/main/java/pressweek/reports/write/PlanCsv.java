package pressweek.reports.write;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pressweek.data.plan.Plan;
import pressweek.data.problem.OrderLine;
import pressweek.data.problem.Unplaced;
import pressweek.reports.changes.ChangeReport;
import pressweek.reports.changes.ChangeRow;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.hours.ShiftSpan;
import pressweek.reports.pulls.PullReport;
import pressweek.reports.pulls.PullRow;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.schedule.ScheduleReport;
import pressweek.reports.schedule.ScheduleRow;

/**
 * The lists of a plan as CSV files, UTF-8. Their columns are described in {@code
 * docs/output-files.md}.
 */
public final class PlanCsv {
  private final PlanBook book;
  private final PlantClock clock;

  private PlanCsv(PlanBook book) {
    this.book = book;
    this.clock = book.clock();
  }

  /** The content of every list by file name. */
  public static Map<String, String> files(Plan plan) {
    PlanCsv lists = new PlanCsv(PlanBook.of(plan));
    Map<String, String> files = new LinkedHashMap<>();
    files.put("schedule.csv", lists.schedule());
    files.put("pulls.csv", lists.pulls());
    files.put("changes.csv", lists.changes());
    files.put("unplaced.csv", lists.unplaced());
    return files;
  }

  /** Writes the lists into a folder that exists and returns what was written. */
  public static List<Path> write(Plan plan, Path folder) throws IOException {
    List<Path> written = new ArrayList<>();
    for (Map.Entry<String, String> file : files(plan).entrySet()) {
      written.add(Files.writeString(folder.resolve(file.getKey()), file.getValue()));
    }
    return List.copyOf(written);
  }

  private String schedule() {
    return new CsvTable<ScheduleRow>()
        .text("run", r -> r.run().id())
        .text("press", r -> r.run().press())
        .number("seq", r -> r.run().seq())
        .text("order", r -> r.job().line().order())
        .text("line", r -> r.job().line().line())
        .text("item", r -> r.job().item().code())
        .text("mold", r -> r.run().mold())
        .text("resin", r -> r.job().resin())
        .text("colour", r -> r.job().colour())
        .list("insert", ScheduleRow::inserts)
        .number("quantity", r -> r.job().quantity().good())
        .number("shots", ScheduleRow::shots)
        .figure("change_start", r -> clock.iso(r.run().change().startMin()))
        .figure("run_start", r -> clock.iso(r.run().startMin()))
        .figure("run_end", r -> clock.iso(r.run().endMin()))
        .figure("due", r -> clock.iso(r.job().deadline().dueMin()))
        .number("late_min", ScheduleRow::lateMin)
        .number("change_min", r -> r.run().change().minutes())
        .list("change_kind", ScheduleRow::changeKinds)
        .list("waits_for", ScheduleRow::waitsFor)
        .figure("ready", r -> clock.iso(r.run().readyMin()))
        .text("stays", r -> r.stay().word())
        .text("tooling", r -> r.run().change().to().tooling())
        .text("customer", r -> r.job().line().customer())
        .text("note", r -> r.job().line().note())
        .csv(ScheduleReport.rows(book));
  }

  private String pulls() {
    return new CsvTable<PullRow>()
        .figure("need_by", r -> clock.iso(r.pull().needByMin()))
        .text("shift", PullRow::shiftId)
        .text("press", r -> r.pull().press())
        .text("run", r -> r.pull().run())
        .text("order", r -> r.line().map(OrderLine::order).orElse(""))
        .text("line", r -> r.line().map(OrderLine::line).orElse(""))
        .text("insert", r -> r.pull().insert())
        .text("words", PullRow::words)
        .text("thread", PullRow::thread)
        .text("bin", r -> r.pull().bin())
        .text("lot", r -> r.pull().lot())
        .number("pieces", r -> r.pull().pieces())
        .text("caution", PullRow::caution)
        .csv(PullReport.rows(book));
  }

  private String changes() {
    return new CsvTable<ChangeRow>()
        .figure("start", r -> clock.iso(r.span().fromMin()))
        .figure("end", r -> clock.iso(r.span().toMin()))
        .text("press", ChangeRow::press)
        .text("setter_shift", r -> r.shift().map(ShiftSpan::id).orElse(""))
        .text("mold_out", ChangeRow::moldOut)
        .text("mold_in", ChangeRow::moldIn)
        .list("kind", ChangeRow::kinds)
        .figure("purge_kg", r -> kilograms(r.purgeG()))
        .number("minutes", ChangeRow::minutes)
        .text("run", ChangeRow::run)
        .text("tooling_out", r -> r.setups().from().tooling())
        .text("tooling_in", r -> r.setups().to().tooling())
        .text("resin_out", r -> r.setups().from().resin())
        .text("resin_in", r -> r.setups().to().resin())
        .text("colour_out", r -> r.setups().from().colour())
        .text("colour_in", r -> r.setups().to().colour())
        .list("stays", ChangeRow::stays)
        .csv(ChangeReport.rows(book));
  }

  private String unplaced() {
    return new CsvTable<Unplaced>()
        .text("order", Unplaced::order)
        .text("line", Unplaced::line)
        .text("item", Unplaced::item)
        .text("reason", Unplaced::reason)
        .text("cure", Unplaced::cure)
        .number("pieces", Unplaced::pieces)
        .csv(book.plan().unplaced());
  }

  /** Grams as kilograms with three decimals. */
  private static String kilograms(int grams) {
    return String.format(Locale.ROOT, "%d.%03d", grams / 1000, grams % 1000);
  }
}
