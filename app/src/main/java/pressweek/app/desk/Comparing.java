package pressweek.app.desk;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.app.compare.Comparison;
import pressweek.app.compare.ComparisonSource;
import pressweek.app.compare.Effort;
import pressweek.app.compare.ScenarioPlanner;
import pressweek.app.compare.ScenarioWeeks;
import pressweek.app.plan.ChangedInputs;
import pressweek.app.store.StoreTrouble;
import pressweek.app.store.row.Change;
import pressweek.data.files.AtomicFile;
import pressweek.data.plan.Settings;
import pressweek.reports.compare.SideBySide;

/**
 * Compares scenarios beside the week that stands, in the same turn as searches of the week. The
 * last comparison stays until the next one: in memory, and in a file beside a store that is a file.
 */
public final class Comparing {
  /** What the lines of the history about it are about. */
  public static final String ABOUT = "scenarios";

  private static final System.Logger LOG = System.getLogger(Comparing.class.getName());
  private static final String BESIDE = ".comparison";
  private static final long SEED = 1;

  private final Desk desk;
  private final Turn turn;
  private final ScenarioShelf shelf;
  private volatile List<Comparison> last;
  private volatile Progress progress = new Progress(0, 0, 0, 0, 0);
  private volatile String trouble = "";
  private volatile boolean kept;

  /**
   * What is to be compared.
   *
   * @param scenarios sound scenarios
   * @param seeds plans of each
   * @param seconds how long each plan is searched for
   */
  public record Wanted(List<Shelved> scenarios, int seeds, int seconds) {
    public Wanted {
      scenarios = List.copyOf(scenarios);
    }

    /** Plans that are made: of the folder as it stands, too. */
    public int plans() {
      return (scenarios.size() + 1) * seeds;
    }

    /** How long it takes, seconds. */
    public long total() {
      return (long) plans() * seconds;
    }
  }

  /**
   * Why a comparison has not begun.
   *
   * @param later whether the same may be asked for again later
   * @param words why, in sentences
   */
  public record Refused(boolean later, List<String> words) {
    public Refused {
      words = List.copyOf(words);
    }
  }

  /**
   * How far a comparison is.
   *
   * @param done plans that are made
   * @param of plans that are to be made
   * @param seconds how long each is searched for
   * @param begunNanos when it began, by the machine's own count
   * @param sinceNanos when the last plan was made
   */
  public record Progress(int done, int of, int seconds, long begunNanos, long sinceNanos) {
    private static final double NANOS = 1e9;

    private static Progress begun(Wanted wanted) {
      long now = System.nanoTime();
      return new Progress(0, wanted.plans(), wanted.seconds(), now, now);
    }

    /**
     * About how long it still takes, seconds: each plan as long as those before, which are checked
     * and counted as well.
     */
    public long left() {
      double each = done == 0 ? seconds : (sinceNanos - begunNanos) / NANOS / done;
      double spent = (System.nanoTime() - sinceNanos) / NANOS;
      return Math.round((of - done) * each - Math.min(spent, each));
    }

    private Progress next() {
      return new Progress(done + 1, of, seconds, begunNanos, System.nanoTime());
    }
  }

  /** Compares scenarios of a desk's plant, in the turn of its searches. */
  public Comparing(Desk desk, Turn turn, ScenarioShelf shelf) {
    this.desk = desk;
    this.turn = turn;
    this.shelf = shelf;
    last = keptBeside();
  }

  /** The comparison that goes on; empty for none. */
  public Optional<Turn.Going> going() {
    return turn.going(Turn.Kind.SCENARIOS);
  }

  /** The other search that a comparison would have to wait for; empty for none. */
  public Optional<Turn.Going> other() {
    return turn.going().filter(g -> g.kind() != Turn.Kind.SCENARIOS);
  }

  /** How far it is. */
  public Progress progress() {
    return progress;
  }

  /** Why the last one came to nothing, in a sentence; empty when it did not. */
  public String trouble() {
    return trouble;
  }

  /** The last comparison; empty while there has been none. */
  public Optional<Comparison> last() {
    return last.stream().findFirst();
  }

  /** Whether the last comparison is still there when the program is opened anew. */
  public boolean isKept() {
    return kept;
  }

  /**
   * Begins to compare scenarios with the folder as the week on the desk was made from it.
   *
   * @return why not; empty when it has begun
   */
  public synchronized Optional<Refused> begin(Wanted wanted, Change change)
      throws StoreTrouble, IOException {
    Optional<Turn.Going> other = turn.going();
    if (other.isPresent()) {
      return later(List.of(other.get().words()));
    }
    Optional<Standing> now = desk.standing();
    if (now.isEmpty()) {
      return later(List.of("there is no week yet; the page Files says what is wrong"));
    }
    FolderLook folder = desk.folder();
    ScenarioWeeks read =
        ScenarioWeeks.of(
            folder.path(),
            wanted.scenarios().stream().map(Shelved::scenario).toList(),
            folder.nowMin());
    if (!read.errors().isEmpty()) {
      return Optional.of(new Refused(false, read.errors()));
    }
    Map<String, String> inputs = read.weeks().get(0).folder().inputs();
    List<String> changed = ChangedInputs.words(now.get().week().plan().head().inputs(), inputs);
    if (!changed.isEmpty()) {
      return later(
          List.of(
              String.join(", ", changed)
                  + " since the week on the wall was made; take the files there first"));
    }
    return begin(wanted, read, change);
  }

  private static Optional<Refused> later(List<String> words) {
    return Optional.of(new Refused(true, words));
  }

  private Optional<Refused> begin(Wanted wanted, ScenarioWeeks read, Change change)
      throws StoreTrouble {
    Effort effort =
        new Effort(new Settings(wanted.seconds(), 0, SEED), wanted.seeds(), desk.nowMin());
    ScenarioPlanner planner = new ScenarioPlanner(read.weeks(), effort, Optional.empty());
    ComparisonSource source =
        new ComparisonSource(
            change.by(),
            read.weeks().get(0).folder().inputs(),
            wanted.scenarios().stream().map(Comparing::source).toList());
    int seconds = Math.toIntExact(wanted.total());
    Turn.Going going = new Turn.Going(Turn.Kind.SCENARIOS, change.by(), seconds, planner::stop);
    progress = Progress.begun(wanted);
    Optional<String> refused = turn.begin(going, () -> run(planner, source), () -> tell(""));
    if (refused.isPresent()) {
      return later(List.of(refused.get()));
    }
    String names = String.join(", ", wanted.scenarios().stream().map(Shelved::name).toList());
    desk.store().history().add("began to compare " + names, ABOUT, change);
    return Optional.empty();
  }

  private static ComparisonSource.Scenario source(Shelved one) {
    return new ComparisonSource.Scenario(one.id(), one.name(), one.scenario().sha256());
  }

  private void tell(String line) {
    desk.tell(new DeskEvent.Compared(progress.done(), progress.of(), line));
  }

  private void run(ScenarioPlanner planner, ComparisonSource source) {
    trouble = "";
    tell("");
    boolean done = false;
    try {
      compare(planner, source);
      done = true;
    } finally {
      if (!done) {
        trouble =
            "The comparison failed by a fault of Pressweek, which the window that it was opened from shows.";
      }
    }
  }

  private void compare(ScenarioPlanner planner, ComparisonSource source) {
    SideBySide all =
        planner.plan(
            line -> {
              progress = progress.next();
              tell(line);
            });
    if (turn.isClosed()) {
      return;
    }
    if (all.stopped() && all.shown().size() < 2) {
      trouble = "The comparison was stopped before there was anything to compare.";
      return;
    }
    Comparison made = Comparison.of(all, source);
    trouble = keep(made);
    last = List.of(made);
  }

  /** Ends the comparison soon; what there is by then is compared. */
  public void stop() {
    going().ifPresent(g -> g.stop().run());
  }

  /** What is not as it was when the last comparison was made, in words. */
  public List<String> since() throws StoreTrouble, IOException {
    List<String> words = new ArrayList<>();
    Optional<ComparisonSource> source = last().map(Comparison::source);
    if (source.isPresent()) {
      words.addAll(
          ChangedInputs.words(source.get().inputs(), desk.folder().look().folder().inputs()));
      for (ComparisonSource.Scenario then : source.get().scenarios()) {
        Optional<Shelved> now = shelf.find(then.id());
        if (now.isEmpty()) {
          words.add("scenario \"" + then.name() + "\" is gone");
        } else if (!now.get().scenario().sha256().equals(then.sha256())) {
          words.add("scenario \"" + then.name() + "\" changed");
        }
      }
    }
    return List.copyOf(words);
  }

  private Optional<Path> file() {
    return desk.store().file().map(f -> f.resolveSibling(f.getFileName() + BESIDE));
  }

  /** Keeps it beside the store; what went wrong with that, in a sentence. */
  private String keep(Comparison made) {
    kept = false;
    try {
      Optional<Path> file = file();
      if (file.isPresent()) {
        AtomicFile.write(file.get(), made.archive());
        kept = true;
      }
      return "";
    } catch (IOException e) {
      LOG.log(System.Logger.Level.WARNING, "keeping a comparison", e);
      return "The comparison cannot be kept on the disk, and is gone when Pressweek ends.";
    }
  }

  private List<Comparison> keptBeside() {
    try {
      Optional<Path> file = file().filter(Files::isRegularFile);
      if (file.isEmpty()) {
        return List.of();
      }
      Comparison read = Comparison.read(Files.readAllBytes(file.get()));
      kept = true;
      return List.of(read);
    } catch (IOException e) {
      LOG.log(System.Logger.Level.WARNING, "the last comparison cannot be read", e);
      return List.of();
    }
  }
}
