package pressweek.solver.stress;

import pressweek.data.problem.Uncertainty;

/**
 * What a plan is replayed under.
 *
 * @param uncertainty how far things may differ from the plan
 * @param spared one thing for which all goes by the plan
 * @param receiptShiftMin minutes by which all receipts come in later than expected, beside their
 *     luck; negative for sooner
 */
record Situation(Uncertainty uncertainty, Spared spared, int receiptShiftMin) {
  /** A situation in which nothing is spared. */
  static Situation of(Uncertainty uncertainty) {
    return new Situation(uncertainty, Spared.NOTHING, 0);
  }

  /** The same in which one thing is spared. */
  Situation sparing(Spared.Kind kind, int number) {
    return new Situation(uncertainty, new Spared(kind, number), receiptShiftMin);
  }

  /**
   * One thing for which all goes by the plan.
   *
   * @param kind what it is
   * @param number its number: of a press, a run, a receipt or a mold
   */
  record Spared(Kind kind, int number) {
    static final Spared NOTHING = new Spared(Kind.NOTHING, -1);

    enum Kind {
      NOTHING,
      PRESS,
      MOLD,
      RUN,
      RECEIPT
    }

    boolean is(Kind asked, int which) {
      return kind == asked && number == which;
    }
  }
}
