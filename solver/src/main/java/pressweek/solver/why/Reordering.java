package pressweek.solver.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.problem.Job;
import pressweek.data.problem.Promise;
import pressweek.data.problem.Unplaced;
import pressweek.solver.timing.WeekTables;

/**
 * A plan that is put into another order by hand. Each move is carried out at once by the timing
 * pass; all else keeps its press and its order. What comes of it names no lots to pull. Not for use
 * by several threads.
 */
public final class Reordering {
  private final Plan plan;
  private final WeekTables week;
  private final Plan standing;

  /**
   * Begins with a plan.
   *
   * @param plan what stands; its problem is the one that counts
   */
  public Reordering(Plan plan) {
    this(plan, new WeekTables(plan.problem()));
  }

  /** The same by tables of its problem that are at hand. */
  public Reordering(Plan plan, WeekTables tables) {
    this.plan = plan;
    week = tables;
    standing = Replay.of(plan.problem(), plan, week);
  }

  /** The plan as it stands, carried out anew. */
  public Plan standing() {
    return standing;
  }

  /** Whether a press may run a line at all. */
  public boolean canRun(String line, String press) {
    int job = week.job(line);
    int at = week.pressOrNone(press);
    return job >= 0 && at >= 0 && week.canRun(job, at);
  }

  /** How many runs of a press come before all that may move: what runs, and what is promised. */
  public int fixedOn(String press) {
    int at = week.pressOrNone(press);
    return at < 0 ? 0 : week.fixedOn(at).length;
  }

  /**
   * The plan with a line in another place.
   *
   * @param line a line that the press may run and that is neither running nor promised
   * @param press press
   * @param place place on it after what is fixed there, from 0
   */
  public Plan moved(String line, String press, int place) {
    if (!canRun(line, press)) {
      throw new IllegalArgumentException("press " + press + " may not run " + line);
    }
    return Replay.with(plan, new Replay.Spot(line, press, place), week);
  }

  /**
   * The plan without a run of a line.
   *
   * @param line the line, with the reason and the cure that the plan gives for it
   */
  public Plan without(Unplaced line) {
    return Replay.without(plan, line, week);
  }

  /**
   * Other places of a line, the cheapest first; none for what is running or promised.
   *
   * @param line {@code order/line}
   * @param most how many
   */
  public List<Placement> places(String line, int most) {
    return job(line).map(j -> Placements.best(plan, week, j, most)).orElse(List.of());
  }

  /**
   * What could run on a press from a time on: lines that may move, each at the first place whose
   * run does not end before that time, the cheapest first.
   *
   * @param press press
   * @param atMin minutes since 1970 UTC
   * @param most how many
   */
  public List<Filling> room(String press, int atMin, int most) {
    int place = 0;
    for (Run run : plan.runs()) {
      place += run.press().equals(press) && run.endMin() <= atMin ? 1 : 0;
    }
    int free = Math.max(0, place - fixedOn(press));
    List<Filling> all = new ArrayList<>();
    for (Job job : plan.problem().jobs()) {
      if (canRun(job.id(), press) && !week.isFixed(week.job(job.id()))) {
        filling(job, press, free).ifPresent(all::add);
      }
    }
    all.sort(Comparator.comparingLong(f -> f.there().costsMore()));
    return List.copyOf(all.subList(0, Math.min(most, all.size())));
  }

  /** Promises to the floor that a plan keeps and another one does not. */
  public static List<Promise> broken(Plan standing, Plan tried) {
    int tolerance = tried.problem().plant().moveToleranceMin();
    return tried.problem().floor().promises().stream()
        .filter(p -> keeps(standing, p, tolerance) && !keeps(tried, p, tolerance))
        .toList();
  }

  private static boolean keeps(Plan plan, Promise promise, int tolerance) {
    return plan.runs().stream()
        .filter(r -> r.job().equals(promise.job()))
        .anyMatch(r -> r.startMin() <= promise.startMin() + tolerance);
  }

  private Optional<Filling> filling(Job job, String press, int place) {
    Plan tried = moved(job.id(), press, place);
    return tried.runs().stream()
        .filter(r -> r.job().equals(job.id()))
        .findFirst()
        .filter(r -> !stands(r))
        .map(r -> new Filling(job.id(), Placement.of(tried, r, place, standing)));
  }

  private boolean stands(Run run) {
    return standing.runs().stream()
        .anyMatch(
            r ->
                r.job().equals(run.job()) && r.press().equals(run.press()) && r.seq() == run.seq());
  }

  private Optional<Job> job(String line) {
    return plan.problem().jobs().stream().filter(j -> j.id().equals(line)).findFirst();
  }

  /**
   * A line that could run somewhere.
   *
   * @param line {@code order/line}
   * @param there where, and what comes of it
   */
  public record Filling(String line, Placement there) {}
}
