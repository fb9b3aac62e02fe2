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

  void take(Offer offer, Before before) {
    unharmed.take(offer, before);
    soonest.take(offer, before);
    byNeed.take(offer, before);
    inTime.take(offer, before);
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

    /** What breaks a rule is found out last, since an audit takes longer than all else here. */
    void take(Offer other, Before before) {
      boolean better = found.isEmpty() || order.compare(other, found.get(0)) < 0;
      if (better && suits.test(other)) {
        Offer audited = before.audited(other);
        found = audited.findings().isEmpty() ? List.of(audited) : found;
      }
    }
  }
}
