package pressweek.solver.offer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Run;
import pressweek.solver.StopSign;
import pressweek.solver.timing.WeekTables;
import pressweek.solver.why.Reordering;
import pressweek.solver.why.Replay;

/**
 * Tries a new line in every place of every press that may run it, all else in its order. Each try
 * carries the whole plan out.
 */
final class Insertion {
  private final Before before;
  private final NewLine line;
  private final int needMin;
  private final int most;
  private final StopSign stop;
  private final WeekTables week;
  private int tried;

  /**
   * Tries a line.
   *
   * @param before what offers are held against
   * @param line the line, unhurried
   * @param needMin when it should be ready
   * @param most places tried for one run at most, spread over all of them
   * @param stop ends it between two places
   */
  Insertion(Before before, NewLine line, int needMin, int most, StopSign stop) {
    this.before = before;
    this.line = line;
    this.needMin = needMin;
    this.most = most;
    this.stop = stop;
    week = new WeekTables(line.problem());
  }

  /** Places tried so far. */
  int tried() {
    return tried;
  }

  /** The order of a plan carried out with the line, which comes last where the plan has it not. */
  Plan replay(Plan plan) {
    return Replay.of(line.problem(), plan, week);
  }

  /** Tries all places in a plan of the same week that has the line somewhere, or nowhere. */
  void into(Plan plan, Bests bests) {
    insert(plan, 0, bests);
  }

  /** Tries a part of the line in every place; the parts after it go on from the best of these. */
  private void insert(Plan from, int part, Bests into) {
    String job = line.jobs().get(part);
    boolean isLast = part == line.jobs().size() - 1;
    Bests found = isLast ? into : new Bests(needMin);
    Reordering order = new Reordering(from, week);
    List<String> presses = line.presses(job).stream().filter(p -> order.canRun(job, p)).toList();
    List<Integer> places = presses.stream().map(p -> places(from, order, p)).toList();
    int step = 1 + places.stream().mapToInt(Integer::intValue).sum() / most;
    for (int p = 0; p < presses.size(); p++) {
      for (int place = 0; place < places.get(p) && !stop.isGiven(); place += step) {
        tried++;
        take(order.moved(job, presses.get(p), place), line.jobs().subList(0, part + 1), found);
      }
    }
    if (!isLast) {
      found.all().forEach(offer -> insert(offer.plan(), part + 1, into));
    }
  }

  /** Places on a press after what is fixed there, the one at its end among them. */
  private static int places(Plan plan, Reordering order, String press) {
    long runs = plan.runs().stream().filter(run -> run.press().equals(press)).count();
    return Math.max(0, (int) runs - order.fixedOn(press)) + 1;
  }

  /** Has a plan with the line counted among the best, unless it breaks a promise. */
  void take(Plan plan, Bests into) {
    take(plan, line.jobs(), into);
  }

  private void take(Plan plan, List<String> parts, Bests into) {
    if (Reordering.broken(before.standing(), plan).isEmpty()) {
      offer(plan, parts).ifPresent(o -> into.take(o, before));
    }
  }

  /** What a plan offers; nothing where the line, or a part of it, has no run. */
  Optional<Offer> offer(Plan plan) {
    return offer(plan, line.jobs());
  }

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
    int promised = CutOffs.atOrAfter(line.problem().plant(), ready);
    return Optional.of(new Offer(ordered, runs, ready, promised, before.price(ordered), List.of()));
  }
}
