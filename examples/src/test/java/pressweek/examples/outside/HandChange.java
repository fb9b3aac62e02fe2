package pressweek.examples.outside;

import java.util.HashMap;
import java.util.Map;
import pressweek.data.problem.ChangeTable;
import pressweek.data.problem.Mold;
import pressweek.data.problem.Press;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Resin;
import pressweek.data.problem.Setup;

/**
 * Changes worked out again from {@code docs/rules.md}, section Changes, without the project's own
 * arithmetic: molds, tooling, resins and colours by the change table. No food clearance, no
 * recorded changes, and every mold, resin and colour has all its figures.
 */
final class HandChange {
  private final ChangeTable table;
  private final Map<String, Integer> changeMin = new HashMap<>();
  private final Map<String, Double> meltC = new HashMap<>();
  private final Map<String, Double> lightness = new HashMap<>();
  private final Map<String, Integer> barrelG = new HashMap<>();

  HandChange(Problem problem) {
    table = problem.plant().changes();
    for (Mold mold : problem.floor().molds()) {
      changeMin.put(mold.id(), mold.change().changeMin().orElseThrow());
    }
    for (Resin resin : problem.materials().resins()) {
      meltC.put(resin.id(), resin.meltC().orElseThrow());
    }
    problem.materials().colours().forEach(c -> lightness.put(c.id(), c.lightness().orElseThrow()));
    for (Press press : problem.floor().presses()) {
      barrelG.put(press.id(), (int) Math.ceil(press.size().shotPsG().orElseThrow()));
    }
  }

  /** Minutes to take a mold off. */
  int dismountMin(String mold) {
    return (changeMin.get(mold) * table.dismountPct() + 99) / 100;
  }

  /** Whether a mold, a tooling set, a resin or a colour is exchanged. */
  boolean exchanges(Setup from, Setup to) {
    boolean mold = !from.mold().equals(to.mold()) || !from.tooling().equals(to.tooling());
    return mold || resinChanges(from, to) || colourChanges(from, to);
  }

  /** Minutes of the change. */
  int minutes(Setup from, Setup to) {
    int mold = 0;
    if (!from.mold().equals(to.mold())) {
      int off = from.mold().isEmpty() ? 0 : dismountMin(from.mold());
      mold = off + changeMin.get(to.mold()) - dismountMin(to.mold());
    } else if (!from.tooling().equals(to.tooling())) {
      mold = table.toolingMin();
    }
    int barrel = Math.max(resinMinutes(from, to), colourMinutes(from, to));
    int both = table.colourWorkBeside() ? Math.max(mold, barrel) : mold + barrel;
    return exchanges(from, to) ? both + table.firstArticleMin() : 0;
  }

  /** Grams purged on a press. */
  int purgeG(String press, Setup from, Setup to) {
    int resin = resinChanges(from, to) ? table.resin().purgeThousandths() : 0;
    int colour = 0;
    if (colourChanges(from, to)) {
      colour =
          lighter(from, to) > 0
              ? table.colour().purgeLighterThousandths()
              : table.colour().purgeDarkerThousandths();
    }
    return (Math.max(resin, colour) * barrelG.get(press) + 999) / 1000;
  }

  private static boolean resinChanges(Setup from, Setup to) {
    return !from.resin().isEmpty() && !from.resin().equals(to.resin());
  }

  private static boolean colourChanges(Setup from, Setup to) {
    return !from.colour().isEmpty() && !from.colour().equals(to.colour());
  }

  private double lighter(Setup from, Setup to) {
    return lightness.get(to.colour()) - lightness.get(from.colour());
  }

  private int resinMinutes(Setup from, Setup to) {
    if (!resinChanges(from, to)) {
      return 0;
    }
    double hotter = meltC.get(to.resin()) - meltC.get(from.resin());
    ChangeTable.ResinStep step = table.resin();
    if (Math.abs(hotter) <= step.toleranceC()) {
      return step.sameMin();
    }
    return hotter > 0 ? step.upMin() : step.downMin();
  }

  private int colourMinutes(Setup from, Setup to) {
    if (!colourChanges(from, to)) {
      return 0;
    }
    ChangeTable.ColourStep step = table.colour();
    double lighter = lighter(from, to);
    return lighter <= 0
        ? step.darkerMin()
        : step.lighterMin() + (int) Math.ceil(step.lighterPer100Min() * lighter / 100);
  }
}
