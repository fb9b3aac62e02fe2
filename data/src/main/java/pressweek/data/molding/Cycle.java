package pressweek.data.molding;

/**
 * The time of one shot, seconds, put together from what happens in it.
 *
 * <p>With two lower halves one is unloaded and loaded while the other molds (principle: published
 * pages on vertical presses with shuttle and rotary tables; arithmetic our own).
 */
public final class Cycle {
  private Cycle() {}

  /** Unloading and loading by hand, between shots. */
  public record Hands(double unloadS, double loadS) {
    double bothS() {
      return unloadS + loadS;
    }
  }

  /** One lower half: the press waits for the hands. */
  public static double oneLowerHalfS(double moldS, Hands hands) {
    return moldS + hands.bothS();
  }

  /** Two or more lower halves: whichever is slower, the mold or the hands, and the table's move. */
  public static double severalLowerHalvesS(double moldS, Hands hands, double indexS) {
    return Math.max(moldS, hands.bothS()) + indexS;
  }
}
