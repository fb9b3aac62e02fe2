package pressweek.data.learning;

import java.util.Optional;

/**
 * A figure of the plant as it is and as past runs would have it.
 *
 * @param figure which figure
 * @param what whose figure, in words, for example {@code mold M-LV90-1, resin PP, any press}
 * @param where where it stands; empty for a row that is not there yet
 * @param old the figure now; empty where there is none
 * @param found what past runs say
 * @param verdict what is proposed
 */
public record Proposal(
    Figure figure, String what, String where, Optional<Double> old, Robust found, Verdict verdict) {
  /** A figure that may be learnt. */
  public enum Figure {
    /** Seconds of a whole cycle. */
    CYCLE("cycle_s"),
    /** Scrap, percent of all parts. */
    SCRAP("scrap_pct"),
    /** Minutes of a change. */
    CHANGE("minutes"),
    /** Share of working time that makes parts, percent. */
    EFFICIENCY("efficiency_pct");

    private final String column;

    Figure(String column) {
      this.column = column;
    }

    /** The column or key in which it stands. */
    public String column() {
      return column;
    }
  }

  /** What is proposed. */
  public enum Verdict {
    /** Fewer runs than the plant learns from. */
    TOO_FEW,
    /** The figure lies within the interval. */
    STAYS,
    /** The figure is revised. */
    REVISED,
    /** There is no figure yet, and one is proposed. */
    NEW,
    /** There is no row that could hold the figure, and too little is known for a new one. */
    NO_ROW
  }

  /** The figure that is proposed: one decimal, whole minutes for a change. */
  public double proposed() {
    return figure == Figure.CHANGE
        ? Math.rint(found.middle())
        : Math.rint(found.middle() * 10) / 10;
  }

  /** The same where there is no row that it could be changed in. */
  Proposal withoutRow() {
    return changes() ? new Proposal(figure, what, where, old, found, Verdict.NO_ROW) : this;
  }

  /** True when something is to be changed. */
  public boolean changes() {
    return verdict == Verdict.REVISED || verdict == Verdict.NEW;
  }
}
