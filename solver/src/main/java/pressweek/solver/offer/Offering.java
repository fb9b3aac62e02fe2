package pressweek.solver.offer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Job;
import pressweek.data.problem.Option;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Unplaced;
import pressweek.solver.Planner;
import pressweek.solver.Watcher;
import pressweek.solver.why.Reordering;
import pressweek.solver.why.Replay;

/**
 * Finds what can be offered for a new order line: it is tried in every place of every press that
 * may run it, all else in its order; then searches that may rearrange all else go on from the best
 * of these. What counts in the end is each plan carried out by the plant's own rates, and audited.
 */
public final class Offering {
  /** Places tried for one run at most, spread over all of them. */
  private static final int MOST_PLACES = 2_000;

  private final Before before;
  private final Problem unhurried;
  private final List<String> lines;
  private final Bests bests;
  private final int needMin;
  private int tried;
  private int searches;

  private Offering(Basis basis, Problem problem, Set<String> lines, int needMin) {
    before = new Before(basis);
    unhurried = Dues.unhurried(problem, lines);
    this.lines = List.copyOf(lines);
    this.needMin = needMin;
    bests = new Bests(needMin);
  }

  /**
   * What can be offered.
   *
   * @param basis the plan without the new line
   * @param problem its problem with the jobs of the new line at the end, first parts first
   * @param needMin when the new line should be ready, minutes since 1970 UTC
   * @param each how long each of the two searches may take; its seed
   */
  public static Offers of(Basis basis, Problem problem, int needMin, Settings each) {
    Set<String> lines = new LinkedHashSet<>(problem.jobs().stream().map(Job::id).toList());
    basis.standing().problem().jobs().forEach(job -> lines.remove(job.id()));
    if (lines.isEmpty()) {
      throw new IllegalArgumentException("the problem has no new line");
    }
    return new Offering(basis, problem, lines, needMin).offers(each);
  }

  private Offers offers(Settings each) {
    Plan last = Replay.of(unhurried, before.standing());
    insert(last, 0, bests);
    if (bests.soonest().isEmpty()) {
      return none(last);
    }
    searchUnharmed(each);
    searchByNeed(each);
    return new Offers(
        bests.unharmed().map(o -> due(o, o.promisedMin())),
        bests.byNeed().map(o -> due(o, needMin)),
        bests.soonest().map(o -> due(o, o.promisedMin())),
        Optional.empty(),
        tried,
        searches);
  }

  private Offers none(Plan last) {
    Optional<Unplaced> why =
        last.unplaced().stream().filter(line -> lines.contains(line.id())).findFirst();
    return new Offers(Optional.empty(), Optional.empty(), Optional.empty(), why, tried, searches);
  }

  /** Tries a part of the line in every place; the parts after it go on from the best of these. */
  private void insert(Plan from, int part, Bests into) {
    String line = lines.get(part);
    boolean isLast = part == lines.size() - 1;
    Bests found = isLast ? into : new Bests(needMin);
    Reordering order = new Reordering(from);
    List<String> presses = presses(line).stream().filter(p -> order.canRun(line, p)).toList();
    List<Integer> places = presses.stream().map(p -> places(from, order, p)).toList();
    int step = 1 + places.stream().mapToInt(Integer::intValue).sum() / MOST_PLACES;
    for (int p = 0; p < presses.size(); p++) {
      for (int place = 0; place < places.get(p); place += step) {
        Plan plan = order.moved(line, presses.get(p), place);
        tried++;
        if (Reordering.broken(before.standing(), plan).isEmpty()) {
          offer(plan, lines.subList(0, part + 1)).ifPresent(o -> found.take(o, before));
        }
      }
    }
    if (!isLast) {
      found.all().forEach(offer -> insert(offer.plan(), part + 1, into));
    }
  }

  private List<String> presses(String line) {
    return unhurried.jobs().stream()
        .filter(job -> job.id().equals(line))
        .flatMap(job -> job.options().stream())
        .map(Option::press)
        .distinct()
        .toList();
  }

  /** Places on a press after what is fixed there, the one at its end among them. */
  private static int places(Plan plan, Reordering order, String press) {
    long runs = plan.runs().stream().filter(run -> run.press().equals(press)).count();
    return Math.max(0, (int) runs - order.fixedOn(press)) + 1;
  }

  /** What a plan offers; nothing where the line, or so many parts of it, have no run. */
  private Optional<Offer> offer(Plan ordered, List<String> parts) {
    List<Run> runs = new ArrayList<>();
    for (Run run : ordered.runs()) {
      if (parts.contains(run.job())) {
        runs.add(run);
      }
    }
    if (runs.size() < parts.size()) {
      return Optional.empty();
    }
    runs.sort(Comparator.comparingInt(Run::readyMin));
    int ready = runs.get(runs.size() - 1).readyMin();
    int promised = CutOffs.atOrAfter(unhurried.plant(), ready);
    return Optional.of(new Offer(ordered, runs, ready, promised, before.price(ordered), List.of()));
  }

  /** A search in which others do not become later, for an earlier time than the places gave. */
  private void searchUnharmed(Settings each) {
    boolean asSoonAsAny =
        bests.unharmed().isPresent()
            && bests.unharmed().get().promisedMin() == bests.soonest().orElseThrow().promisedMin()
            && bests.unharmed().get().price().costsMore() <= 0;
    if (!asSoonAsAny) {
      Plan start = bests.unharmed().or(bests::soonest).orElseThrow().plan();
      search(Dues.protecting(unhurried, lines, before.standing().runs()), start, each);
    }
  }

  /** A search for what costs less by the time of need, where that costs anything. */
  private void searchByNeed(Settings each) {
    boolean free = bests.byNeed().filter(o -> o.price().costsMore() <= 0).isPresent();
    if (!free) {
      Plan start = bests.byNeed().or(bests::soonest).orElseThrow().plan();
      search(Dues.wanting(unhurried, lines, needMin), start, each);
    }
  }

  private void search(Problem leaning, Plan start, Settings each) {
    searches++;
    Head limited = Basis.head(before.standing(), each);
    Plan found = new Planner(leaning).plan(limited, Optional.of(start), Watcher.NONE);
    Plan carried = Replay.of(unhurried, found);
    if (Reordering.broken(before.standing(), carried).isEmpty()) {
      offer(carried, lines).ifPresent(o -> bests.take(o, before));
    }
  }

  /** The offer by the due time that it would get, audited. */
  private Offer due(Offer offer, int dueMin) {
    Problem due = Dues.due(unhurried, lines, dueMin);
    return before.audited(offer(Replay.of(due, offer.plan()), lines).orElseThrow());
  }
}
