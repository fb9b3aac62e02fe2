package pressweek.data.stress;

/**
 * What it would bring if one thing went otherwise, replay by replay under the same luck.
 *
 * @param kind what kind of thing it is
 * @param what the thing: a press, a mold, a run, a receipt; empty for one of the plant as a whole
 * @param moreOnTime lines that would be on time beside
 * @param fewerLateHours late hours that it would save
 * @param cheaper avoidable cost that it would save, thousandths of a cent
 */
public record Gain(
    Kind kind, String what, Estimate moreOnTime, Estimate fewerLateHours, Estimate cheaper) {
  /** What goes otherwise. */
  public enum Kind {
    /** Every cycle as planned. */
    CYCLES("cycles as planned"),
    /** Every run with its planned scrap. */
    SCRAP("scrap as planned"),
    /** Every change as planned. */
    CHANGES("changes as planned"),
    /** No press breaks down. */
    BREAKDOWNS("no breakdowns"),
    /** Every receipt as expected. */
    RECEIPTS("receipts as expected"),
    /** Repairs take half as long. */
    REPAIRS("repairs in half the time"),
    /** Receipts one day earlier. */
    EARLIER("receipts one day earlier"),
    /** One setter more. */
    SETTER("one setter more in each shift"),
    /** One press never breaks down. */
    PRESS("no breakdowns of press"),
    /** The runs and changes of one mold as planned. */
    MOLD("as planned: mold"),
    /** One run and its change as planned. */
    RUN("as planned: run"),
    /** One receipt as expected. */
    RECEIPT("as expected: receipt of");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** The kind in words. */
    public String words() {
      return words;
    }

    /** True for what concerns the plant as a whole, false for one thing in it. */
    public boolean isWhole() {
      return compareTo(PRESS) < 0;
    }
  }

  /** What goes otherwise, in words. */
  public String words() {
    return what.isEmpty() ? kind.words() : kind.words() + " " + what;
  }
}
