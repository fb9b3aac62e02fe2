package pressweek.data.published;

import java.util.List;
import java.util.Optional;

/**
 * A substance that Directive 2011/65/EU (RoHS), Annex II restricts in electrical and electronic
 * equipment, with the share that is tolerated. It counts in each homogeneous material: a chromate
 * film on its own, not the stud with its film. Annexes III and IV exempt some uses.
 *
 * @param symbol symbol or abbreviation: {@code Cr(VI)}, {@code DEHP}
 * @param name name
 * @param maxPercent tolerated share, percent by weight in homogeneous material
 */
public record RestrictedSubstance(String symbol, String name, double maxPercent) {
  private static final List<RestrictedSubstance> ALL =
      PrintedTable.rows(RestrictedSubstance.class, "rohs.csv").stream()
          .map(
              row ->
                  new RestrictedSubstance(row.get(0), row.get(1), Double.parseDouble(row.get(2))))
          .toList();

  public RestrictedSubstance {
    if (!(maxPercent > 0 && maxPercent < 100)) {
      throw new IllegalArgumentException(
          symbol + ": percentage must be above 0 and below 100 but was " + maxPercent);
    }
  }

  /** All of the annex, in its order. */
  public static List<RestrictedSubstance> all() {
    return ALL;
  }

  /** The substance with a symbol, in any capitals. */
  public static Optional<RestrictedSubstance> find(String symbol) {
    return ALL.stream().filter(s -> s.symbol().equalsIgnoreCase(symbol)).findFirst();
  }

  /** True when a share, percent by weight in homogeneous material, is more than is tolerated. */
  public boolean isExceededBy(double percent) {
    return percent > maxPercent;
  }
}
