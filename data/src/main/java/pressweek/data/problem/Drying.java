package pressweek.data.problem;

import java.util.List;
import java.util.Optional;

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
   * @param holds what it holds at the start of the plan; empty where that follows from the barrels
   */
  public record Feed(String dryer, List<String> presses, Optional<Held> holds) {
    public Feed {
      presses = List.copyOf(presses);
    }

    /** A dryer of which nobody said what it holds. */
    public Feed(String dryer, List<String> presses) {
      this(dryer, presses, Optional.empty());
    }
  }

  /**
   * What a dryer holds at the start of a plan.
   *
   * @param content the content
   * @param dryFromMin when it is dry, minutes since 1970 UTC
   */
  public record Held(String content, int dryFromMin) {}

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
