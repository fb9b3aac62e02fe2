package pressweek.data.problem;

import java.util.List;

/**
 * How far a week may differ from its plan. Spreads are coefficients of variation: the standard
 * deviation in percent of the mean.
 *
 * @param cycle real cycles, in percent of the planned ones
 * @param scrapSpreadPct spread of the scrap of a run round what its plan allows; 0 for none
 * @param change real change minutes, in percent of the planned ones
 * @param breakdown breakdowns of a press without figures of its own
 * @param presses breakdowns of the presses that have them
 * @param receipts deliveries that come in late
 * @param aim how sure the plant wants to be
 * @param effort how much is replayed and tried
 */
public record Uncertainty(
    Spread cycle,
    double scrapSpreadPct,
    Spread change,
    Breakdown breakdown,
    List<PressBreakdown> presses,
    LateReceipts receipts,
    Aim aim,
    Effort effort) {
  /** A week that goes by its plan, of which nothing is asked. */
  public static final Uncertainty NONE =
      new Uncertainty(
          Spread.NONE,
          0,
          Spread.NONE,
          Breakdown.NONE,
          List.of(),
          new LateReceipts(0, 0),
          Aim.NONE,
          Effort.NONE);

  public Uncertainty {
    presses = List.copyOf(presses);
  }

  /**
   * A quantity that varies from run to run.
   *
   * @param meanPct its mean, in percent of what is planned
   * @param spreadPct its coefficient of variation, percent
   */
  public record Spread(double meanPct, double spreadPct) {
    /** As planned. */
    public static final Spread NONE = new Spread(100, 0);
  }

  /**
   * Breakdowns of a press.
   *
   * @param everyH mean hours of running between two breakdowns; 0 for never
   * @param repairMin mean minutes of a repair
   * @param repairSpreadPct coefficient of variation of the minutes of a repair, percent
   */
  public record Breakdown(double everyH, double repairMin, double repairSpreadPct) {
    /** A press that never breaks down. */
    public static final Breakdown NONE = new Breakdown(0, 0, 0);
  }

  /** A press that has figures of its own. */
  public record PressBreakdown(String press, Breakdown breakdown) {}

  /**
   * Deliveries that come in late.
   *
   * @param latePct chance that a delivery is late, percent
   * @param lateDays mean days by which a late one is late
   */
  public record LateReceipts(double latePct, double lateDays) {}

  /**
   * How sure the plant wants to be.
   *
   * @param surePct share of replays in which a line ought to be on time, percent
   * @param slackMin minutes more before each shipping cut-off of which it asks what they would
   *     bring, the fewest first
   */
  public record Aim(double surePct, List<Integer> slackMin) {
    /** Always on time, and no question. */
    public static final Aim NONE = new Aim(100, List.of());

    public Aim {
      slackMin = List.copyOf(slackMin);
    }
  }

  /**
   * How much is replayed and tried.
   *
   * @param daysOn days after the horizon for which work that was pushed past it goes on
   * @param triedOfAKind presses, molds, runs and receipts of which it is tried, each, what they
   *     cost
   * @param triedRuns runs that are replayed at most for one thing that is tried, all replays
   *     together
   * @param sureReplays replays of each plan where plans are compared
   * @param carefulPct share of runs that take no longer than the most careful of such plans takes
   *     them for, percent
   */
  public record Effort(
      int daysOn, int triedOfAKind, int triedRuns, int sureReplays, double carefulPct) {
    /** Nothing is tried, and nothing goes on after the horizon. */
    public static final Effort NONE = new Effort(0, 0, 0, 1, 50);
  }

  /** The breakdowns of a press. */
  public Breakdown of(String press) {
    return presses.stream()
        .filter(p -> p.press().equals(press))
        .map(PressBreakdown::breakdown)
        .findFirst()
        .orElse(breakdown);
  }

  /** The same with other cycles. */
  public Uncertainty withCycle(Spread other) {
    return new Uncertainty(
        other, scrapSpreadPct, change, breakdown, presses, receipts, aim, effort);
  }

  /** The same with another spread of scrap. */
  public Uncertainty withScrap(double spreadPct) {
    return new Uncertainty(cycle, spreadPct, change, breakdown, presses, receipts, aim, effort);
  }

  /** The same with other change minutes. */
  public Uncertainty withChange(Spread other) {
    return new Uncertainty(cycle, scrapSpreadPct, other, breakdown, presses, receipts, aim, effort);
  }

  /** The same with these breakdowns of every press. */
  public Uncertainty withBreakdown(Breakdown other) {
    return withBreakdowns(other, List.of());
  }

  /** The same with other breakdowns: of presses without figures of their own, and of the others. */
  public Uncertainty withBreakdowns(Breakdown other, List<PressBreakdown> own) {
    return new Uncertainty(cycle, scrapSpreadPct, change, other, own, receipts, aim, effort);
  }

  /** The same with other late receipts. */
  public Uncertainty withReceipts(LateReceipts other) {
    return new Uncertainty(cycle, scrapSpreadPct, change, breakdown, presses, other, aim, effort);
  }

  /** The same for a plant that wants to be otherwise sure. */
  public Uncertainty withAim(Aim other) {
    return new Uncertainty(
        cycle, scrapSpreadPct, change, breakdown, presses, receipts, other, effort);
  }

  /** The same with another effort. */
  public Uncertainty withEffort(Effort other) {
    return new Uncertainty(cycle, scrapSpreadPct, change, breakdown, presses, receipts, aim, other);
  }
}
