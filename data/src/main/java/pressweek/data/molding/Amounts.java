package pressweek.data.molding;

import java.math.BigInteger;

/**
 * Shots, minutes and inserts of a run. Shares are exact to a ten-thousandth of a percent, so that
 * nothing is rounded up by an error of binary fractions; losses divide, they never multiply (100
 * good pieces at 20 % scrap are 125, not 120).
 */
public final class Amounts {
  private static final long WHOLE = 1_000_000;
  private static final long MILLIS_PER_MINUTE = 60_000;

  /** Pieces or grams that are never exceeded: more than any stock. */
  public static final int MOST = 1_000_000_000;

  /** A millionth of a gram, so that an error of binary fractions does not cost one. */
  private static final double ROUNDING = 1e-6;

  private Amounts() {}

  /**
   * Shots for a number of good pieces.
   *
   * @throws IllegalArgumentException when nothing good can come of a shot: no live cavity, or all
   *     of it scrap
   */
  public static long shots(int good, double scrapPct, int liveCavities) {
    if (liveCavities < 1 || share(scrapPct) >= WHOLE) {
      throw new IllegalArgumentException(
          "live cavities must be at least 1 and scrap below 100 %% but were %d and %s %%"
              .formatted(liveCavities, scrapPct));
    }
    long kept = (WHOLE - share(scrapPct)) * liveCavities;
    return ceilDiv(good * WHOLE, kept);
  }

  /**
   * Working minutes of a number of shots in a plant that gets this share of its working time,
   * rounded up.
   */
  public static long minutes(long shots, int cycleMillis, double efficiencyPct) {
    BigInteger work =
        BigInteger.valueOf(shots)
            .multiply(BigInteger.valueOf(cycleMillis))
            .multiply(BigInteger.valueOf(WHOLE));
    BigInteger minute = BigInteger.valueOf(share(efficiencyPct) * MILLIS_PER_MINUTE);
    return work.add(minute).subtract(BigInteger.ONE).divide(minute).longValueExact();
  }

  /**
   * Inserts for a run: every part of every shot takes its pieces, some of which are lost in
   * handling; then the samples.
   *
   * @param parts parts molded, scrap counted
   * @param perPart pieces in each part
   * @param lossPct inserts lost, percent of those taken
   * @param samples parts kept as samples beside the good ones
   */
  public static int inserts(long parts, int perPart, double lossPct, int samples) {
    long taken = ceilDiv(parts * perPart * WHOLE, WHOLE - share(lossPct));
    return Math.toIntExact(taken + (long) samples * perPart);
  }

  /**
   * Cartons, labels and the like for good parts: pieces for every so many parts, the last ones in
   * full; at most {@link #MOST}, which no stock has.
   */
  public static int packs(int good, int pieces, int per) {
    return (int) Math.min(MOST, ceilDiv(good, per) * pieces);
  }

  /** Grams of a mass, rounded up; at most {@link #MOST}. */
  public static int grams(double kg) {
    return (int) Math.min(MOST, Math.ceil(kg * 1000 - ROUNDING));
  }

  /** A cycle in whole milliseconds, rounded up from a microsecond on. */
  public static int cycleMillis(double seconds) {
    return Math.toIntExact(ceilDiv(Math.round(seconds * 1_000_000), 1000));
  }

  /** The least multiple of {@code by} that is not below {@code amount}. */
  public static int multiple(int amount, int by) {
    return Math.toIntExact(ceilDiv(amount, by) * by);
  }

  private static long share(double pct) {
    return Math.round(pct * WHOLE / 100);
  }

  private static long ceilDiv(long amount, long by) {
    return (amount + by - 1) / by;
  }
}
