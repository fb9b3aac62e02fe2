package pressweek.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.app.plan.EarlierPlans;
import pressweek.app.plan.Replanner;
import pressweek.app.plan.WeekPlanner;
import pressweek.data.files.Folder;
import pressweek.data.files.FolderReader;
import pressweek.data.files.PlanFile;
import pressweek.data.floor.FloorEvent;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Arrangements;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Terms;
import pressweek.reports.moves.MoveKind;
import pressweek.reports.moves.Moves;
import pressweek.reports.moves.MovesReport;
import pressweek.solver.Planner;
import pressweek.solver.Watcher;
import pressweek.solver.audit.Audit;

/**
 * Measures what a plan that replaces the demo week's after a press is lost moves and costs, against
 * plans of the same rest of the week from scratch, and writes the part <i>After a press is lost</i>
 * of {@code examples/benchmarks/RESULTS.md}. Run from the project's root; the demo week's plan and
 * finished runs are kept in {@code examples/target/benchmarks}, so it may be broken off and started
 * again.
 *
 * <pre>
 * {@code java ... pressweek.examples.ReplanBenchmark [events]}
 * </pre>
 */
public final class ReplanBenchmark {
  private static final System.Logger LOG = System.getLogger(ReplanBenchmark.class.getName());
  private static final int WEEK_SECONDS = 20;
  private static final int SECONDS = 5;
  private static final long SEED = 1;
  private static final int EVENTS = 20;

  private final Folder folder;
  private final Path rows;
  private final Path results;
  private final RunTable table;

  /** How the rest of the week is planned. */
  enum Way {
    /** As the command {@code replan} does. */
    REPLAN,
    /** From scratch; moves cost the same. */
    SCRATCH,
    /** From scratch, and moves cost nothing. */
    FREE
  }

  private ReplanBenchmark(Folder folder, Path rows, Path results) throws IOException {
    this.folder = folder;
    this.rows = rows;
    this.results = results;
    table =
        RunTable.open(
            rows,
            List.of("event", "press", "at", "seed", "way"),
            List.of("runs", "moved", "cost_rest", "cost_moved", "late", "findings", "took_s"));
  }

  /** Runs what is not finished yet. */
  public static void main(String[] args) throws IOException {
    new ReplanBenchmark(
            FolderReader.read(Path.of("examples", "quillback-week")),
            Path.of("examples", "target", "benchmarks", "replan.csv"),
            Path.of("examples", "benchmarks", "RESULTS.md"))
        .run(args.length == 0 ? EVENTS : Integer.parseInt(args[0]));
  }

  private void run(int count) throws IOException {
    EarlierPlans earlier = earlier();
    int number = 0;
    for (FloorEvent event : DrawnLoss.draw(earlier.replaced().orElseThrow(), count, SEED)) {
      number++;
      Object[] key = {number, event.what(), at(event), SEED};
      boolean done = true;
      for (Way way : Way.values()) {
        done &= table.isDone(key[0], key[1], key[2], key[3], way);
      }
      if (!done) {
        measure(key, earlier, event);
      }
      new ResultsFile(results).replace(ReplanPart.HEADING, new ReplanPart(table).lines());
    }
  }

  private static Instant at(FloorEvent event) {
    return Instant.EPOCH.plus(event.fromMin(), ChronoUnit.MINUTES);
  }

  /** The demo week's plan, made once: other runs of the search would give another. */
  private EarlierPlans earlier() throws IOException {
    Path out = rows.resolveSibling("replan-week");
    Path file = out.resolve("plan.json");
    if (!Files.exists(file)) {
      Files.createDirectories(out);
      Problem week = DrawnProblem.read(Path.of("examples", "quillback-week"));
      WeekPlanner.Audited audited =
          new WeekPlanner(folder, week)
              .plan(EarlierPlans.in(out), new Settings(WEEK_SECONDS, 0, SEED), 0, Watcher.NONE);
      PlanFile.write(audited.plan(), file);
    }
    EarlierPlans earlier = EarlierPlans.in(out);
    Plan plan = earlier.replaced().orElseThrow(() -> new IOException(file + " cannot be read"));
    if (!plan.head().inputs().equals(folder.inputs())) {
      throw new IOException(file + " is of other files; delete it and " + rows);
    }
    return earlier;
  }

  /** Plans after an event in every way, each a row; the last rows of the event may be there. */
  private void measure(Object[] key, EarlierPlans earlier, FloorEvent event) throws IOException {
    Settings settings = new Settings(SECONDS, 0, SEED);
    Replanner.Happened happened =
        new Replanner.Happened(List.of(event), List.of(), event.fromMin(), Map.of());
    long begun = System.nanoTime();
    Replanner.Result result =
        new Replanner(folder, earlier, happened).plan(settings, 0, Watcher.NONE);
    row(key, Way.REPLAN, result.moves(), begun);
    Problem left = result.audited().plan().problem();
    scratch(key, Way.SCRATCH, result.moves(), left);
    scratch(key, Way.FREE, result.moves(), movesFree(left));
  }

  private void scratch(Object[] key, Way way, Moves moves, Problem left) throws IOException {
    Head head = new Head("1", "", 0, Map.of(), new Settings(SECONDS, 0, SEED), List.of(), false);
    long begun = System.nanoTime();
    Plan plan = new Planner(left).plan(head, Optional.empty(), Watcher.NONE);
    Moves others =
        new Moves(
            moves.earlier(), moves.unchanged(), plan, moves.events(), moves.ended(), moves.notes());
    row(key, way, others, begun);
  }

  private void row(Object[] key, Way way, Moves moves, long begun) throws IOException {
    double took = Math.round((System.nanoTime() - begun) / 1e7) / 100.0;
    if (table.isDone(key[0], key[1], key[2], key[3], way)) {
      return;
    }
    Plan plan = moves.plan();
    long moved =
        MovesReport.of(moves).stream().filter(move -> move.kind() == MoveKind.MOVED).count();
    long price = plan.figures().costByRule().getOrDefault(Rule.MOVED, 0L);
    table.add(
        key[0],
        key[1],
        key[2],
        key[3],
        way,
        plan.runs().size(),
        moved,
        plan.figures().avoidableCost() - price,
        price,
        plan.figures().lateLines(),
        Audit.check(plan.problem(), plan).size(),
        took);
    LOG.log(System.Logger.Level.INFO, "{0} {1}: {2} moved", key[0], way, moved);
  }

  private static Problem movesFree(Problem left) {
    Arrangements was = left.arranged();
    Terms terms = was.terms();
    Terms free =
        new Terms(
            terms.campaignMin(), terms.shortCampaignHour(), terms.closeHour(), 0, terms.earlier());
    return left.with(
        new Arrangements(
            was.things(),
            was.devices(),
            was.services(),
            was.trials(),
            was.links(),
            was.surplus(),
            was.opening(),
            new Arrangements.Settled(was.drying(), free)));
  }
}
