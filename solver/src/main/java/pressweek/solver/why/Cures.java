package pressweek.solver.why;

import java.util.List;

/**
 * What would help a line.
 *
 * @param tried how many changes were tried
 * @param helping those that make it less late, or give it a place, the plan that costs least first
 */
public record Cures(int tried, List<Cure> helping) {
  /** None tried. */
  public static final Cures NONE = new Cures(0, List.of());

  public Cures {
    helping = List.copyOf(helping);
  }
}
