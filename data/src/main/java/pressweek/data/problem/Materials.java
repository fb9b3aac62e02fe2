package pressweek.data.problem;

import java.util.List;
import java.util.Optional;

/**
 * What goes into the presses.
 *
 * @param resins resins
 * @param colours colours
 * @param inserts insert parts
 * @param stock components at hand and on the way
 * @param preparation how plastic is got ready; empty in a plan that was made before it was kept
 */
public record Materials(
    List<Resin> resins,
    List<Colour> colours,
    List<Insert> inserts,
    Stock stock,
    Optional<Preparation> preparation) {
  public Materials {
    resins = List.copyOf(resins);
    colours = List.copyOf(colours);
    inserts = List.copyOf(inserts);
  }

  /** Materials of which nothing is known about how plastic is got ready. */
  public Materials(List<Resin> resins, List<Colour> colours, List<Insert> inserts, Stock stock) {
    this(resins, colours, inserts, stock, Optional.empty());
  }
}
