package pressweek.solver.rules;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import pressweek.data.problem.ChangeTable;
import pressweek.data.problem.Colour;
import pressweek.data.problem.Problem;
import pressweek.data.problem.Resin;

/** What another resin or colour in the barrel asks for; the answer stays until the next question. */
final class BarrelStep {
  private final ChangeTable table;
  private final Map<String, Resin> resins = new HashMap<>();
  private final Map<Names.Material, Colour> colours = new HashMap<>();

  private int minutes;
  private int purge;
  private int kinds;
  private boolean forbidden;

  BarrelStep(Problem problem) {
    table = problem.plant().changes();
    problem.materials().resins().forEach(r -> resins.put(r.id(), r));
    problem.materials().colours().forEach(c -> colours.put(new Names.Material(c.resin(), c.id()), c));
  }

  int minutes() {
    return minutes;
  }

  int purgeThousandths() {
    return purge;
  }

  int kinds() {
    return kinds;
  }

  boolean forbidden() {
    return forbidden;
  }

  void ask(Names.Material from, Names.Material to) {
    minutes = 0;
    purge = 0;
    kinds = 0;
    forbidden = names(from.resin(), to.resin()) || names(to.resin(), from.resin());
    boolean known = !from.resin().isEmpty() && !to.resin().isEmpty();
    if (known && !from.resin().equals(to.resin())) {
      kinds |= ChangeRules.RESIN;
      minutes = resinMinutes(from.resin(), to.resin());
      purge = table.resin().purgeThousandths();
    }
    boolean coloured = !from.colour().isEmpty() && !to.colour().isEmpty();
    if (coloured && !from.colour().equals(to.colour())) {
      kinds |= ChangeRules.COLOUR;
      colour(lightness(from), lightness(to));
    }
  }

  private boolean names(String resin, String other) {
    Resin record = resins.get(resin);
    return record != null && record.neverNextTo().contains(other);
  }

  private int resinMinutes(String from, String to) {
    OptionalDouble before = melt(from);
    OptionalDouble after = melt(to);
    if (before.isEmpty() || after.isEmpty()) {
      return table.resin().sameMin();
    }
    double step = after.getAsDouble() - before.getAsDouble();
    if (step < -table.resin().toleranceC()) {
      return table.resin().downMin();
    }
    return step > table.resin().toleranceC() ? table.resin().upMin() : table.resin().sameMin();
  }

  private void colour(OptionalDouble before, OptionalDouble after) {
    ChangeTable.ColourStep step = table.colour();
    if (before.isEmpty() || after.isEmpty()) {
      larger(step.unknownMin(), step.purgeLighterThousandths());
      return;
    }
    double lighter = after.getAsDouble() - before.getAsDouble();
    if (lighter <= 0) {
      larger(step.darkerMin(), step.purgeDarkerThousandths());
    } else {
      int extra = (int) Math.ceil(step.lighterPer100Min() * lighter / 100);
      larger(step.lighterMin() + extra, step.purgeLighterThousandths());
    }
  }

  private void larger(int colourMinutes, int colourPurge) {
    minutes = Math.max(minutes, colourMinutes);
    purge = Math.max(purge, colourPurge);
  }

  private OptionalDouble melt(String resin) {
    Resin record = resins.get(resin);
    return record == null ? OptionalDouble.empty() : record.meltC();
  }

  private OptionalDouble lightness(Names.Material material) {
    Colour own = colours.get(material);
    Colour found = own != null ? own : colours.get(new Names.Material("", material.colour()));
    return found == null ? OptionalDouble.empty() : found.lightness();
  }
}
