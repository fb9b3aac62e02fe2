package pressweek.app.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.files.AtomicFile;
import pressweek.data.files.Folder;
import pressweek.data.files.PlanFile;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Problem;
import pressweek.reports.write.PlanCsv;
import pressweek.reports.write.PlanPage;
import pressweek.solver.Planner;
import pressweek.solver.Watcher;
import pressweek.solver.audit.Audit;
import pressweek.solver.audit.Finding;

/** Plans a week that has been read, has the plan audited, and writes all that comes of it. */
public final class WeekPlanner {
  private final Folder folder;
  private final Problem problem;
  private final Planner planner;

  /**
   * A planner for a folder and the week made from it.
   *
   * @param folder the folder, for the hashes of its files
   * @param problem the week
   */
  public WeekPlanner(Folder folder, Problem problem) {
    this.folder = folder;
    this.problem = problem;
    planner = new Planner(problem);
  }

  /**
   * A plan, and what the audit found wrong with it.
   *
   * @param plan the plan
   * @param findings findings of the audit; a plan with one is never to be called good
   */
  public record Audited(Plan plan, List<Finding> findings) {
    public Audited {
      findings = List.copyOf(findings);
    }
  }

  /** Ends the search soon; the best plan so far is the plan. */
  public void stop() {
    planner.stop();
  }

  /**
   * Plans and audits.
   *
   * @param out folder in which the plan will lie; a plan there already is the one that is replaced
   * @param settings limits and seed
   * @param nowMin the present, minutes since 1970 UTC
   * @param watcher told of every better plan
   * @throws IOException when the folder cannot be read
   */
  public Audited plan(Path out, Settings settings, int nowMin, Watcher watcher) throws IOException {
    PlanNumber number = PlanNumber.after(out, problem.plant().hours());
    Head head =
        new Head(
            number.number(),
            number.replaces(),
            nowMin,
            folder.inputs(),
            settings,
            List.of(),
            false);
    Plan plan = planner.plan(head, Optional.empty(), watcher);
    return new Audited(plan, Audit.check(problem, plan));
  }

  /**
   * Writes plan.json, the lists and the page.
   *
   * @return the files written
   * @throws IOException when one cannot be written
   */
  public static List<Path> write(Audited audited, Path out) throws IOException {
    Files.createDirectories(out);
    List<Path> written = new ArrayList<>();
    Path page = out.resolve("index.html");
    List<String> findings = audited.findings().stream().map(Finding::message).toList();
    String html = PlanPage.html(audited.plan(), findings);
    AtomicFile.write(page, writer -> writer.write(html));
    written.add(page);
    for (Map.Entry<String, String> list : PlanCsv.files(audited.plan()).entrySet()) {
      Path file = out.resolve(list.getKey());
      AtomicFile.write(file, writer -> writer.write(list.getValue()));
      written.add(file);
    }
    Path plan = out.resolve("plan.json");
    PlanFile.write(audited.plan(), plan);
    written.add(plan);
    return written;
  }
}
