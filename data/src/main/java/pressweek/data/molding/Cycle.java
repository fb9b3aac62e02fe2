package pressweek.data.molding;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The time of one shot, seconds, put together from what happens in it.
 *
 * <p>With two lower halves one is unloaded and loaded while the other molds (principle: published
 * pages on vertical presses with shuttle and rotary tables; arithmetic our own).
 */
public final class Cycle {
  /** What binary fractions take off a whole number of presses. */
  private static final double HALF_DIGITS = 1e-9;

  private Cycle() {}

  /**
   * What a mold does by itself in one shot, seconds.
   *
   * @param closeS closing
   * @param injectS injecting
   * @param coolS holding and cooling, or curing
   * @param recoveryS screw recovery; it goes on during cooling and counts only if it is longer
   * @param openS opening and ejecting
   */
  public record Strokes(
      double closeS, double injectS, double coolS, double recoveryS, double openS) {
    /** Seconds from one closing to the end of ejection. */
    public double moldS() {
      return closeS + injectS + Math.max(coolS, recoveryS) + openS;
    }
  }

  /** Unloading and loading between shots, by hand or by a machine; seconds a shot. */
  public record Hands(double unloadS, double loadS) {
    /**
     * Loading piece by piece, as by hand. A machine with a grip for all cavities loads them at
     * once: then {@code loadS} is the one move.
     */
    public static Hands byPiece(double unloadS, int pieces, double loadSEach) {
      return new Hands(unloadS, pieces * loadSEach);
    }

    /** Both, one after the other. */
    public double bothS() {
      return unloadS + loadS;
    }
  }

  /**
   * The whole cycle on a table.
   *
   * <p>One lower half: the press waits for the hands. Two: whichever is slower, the mold or the
   * hands, and the table's move. Three or more: molding, unloading and loading each have a station
   * with hands of its own, and the slowest sets the pace; where one person serves all stations, ask
   * for two halves.
   *
   * @param lowerHalves lower halves of the mold on the table
   * @param moldS mold time
   * @param indexS the table's move
   */
  public static double wholeS(int lowerHalves, double moldS, Hands hands, double indexS) {
    if (lowerHalves < 2) {
      return moldS + hands.bothS();
    }
    return lowerHalves == 2
        ? stationsS(List.of(moldS, hands.bothS()), indexS)
        : stationsS(List.of(moldS, hands.unloadS(), hands.loadS()), indexS);
  }

  /** Stations of a table that work side by side: the slowest and the table's move. */
  public static double stationsS(List<Double> stationsS, double indexS) {
    return stationsS.stream().mapToDouble(Double::doubleValue).max().orElse(0) + indexS;
  }

  /**
   * Curing of a thermoset, which takes the place of cooling: an estimate, in proportion to the
   * thickest wall (common practice, no source). Empty when either is not above 0.
   */
  public static OptionalDouble cureS(double wallMm, double curePerMmS) {
    return wallMm > 0 && curePerMmS > 0
        ? OptionalDouble.of(wallMm * curePerMmS)
        : OptionalDouble.empty();
  }

  /**
   * Presses that one operator can tend: how often his work of a shot goes into the cycle; 0 when it
   * is longer than the cycle. Empty when there is no work to divide by.
   */
  public static OptionalInt pressesPerOperator(double cycleS, double workS) {
    return workS > 0
        ? OptionalInt.of((int) Math.floor(cycleS / workS + HALF_DIGITS))
        : OptionalInt.empty();
  }
}
