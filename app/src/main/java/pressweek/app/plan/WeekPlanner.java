package pressweek.app.plan;

import java.io.IOException;
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
import pressweek.reports.handover.Handover;
import pressweek.reports.listing.Listing;
import pressweek.reports.schedule.PlanBook;
import pressweek.reports.write.Edition;
import pressweek.reports.write.PlanFiles;
import pressweek.solver.Planner;
import pressweek.solver.Watcher;
import pressweek.solver.audit.Audit;
import pressweek.solver.audit.Finding;
import pressweek.solver.stress.SurePlanner;

/** Plans a week that has been read, has the plan audited, and writes all that comes of it. */
public final class WeekPlanner {
  private final Folder folder;
  private final Problem problem;
  private final Planner planner;
  private final int count;
  private final SurePlanner sure;
  private final List<SurePlanner.Sure> compared = new ArrayList<>();

  /**
   * A planner for a folder and the week made from it.
   *
   * @param folder the folder, for the hashes of its files
   * @param problem the week
   */
  public WeekPlanner(Folder folder, Problem problem) {
    this(folder, problem, 1);
  }

  /**
   * The same which compares plans under uncertain times and takes the one that holds best.
   *
   * @param plans how many to compare; 1 for none
   */
  public WeekPlanner(Folder folder, Problem problem, int plans) {
    this.folder = folder;
    this.problem = problem;
    planner = new Planner(problem);
    count = plans;
    sure =
        new SurePlanner(
            problem,
            folder.plant().uncertainty(),
            Math.max(2, plans),
            Runtime.getRuntime().availableProcessors());
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
    sure.stop();
  }

  /** What was compared for the plan that was made last; nothing where only one was made. */
  public List<SurePlanner.Sure> compared() {
    return List.copyOf(compared);
  }

  /**
   * Plans and audits.
   *
   * @param earlier the plans before it
   * @param settings limits and seed
   * @param nowMin the present, minutes since 1970 UTC
   * @param watcher told of every better plan
   */
  public Audited plan(EarlierPlans earlier, Settings settings, int nowMin, Watcher watcher) {
    PlanNumber number = PlanNumber.after(earlier, problem.plant().hours());
    Head head =
        new Head(
            number.number(),
            number.replaces(),
            nowMin,
            folder.inputs(),
            settings,
            List.of(),
            false);
    Plan plan = count > 1 ? surest(head, watcher) : planner.plan(head, Optional.empty(), watcher);
    return new Audited(plan, Audit.check(problem, plan));
  }

  private Plan surest(Head head, Watcher watcher) {
    SurePlanner.Sure found = sure.plan(head, watcher);
    compared.clear();
    compared.add(found);
    return found.plan();
  }

  /**
   * Writes everything that a plan is given out as, plan.json last.
   *
   * @param audited the plan
   * @param earlier the plans before it, for what it changes
   * @param out folder to write to; each file there is the old one or the new one, never a part
   * @param nowMin the present, minutes since 1970 UTC
   * @return the files written
   * @throws IOException when one cannot be written
   */
  public static List<Path> write(Audited audited, EarlierPlans earlier, Path out, int nowMin)
      throws IOException {
    return write(audited, earlier, new Place(out, nowMin), List.of());
  }

  /** Where and when a plan is written. */
  record Place(Path out, int nowMin) {}

  /** The same with further lists. */
  static List<Path> write(Audited audited, EarlierPlans earlier, Place place, List<Listing> more)
      throws IOException {
    Plan plan = audited.plan();
    Handover handover =
        earlier.replaced().map(p -> Handover.between(p, plan)).orElseGet(Handover::none);
    List<String> findings = audited.findings().stream().map(Finding::message).toList();
    Edition edition = new Edition(PlanBook.of(plan), handover, findings, place.nowMin(), more);
    List<Path> written = new ArrayList<>();
    for (Map.Entry<String, byte[]> file : PlanFiles.of(edition).entrySet()) {
      Path path = place.out().resolve(file.getKey());
      AtomicFile.write(path, file.getValue());
      written.add(path);
    }
    Path file = place.out().resolve("plan.json");
    PlanFile.write(plan, file);
    written.add(file);
    return written;
  }
}
