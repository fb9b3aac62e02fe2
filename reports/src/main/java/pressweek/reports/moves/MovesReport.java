package pressweek.reports.moves;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import pressweek.data.floor.Ended;
import pressweek.data.plan.Charge;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Rule;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.PressState;
import pressweek.data.problem.Unplaced;

/**
 * Finds what is not where it was, by the words of rule MOVED: on another press, or earlier or later
 * by more than {@code move_tolerance_min}. What was running at the present cannot have moved.
 */
public final class MovesReport {
  private final Moves moves;
  private final Plan plan;
  private final Map<String, Run> before = new HashMap<>();
  private final Map<String, Run> now = new HashMap<>();
  private final MoveReasons reasons;

  private MovesReport(Moves moves) {
    this.moves = moves;
    plan = moves.plan();
    moves.earlier().runs().forEach(run -> before.put(run.job(), run));
    plan.runs().forEach(run -> now.put(run.job(), run));
    reasons = new MoveReasons(moves, this::isMoved);
  }

  /**
   * What moved.
   *
   * @return runs by press and place, then lines that are in no plan any more
   */
  public static List<Move> of(Moves moves) {
    return new MovesReport(moves).rows();
  }

  /** How many runs of both plans are where they were. */
  public static int stayed(Moves moves) {
    MovesReport report = new MovesReport(moves);
    return (int)
        moves.plan().runs().stream()
            .filter(run -> report.before.containsKey(run.job()) && !report.isMoved(run))
            .count();
  }

  private List<Move> rows() {
    List<Move> rows = new ArrayList<>();
    for (Run run : plan.runs()) {
      Optional<Run> was = Optional.ofNullable(before.get(run.job()));
      if (was.isEmpty()) {
        rows.add(row(MoveKind.NEW, run, was, reasons.isNew(run)));
      } else if (isMoved(run)) {
        rows.add(row(MoveKind.MOVED, run, was, reasons.moved(was.get(), run)));
      }
    }
    plan.unplaced().forEach(line -> unplaced(line, rows));
    moves.ended().forEach(line -> ended(line, rows));
    return rows;
  }

  private boolean isMoved(Run run) {
    Run was = before.get(run.job());
    if (was == null || isRunning(run)) {
      return false;
    }
    int shift = Math.abs(run.startMin() - was.startMin());
    return !was.press().equals(run.press()) || shift > plan.problem().plant().moveToleranceMin();
  }

  private boolean isRunning(Run run) {
    return plan.problem().floor().states().stream()
        .map(PressState::job)
        .anyMatch(run.job()::equals);
  }

  private Move row(MoveKind kind, Run run, Optional<Run> was, String reason) {
    long cost =
        run.charges().stream().filter(c -> c.rule() == Rule.MOVED).mapToLong(Charge::amount).sum();
    return new Move(kind, run.job(), item(run.job()), was, Optional.of(run), reason, cost);
  }

  private void unplaced(Unplaced line, List<Move> rows) {
    Optional<Run> was = Optional.ofNullable(before.get(line.id()));
    boolean known = moves.earlier().unplaced().stream().anyMatch(u -> u.id().equals(line.id()));
    if (was.isPresent() || !known) {
      rows.add(
          new Move(
              MoveKind.UNPLACED, line.id(), line.item(), was, Optional.empty(), line.reason(), 0));
    }
  }

  private void ended(Ended line, List<Move> rows) {
    if (line.how() == Ended.How.DONE) {
      return;
    }
    MoveKind kind = line.how() == Ended.How.DROPPED ? MoveKind.DROPPED : MoveKind.FINISHED;
    rows.add(
        new Move(
            kind,
            line.line(),
            item(line.line()),
            Optional.ofNullable(before.get(line.line())),
            Optional.empty(),
            line.because(),
            0));
  }

  private String item(String line) {
    List<Job> jobs = new ArrayList<>(plan.problem().jobs());
    jobs.addAll(moves.earlier().problem().jobs());
    return jobs.stream()
        .filter(job -> job.id().equals(line))
        .findFirst()
        .map(job -> job.item().code())
        .or(
            () ->
                moves.earlier().unplaced().stream()
                    .filter(u -> u.id().equals(line))
                    .findFirst()
                    .map(Unplaced::item))
        .orElse("");
  }

  /** Runs that were on time, or not there, and are late now; the latest first. */
  static List<Run> newlyLate(Moves moves) {
    Map<String, Integer> lateBefore = new HashMap<>();
    moves.unchanged().runs().forEach(r -> lateBefore.put(r.job(), late(moves.unchanged(), r)));
    List<Run> late = new ArrayList<>(moves.plan().runs());
    late.removeIf(r -> late(moves.plan(), r) == 0 || lateBefore.getOrDefault(r.job(), 0) > 0);
    late.sort(Comparator.comparingInt((Run r) -> -late(moves.plan(), r)));
    return late;
  }

  /** Minutes late. */
  static int late(Plan plan, Run run) {
    return plan.problem().jobs().stream()
        .filter(job -> job.id().equals(run.job()))
        .findFirst()
        .map(job -> Math.max(0, run.readyMin() - job.deadline().dueMin()))
        .orElse(0);
  }
}
