package pressweek.data.molding;

import java.util.OptionalDouble;

/**
 * Whether a mold goes into a press. What is not known on either side is not checked: then the
 * answer is yes, and {@code known} says no. Locating ring, nozzle, knock-outs, water and crane are
 * not checked at all.
 */
public final class MoldFit {
  private MoldFit() {}

  /** Length and width, or width and height, in mm; either may be unknown. */
  public record Sides(OptionalDouble first, OptionalDouble second) {
    /** True when both are known. */
    public boolean known() {
      return first.isPresent() && second.isPresent();
    }
  }

  /** Both sides of the mold lie between the tie bars, one way round or the other. */
  public static boolean betweenTieBars(Sides mold, Sides tieBars) {
    if (!mold.known() || !tieBars.known()) {
      return true;
    }
    double length = mold.first().getAsDouble();
    double width = mold.second().getAsDouble();
    double x = tieBars.first().getAsDouble();
    double y = tieBars.second().getAsDouble();
    return length <= x && width <= y || length <= y && width <= x;
  }

  /**
   * The height of the mold lies between the least and the most that the press closes on (seminar4u,
   * "machine specs").
   */
  public static boolean height(OptionalDouble heightMm, Sides leastAndMost) {
    if (heightMm.isEmpty()) {
      return true;
    }
    double height = heightMm.getAsDouble();
    return height >= leastAndMost.first().orElse(height)
        && height <= leastAndMost.second().orElse(height);
  }

  /**
   * The opening that a mold needs, mm: what its heads need, the stud that stands in it, and room
   * for the hand (common practice, no source).
   */
  public static double openingMm(double headsMm, double studMm, double clearanceMm) {
    return headsMm + studMm + clearanceMm;
  }
}
