package pressweek.data.problem;

import java.util.List;
import java.util.Map;

/**
 * What kits and their papers need to know and the planner does not.
 *
 * @param lookAlikes insert parts that the plant knows to be taken for each other
 * @param declarations what suppliers have declared
 * @param lotPapers papers that came with lots
 * @param tips tips of inserts and items
 * @param recipes masterbatch by colour
 * @param resinLots lots of resins and masterbatches, as far as the plant lists them
 * @param dryers the first dryer by press
 * @param bringing in what amounts pieces leave their bin
 */
public record Kitting(
    List<NamedPair> lookAlikes,
    List<Declaration> declarations,
    List<LotPaper> lotPapers,
    List<Tip> tips,
    List<Recipe> recipes,
    List<Lot> resinLots,
    Map<String, String> dryers,
    Bringing bringing) {
  /** Nothing is known. */
  public static final Kitting NONE =
      new Kitting(
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          Map.of(),
          Bringing.BY_PIECES);

  public Kitting {
    lookAlikes = List.copyOf(lookAlikes);
    declarations = List.copyOf(declarations);
    lotPapers = List.copyOf(lotPapers);
    tips = List.copyOf(tips);
    recipes = List.copyOf(recipes);
    resinLots = List.copyOf(resinLots);
    dryers = Map.copyOf(dryers);
  }
}
