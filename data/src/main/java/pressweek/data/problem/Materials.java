package pressweek.data.problem;

import java.util.List;

/**
 * What goes into the presses.
 *
 * @param resins resins
 * @param colours colours
 * @param inserts insert parts
 * @param stock components at hand and on the way
 */
public record Materials(
    List<Resin> resins, List<Colour> colours, List<Insert> inserts, Stock stock) {
  public Materials {
    resins = List.copyOf(resins);
    colours = List.copyOf(colours);
    inserts = List.copyOf(inserts);
  }
}
