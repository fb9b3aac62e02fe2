package pressweek.data.molding;

/**
 * Ground runners that go back into the run they come from. Parts with metal in them never do, and
 * other scrap parts are not counted on.
 *
 * <p>In the long run no more can go in than comes out, nor more than the limit allows; what is over
 * is sold or scrapped (arithmetic our own: runners of 40 % at a limit of 25 % leave 15 %).
 *
 * @param share regrind in the material, as a fraction of its mass, 0 to 1
 * @param surplus runners that cannot go back, as a fraction of the mass of all shots, 0 to 1
 */
public record Regrind(double share, double surplus) {
  /** Whether regrind is held back, beside the resin's own limit. */
  public enum Restriction {
    /** Nothing is asked of the part but what the resin's limit says. */
    NONE,
    /** Food contact or restricted substances, with a record that approves regrind. */
    APPROVED,
    /** Food contact or restricted substances without such a record: no regrind. */
    NOT_APPROVED
  }

  /** The most regrind that is allowed, percent of the mass. */
  public static double limitPct(double resinLimitPct, Restriction restriction) {
    return restriction == Restriction.NOT_APPROVED ? 0 : clamp(resinLimitPct, 100);
  }

  /**
   * The steady state of a run.
   *
   * @param runnerG grams of the runner of a shot
   * @param shotG grams of the whole shot; nothing goes back when it is not above 0
   * @param limitPct most regrind that is allowed, percent
   */
  public static Regrind steady(double runnerG, double shotG, double limitPct) {
    if (!(shotG > 0)) {
      return new Regrind(0, 0);
    }
    double runner = clamp(runnerG / shotG, 1);
    double share = Math.min(runner, limitPct / 100);
    return new Regrind(share, runner - share);
  }

  private static double clamp(double value, double most) {
    return Math.max(0, Math.min(most, value));
  }
}
