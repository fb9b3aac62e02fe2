package pressweek.solver.offer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** The best offers so far, each by its own measure; an offer that breaks a rule is none. */
final class Bests {
  private static final Comparator<Offer> SOONEST =
      Comparator.comparingInt(Offer::promisedMin)
          .thenComparingLong(o -> o.price().costsMore())
          .thenComparingInt(o -> o.price().moved())
          .thenComparingInt(Offer::readyMin);

  private static final Comparator<Offer> CHEAPEST =
      Comparator.<Offer>comparingLong(o -> o.price().costsMore())
          .thenComparingInt(o -> o.price().later().size())
          .thenComparingInt(o -> o.price().moved())
          .thenComparingInt(Offer::readyMin);

  private final Best unharmed = new Best(SOONEST, Offer::harmsNobody);
  private final Best soonest = new Best(SOONEST, offer -> true);
  private final Best byNeed;
  private final Best inTime;

  /** Best offers where the line is needed by a time. */
  Bests(int needMin) {
    byNeed = new Best(CHEAPEST, offer -> offer.readyMin() <= needMin);
    inTime = new Best(CHEAPEST, offer -> offer.readyMin() <= needMin && offer.harmsNobody());
  }

  /** Counts an offer among the best; it is audited once, if it is better by any measure. */
  void take(Offer offer, Before before) {
    Audited audited = new Audited(offer, before);
    unharmed.take(audited);
    soonest.take(audited);
    byNeed.take(audited);
    inTime.take(audited);
  }

  Optional<Offer> unharmed() {
    return unharmed.offer();
  }

  Optional<Offer> soonest() {
    return soonest.offer();
  }

  Optional<Offer> byNeed() {
    return byNeed.offer();
  }

  /** The cheapest that is ready by the time of need with nobody made late. */
  Optional<Offer> inTime() {
    return inTime.offer();
  }

  /** Those that differ. */
  List<Offer> all() {
    List<Offer> all = new ArrayList<>();
    for (Best best : List.of(unharmed, byNeed, soonest)) {
      best.offer().filter(o -> !all.contains(o)).ifPresent(all::add);
    }
    return all;
  }

  private static final class Best {
    private final Comparator<Offer> order;
    private final Predicate<Offer> suits;
    private List<Offer> found = List.of();

    Best(Comparator<Offer> order, Predicate<Offer> suits) {
      this.order = order;
      this.suits = suits;
    }

    Optional<Offer> offer() {
      return found.stream().findFirst();
    }

    /** What breaks a rule is found out last, since an audit takes longer than a comparison. */
    void take(Audited other) {
      boolean better = found.isEmpty() || order.compare(other.offer, found.get(0)) < 0;
      if (better && suits.test(other.offer)) {
        Offer whole = other.whole();
        found = whole.findings().isEmpty() ? List.of(whole) : found;
      }
    }
  }

  /** An offer that is audited when that is asked for. */
  private static final class Audited {
    private final Offer offer;
    private final Before before;
    private List<Offer> whole = List.of();

    Audited(Offer offer, Before before) {
      this.offer = offer;
      this.before = before;
    }

    Offer whole() {
      if (whole.isEmpty()) {
        whole = List.of(before.audited(offer));
      }
      return whole.get(0);
    }
  }
}
