package pressweek.solver.offer;

import java.util.Optional;
import pressweek.data.plan.Head;
import pressweek.data.plan.Plan;
import pressweek.data.plan.Settings;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Unplaced;
import pressweek.solver.Planner;
import pressweek.solver.StopSign;
import pressweek.solver.Watcher;
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
  private final NewLine line;
  private final Bests bests;
  private final Insertion insertion;
  private final Plan last;
  private final int needMin;
  private final StopSign stop;
  private int searches;

  private Offering(Basis basis, NewLine line, int needMin, StopSign stop) {
    before = new Before(basis);
    this.line = line;
    this.needMin = needMin;
    this.stop = stop;
    bests = new Bests(needMin);
    insertion = new Insertion(before, line, needMin, MOST_PLACES, stop);
    last = insertion.replay(before.standing());
  }

  /**
   * What can be offered.
   *
   * @param basis the plan without the new line
   * @param problem its problem with the jobs of the new line at the end, first parts first
   * @param needMin when the new line should be ready, minutes since 1970 UTC
   * @param each how long each of the two searches may take; its seed
   * @param stop ends it with what has been found
   */
  public static Offers of(Basis basis, Problem problem, int needMin, Settings each, StopSign stop) {
    return placed(basis, problem, needMin, stop).offers(each);
  }

  /**
   * The new line tried in every place of the plan as it stands, which takes little time.
   *
   * @param basis the plan without the new line
   * @param problem its problem with the jobs of the new line at the end, first parts first
   * @param needMin when the new line should be ready, minutes since 1970 UTC
   * @param stop ends it with what has been found, and the searches that follow
   */
  public static Offering placed(Basis basis, Problem problem, int needMin, StopSign stop) {
    NewLine line = NewLine.in(problem, basis.standing().problem()).unhurried();
    Offering offering = new Offering(basis, line, needMin, stop);
    offering.insertion.into(offering.last, offering.bests);
    return offering;
  }

  /**
   * What can be offered, after two searches that go on from the best places.
   *
   * @param each how long each of them may take; its seed
   */
  public Offers offers(Settings each) {
    if (bests.soonest().isPresent()) {
      searchUnharmed(each);
      searchByNeed(each);
    }
    boolean cut = stop.isGiven();
    return new Offers(
        bests.unharmed().map(o -> due(o, o.promisedMin())),
        bests.byNeed().map(o -> due(o, needMin)),
        bests.soonest().map(o -> due(o, o.promisedMin())),
        cut || bests.soonest().isPresent() ? Optional.empty() : whyNone(),
        insertion.tried(),
        searches,
        cut);
  }

  private Optional<Unplaced> whyNone() {
    return last.unplaced().stream().filter(one -> line.jobs().contains(one.id())).findFirst();
  }

  /** A search in which others do not become later, for an earlier time than the places gave. */
  private void searchUnharmed(Settings each) {
    boolean asSoonAsAny =
        bests.unharmed().isPresent()
            && bests.unharmed().get().promisedMin() == bests.soonest().orElseThrow().promisedMin()
            && bests.unharmed().get().price().costsMore() <= 0;
    if (!asSoonAsAny) {
      Plan start = bests.unharmed().or(bests::soonest).orElseThrow().plan();
      search(Dues.protecting(line.problem(), line.jobs(), before.standing().runs()), start, each);
    }
  }

  /** A search for what costs less by the time of need, where that costs anything. */
  private void searchByNeed(Settings each) {
    boolean free = bests.byNeed().filter(o -> o.price().costsMore() <= 0).isPresent();
    if (!free) {
      Plan start = bests.byNeed().or(bests::soonest).orElseThrow().plan();
      search(Dues.wanting(line.problem(), line.jobs(), needMin), start, each);
    }
  }

  private void search(Problem leaning, Plan start, Settings each) {
    if (stop.isGiven()) {
      return;
    }
    searches++;
    Head limited = Basis.head(before.standing(), each);
    Planner planner = new Planner(leaning);
    Plan found =
        stop.heeding(planner::stop, () -> planner.plan(limited, Optional.of(start), Watcher.NONE));
    insertion.take(insertion.replay(found), bests);
  }

  /** The offer by the due time that it would get, audited. */
  private Offer due(Offer offer, int dueMin) {
    Problem due = Dues.due(line.problem(), line.jobs(), dueMin);
    return before.audited(insertion.offer(Replay.of(due, offer.plan())).orElseThrow());
  }
}
