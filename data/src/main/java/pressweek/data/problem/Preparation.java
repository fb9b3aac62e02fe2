package pressweek.data.problem;

import java.util.List;
import java.util.Optional;

/**
 * What the material handler has to know to get plastic ready; the planner itself asks none of it.
 *
 * @param granules resins as they come
 * @param masterbatches what colours them
 * @param dryers dryers and the presses that they feed
 * @param coldStartH further hours of drying until a cold hopper is at temperature
 */
public record Preparation(
    List<Granules> granules,
    List<Masterbatch> masterbatches,
    List<Dryer> dryers,
    double coldStartH) {
  public Preparation {
    granules = List.copyOf(granules);
    masterbatches = List.copyOf(masterbatches);
    dryers = List.copyOf(dryers);
  }

  /** The granules of a resin; empty when nothing is recorded. */
  public Optional<Granules> granules(String resin) {
    return granules.stream().filter(g -> g.resin().equals(resin)).findFirst();
  }

  /** What gives a resin its colour: the row of the resin, else that of all resins. */
  public Optional<Masterbatch> masterbatch(String resin, String colour) {
    List<Masterbatch> known =
        masterbatches.stream().filter(m -> m.colour().equals(colour)).toList();
    return known.stream()
        .filter(m -> m.resin().equals(resin))
        .findFirst()
        .or(() -> known.stream().filter(m -> m.resin().isEmpty()).findFirst());
  }

  /** The first dryer that feeds a press. */
  public Optional<Dryer> dryer(String press) {
    return dryers.stream().filter(d -> d.presses().contains(press)).findFirst();
  }
}
