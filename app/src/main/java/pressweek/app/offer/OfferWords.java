package pressweek.app.offer;

import pressweek.data.plan.Plan;
import pressweek.data.problem.Rates;
import pressweek.reports.hours.PlantClock;
import pressweek.reports.schedule.Money;
import pressweek.solver.offer.Offer;
import pressweek.solver.offer.Price;

/** Times and money of offers in words. */
final class OfferWords {
  private final PlantClock clock;
  private final Rates rates;

  /** By the clock and the currency of a plan's plant. */
  OfferWords(Plan plan) {
    clock = PlantClock.of(plan.problem().plant().hours());
    rates = plan.problem().plant().rates();
  }

  String moment(int minute) {
    return clock.moment(minute);
  }

  /** Whether the plant has rates, so that there is money to speak of. */
  boolean hasMoney() {
    return rates.shown();
  }

  /** How many lines pay. */
  static String payers(Price price) {
    int count = price.later().size();
    return count == 0 ? "nobody late" : count == 1 ? "1 line pays" : count + " lines pay";
  }

  /** A price with its sign, one below nothing in words, where the plant has rates. */
  String price(Price price) {
    return rates.shown() ? ", " + stated(price.costsMore()) : "";
  }

  String stated(long amount) {
    return amount < 0 ? money(-amount) + " cheaper" : signed(amount);
  }

  String money(long amount) {
    return rates.currency() + " " + Money.figure(amount);
  }

  String signed(long amount) {
    return rates.currency() + " " + (amount > 0 ? "+" : "") + Money.figure(amount);
  }

  /** When it is ready, and when it ships. */
  String date(Offer offer) {
    String ships =
        offer.promisedMin() == offer.readyMin() ? "" : ", ships " + moment(offer.promisedMin());
    return "ready " + moment(offer.readyMin()) + ships;
  }
}
