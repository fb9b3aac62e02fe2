package pressweek.data.problem;

import java.util.List;

/**
 * Drying as far as the planner counts it.
 *
 * @param dryers dryers and the presses that each may feed; several may feed one press
 * @param materials materials that are dried; others need no dryer
 * @param cleanMin minutes of the clock to clean a dryer before another content
 */
public record Drying(List<Feed> dryers, List<Dried> materials, int cleanMin) {
  /** A plant whose dryers are not planned. */
  public static final Drying NONE = new Drying(List.of(), List.of(), 0);

  public Drying {
    dryers = List.copyOf(dryers);
    materials = List.copyOf(materials);
  }

  /**
   * A dryer.
   *
   * @param dryer dryer
   * @param presses presses that it may feed
   */
  public record Feed(String dryer, List<String> presses) {
    public Feed {
      presses = List.copyOf(presses);
    }
  }

  /**
   * A material that is dried.
   *
   * @param resin resin
   * @param colour colour
   * @param content what is in the dryer: the resin where the colour is dosed at the press, resin
   *     and colour where it comes coloured
   * @param minutes minutes of drying before the run
   */
  public record Dried(String resin, String colour, String content, int minutes) {}
}
