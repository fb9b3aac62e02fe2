package pressweek.reports.trace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Setup;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.trace.Clearance.Check;

/**
 * A line clearance for every food-grade run, in order of time. What is cleared is common practice
 * (contents as on a dairy's line clearance checklist); the site procedure rules.
 */
public final class ClearanceReport {
  private final PlanBook book;

  private ClearanceReport(PlanBook book) {
    this.book = book;
  }

  /** The clearances of a plan. */
  public static List<Clearance> of(PlanBook book) {
    ClearanceReport report = new ClearanceReport(book);
    return book.plan().runs().stream()
        .filter(run -> book.job(run).foodGrade())
        .sorted(Comparator.comparingInt((Run run) -> run.change().startMin()))
        .map(run -> new Clearance(run, book.job(run), report.checks(run)))
        .toList();
  }

  private List<Check> checks(Run run) {
    Job job = book.job(run);
    String dryer = book.kitting().dryers().getOrDefault(run.press(), "");
    List<Check> checks = new ArrayList<>();
    checks.add(new Check("press", run.press() + " clean; " + before(run)));
    checks.add(new Check("mold", run.mold() + " clean, no release agent but the one approved"));
    checks.add(
        new Check(
            "dryer",
            (dryer.isEmpty() ? "of " + run.press() : dryer) + " empty, swept out, filter clean"));
    checks.add(new Check("loader", "hopper, hoses and loader of " + run.press() + " emptied"));
    checks.add(new Check("resin", "only " + material(job) + "; other bags and boxes away"));
    checks.add(new Check("regrind", "no grinder connected but for runners that are approved"));
    checks.add(new Check("old parts", "none on the press, the belt, the table or the floor"));
    checks.add(new Check("inserts", "only those of the kit; trays and chutes of others emptied"));
    checks.add(new Check("bins", "clean, empty, marked for this run"));
    checks.add(new Check("cartons", "only those of this run, clean and dry"));
    checks.add(new Check("labels", "only those of this run, counted; old ones destroyed"));
    checks.add(new Check("paperwork", "of the run before taken away; this trace sheet is there"));
    checks.add(new Check("floor", "swept round the press; purge and spilt granules removed"));
    return checks;
  }

  private static String material(Job job) {
    return (job.resin() + " " + job.colour()).strip();
  }

  private static String before(Run run) {
    Setup from = run.change().from();
    String held = (from.resin() + " " + from.colour()).strip();
    return held.isEmpty()
        ? "what its barrel held before is not recorded"
        : "its barrel held " + held + " before";
  }
}
